package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestInTheRoundAgain: a heel is worked back and forth on some stitches, then the work goes on in the round over all, in many
// words. By hand: n stitches again. A claim of the heel's stitches, or of any other number, is told.
func TestInTheRoundAgain(t *testing.T) {
	words := []string{"Continue in the round on all sts.", "Now work in the round again.", "Resume working in the round.",
		"Continue in the round over all %d sts.", "Resume working in the round over all %d sts.",
		"Return to working in the round on all stitches.",
		"Go back to working in the rnd.", "Cont in rounds over all the sts.", "Work in the round once more:",
		"Resume knitting in the round across all sts."}
	for _, w := range words {
		for _, n := range []int{64, 56} {
			for _, claim := range []int{n, n / 2, n - 1, n + 2} {
				words := w
				if w[len(w)-7:] == "%d sts." {
					words = fmt.Sprintf(w, claim)
				}
				text := fmt.Sprintf("CO %d sts and join. Knit 3 rnds.\nHeel is worked back and forth over next %d sts only.\nRow 1 (RS): K%d.\n"+
					"Row 2 (WS): P%d.\n%s\nRnd 1: Knit. %d sts.", n, n/2, n/2, n/2, words, claim)
				if out := asked(t, text, 0, stitch.Flat); out.Agrees != (claim == n) || out.Agrees && out.WorkedRows[0] != 6 {
					t.Errorf("%q: %s", text, said(&out))
				}
			}
		}
	}
}

// TestAllOfTheThumb: "all sts" of a thumb that never left the round are those of the thumb.
func TestAllOfTheThumb(t *testing.T) {
	text := "CO 50 sts and join. Knit 3 rnds.\nWork on these 14 sts only. Work in the round on all sts.\nRnd 1: Knit. 14 sts."
	if out := asked(t, text, 0, stitch.Flat); !out.Agrees {
		t.Error(said(&out))
	}
}
