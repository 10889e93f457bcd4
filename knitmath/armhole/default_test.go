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
		if err == nil || !strings.Contains(err.Error(), "; shaping over 28 rows would do") {
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
