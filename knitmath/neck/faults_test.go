package neck

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
)

// Every question that cannot be answered names its fields and reasons.
func TestRefusals(t *testing.T) {
	for name, c := range map[string]struct {
		change func(in *Input)
		want   []string
	}{
		"no gauge": {func(in *Input) { in.Gauge = nil }, []string{"gauge REQUIRED"}},
		"no width": {func(in *Input) {
			in.WidthStitches = nil
		}, []string{
			"width_stitches REQUIRED", "width_cm REQUIRED",
		}},
		"the neck alone": {func(in *Input) {
			in.WidthStitches, in.NeckCm = nil, new(14.0)
		}, []string{
			"width_stitches REQUIRED", "width_cm REQUIRED",
		}},
		"both widths": {func(in *Input) {
			in.WidthCm = new(40.0)
		}, []string{
			"width_stitches CONTRADICTORY", "width_cm CONTRADICTORY",
		}},
		"all three": {func(in *Input) {
			in.NeckStitches, in.ShoulderCm = new(30), new(13.0)
		}, []string{
			"width_stitches CONTRADICTORY", "neck_stitches CONTRADICTORY", "shoulder_stitches CONTRADICTORY",
		}},
		"an odd rest": {func(in *Input) {
			in.NeckStitches = new(31)
		}, []string{
			"width_stitches INFEASIBLE", "neck_stitches INFEASIBLE",
		}},
		"no shoulders": {func(in *Input) {
			in.NeckStitches = new(86)
		}, []string{
			"width_stitches INFEASIBLE", "neck_stitches INFEASIBLE",
		}},
		"no neck": {func(in *Input) {
			in.ShoulderStitches = new(44)
		}, []string{
			"width_stitches INFEASIBLE", "shoulder_stitches INFEASIBLE",
		}},
		"too wide a neck": {func(in *Input) { in.WidthStitches = new(3000) }, []string{"width_stitches INFEASIBLE"}},
		"off the rule": {func(in *Input) { in.NeckStitches, in.NeckRule = new(30), &gauge.CountRule{Multiple: new(4)} },
			[]string{"neck_stitches INFEASIBLE", "neck_rule INFEASIBLE"}},
		"odd counts alone": {func(in *Input) { in.NeckRule = &gauge.CountRule{Multiple: new(4), Remainder: new(1)} },
			[]string{"neck_rule INFEASIBLE", "width_stitches INFEASIBLE"}},
		"rules out of range": {func(in *Input) {
			in.WidthRule, in.NeckRule = &gauge.CountRule{Multiple: new(0)}, &gauge.CountRule{Remainder: new(-1)}
			in.BandRule = &gauge.CountRule{Edge: new(-1)}
		},
			[]string{"width_rule.multiple OUT_OF_RANGE", "neck_rule.remainder OUT_OF_RANGE", "band_rule.edge OUT_OF_RANGE"}},
		"depths twice": {func(in *Input) {
			in.FrontDepthRows, in.FrontDepthCm, in.BackDepthRows, in.BackDepthCm = new(20), new(7.0), new(6), new(2.0)
		}, []string{
			"front_depth_rows CONTRADICTORY", "front_depth_cm CONTRADICTORY", "back_depth_rows CONTRADICTORY",
			"back_depth_cm CONTRADICTORY",
		}},
		"depths out of range": {func(in *Input) { in.FrontDepthRows, in.BackDepthCm = new(401), new(math.NaN()) },
			[]string{"front_depth_rows OUT_OF_RANGE", "back_depth_cm NOT_FINITE"}},
		"too many rows": {func(in *Input) {
			in.FrontDepthCm = new(200.0)
			in.Gauge.Rows = 40
		}, []string{
			"front_depth_cm INFEASIBLE",
		}},
		"no rows for a neck": {func(in *Input) {
			in.FrontDepthRows, in.FrontCentreStitches = new(2), new(12)
		}, []string{
			"front_depth_rows INFEASIBLE", "front_centre_stitches INFEASIBLE",
		}},
		"no depth for short rows": {func(in *Input) { in.FrontDepthRows, in.ShoulderMethod = new(0), ShoulderMethodShortRows },
			[]string{"front_depth_rows INFEASIBLE", "shoulder_method INFEASIBLE"}},
		"a steep V": {func(in *Input) {
			in.Shape, in.FrontDepthRows = ShapeV, new(20)
		}, []string{
			"front_depth_rows INFEASIBLE",
		}},
		"a middle of a square": {func(in *Input) { in.Shape, in.FrontCentreStitches, in.BackCentreStitches = ShapeSquare, new(8), new(8) },
			[]string{"front_centre_stitches CONTRADICTORY", "back_centre_stitches CONTRADICTORY"}},
		"a wide middle": {func(in *Input) { in.FrontCentreStitches = new(32) }, []string{"front_centre_stitches INFEASIBLE"}},
		"an odd middle": {func(in *Input) { in.BackCentreStitches = new(21) }, []string{"back_centre_stitches INFEASIBLE"}},
		"slopes thrice": {func(in *Input) {
			in.ShoulderSlopeRows, in.ShoulderSlopeCm, in.ShoulderSlopeDegrees = new(8), new(2.5), new(15.0)
		}, []string{
			"shoulder_slope_rows CONTRADICTORY", "shoulder_slope_cm CONTRADICTORY", "shoulder_slope_rows CONTRADICTORY",
			"shoulder_slope_degrees CONTRADICTORY", "shoulder_slope_cm CONTRADICTORY",
			"shoulder_slope_degrees CONTRADICTORY",
		}},
		"a steep slope": {func(in *Input) {
			in.ShoulderSlopeDegrees = new(59.0)
		}, []string{
			"shoulder_slope_degrees INFEASIBLE",
		}},
		"a turn of none": {func(in *Input) {
			in.TurnMethod = shortrow.TurnMethodGerman
		}, []string{
			"turn_method CONTRADICTORY",
		}},
		"two heads": {func(in *Input) {
			in.HeadCm, in.BodyCm = new(56.0), new(100.0)
		}, []string{
			"head_cm CONTRADICTORY", "body_cm CONTRADICTORY",
		}},
		"out of range": {func(in *Input) {
			in.EdgeStitches, in.ToleranceStitches, in.HeadCm, in.StretchRatio = new(11), new(3.5), new(4.0), new(0.9)
		}, []string{
			"edge_stitches OUT_OF_RANGE", "tolerance_stitches OUT_OF_RANGE", "head_cm OUT_OF_RANGE",
			"stretch_ratio OUT_OF_RANGE",
		}},
		"unknown": {func(in *Input) {
			in.Shape, in.Centre, in.ShoulderMethod, in.RowChoice, in.DisplayUnit = 5, 3, 3, 3, 3
		}, []string{
			"shape UNKNOWN_VALUE", "centre UNKNOWN_VALUE", "shoulder_method UNKNOWN_VALUE", "row_choice UNKNOWN_VALUE",
			"display_unit UNKNOWN_VALUE",
		}},
		"a bad band": {func(in *Input) {
			in.BandGauge = &gauge.Gauge{Stitches: -1, Rows: 30}
		}, []string{
			"band_gauge.stitches OUT_OF_RANGE",
		}},
		"a band of few": {func(in *Input) {
			in.Centre, in.BandRule, in.Shape = CentreHeld, &gauge.CountRule{Multiple: new(900), Rounding: 3}, ShapeSquare
			in.BandRule = &gauge.CountRule{Multiple: new(50), Rounding: 3}
		}, []string{"band_rule INFEASIBLE"}},
	} {
		in := Input{Gauge: ordinary(), WidthStitches: new(88)}
		c.change(&in)
		_, err := PlanNeckline(in)
		if err == nil {
			t.Errorf("%s: planned", name)
			continue
		}
		t.Run(name, func(t *testing.T) { knittest.WantViolations(t, err, c.want...) })
	}
}

func FuzzPlanNeckline(f *testing.F) {
	f.Add(88, 30, 0, 20, 6, 8, 22.0, 30.0, int32(1), int32(1), int32(0), 0.0)
	f.Add(63, 25, 0, 0, 4, 6, 20.0, 28.0, int32(1), int32(2), int32(2), 1.0)
	f.Add(79, 17, 3, 60, 6, 0, 18.0, 24.0, int32(2), int32(1), int32(0), 0.5)
	f.Fuzz(func(t *testing.T, width, neck, centre, front, back, slope int, st, rw float64, shape, method, turn int32, tolerance float64) {
		in := Input{Gauge: &gauge.Gauge{Stitches: st, Rows: rw}, WidthStitches: &width, NeckStitches: &neck, FrontDepthRows: &front,
			BackDepthRows: &back, ShoulderSlopeRows: &slope, Shape: Shape(shape), ShoulderMethod: ShoulderMethod(method),
			TurnMethod: shortrow.TurnMethod(turn), ToleranceStitches: &tolerance, WithOutline: true}
		if centre > 0 {
			in.FrontCentreStitches = &centre
		}
		if neck > 120 || front > 200 || back > 200 {
			return // as good, and slow
		}
		out, err := PlanNeckline(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		knitPiece(t, "front", in, out, out.Front)
		knitPiece(t, "back", in, out, out.Back)
		if out.Summary() == "" || len(out.Directions()) == 0 || len(out.Sources()) == 0 {
			t.Fatal("no words")
		}
	})
}
