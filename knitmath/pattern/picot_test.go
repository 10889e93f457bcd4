package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestPicotsComeToAnEnd: stitches bound off with points, each of which casts some on and binds more off; where it does not, the row
// never ends. The numbers are those of this sweep, the ways of writing common practice.
func TestPicotsComeToAnEnd(t *testing.T) {
	for _, form := range []string{"Picot bind-off: BO 2, *CO %d, BO %d; rep from * to end.",
		"Picot bind-off: *CO %d sts, BO %d sts; rep from * to end.",
		"Picot cast-off: cast off 2 sts, *slip st back to left needle, cast on %d sts, cast off %d sts; rep from * to end.",
		"BO all sts as follows: BO 2, *cable cast on %d sts, bind off %d sts; rep from * until all sts are bound off."} {
		for on := 1; on <= 4; on++ {
			for off := 1; off <= 7; off++ {
				text := fmt.Sprintf("CO %d sts.\nKnit 4 rows.\n"+form, 2+12*max(off-on, 1), on, off)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || out.Agrees != (off > on) || !single(out.EndStitches, 0) {
					t.Errorf("agrees %v, %v: %q %v %s", out.Agrees, out.EndStitches, text, err, judgedText(out.Findings))
				}
			}
		}
	}
}

// TestPicotsInARow: what is cast on is what is bound off first. A row of nothing but points leaves no stitch, whatever count is claimed
// after it; of points among other stitches it is asked how often they are worked, and with the number of times the count is by hand
// that of the stitches, and for each point what is cast on less what is bound off.
func TestPicotsInARow(t *testing.T) {
	for c := 1; c < 4; c++ {
		for b := c; b < c+4; b++ {
			for n := 12; n < knittest.Sweep(40, 16); n++ {
				mixed := fmt.Sprintf("CO %d sts.\nRow 1: *K2, CO %d, BO %d; rep from * to end.", n, c, b)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: mixed})
				if err != nil || out.questions != 1 || out.mistakes > 0 {
					t.Errorf("%q: %v, %s", mixed, err, said(&out))
				}
				if b == c {
					continue
				}
				all := fmt.Sprintf("CO %d sts.\nPicot row: *Cast on %d sts, bind off %d sts; rep from * to end.", n, c, b)
				for _, claim := range []string{"", fmt.Sprintf(" %d sts.", n/(b-c))} {
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: all + claim})
					if err != nil || out.Agrees != (claim == "") || out.EndStitches[0] != 0 {
						t.Errorf("%q: %v, %s %v", all+claim, err, said(&out), out.EndStitches)
					}
				}
			}
			told := fmt.Sprintf("CO 60 sts.\nRow 1: [K2, CO %d, BO %d] 4 times, k to end. %d sts.", c, b, 60-4*(b-c))
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: told})
			if err != nil || !out.Agrees {
				t.Errorf("%q: %v, %s", told, err, said(&out))
			}
		}
	}
}
