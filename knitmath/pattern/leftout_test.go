package pattern

import (
	"fmt"
	"testing"
)

// TestMarkersPlacedOverWhatWaited: a gusset is picked up in a round that goes on over the instep, which waited while the heel was
// worked, and places its markers there. By hand: with h stitches on the heel, f picked up at each side and i on the instep the
// markers lie at h + f and h + f + i; each gusset round takes 2. A number that is off by one or two, in any place of the round
// after it, is told.
func TestMarkersPlacedOverWhatWaited(t *testing.T) {
	for _, wait := range []string{"Heel is worked back and forth on the first %[1]d sts; the other %[2]d sts wait for the instep.",
		"The heel flap is worked over the first %[1]d sts only; the other %[2]d sts wait."} {
		for _, picked := range []int{11, 14} {
			for h := 26; h <= 30; h += 2 {
				for off := -2; off <= 2; off++ {
					for place := range 3 {
						before, between, claim := 3, h, 2*h+2*picked-2
						switch place {
						case 0:
							before += off
						case 1:
							between += off
						case 2:
							claim += off
						}
						if before < 2 {
							continue
						}
						text := fmt.Sprintf("CO %d sts. Join.\nKnit 4 rnds.\n", 2*h) + fmt.Sprintf(wait, h, h) +
							fmt.Sprintf("\nRow 1 (RS): K%d, turn.\nRow 2: P%[1]d, turn.\n", h) +
							fmt.Sprintf("Rnd 1: K%d, pick up and knit %d sts, pm, k%[1]d, pm, pick up and knit %[2]d sts. %[3]d sts.\n",
								h, picked, 2*h+2*picked) +
							fmt.Sprintf("Rnd 2: K to %d sts before m, k2tog, k1, sm, k%d, sm, k1, ssk, k to end. %d sts.\nRnd 3: Knit.\n",
								before, between, claim)
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
						if err != nil || out.Agrees != (off == 0) || off == 0 && out.questions > 0 {
							t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
						}
					}
				}
			}
		}
	}
}
