package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

func TestCrownRefusals(t *testing.T) {
	base := func(change func(*CrownInput)) CrownInput {
		in := CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HatStitches: new(96)}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*CrownInput)
		want   []string
	}{
		"empty": {func(in *CrownInput) { *in = CrownInput{} }, []string{"gauge REQUIRED"}},
		"two sizes": {func(in *CrownInput) { in.HeadCm, in.EasePercent = new(56.0), new(-50.0) }, []string{"hat_stitches CONTRADICTORY",
			"head_cm CONTRADICTORY", "ease_percent OUT_OF_RANGE", "ease_percent CONTRADICTORY"}},
		"ranges": {func(in *CrownInput) {
			in.HatStitches, in.WedgeCount, in.CrownRounds, in.TotalCm = new(15), new(3), new(0), new(math.Inf(1))
			in.SuccessiveRounds, in.EndStitches, in.ToleranceRounds = new(11), new(0), new(11.0)
		}, []string{"hat_stitches OUT_OF_RANGE", "wedge_count OUT_OF_RANGE", "crown_rounds OUT_OF_RANGE", "total_cm NOT_FINITE",
			"successive_rounds OUT_OF_RANGE", "end_stitches OUT_OF_RANGE", "tolerance_rounds OUT_OF_RANGE"}},
		"enums": {func(in *CrownInput) {
			in.HatStitches, in.HeadSize, in.Stacks, in.Uneven, in.Shape, in.DisplayUnit = nil, 99, 99, 99, 99, 99
		}, []string{"head_size UNKNOWN_VALUE", "stacks UNKNOWN_VALUE", "uneven UNKNOWN_VALUE", "shape UNKNOWN_VALUE",
			"display_unit UNKNOWN_VALUE"}},
		"rates and a shape": {func(in *CrownInput) {
			in.Rates, in.CrownCm, in.ToleranceRounds = []Rate{{0, 1}, {2, 1000}}, new(8.0), new(1.0)
		}, []string{"rates[0].every_rounds REQUIRED", "rates[1].times OUT_OF_RANGE", "crown_cm CONTRADICTORY", "tolerance_rounds CONTRADICTORY"}},
		"too many rates": {func(in *CrownInput) { in.Rates = make([]Rate, 21) }, []string{"rates TOO_MANY"}},
		"two depths": {func(in *CrownInput) {
			in.CrownCm, in.CrownRounds, in.TotalCm, in.TotalRounds = new(8.0), new(9), new(8.0), new(9)
		},
			[]string{"crown_rounds CONTRADICTORY", "crown_cm CONTRADICTORY", "total_rounds CONTRADICTORY", "total_cm CONTRADICTORY"}},
		"a rule for nothing": {func(in *CrownInput) { in.StitchRule, in.EasePercent = &gauge.CountRule{}, new(1.0) },
			[]string{"ease_percent CONTRADICTORY", "stitch_rule CONTRADICTORY"}},
		"paired of two sizes": {func(in *CrownInput) { in.Stacks, in.Uneven = StacksPaired, UnevenTwoSizes }, []string{"uneven CONTRADICTORY"}},
		"too low a hat":       {func(in *CrownInput) { in.TotalRounds = new(10) }, []string{"total_rounds INFEASIBLE"}},
		"nothing to decrease": {func(in *CrownInput) { in.HatStitches, in.WedgeCount, in.EndStitches = new(16), new(10), new(20) },
			[]string{"hat_stitches INFEASIBLE", "wedge_count INFEASIBLE", "end_stitches INFEASIBLE"}},
		"too wide": {func(in *CrownInput) { in.HatStitches, in.HatCm = nil, new(150.0); in.Gauge.Stitches = 200 },
			[]string{"hat_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"too few stitches": {func(in *CrownInput) { in.HatStitches, in.HatCm = nil, new(5.0); in.Gauge.Stitches = 10 },
			[]string{"hat_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"no rounds": {func(in *CrownInput) { in.CrownCm = new(0.1) }, []string{"crown_cm INFEASIBLE", "gauge INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCrown(base(c.change))
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func FuzzPlanCrown(f *testing.F) {
	f.Add(22.0, 30.0, 96, 8, 1, 0, 0, 20, 60, 2, 1.5)
	f.Fuzz(func(t *testing.T, st, rw float64, stitches, wedges, shape, stacks, uneven, crown, total, successive int, tolerance float64) {
		in := CrownInput{Gauge: &gauge.Gauge{Stitches: st, Rows: rw}, HatStitches: &stitches, Shape: CrownShape(shape), Stacks: Stacks(stacks),
			Uneven: Uneven(uneven)}
		if wedges != 0 {
			in.WedgeCount = &wedges
		}
		if crown != 0 {
			in.CrownRounds, in.SuccessiveRounds, in.ToleranceRounds = &crown, &successive, &tolerance
		}
		if total != 0 {
			in.TotalRounds = &total
		}
		out, err := PlanCrown(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		if in.Cost() < 1 || fault.Or(in.WedgeCount, out.WedgeCount) != out.WedgeCount {
			t.Fatalf("%+v", out)
		}
		checkCrown(t, in, out)
		if rw <= 200 { // of finer rows one is 0 cm to a tenth
			checkCrownWords(t, out)
		}
	})
}
