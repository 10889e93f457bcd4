package handspun

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

func TestHandspunRefusals(t *testing.T) {
	nan := math.NaN()
	ply := []Ply{{Count: inTex(100), Times: new(2)}}
	for _, c := range []struct {
		name string
		in   Input
		want []string
	}{
		{"nothing", Input{}, []string{"plies REQUIRED"}},
		{"ply of nothing", Input{Plies: []Ply{{}}}, []string{"plies[0].count REQUIRED"}},
		{"too many plies", Input{Plies: make([]Ply, 9)}, []string{"plies TOO_MANY"}},
		{"too many together", Input{Plies: []Ply{ply[0], {Count: inTex(100), Times: new(7)}}}, []string{"plies TOO_MANY"}},
		{"plied already", Input{Plies: []Ply{{Count: &yarn.Count{Notation: "28/2 Nm"}}}}, []string{"plies[0].count INFEASIBLE"}},
		{"a rope", Input{Plies: []Ply{{Count: inTex(10_001)}}}, []string{"plies[0].count INFEASIBLE"}},
		{"out of range", Input{Plies: []Ply{{Name: strings.Repeat("x", 101), Count: inTex(100), Times: new(0), TwistPerCm: new(51.0),
			Direction: 3}},
			Spinning: 5, TwistAngleDegrees: new(4.0), PlyTwistPerCm: new(0.0), PlyContractionPercent: new(41.0), WantedM: new(0.5),
			BobbinG: new(0.0), Losses: &Losses{81, new(61.0), new(41.0)}, DisplayUnit: 3,
			Wheel: &Wheel{Ratio: new(0.5), DraftCm: new(0.5), SlipPercent: new(51.0), TreadlesPerMinute: new(9.0)}},
			[]string{"plies[0].name TOO_MANY", "plies[0].times OUT_OF_RANGE", "plies[0].twist_per_cm OUT_OF_RANGE",
				"plies[0].direction UNKNOWN_VALUE",
				"spinning UNKNOWN_VALUE", "twist_angle_degrees OUT_OF_RANGE", "ply_twist_per_cm OUT_OF_RANGE",
				"ply_contraction_percent OUT_OF_RANGE", "wanted_m OUT_OF_RANGE", "losses.scouring_percent OUT_OF_RANGE",
				"losses.preparing_percent OUT_OF_RANGE", "losses.spinning_percent OUT_OF_RANGE", "bobbin_g OUT_OF_RANGE", "wheel.ratio OUT_OF_RANGE",
				"wheel.draft_cm OUT_OF_RANGE", "wheel.slip_percent OUT_OF_RANGE", "wheel.treadles_per_minute OUT_OF_RANGE",
				"display_unit UNKNOWN_VALUE"}},
		{"not finite", Input{Plies: ply, TwistAngleDegrees: &nan, WantedG: &nan, Wheel: &Wheel{DriveWheelCm: &nan, WhorlCm: &nan}},
			[]string{"twist_angle_degrees NOT_FINITE", "wanted_g NOT_FINITE", "wheel.drive_wheel_cm NOT_FINITE", "wheel.whorl_cm NOT_FINITE"}},
		{"plied harder than there is room", Input{Plies: ply, PlyTwistPerCm: new(20.0)}, []string{"ply_twist_per_cm INFEASIBLE"}},
		{"spun harder than plies have room", Input{Plies: []Ply{{Count: inTex(100), Times: new(8), TwistPerCm: new(9.0)}}},
			[]string{"plies INFEASIBLE"}},
		{"turns that cancel", Input{Plies: []Ply{{Count: inTex(100), TwistPerCm: new(2.0)},
			{Count: inTex(100), TwistPerCm: new(2.1), Direction: yarn.TwistDirectionS}}, WithOutline: true}, []string{"plies INFEASIBLE"}},
		{"plying one", Input{Plies: []Ply{{Count: inTex(100)}}, PlyTwistPerCm: new(2.0), PlyContractionPercent: new(5.0)},
			[]string{"ply_twist_per_cm CONTRADICTORY"}},
		{"both amounts", Input{Plies: ply, WantedM: new(5.0), WantedG: new(5.0)}, []string{"wanted_m CONTRADICTORY", "wanted_g CONTRADICTORY"}},
		{"empty wheel", Input{Plies: ply, Wheel: &Wheel{}}, []string{"wheel.ratio REQUIRED", "wheel.drive_wheel_cm REQUIRED"}},
		{"half a wheel", Input{Plies: ply, Wheel: &Wheel{DriveWheelCm: new(50.0)}}, []string{"wheel.drive_wheel_cm CONTRADICTORY"}},
		{"whorl too large", Input{Plies: ply, Wheel: &Wheel{DriveWheelCm: new(20.0), WhorlCm: new(20.0)}},
			[]string{"wheel.drive_wheel_cm INFEASIBLE", "wheel.whorl_cm INFEASIBLE"}},
		{"tighter than any", Input{Plies: []Ply{{Count: inTex(500), TwistPerCm: new(30.0)}}}, []string{"plies[0].twist_per_cm INFEASIBLE"}},
		{"treadled tighter than any", Input{Plies: []Ply{{Count: inTex(500), TreadlesPerDraft: new(100.0)}}, Wheel: &Wheel{Ratio: new(10.0)}},
			[]string{"plies[0].treadles_per_draft INFEASIBLE"}},
		{"plied tighter than any", Input{Plies: ply, PlyTwistPerCm: new(30.0), PlyContractionPercent: new(5.0)},
			[]string{"ply_twist_per_cm INFEASIBLE"}},
		{"gauge twice", Input{Plies: ply, Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, StitchGauge: &yardage.StitchGauge{OverCm: new(0.0)}},
			[]string{"gauge CONTRADICTORY", "stitch_gauge CONTRADICTORY", "stitch_gauge.stitches REQUIRED", "stitch_gauge.over_cm OUT_OF_RANGE"}},
		{"gauge empty", Input{Plies: ply, Gauge: &gauge.Gauge{}}, []string{"gauge.stitches REQUIRED", "gauge.rows REQUIRED"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := PlanHandspun(c.in)
			knittest.WantViolations(t, err, c.want...)
			knittest.CheckInputError(t, err)
		})
	}
}

func FuzzPlanHandspun(f *testing.F) {
	f.Add(180.0, 190.0, 3.0, 20.0, 2.0, 5.0, 22.0, 1000.0, 9.5, 30.0, 2, 1, int32(1), uint8(0xff))
	f.Add(10_000.0, 1.0, 50.0, 50.0, 0.05, 40.0, 1000.0, 1e6, 200.0, 300.0, 4, 4, int32(2), uint8(0x7f))
	f.Fuzz(func(t *testing.T, a, b, twist, angle, ply, contraction, st, wanted, ratio, draft float64, n, m int, enums int32, given uint8) {
		in := Input{Plies: []Ply{{Name: "a", Count: inTex(a), Times: &n, Direction: yarn.TwistDirection(enums)}},
			Spinning: yarn.Spinning(enums >> 1), DisplayUnit: measure.DisplayUnit(enums >> 2), TwistAngleDegrees: &angle, WithOutline: given&1 != 0}
		if given&2 != 0 {
			in.Plies = append(in.Plies, Ply{Count: inTex(b), Times: &m, TwistPerCm: &twist})
		}
		if given&4 != 0 {
			in.PlyTwistPerCm = &ply
		}
		if given&8 != 0 {
			in.PlyContractionPercent = &contraction
		}
		if given&16 != 0 {
			in.Gauge = &gauge.Gauge{Stitches: st, Rows: st}
		}
		if given&32 != 0 {
			in.WantedM = &wanted
		} else {
			in.WantedG = &wanted
		}
		if given&64 != 0 {
			in.Wheel = &Wheel{Ratio: &ratio, DraftCm: &draft, SlipPercent: &contraction}
		}
		if given&128 != 0 {
			in.Losses = &Losses{ScouringPercent: contraction, SpinningPercent: &contraction}
		}
		out, err := PlanHandspun(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		sum := 0.0
		for _, p := range out.Plies {
			sum += p.Tex * float64(p.Times)
			if p.Twist.AngleDegrees <= 0 || p.Twist.AngleDegrees >= 90 {
				t.Fatalf("%+v", p.Twist)
			}
		}
		if sum > out.Tex*(1+1e-9) || out.GaugeStitches.Low > out.GaugeStitches.High || (out.Fits == FitUnspecified) != (in.Gauge == nil) {
			t.Fatalf("%+v", out)
		}
		if r := out.FibreG; r.Low > r.Likely || r.Likely > r.High || r.Low < *out.YarnG*(1-1e-9) {
			t.Fatalf("%+v", *r)
		}
		_, _, _ = out.Summary(), out.Directions(), out.Sources()
	})
}
