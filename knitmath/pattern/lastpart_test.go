package pattern

import (
	"fmt"
	"testing"
)

// TestTheLastSideOfANeck: after stitches bound off within a row, the number of those worked on is compared with the last ones, in
// whatever words. The numbers are those of this sweep.
func TestTheLastSideOfANeck(t *testing.T) {
	for _, form := range []string{"Next row: K%d, BO 20, k to end. Turn and work on last %d sts.",
		"Next row: K%d, BO 20, k to end.\nTurn and work on last %d sts.",
		"Next row: K%d, BO 20 sts, k to end.\nWork on last %d sts only.",
		"Next row: K%d, cast off 20, k to end.\nTurn and work on these %d sts only.",
		"Next row (RS): Knit %d, bind off 20 sts, knit to end.\nWorking on the last %d sts only, knit 2 rows."} {
		for _, first := range []int{20, 25, 31} {
			for last := first - 2; last <= first+2; last++ {
				for n := last - 2; n <= last+2; n++ {
					text := fmt.Sprintf("CO %d sts.\nKnit 4 rows.\n"+form+"\nKnit 4 rows.", first+20+last, first, n)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (n == last) || n == last && !single(out.EndStitches, last) {
						t.Errorf("agrees %v, %v: %q %v %s", out.Agrees, out.EndStitches, text, err, judgedText(out.Findings))
					}
				}
			}
		}
	}
}
