package flat

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
	for _, unit := range []measure.DisplayUnit{measure.DisplayUnitCm, measure.DisplayUnitIn} {
		for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 42}, {Stitches: 33, Rows: 46}} {
			for _, in := range []Input{
				{Form: FormDisc, AcrossCm: p(30), WedgeCount: n(10), StartStitches: n(10)}, {Form: FormDisc, AcrossCm: p(24), WedgeCount: n(9)},
				{Form: FormDisc, AcrossCm: p(30), Arrangement: ArrangementDoubling},
				{Form: FormDisc, AcrossCm: p(30), Arrangement: ArrangementShortRows, WedgeCount: n(12)},
				{Form: FormRing, AcrossCm: p(30), HoleCm: p(8), WedgeCount: n(9)}, {Form: FormRing, AcrossCm: p(30), HoleCm: p(8)},
				{Form: FormSector, AcrossCm: p(30), TurnDegrees: p(180), WedgeCount: n(8), StartStitches: n(9)},
				{Form: FormPolygon, SideCm: p(12), CornerCount: n(6)}, {Form: FormMitredSquare, SideCm: p(15)},
				{Form: FormTriangleFromPoint, WidthCm: p(20), HeightCm: p(20)}, {Form: FormTriangleFromSide, WidthCm: p(20), HeightCm: p(20)},
				{Form: FormTriangleFromTop, WidthCm: p(40)}, {Form: FormBiasStrip, WidthCm: p(10), LengthCm: p(40)},
				{Form: FormStar, AcrossCm: p(30), CornerCount: n(8)}, {Form: FormStar, AcrossCm: p(30), ValleyCm: p(20), CornerCount: n(6)},
			} {
				in.Gauge, in.DisplayUnit = &g, unit
				if _, err := PlanFlatShape(in); err != nil {
					continue
				}
				r, o := knittest.CheckEdges(t, in, func(q Input) error { _, err := PlanFlatShape(q); return err }, knittest.Numbers(in)...)
				refused, offered = refused+r, offered+o
			}
		}
	}
	t.Logf("%d refused, %d offered something", refused, offered)
	if refused < 100 || offered*10 < refused*8 {
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}
