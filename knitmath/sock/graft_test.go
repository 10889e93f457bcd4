package sock

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// A wedge and a star end with a decrease round, whatever their rates and tips, and so does a heel knit in
// afterwards: nobody knits a round before the graft. From its tip a toe has one round after the cast-on.
func TestToesEndWithADecrease(t *testing.T) {
	n := 0
	changes := func(in stitch.Instruction) bool { return in.StartStitches != in.EndStitches }
	for round := MinRound; round <= 120; round += knittest.Sweep(1, 9) {
		for kind := ToeKindWedge; kind <= ToeKindStar; kind += ToeKindStar - ToeKindWedge {
			for every := range 4 {
				for direction := DirectionCuffDown; direction <= DirectionToeUp; direction++ {
					in := ToeInput{Kind: kind, RoundStitches: &round, Direction: direction, TipStitches: new(8 + round/4*every)}
					if every > 0 {
						in.Rates = []solid.Rate{{EveryRounds: every, Times: 100}}
					}
					o, err := PlanToe(in)
					if err != nil {
						continue
					}
					n++
					last := o.Rows[len(o.Rows)-1].Instruction
					if direction == DirectionToeUp {
						if last = o.Rows[1].Instruction; changes(o.Rows[0].Instruction) {
							t.Fatalf("%d stitches, kind %d, rate %d: no round after the cast-on", round, kind, every)
						}
					}
					if !changes(last) {
						t.Fatalf("%d stitches, kind %d, rate %d, direction %d: %q", round, kind, every, direction, o.Directions())
					}
				}
			}
		}
		o, err := PlanHeel(HeelInput{Kind: HeelKindWasteYarn, RoundStitches: &round})
		if err == nil && !changes(o.Rows[len(o.Rows)-1].Instruction) {
			t.Fatalf("a heel of %d stitches: %q", round, o.Directions())
		}
	}
	if n < knittest.Sweep(1000, 100) {
		t.Errorf("%d toes", n)
	}
}
