package sock

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// From the toe up enough stitches are cast on to be joined, with a strand between each two for the increases: 4 at least, whatever is
// asked. Where that is more, a notice says so.
func TestToesBeginWithARingThatJoins(t *testing.T) {
	n, raised := 0, 0
	for round := MinRound; round <= 80; round += knittest.Sweep(1, 7) {
		for kind := ToeKindWedge; kind <= ToeKindStar; kind++ {
			for tip := range 7 {
				in := ToeInput{Kind: kind, RoundStitches: &round, Direction: DirectionToeUp}
				if tip > 0 {
					in.TipStitches = &tip
				} else if kind != ToeKindWedge {
					in.WedgeCount = new(MinWedges)
				}
				o, err := PlanToe(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				n++
				at := fmt.Sprintf("%d stitches, kind %d, a tip of %d", round, kind, tip)
				knitToe(t, at, o)
				if o.TipStitches < 4 {
					t.Fatalf("%s: %s", at, o.Directions()[0])
				}
				told := len(o.Notices) > 0 && o.Notices[0].Reason == EndUnmet
				if told != (tip > 0 && o.TipStitches > tip) {
					t.Fatalf("%s: %d are cast on, notices %v", at, o.TipStitches, o.Notices)
				}
				if told {
					raised++
				}
			}
		}
	}
	if n < knittest.Sweep(1300, 180) || raised == 0 {
		t.Errorf("%d toes, %d raised", n, raised)
	}
}
