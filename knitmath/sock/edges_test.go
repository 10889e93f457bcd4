package sock

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// What refusals right beyond the last feasible value of each field offer does, in centimetres and in inches.
func TestOffersAtTheEdgeDo(t *testing.T) {
	p, n := knittest.Ptr[float64], knittest.Ptr[int]
	refused, offered := 0, 0
	count := func(r, o int) { refused, offered = refused+r, offered+o }
	for _, unit := range []measure.DisplayUnit{measure.DisplayUnitCm, measure.DisplayUnitIn} {
		for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 42}, {Stitches: 33, Rows: 46}} {
			for kind := HeelKindRound; kind <= HeelKindWasteYarn; kind++ {
				for _, in := range []HeelInput{{RoundStitches: n(64), HeelStitches: n(32), CentreStitches: n(8)},
					{RoundStitches: n(64), FlapRows: n(30), PickUpStitches: n(16), SuccessiveRounds: n(2)}, {FootCircumferenceCm: p(23)},
					{RoundStitches: n(64), CornerStitches: n(1), EndStitches: n(16)},
					{RoundStitches: n(64), Direction: DirectionToeUp, HeelStitches: n(32)},
					{RoundStitches: n(52), Direction: DirectionToeUp, FootLengthCm: p(24)}} {
					in.Kind, in.Gauge, in.DisplayUnit = kind, &g, unit
					if _, err := PlanHeel(in); err == nil {
						count(knittest.CheckEdges(t, in, func(q HeelInput) error { _, err := PlanHeel(q); return err }, knittest.Numbers(in)...))
					}
				}
			}
			for kind := ToeKindWedge; kind <= ToeKindShortRows; kind++ {
				for _, in := range []ToeInput{{RoundStitches: n(64), TipStitches: n(16)}, {RoundStitches: n(64), WedgeCount: n(8), TipStitches: n(8)},
					{FootCircumferenceCm: p(23), FootLengthCm: p(24)}, {RoundStitches: n(64), CentreStitches: n(10)},
					{RoundStitches: n(64), Direction: DirectionToeUp, TipStitches: n(16)}} {
					in.Kind, in.Gauge, in.DisplayUnit = kind, &g, unit
					if _, err := PlanToe(in); err == nil {
						count(knittest.CheckEdges(t, in, func(q ToeInput) error { _, err := PlanToe(q); return err }, knittest.Numbers(in)...))
					}
				}
			}
		}
	}
	t.Logf("%d refused, %d offered something", refused, offered)
	if refused < 100 || offered*10 < refused*8 {
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}
