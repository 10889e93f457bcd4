package solid

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Crowns of asked wedges do not turn slower again after they have been quicker, but where no rhythm near the curve is so: two
// intervals beside each other are never much longer than two before them.
func TestCrownsDoNotTurnSlower(t *testing.T) {
	planned, slower := 0, 0
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 18, Rows: 24}, {Stitches: 22, Rows: 30}, {Stitches: 28, Rows: 36}} {
		for hat := 60; hat <= 160; hat += knittest.Sweep(4, 12) {
			for wedges := MinWedges; wedges <= MaxWedges; wedges++ {
				for _, shape := range []CrownShape{CrownShapeFlat, CrownShapeRounded} {
					out, err := PlanCrown(CrownInput{Gauge: &g, HatStitches: &hat, WedgeCount: &wedges, Shape: shape})
					if err != nil {
						t.Fatal(err)
					}
					planned++
					if turnsSlower(out.Rounds) {
						slower++
					}
				}
			}
		}
	}
	t.Logf("%d of %d crowns turn slower again", slower, planned)
	if planned < knittest.Sweep(1_400, 450) || slower*25 > planned {
		t.Errorf("%d of %d crowns turn slower again", slower, planned)
	}
}

// turnsSlower reports whether three rounds in a row are further apart than three before them.
func turnsSlower(rounds []ClosingRound) bool {
	least := 0
	for i := 2; i < len(rounds); i++ {
		if rounds[i-2].Adjusts {
			continue
		}
		apart := rounds[i].RoundNumber - rounds[i-2].RoundNumber
		if least > 0 && apart > least {
			return true
		}
		if least == 0 || apart < least {
			least = apart
		}
	}
	return false
}

// By hand: 112 stitches at 22 by 30 in 7 wedges are 15 decrease rounds over 2 pi times 2.2 / 3 stitches a round, 24 rounds: one
// every 1.5 rounds, alternately every 2nd round and the next.
func TestAlternatingCrownByHand(t *testing.T) {
	out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HatStitches: new(112), WedgeCount: new(7)})
	if err != nil {
		t.Fatal(err)
	}
	alternating := 0
	for i := 2; i < len(out.Rounds); i++ {
		if out.Rounds[i].RoundNumber-out.Rounds[i-2].RoundNumber == 3 {
			alternating++
		}
	}
	if len(out.Rounds) != 15 || alternating < 12 {
		t.Errorf("%d rounds, %d of them alternate: %+v", len(out.Rounds), alternating, out.Rounds)
	}
}
