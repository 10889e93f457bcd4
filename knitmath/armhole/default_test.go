package armhole

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// The armholes of a back that loses one stitch at a time want more rows than a third of their
// depth, and more than one for every stitch: the default gives way. A number of rows that is
// asked for does not, and the refusal names one that is planned.
func TestShapingRowsGiveWayToDecreases(t *testing.T) {
	for name, in := range map[string]Input{
		"measures": {Gauge: &gauge.Gauge{Stitches: 14, Rows: 20}, ChestCm: new(144.5), AcrossBackCm: new(44.0),
			ArmholeDepthCm: new(25.0), UpperArmCm: new(47.0)},
		"counts": {Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BackStitches: new(100), AcrossBackStitches: new(56),
			ArmholeDepthRows: new(54), SleeveStitches: new(76)},
	} {
		in.LargestGroupStitches = new(1)
		mustPlan(t, in)
		in.ShapingRows = new(24)
		_, err := Plan(in)
		if err == nil || !strings.Contains(err.Error(), "; shaping over 28 rows, or bind-offs of up to 2 stitches would do") {
			t.Errorf("%s: %v", name, err)
		}
		in.ShapingRows = new(28)
		mustPlan(t, in)
	}
}

// The first bind-off is an inch where the curve is left a third of what an edge loses, and
// nobody is told that one of 2.5 cm is narrower than 2.5 cm.
func TestUnderarmIsAnInch(t *testing.T) {
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, ChestCm: new(94.0), AcrossBackCm: new(41.0), ArmholeDepthCm: new(19.0),
		UpperArmCm: new(28.0)}
	if out := mustPlan(t, in); out.UnderarmStitches != 5 || hasNotice(out, UnderarmNarrow) {
		t.Errorf("%d: %+v", out.UnderarmStitches, out.Notices)
	}
	in.AcrossBackCm = new(42.0) // 8 at each edge, of which half are 4
	if out := mustPlan(t, in); out.UnderarmStitches != 5 || hasNotice(out, UnderarmNarrow) {
		t.Errorf("%d: %+v", out.UnderarmStitches, out.Notices)
	}
	in.UnderarmStitches = new(4)
	if out := mustPlan(t, in); !hasNotice(out, UnderarmNarrow) {
		t.Errorf("%+v", out.Notices)
	}
}

// The people of the trade's charts (ListBodySizes, every row that has all four: chest, width
// across the back, depth of the armhole and upper arm, in cm, the smaller of two) ask for what
// they measure and nothing else. Nobody is told that what was taken for them is unusual, but
// some whose cap is free: babies, whose stitches are few, and a woman whose back is the
// widest for her chest. Of those 162 plans 4 are refused, with what would do.
var charted = [][4]float64{
	{40.5, 18.5, 8.5, 14}, {43, 19.5, 9, 15.5}, {45.5, 21, 9.5, 16.5}, {48, 21.5, 10, 17.5}, {50.5, 22, 10.5, 19},
	{53, 23.5, 10.5, 18}, {58.5, 25, 12, 19}, {63.5, 26, 12.5, 20.5}, {67, 27, 14, 21.5}, {71, 28.5, 15.5, 22},
	{76, 30.5, 16.5, 23}, {80, 31, 17.5, 23.5}, {82.5, 33, 19, 24}, {71, 35.5, 15.5, 25}, {81, 37, 16.5, 26},
	{91.5, 40.5, 17.5, 28}, {101.5, 43, 19, 30.5}, {111.5, 44.5, 20.5, 34.5}, {122, 45.5, 21.5, 39.5}, {132, 45.5, 23, 43},
	{142, 47, 24, 47}, {152, 47, 25.5, 49.5}, {86, 39.5, 21.5, 30.5}, {96.5, 42, 23, 33}, {106.5, 44.5, 24, 38},
	{116.5, 45.5, 25.5, 40.5}, {127, 47, 26.5, 43},
}

func TestChartedPeopleAreOrdinary(t *testing.T) {
	unlike, refused := 0, 0
	for _, g := range [][2]float64{{14, 19}, {18, 24}, {20, 28}, {22, 30}, {28, 36}, {30, 42}} {
		for _, who := range charted {
			for rule := CapHeightRuleFree; rule <= CapHeightRuleLessTop; rule++ {
				out, err := Plan(Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &who[0], AcrossBackCm: &who[1],
					ArmholeDepthCm: &who[2], UpperArmCm: &who[3], CapHeightRule: rule})
				switch {
				case err != nil && rule == CapHeightRuleFree:
					refused++
				case err == nil && rule == CapHeightRuleFree && hasNotice(out, CapUnlikeRule):
					unlike++
				case err == nil && (hasNotice(out, CapUnlikeRule) || hasNotice(out, UnderarmNarrow)):
					t.Errorf("%v, %v: %+v", g, who, out.Notices)
				}
			}
		}
	}
	if refused > 4 || unlike > 8 {
		t.Errorf("%d are refused, %d unlike two thirds", refused, unlike)
	}
}
