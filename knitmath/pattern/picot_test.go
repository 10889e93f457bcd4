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

// TestPicotsInARow: what is cast on is what is bound off first. By hand: each repeat of "k2, CO c, BO b" takes 2 and b - c stitches of
// the needle and leaves 2; a row of nothing but points leaves none, whatever count is claimed after it.
func TestPicotsInARow(t *testing.T) {
	for c := 1; c < 4; c++ {
		for b := c; b < c+4; b++ {
			for n := 12; n < knittest.Sweep(40, 16); n++ {
				takes := 2 + b - c
				row := fmt.Sprintf("CO %d sts.\nRow 1: *K2, CO %d, BO %d; rep from * to end.", n, c, b)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: row})
				if right := n%takes == 0; err != nil || out.Agrees != right || right && out.EndStitches[0] != n/takes*2 {
					t.Errorf("%q: %v, %s %v", row, err, said(&out), out.EndStitches)
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
		}
	}
}
