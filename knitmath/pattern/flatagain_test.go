package pattern

import (
	"fmt"
	"testing"
)

// TestHeelFlatAndRoundAgain: a heel worked on half of a sock while the rest is on hold, and the round that goes over both again. By hand:
// its stitches are all of the sock's. Rows are worked on both sides without a turn that is written; a round that takes more, or fewer, is
// a mistake. Common practice of heel flaps.
func TestHeelFlatAndRoundAgain(t *testing.T) {
	for _, hold := range []string{
		"Heel flap\nK%[1]d, leave rem %[1]d sts on hold for instep.\nRow 1: Sl 1, p%[2]d, turn.\nRow 2: *Sl 1, k1; rep from * to end.\n",
		"Heel is worked over %[1]d sts; leave rem %[1]d sts on hold.\nRow 1: K%[1]d, turn.\nRow 2: P%[1]d.\n",
		"Heel: K%[1]d, turn, leave rem %[1]d sts on hold.\nRow 1: P%[1]d, turn.\nRow 2: K%[1]d.\n"} {
		for half := 20; half < 34; half += 2 {
			for off := -2; off <= 2; off++ {
				for _, round := range []string{"Next rnd: K%d, k%d. %d sts.", "Rnd 1: K%d across heel, k%d across instep. %d sts.\nRnd 2: Knit."} {
					text := fmt.Sprintf("CO %d sts. Join. Knit 20 rnds.\n", 2*half) + fmt.Sprintf(hold, half, half-1) +
						fmt.Sprintf(round, half, half+off, 2*half+off)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if right := off == 0; err != nil || out.Agrees != right || out.questions > 0 || !right && out.mistakes == 0 {
						t.Errorf("%q: %v, %s", text, err, said(&out))
					}
				}
			}
		}
	}
}

// TestMarkersOfAMisfit: a row that places markers and does not fit is said once, and not again of every row that goes to a marker.
func TestMarkersOfAMisfit(t *testing.T) {
	for middle := 17; middle < 24; middle++ {
		text := fmt.Sprintf("CO 40 sts. Join.\nRnd 1: K10, pm, k%d, pm, k10.\nRnd 2: K to m, sm, k20, sm, k10.\n"+
			"Rnd 3: K10, remove m, k20, remove m, k10. 40 sts.\nRnd 4: Knit.", middle)
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.Agrees != (middle == 20) || middle != 20 && out.mistakes != 1 {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}
