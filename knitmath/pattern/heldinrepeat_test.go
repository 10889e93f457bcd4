package pattern

import (
	"fmt"
	"testing"
)

// TestHeldInRepeat: stitches that are put aside within brackets, by all who put them aside and all that keeps them. Count =
// repeats x plain stitches; the words are common practice.
func TestHeldInRepeat(t *testing.T) {
	var texts []worded
	for _, aside := range []string{"place next %s sts on a holder", "put the next %s sts onto waste yarn", "sl next %s sts to a holder",
		"leave next %s sts on scrap yarn", "slip %s sts onto a stitch holder", "transfer next %s sts to waste yarn for underarm"} {
		for _, row := range []string{"[K%[1]s, %[2]s] %[3]s", "(K%[1]s, %[2]s) %[3]s",
			"[%[2]s, k%[1]s] %[3]s", "[K%[1]s, %[2]s] %[3]s, k to end"} {
			for _, times := range [...]struct {
				said string
				n    int
			}{{"twice", 2}, {"2 times", 2}, {"3 times", 3}} {
				for _, held := range [][]int{{2}, {3, 4}, {2, 3, 4}} {
					plain := each(held, func(n int) int { return 15 + n })
					all := each(held, func(n int) int { return times.n * (15 + 2*n) })
					left := each(plain, func(n int) int { return times.n * n })
					row := fmt.Sprintf(row, asPrinted(plain), fmt.Sprintf(aside, asPrinted(held)), times.said)
					text := fmt.Sprintf("CO %s sts and join.\nKnit 4 rnds.\nNext rnd: %s. %s sts.", asPrinted(all), row, asPrinted(left))
					texts = append(texts, worded{text: text,
						stitches: left, rows: each(held, func(int) int { return 5 })})
				}
			}
		}
	}
	askShort(t, texts)
}
