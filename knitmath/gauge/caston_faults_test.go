package gauge

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

func TestCastOnRefusals(t *testing.T) {
	p := func(x float64) *float64 { return &x }
	n := func(i int) *int { return &i }
	g := &Gauge{Stitches: 22, Rows: 30}
	nan, inf := math.NaN(), math.Inf(1)
	for _, c := range []struct {
		name string
		in   CastOnInput
		want []string
	}{
		{"nothing", CastOnInput{}, []string{"gauge REQUIRED", "width_cm REQUIRED", "height_cm REQUIRED"}},
		{"empty gauge", CastOnInput{Gauge: &Gauge{}, WidthCm: p(50)},
			[]string{"gauge.stitches REQUIRED", "gauge.rows REQUIRED"}},
		{"not finite", CastOnInput{Gauge: &Gauge{nan, inf, p(-inf)}, WidthCm: p(nan), EaseCm: p(inf), HeightCm: p(-inf)},
			[]string{"gauge.stitches NOT_FINITE", "gauge.rows NOT_FINITE", "gauge.over_cm NOT_FINITE",
				"width_cm NOT_FINITE", "ease_cm NOT_FINITE", "height_cm NOT_FINITE"}},
		{"zero", CastOnInput{Gauge: &Gauge{22, 30, p(0)}, WidthCm: p(0), HeightCm: p(0)},
			[]string{"gauge.over_cm OUT_OF_RANGE", "width_cm OUT_OF_RANGE", "height_cm OUT_OF_RANGE"}},
		{"negative", CastOnInput{Gauge: &Gauge{-22, -30, nil}, WidthCm: p(-50), EasePercent: p(-91),
			StitchRule: &CountRule{n(-1), n(-1), n(-1), measure.RoundingUp}},
			[]string{"gauge.stitches OUT_OF_RANGE", "gauge.rows OUT_OF_RANGE", "width_cm OUT_OF_RANGE",
				"ease_percent OUT_OF_RANGE", "stitch_rule.multiple OUT_OF_RANGE", "stitch_rule.remainder OUT_OF_RANGE",
				"stitch_rule.edge OUT_OF_RANGE"}},
		{"too large", CastOnInput{Gauge: &Gauge{1000.5, 1001, p(101)}, WidthCm: p(1000.1), EaseCm: p(501), HeightCm: p(1e300),
			RowRule: &CountRule{n(1001), n(10_001), n(1001), measure.RoundingDown}},
			[]string{"gauge.stitches OUT_OF_RANGE", "gauge.rows OUT_OF_RANGE", "gauge.over_cm OUT_OF_RANGE",
				"width_cm OUT_OF_RANGE", "ease_cm OUT_OF_RANGE", "height_cm OUT_OF_RANGE", "row_rule.multiple OUT_OF_RANGE",
				"row_rule.remainder OUT_OF_RANGE", "row_rule.edge OUT_OF_RANGE"}},
		{"unknown enum", CastOnInput{Gauge: g, WidthCm: p(50), StitchRule: &CountRule{Rounding: 4}, DisplayUnit: -1},
			[]string{"stitch_rule.rounding UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		{"multiple 0", CastOnInput{Gauge: g, WidthCm: p(50), StitchRule: &CountRule{Multiple: n(0)}},
			[]string{"stitch_rule.multiple OUT_OF_RANGE"}},
		{"both eases", CastOnInput{Gauge: g, WidthCm: p(50), EaseCm: p(1), EasePercent: p(1)},
			[]string{"ease_cm CONTRADICTORY", "ease_percent CONTRADICTORY"}},
		{"without what they need", CastOnInput{Gauge: g, HeightCm: p(50), EaseCm: p(1), StitchRule: &CountRule{}},
			[]string{"ease_cm CONTRADICTORY", "stitch_rule CONTRADICTORY"}},
		{"row rule alone", CastOnInput{Gauge: g, WidthCm: p(50), RowRule: &CountRule{}}, []string{"row_rule CONTRADICTORY"}},
		{"all ease", CastOnInput{Gauge: g, WidthCm: p(50), EaseCm: p(-50)},
			[]string{"width_cm INFEASIBLE", "ease_cm INFEASIBLE"}},
		// 0.5 cm less 90 % is half a millimetre.
		{"all ease in percent", CastOnInput{Gauge: g, WidthCm: p(0.5), EasePercent: p(-90)},
			[]string{"width_cm INFEASIBLE", "ease_percent INFEASIBLE"}},
		// 50 cm are 110 stitches; the smallest legal is 2*60 = 120.
		{"down below the smallest", CastOnInput{Gauge: g, WidthCm: p(50),
			StitchRule: &CountRule{Multiple: n(10), Edge: n(60), Rounding: measure.RoundingDown}},
			[]string{"width_cm INFEASIBLE", "stitch_rule INFEASIBLE"}},
		// 1000 cm at 101 to 10 cm are 10100.
		{"too many rows", CastOnInput{Gauge: &Gauge{22, 101, nil}, HeightCm: p(1000)},
			[]string{"height_cm INFEASIBLE", "row_rule INFEASIBLE"}},
		{"rule beyond every count", CastOnInput{Gauge: g, WidthCm: p(50), StitchRule: &CountRule{Remainder: n(10_000), Edge: n(1)}},
			[]string{"width_cm INFEASIBLE", "stitch_rule INFEASIBLE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := ComputeCastOn(c.in)
			knittest.WantViolations(t, err, c.want...)
			knittest.CheckInputError(t, err)
		})
	}
}

// At the limit there is an answer, and just beyond it none.
func TestCastOnLimits(t *testing.T) {
	w := measure.MaxCm
	out, err := ComputeCastOn(CastOnInput{Gauge: &Gauge{Stitches: 100, Rows: 100}, WidthCm: &w, HeightCm: &w})
	if err != nil || out.Stitches.Count != stitch.MaxStitches || out.Rows.Count != stitch.MaxStitches || out.Stitches.Above != nil {
		t.Errorf("at the limit: %+v, %v", out, err)
	}
	// 10000.4 goes down to the limit, 10000.5 would go up beyond it.
	for _, c := range []struct {
		st float64
		ok bool
	}{{100.004, true}, {100.005, false}} {
		if _, err := ComputeCastOn(CastOnInput{Gauge: &Gauge{Stitches: c.st, Rows: 100}, WidthCm: &w}); (err == nil) != c.ok {
			t.Errorf("%v stitches to 10 cm: %v", c.st, err)
		}
	}
	// With its ease a width may be as small as a width may be, and no smaller.
	for _, c := range []struct {
		ease float64
		ok   bool
	}{{-9.9, true}, {-9.9001, false}} {
		ten := 10.0
		if _, err := ComputeCastOn(CastOnInput{Gauge: &Gauge{Stitches: 22, Rows: 30}, WidthCm: &ten, EaseCm: &c.ease}); (err == nil) != c.ok {
			t.Errorf("10 cm with %v cm of ease: %v", c.ease, err)
		}
	}
	// The extremes of every range at once: no overflow.
	over, percent, least := MaxOverCm, MaxEasePercent, measure.MinCm
	for _, g := range []*Gauge{{MaxCount, MaxCount, &over}, {MinCount, MinCount, &least},
		{MinCount, MinCount, &over}, {MaxCount, MaxCount, &least}} {
		out, err := ComputeCastOn(CastOnInput{Gauge: g, WidthCm: &w, EasePercent: &percent, HeightCm: &w})
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		knittest.CheckFinite(t, out)
	}
}

func FuzzComputeCastOn(f *testing.F) {
	f.Add(22.0, 30.0, 10.0, 50.0, 0.0, 40.0, 4, 2, 1, int32(1), uint8(0x7f))
	f.Add(1000.0, 1000.0, 0.1, 1000.0, 200.0, 1000.0, 1000, 10000, 1000, int32(3), uint8(0xbf))
	f.Add(math.NaN(), math.Inf(1), -1.0, 0.0, 0.0, 0.0, 0, 0, 0, int32(9), uint8(0x7f))
	f.Add(1e-6, 1e-6, 100.0, 0.1, -90.0, 0.1, 1, 0, 0, int32(2), uint8(0xbf))
	f.Fuzz(func(t *testing.T, st, rw, over, width, ease, height float64, multiple, remainder, border int, rounding int32, given uint8) {
		in := CastOnInput{Gauge: &Gauge{Stitches: st, Rows: rw}}
		if given&1 != 0 {
			in.Gauge.OverCm = &over
		}
		if given&2 != 0 {
			in.WidthCm = &width
		}
		switch {
		case given&4 != 0 && given&64 != 0:
			in.EaseCm = &ease
		case given&4 != 0:
			in.EasePercent = &ease
		}
		if given&8 != 0 {
			in.HeightCm = &height
		}
		r := &CountRule{Multiple: &multiple, Remainder: &remainder, Edge: &border, Rounding: measure.Rounding(rounding)}
		if given&16 != 0 {
			in.StitchRule = r
		}
		if given&32 != 0 {
			in.RowRule = r
		}
		in.DisplayUnit = measure.DisplayUnit(given >> 6)
		out, err := ComputeCastOn(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		if out.Stitches != nil {
			checkFitted(t, *out.Stitches, in.StitchRule)
		}
		if out.Rows != nil {
			checkFitted(t, *out.Rows, in.RowRule)
		}
		_, _ = out.Summary(), out.Sources()
	})
}

// checkFitted checks a count against its rule and its own figures.
func checkFitted(t *testing.T, f FittedCount, r *CountRule) {
	t.Helper()
	multiple, offset, rounding := 1, 0, measure.RoundingNearest
	if r != nil {
		multiple, offset = fault.Or(r.Multiple, 1), fault.Or(r.Remainder, 0)+2*fault.Or(r.Edge, 0)
		rounding = r.Rounding
	}
	if f.Count < 1 || f.Count > stitch.MaxStitches || f.Count < offset || (f.Count-offset)%multiple != 0 {
		t.Fatalf("%d is not %d*n + %d", f.Count, multiple, offset)
	}
	slack := 1e-9 * (1 + f.Exact)
	over := float64(f.Count) - f.Exact
	switch {
	case rounding == measure.RoundingDown && over > slack,
		rounding == measure.RoundingUp && over < -slack,
		rounding <= measure.RoundingNearest && over < -float64(multiple)/2-slack:
		t.Fatalf("%v was rounded %v to %d", f.Exact, rounding, f.Count)
	}
	if f.Below != nil && f.Count-f.Below.Count != multiple || f.Above != nil && f.Above.Count-f.Count != multiple {
		t.Fatalf("neighbours %+v and %+v of %d", f.Below, f.Above, f.Count)
	}
	knittest.Near(t, "difference", f.DifferenceCm, f.SizeCm-f.AskedCm, 1e-12)
}
