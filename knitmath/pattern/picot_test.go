package pattern

import (
	"fmt"
	"testing"
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
