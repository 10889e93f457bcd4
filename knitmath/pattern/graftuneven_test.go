package pattern

import (
	"fmt"
	"testing"
)

// TestGraftedAlike: as many stitches of one side as of the other are grafted.
func TestGraftedAlike(t *testing.T) {
	for _, words := range []string{"Graft the %d sts of the palm to the %d sts of the back.", "Graft the first %d sts to the last %d sts.",
		"Graft %d sts of the front with the %d sts of the back."} {
		for off := -2; off <= 2; off++ {
			agreeing(t, "CO 20 sts and join. "+fmt.Sprintf(words, 10+off, 10-off), nil, false, off == 0, 0)
		}
	}
}

// TestCountedFromTheEnd: of stitches that are told from the end of the row none is left over.
func TestCountedFromTheEnd(t *testing.T) {
	for off := -1; off <= 2; off++ {
		agreeing(t, fmt.Sprintf("CO 68 sts and join.\nNext round: Bind off 4 sts, knit until %d sts remain, "+
			"bind off the last 4 sts = 60 sts.", 4+off),
			nil, false, off == 0, 60)
	}
}

// TestRoundsOfTheirLabel: rounds told in square brackets are those of the label.
func TestRoundsOfTheirLabel(t *testing.T) {
	for off := -1; off <= 2; off++ {
		agreeing(t, fmt.Sprintf("CO 16 sts.\nR1: [k2, k2tog] x 4 (12)\nR2-4: k (12) [%d rounds]", 3+off), nil, true, off == 0, 12)
	}
}

// TestHeelOfTheGusset: a round that goes over the heel, the instep and the heel again has all heel stitches before its first edge.
func TestHeelOfTheGusset(t *testing.T) {
	for off := -2; off <= 2; off++ {
		agreeing(t, fmt.Sprintf("CO 64 sts and join. The heel flap is worked over the first 32 sts. The remaining 32 sts rest for the instep.\n"+
			"Row 1 (RS): K17, ssk, k1, turn.\nRow 2 (WS): Sl 1, p3, p2tog, p1, turn.\nRow 3: Sl 1, k to 1 st before gap, ssk, k1, turn.\n"+
			"Row 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.\nWork Rows 3 and 4 5 more times. (18 heel sts)\nSet-up round: k%d heel sts, "+
			"pick up and knit 16 sts along the flap, pm, k32 instep sts, pm, pick up and knit 16 sts along the other side, k9. This is the "+
			"new beginning of round. (82 sts)", 18+off), nil, false, off == 0, 82)
	}
}
