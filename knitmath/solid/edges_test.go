package solid

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
			for _, in := range []CrownInput{{HatStitches: n(96), WedgeCount: n(8), EndStitches: n(8)}, {HatStitches: n(96), CrownRounds: n(24)},
				{HatStitches: n(96), TotalRounds: n(60)}, {HatCm: p(48), CrownCm: p(8)}, {HatCm: p(48), TotalCm: p(21)},
				{HeadCm: p(54), Shape: CrownShapeRounded, TotalCm: p(22)}, {HeadCm: p(54), Shape: CrownShapeSlouchy, WedgeCount: n(7)},
				{HeadCm: p(44), Stacks: StacksPaired, WedgeCount: n(5), EndStitches: n(10)}} {
				in.Gauge, in.DisplayUnit = &g, unit
				if _, err := PlanCrown(in); err == nil {
					count(knittest.CheckEdges(t, in, func(q CrownInput) error { _, err := PlanCrown(q); return err }, knittest.Numbers(in)...))
				}
			}
			for _, in := range []SolidInput{{Form: FormSphere, AcrossCm: p(10), TopOpeningCm: p(3), WedgeCount: n(6)},
				{Form: FormEgg, AcrossCm: p(8), HeightCm: p(11), StuffOpeningCm: p(3)}, {Form: FormCone, AcrossCm: p(8), HeightCm: p(14)},
				{Form: FormCylinder, AcrossCm: p(8), HeightCm: p(10), BaseOpeningCm: p(3)}, {Form: FormDrop, AcrossCm: p(8), HeightCm: p(14)},
				{Form: FormSphere, AcrossCm: p(10), Way: WayWedges, WedgeCount: n(8)},
				{Form: FormCone, AcrossCm: p(10), HeightCm: p(14), Way: WayWedges},
				{Form: FormEgg, AcrossCm: p(10), HeightCm: p(14), Way: WayWedges, BaseOpeningCm: p(2), TopOpeningCm: p(2)}} {
				in.Gauge, in.DisplayUnit = &g, unit
				if _, err := PlanSolid(in); err == nil {
					count(knittest.CheckEdges(t, in, func(q SolidInput) error { _, err := PlanSolid(q); return err }, knittest.Numbers(in)...))
				}
			}
		}
	}
	t.Logf("%d refused, %d offered something", refused, offered)
	if refused < 100 || offered*10 < refused*8 {
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}
