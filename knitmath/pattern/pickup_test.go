package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestNeckbandOfParts: a neckband that is picked up along edges and knit from holders in between, in many words: the sum of its parts,
// and one more and one fewer planted.
func TestNeckbandOfParts(t *testing.T) {
	type part struct {
		said string
		n    int
	}
	lists := [][]part{
		{{"pick up and knit 22 sts down left side of neck", 22},
			{"pick up and knit 20 sts down left front neck", 20},
			{"Pick up and k18 down left neck edge", 18}},
		{{"knit across 15 sts at centre front", 15},
			{"k across 17 sts from front neck holder", 17},
			{"knit 16 sts from holder", 16},
			{"k15 front neck sts", 15}},
		{{"pick up and knit 22 sts up right side of neck", 22},
			{"pick up and k 20 sts up right front neck", 20},
			{"24 sts up right side of neck", 24}},
		{{"41 sts across back neck", 41},
			{"knit across 37 sts of back neck holder", 37},
			{"k39 back neck sts", 39},
			{"k across 35 back neck sts", 35}},
	}
	seen, most, read := map[bool]int{}, knittest.Sweep(144, 40), 0
	for i := range most {
		k, sum := i, 0
		var words []string
		for _, list := range lists {
			p := list[k%len(list)]
			k /= len(list)
			words, sum = append(words, p.said), sum+p.n
		}
		joined := strings.Join(words[:3], ", ") + []string{" and ", ", and ", ", "}[i%3] + words[3]
		for off := -1; off < 2; off++ {
			text := fmt.Sprintf("Neckband\nWith RS facing and 3mm needles, %s. (%d sts)\nKnit 6 rounds.", joined, sum+off)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if seen[off == 0]++; err != nil || off != 0 && out.Agrees || off == 0 && out.mistakes > 0 {
				t.Errorf("%v %s\n%s", err, said(&out), text)
			}
			if off == 0 && out.Agrees {
				read++
			} else if off == 0 {
				t.Logf("asked: %s\n%s", said(&out), text)
			}
		}
	}
	t.Logf("%d of %d read, %d planted", read, seen[true], seen[false])
	if read < seen[true] {
		t.Errorf("%d are asked", seen[true]-read)
	}
}

// TestThumbPlacedAndPickedUp: the stitches of a thumb that wait and those picked up beside them in one sentence are both counted.
func TestThumbPlacedAndPickedUp(t *testing.T) {
	for held := 6; held < 12; held++ {
		for picked := 6; picked < 12; picked++ {
			for _, form := range []string{"Place %d sts from waste yarn and %d sts picked up from CO edge on needles.",
				"Place %d held thumb sts on needles and pick up and knit %d sts along the gap.",
				"Slip the %d sts from waste yarn to dpns and pick up and knit %d more sts from the CO edge."} {
				for off := -1; off <= 1; off++ {
					text := fmt.Sprintf("CO 56 sts and join.\nNext rnd: K2, place next %d sts on waste yarn, CO %[1]d sts, k to end. 56 sts.\n"+
						"BO all sts.\nThumb\n", held) + fmt.Sprintf(form+" %d sts.", held, picked, held+picked+off)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (off == 0) || out.questions > 0 {
						t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
					}
				}
			}
		}
	}
}
