package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestPartsAfterRepeat: the parts of a yoke that are told behind a repeat, or behind rows worked even, are compared with those between
// the markers. Each increase round makes 2 stitches of every part; the words are common
// practice.
func TestPartsAfterRepeat(t *testing.T) {
	for front := 12; front <= 28; front += knittest.Sweep(8, 16) {
		for sleeve := 8; sleeve < front-2; sleeve += 9 {
			for _, shift := range []int{0, 1} { // of the second sleeve to the first
				for again := 1; again <= 17; again += 8 {
					all := 2*front + 2*sleeve
					set := fmt.Sprintf("CO %d sts and join.\nSet-up rnd: K%d, pm, k%d, pm, k%d, pm, k%d, pm.\n",
						all, front, sleeve+shift, front, sleeve-shift)
					parts := func(more, off int) string {
						f, s := front+more+off, sleeve+more-off
						return fmt.Sprintf("%d sts: %d sts each front and back, %d sts each sleeve", all+4*more, f, s)
					}
					rounds := fmt.Sprintf("Rnd 1: [K1, yo, k to 1 st before m, yo, k1, sm] 4 times. %d sts\nRnd 2: Knit.\n", all+8)
					more := 2 * (again + 1)
					for text, more := range map[string]int{
						rounds + fmt.Sprintf("Rep Rnds 1 and 2 %d more times. %%s.", again): more,
						rounds + fmt.Sprintf("Rep last 2 rnds %d more times (%%s).", again): more,
						"Knit 4 rnds. %s.":                   0,
						"Rnd 1: Knit.\nRep Rnd 1 twice. %s.": 0,
					} {
						for off := -1; off <= 1; off++ {
							text := set + fmt.Sprintf(text, parts(more, off))
							out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
							if right := off == 0 && shift == 0; err != nil || out.Agrees != right || out.questions > 0 {
								t.Errorf("%v %s\n%s", err, said(&out), text)
							}
						}
					}
				}
			}
		}
	}
}
