package pattern

import (
	"fmt"
	"testing"
)

// TestMarkersInFromEachEnd: of 60 sts with a marker 21 sts in from each end 18 lie between the markers (arithmetic). A row that
// works any other number there is found, and in a round, which has no ends, nothing is said.
func TestMarkersInFromEachEnd(t *testing.T) {
	for _, form := range []string{
		"CO %d sts. Place markers %d sts in from each end.\nRow 1: K to m, sl m, k%d, sl m, k to end.",
		"CO %d sts.\nKnit 2 rows. Place a marker %d sts from either end.\nRow 1: K to m, sl m, k%d, sl m, k to end.",
		"CO %d sts. Pm %d sts in from each edge. Row 1: K to m, sl m, p%d, sl m, k to end.",
	} {
		for inset := 4; inset < 28; inset += 3 {
			for off := -2; off <= 2; off++ {
				between := 60 - 2*inset + off
				text := fmt.Sprintf(form, 60, inset, between)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || out.Agrees != (off == 0) || off != 0 && out.mistakes != 1 {
					t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
				}
			}
		}
	}
	const round = "CO 60 sts and join. Place markers 21 sts in from each end.\nRnd 1: K to m, sl m, k20, sl m, k to end."
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: round})
	if err != nil || !out.Agrees {
		t.Errorf("%q: %v, %s", round, err, said(&out))
	}
}
