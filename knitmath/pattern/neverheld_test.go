package pattern

import (
	"slices"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestNeverHeld: stitches are taken up that were never put aside, as where the line that divides is lost.
func TestNeverHeld(t *testing.T) {
	for _, take := range []string{"Place 36 held sts on needle.", "Transfer 36 sleeve sts from waste yarn to dpns.",
		"Return 36 held sts to larger dpns."} {
		for divide, agrees := range map[string]bool{"": false, "K6, place next 36 sts on waste yarn, k to end. 48 sts.\n": true,
			"*K3, place next 36 sts on waste yarn, k3; rep from * once more. 12 sts.\n": true} {
			text := "CO 84 sts.\nKnit 3 rows.\n" + divide + "BO all sts.\nSLEEVE\n" + take + " Knit 3 rows. 36 sts."
			if out := asked(t, text, 0, stitch.Flat); out.Agrees != agrees {
				t.Errorf("%q: %v, %s", text, out.Agrees, said(&out))
			}
		}
	}
}

// TestOtherThanTurned: a heel of 48 stitches, worked on 24 after a turn: by hand k24 leaves 24, and k12 is half of a
// heel around the beginning of the round; any other number near 24 leaves other than 24.
func TestOtherThanTurned(t *testing.T) {
	for k := 12; k < 37; k++ {
		text := "CO 48 sts and join in the round.\nKnit 3 rnds.\nNext row: K" + strconv.Itoa(k) +
			", turn. Leave the other 24 sts on a spare needle for the instep.\nRow 1 (WS): Sl 1, p23."
		out := asked(t, text, 0, stitch.Flat)
		found := slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonClaim && f.LineNumber == 3 })
		if right := k == 12 || k == 24; right == found || right != out.Agrees {
			t.Errorf("k%d: %s", k, said(&out))
		}
	}
}
