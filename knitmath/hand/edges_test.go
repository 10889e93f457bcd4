package hand

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
			for _, in := range []ThumbInput{{HandStitches: n(44), GussetStitches: n(15), StartStitches: n(1), EveryRounds: n(3)},
				{HandStitches: n(44), GussetRounds: n(20), LengthRounds: n(16)}, {HandCm: p(20), GussetCm: p(6), LengthCm: p(5)},
				{HandStitches: n(44), GapStitches: n(2), BesideStitches: n(2), PalmStitches: n(1)},
				{HandStitches: n(44), Gusset: GussetNone, HoldStitches: n(8), PalmStitches: n(2), LengthCm: p(5)}} {
				in.Gauge, in.DisplayUnit = &g, unit
				if _, err := PlanThumb(in); err == nil {
					count(knittest.CheckEdges(t, in, func(q ThumbInput) error { _, err := PlanThumb(q); return err }, knittest.Numbers(in)...))
				}
			}
			for kind := TopKind(1); kind <= 4; kind++ {
				for _, in := range []MittenTopInput{{HandStitches: n(44), EndStitches: n(8)}, {HandStitches: n(44), LengthRounds: n(20)},
					{HandCm: p(20), LengthCm: p(6)}} {
					in.Kind, in.Gauge, in.DisplayUnit = kind, &g, unit
					if _, err := PlanMittenTop(in); err == nil {
						count(knittest.CheckEdges(t, in, func(q MittenTopInput) error { _, err := PlanMittenTop(q); return err }, knittest.Numbers(in)...))
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
