package swatch

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

func TestGaugeRefusals(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	good := readingsOver(10, 22, 23)
	for _, c := range []struct {
		name string
		in   Input
		want []string
	}{
		{"nothing", Input{}, []string{"stitches_before REQUIRED", "rows_before REQUIRED", "stitches_after REQUIRED",
			"rows_after REQUIRED"}},
		{"sizes of nothing", Input{StitchesAfter: good, HeightCm: knittest.Ptr(20.0)}, []string{"height_cm CONTRADICTORY"}},
		{"a width of rows", Input{RowsAfter: good, WidthCm: knittest.Ptr(20.0)}, []string{"width_cm CONTRADICTORY"}},
		{"empty reading", Input{StitchesBefore: []Reading{{}}}, []string{"stitches_before[0].count REQUIRED"}},
		{"not finite", Input{StitchesBefore: []Reading{{Count: 22}, {Count: nan, OverCm: &inf}}, OverCm: &nan,
			WidthCm: knittest.Ptr(-inf), HeightCm: &nan, NeedleMm: &inf, RowsAfter: good},
			[]string{"stitches_before[1].count NOT_FINITE", "stitches_before[1].over_cm NOT_FINITE", "over_cm NOT_FINITE",
				"width_cm NOT_FINITE", "height_cm NOT_FINITE", "needle_mm NOT_FINITE"}},
		{"zero and negative", Input{RowsBefore: []Reading{{Count: -1, OverCm: knittest.Ptr(0.0)}}, StitchesAfter: good,
			OverCm: knittest.Ptr(0.0), WidthCm: knittest.Ptr(0.0), NeedleMm: knittest.Ptr(-4.0)},
			[]string{"rows_before[0].count OUT_OF_RANGE", "rows_before[0].over_cm OUT_OF_RANGE", "over_cm OUT_OF_RANGE",
				"width_cm OUT_OF_RANGE", "needle_mm OUT_OF_RANGE"}},
		{"too large", Input{StitchesAfter: []Reading{{Count: 10_001, OverCm: knittest.Ptr(1001.0),
			Place: strings.Repeat("é", 101)}}, OverCm: knittest.Ptr(101.0), WidthCm: knittest.Ptr(1e9), NeedleMm: knittest.Ptr(51.0)},
			[]string{"stitches_after[0].count OUT_OF_RANGE", "stitches_after[0].over_cm OUT_OF_RANGE",
				"stitches_after[0].place TOO_MANY", "over_cm OUT_OF_RANGE", "width_cm OUT_OF_RANGE", "needle_mm OUT_OF_RANGE"}},
		{"too many", Input{RowsAfter: make([]Reading, 101)}, []string{"rows_after TOO_MANY"}},
		{"unknown unit", Input{RowsAfter: good, DisplayUnit: 3}, []string{"display_unit UNKNOWN_VALUE"}},
		// 10000 over 0.1 cm are 1e6 over 10.
		{"no gauge", Input{RowsAfter: readingsOver(0.1, 10_000)}, []string{"rows_after INFEASIBLE"}},
		{"no gauge over so little", Input{RowsAfter: readingsOver(1000, 1e-6), OverCm: knittest.Ptr(0.1)},
			[]string{"rows_after INFEASIBLE", "over_cm INFEASIBLE"}},
		// 1000 cm at 101 to 10 cm are 10100 stitches.
		{"too wide", Input{StitchesAfter: readingsOver(10, 101), WidthCm: knittest.Ptr(1000.0)},
			[]string{"width_cm INFEASIBLE", "stitches_after INFEASIBLE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := ComputeGauge(c.in)
			knittest.WantViolations(t, err, c.want...)
			knittest.CheckInputError(t, err)
		})
	}
}

// At the limits there is an answer, and a question full of faults is answered
// with the first hundred.
func TestGaugeLimits(t *testing.T) {
	rs := make([]Reading, MaxReadings)
	for i := range rs {
		rs[i] = Reading{Count: MaxReadingCount - float64(i), OverCm: knittest.Ptr(measure.MaxCm),
			Place: strings.Repeat("é", fault.MaxNameLength)}
	}
	out, err := ComputeGauge(Input{StitchesBefore: rs, RowsBefore: rs, StitchesAfter: rs, RowsAfter: rs,
		OverCm: knittest.Ptr(gauge.MaxOverCm), WidthCm: knittest.Ptr(measure.MaxCm), HeightCm: knittest.Ptr(measure.MaxCm)})
	if err != nil {
		t.Fatal(err)
	}
	knittest.CheckFinite(t, out)
	bad := make([]Reading, MaxReadings)
	_, err = ComputeGauge(Input{StitchesBefore: bad, RowsBefore: bad})
	if n := len(knittest.Reasons(err)); n != fault.MaxViolations {
		t.Errorf("%d faults listed, want %d", n, fault.MaxViolations)
	}
}

func FuzzComputeGauge(f *testing.F) {
	f.Add(22.0, 23.0, 22.5, 10.0, 5.0, 10.0, 50.0, 4.0, uint8(0xbf))
	f.Add(10_000.0, 1e-6, 1e-6, 0.1, 1000.0, 100.0, 1000.0, 0.5, uint8(0x3f))
	f.Add(math.NaN(), math.Inf(-1), -1.0, 0.0, 0.0, 0.0, 0.0, 0.0, uint8(0))
	f.Add(0.1, 1e4, 3.0, 0.1, 0.1, 0.1, 0.1, 50.0, uint8(0x1f))
	f.Fuzz(func(t *testing.T, a, b, c, overA, overB, over, size, needle float64, given uint8) {
		rs := []Reading{{Count: a, OverCm: &overA}, {Count: b, OverCm: &overB, Place: "hem"}, {Count: c}}
		in := Input{StitchesBefore: rs[:given&3], DisplayUnit: measure.DisplayUnit(given >> 6)}
		if given&4 != 0 {
			in.RowsBefore = rs
		}
		if given&8 != 0 {
			in.StitchesAfter, in.RowsAfter = rs[1:], rs[2:]
		}
		if given&16 != 0 {
			in.OverCm, in.NeedleMm = &over, &needle
		}
		if given&32 != 0 {
			in.WidthCm, in.HeightCm = &size, &size
		}
		out, err := ComputeGauge(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		for _, s := range []*SizeConsequence{out.Width, out.Height} {
			if s != nil && (s.Count < 1 || s.Count > stitch.MaxStitches) {
				t.Fatalf("count %d", s.Count)
			}
		}
		for _, s := range []*Statistics{out.StitchesBefore, out.RowsBefore, out.StitchesAfter, out.RowsAfter} {
			if s != nil && (s.Mean <= 0 || (s.StandardDeviation == nil) != (s.ReadingCount == 1)) {
				t.Fatalf("statistics %+v", s)
			}
		}
		_, _ = out.Summary(), out.Sources()
	})
}
