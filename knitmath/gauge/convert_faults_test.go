package gauge

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

func TestConvertRefusals(t *testing.T) {
	n := func(i int) *int { return &i }
	nan, inf := math.NaN(), math.Inf(1)
	g := &Gauge{Stitches: 20, Rows: 28}
	long := strings.Repeat("x", fault.MaxNameLength+1)
	stitches := func(count int, r *CountRule) []PatternCount {
		return []PatternCount{{Kind: CountKindStitches, Count: count, Rule: r}}
	}
	for _, c := range []struct {
		name string
		in   ConversionInput
		want []string
	}{
		{"nothing", ConversionInput{}, []string{"pattern_gauge REQUIRED", "own_gauge REQUIRED"}},
		{"empty", ConversionInput{PatternGauge: &Gauge{}, OwnGauge: g, Items: make([]PatternCount, 1), Sizes: make([]PrintedSize, 1)},
			[]string{"pattern_gauge.stitches REQUIRED", "pattern_gauge.rows REQUIRED", "items[0].kind REQUIRED",
				"items[0].count REQUIRED", "sizes[0].width_cm REQUIRED", "sizes CONTRADICTORY"}},
		{"not finite", ConversionInput{PatternGauge: &Gauge{nan, inf, &nan}, OwnGauge: g,
			Sizes: []PrintedSize{{WidthCm: nan, HeightCm: &inf}}, WantedWidthCm: &nan},
			[]string{"pattern_gauge.stitches NOT_FINITE", "pattern_gauge.rows NOT_FINITE", "pattern_gauge.over_cm NOT_FINITE",
				"sizes[0].width_cm NOT_FINITE", "sizes[0].height_cm NOT_FINITE", "wanted_width_cm NOT_FINITE"}},
		{"zero and negative", ConversionInput{PatternGauge: g, OwnGauge: &Gauge{-1, -1, knittest.Ptr(0.0)},
			Items: stitches(-5, &CountRule{Multiple: n(0)}),
			Sizes: []PrintedSize{{WidthCm: -1, HeightCm: knittest.Ptr(0.0)}}, WantedWidthCm: knittest.Ptr(0.0)},
			[]string{"own_gauge.stitches OUT_OF_RANGE", "own_gauge.rows OUT_OF_RANGE", "own_gauge.over_cm OUT_OF_RANGE",
				"items[0].count OUT_OF_RANGE", "items[0].rule.multiple OUT_OF_RANGE", "sizes[0].width_cm OUT_OF_RANGE",
				"sizes[0].height_cm OUT_OF_RANGE", "wanted_width_cm OUT_OF_RANGE"}},
		{"too large", ConversionInput{PatternGauge: g, OwnGauge: g, Items: []PatternCount{{Name: long, Kind: CountKindRows, Count: 10_001}},
			Sizes: []PrintedSize{{Name: long, WidthCm: 1001}}, WantedWidthCm: knittest.Ptr(1001.0)},
			[]string{"items[0].name TOO_MANY", "items[0].count OUT_OF_RANGE", "sizes[0].name TOO_MANY",
				"sizes[0].width_cm OUT_OF_RANGE", "wanted_width_cm OUT_OF_RANGE"}},
		{"too many", ConversionInput{PatternGauge: g, OwnGauge: g, Items: make([]PatternCount, 1001), Sizes: make([]PrintedSize, 101),
			WantedWidthCm: knittest.Ptr(90.0)}, []string{"items TOO_MANY", "sizes TOO_MANY"}},
		{"unknown enum", ConversionInput{PatternGauge: g, OwnGauge: g, DisplayUnit: 7,
			Items: []PatternCount{{Kind: 3, Count: 10, Rule: &CountRule{Rounding: -1}}}},
			[]string{"items[0].kind UNKNOWN_VALUE", "items[0].rule.rounding UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		{"sizes alone", ConversionInput{PatternGauge: g, OwnGauge: g, Sizes: []PrintedSize{{WidthCm: 90}}},
			[]string{"sizes CONTRADICTORY"}},
		{"wanted alone", ConversionInput{PatternGauge: g, OwnGauge: g, WantedWidthCm: knittest.Ptr(90.0)},
			[]string{"wanted_width_cm CONTRADICTORY"}},
		// 9000 at 20 are 9900 at 22, and 10350 at 23.
		{"too many stitches", ConversionInput{PatternGauge: g, OwnGauge: &Gauge{Stitches: 23, Rows: 28}, Items: stitches(9000, nil)},
			[]string{"own_gauge INFEASIBLE", "items[0].count INFEASIBLE"}},
		{"down below the smallest", ConversionInput{PatternGauge: g, OwnGauge: g,
			Items: stitches(10, &CountRule{Multiple: n(12), Rounding: measure.RoundingDown})},
			[]string{"own_gauge INFEASIBLE", "items[0].count INFEASIBLE", "items[0].rule INFEASIBLE"}},
		// The widest ratio of gauges there is.
		{"beyond all", ConversionInput{PatternGauge: &Gauge{1e-6, 1e-6, knittest.Ptr(100.0)},
			OwnGauge: &Gauge{1000, 1000, knittest.Ptr(0.1)}, Items: stitches(10_000, nil)},
			[]string{"own_gauge INFEASIBLE", "items[0].count INFEASIBLE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := ConvertGauge(c.in)
			knittest.WantViolations(t, err, c.want...)
			knittest.CheckInputError(t, err)
		})
	}
}

// What has no answer is named as what it counts, with what would help.
func TestConvertMisfits(t *testing.T) {
	g := &Gauge{Stitches: 20, Rows: 28}
	for _, c := range []struct {
		own  Gauge
		item PatternCount
		want string
	}{
		{Gauge{Stitches: 23, Rows: 28}, PatternCount{Kind: CountKindStitches, Count: 9000}, "is 10350 stitches; at most 10000 are counted"},
		{Gauge{Stitches: 20, Rows: 35}, PatternCount{Kind: CountKindRows, Count: 9000}, "is 11250 rows; at most 10000 are counted"},
		{*g, PatternCount{Kind: CountKindRows, Count: 5, Rule: &CountRule{Multiple: new(12), Rounding: measure.RoundingDown}},
			"is 5 rows; the smallest count the rule allows is 12, so rounding must be nearest or up"},
		{*g, PatternCount{Kind: CountKindStitches, Count: 5, Rule: &CountRule{Remainder: new(10_000), Edge: new(1)}},
			"is 5 stitches; the smallest count the rule allows is 10002, and at most 10000 are counted"},
		{*g, PatternCount{Kind: CountKindStitches, Count: 5, Rule: &CountRule{Remainder: new(10_000), Rounding: measure.RoundingDown}},
			"is 5 stitches; the smallest count the rule allows is 10000, so rounding must be nearest or up"},
	} {
		_, err := ConvertGauge(ConversionInput{PatternGauge: g, OwnGauge: &c.own, Items: []PatternCount{c.item}})
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("got %v, want %q", err, c.want)
		}
	}
}

// At the limits there is an answer.
func TestConvertLimits(t *testing.T) {
	g := &Gauge{Stitches: 20, Rows: 28}
	name := strings.Repeat("é", fault.MaxNameLength)
	in := ConversionInput{PatternGauge: g, OwnGauge: g, WantedWidthCm: knittest.Ptr(measure.MaxCm)}
	for range MaxItems {
		in.Items = append(in.Items, PatternCount{Name: name, Kind: CountKindRows, Count: stitch.MaxStitches})
	}
	for range MaxPrintedSizes {
		in.Sizes = append(in.Sizes, PrintedSize{Name: name, WidthCm: measure.MaxCm, HeightCm: knittest.Ptr(measure.MaxCm)})
	}
	out, err := ConvertGauge(in)
	if err != nil || len(out.Items) != MaxItems || len(out.Sizes) != MaxPrintedSizes || *out.FollowSizeNumber != 1 {
		t.Errorf("at the limit: %v", err)
	}
	knittest.CheckFinite(t, out)
}

func FuzzConvertGauge(f *testing.F) {
	f.Add(20.0, 28.0, 10.0, 22.0, 30.0, 10.0, 200, 4, 2, int32(1), int32(1), 90.0, 110.0, 95.0, uint8(0x7f))
	f.Add(1e-6, 1e-6, 100.0, 1000.0, 1000.0, 0.1, 10_000, 1000, 10_000, int32(2), int32(3), 1000.0, 0.1, 1000.0, uint8(0x3f))
	f.Add(1000.0, 1000.0, 0.1, 1e-6, 1e-6, 100.0, 1, 1, 0, int32(1), int32(2), 0.1, 1000.0, 0.1, uint8(0x3f))
	f.Add(math.NaN(), math.Inf(1), -1.0, 0.0, 0.0, 0.0, 0, 0, 0, int32(9), int32(9), 0.0, 0.0, 0.0, uint8(0x7f))
	f.Fuzz(func(t *testing.T, pst, prw, pover, ost, orw, oover float64, count, multiple, remainder int, kind, rounding int32,
		a, b, wanted float64, given uint8) {
		in := ConversionInput{PatternGauge: &Gauge{pst, prw, nil}, OwnGauge: &Gauge{ost, orw, nil},
			DisplayUnit: measure.DisplayUnit(given >> 6)}
		if given&1 != 0 {
			in.PatternGauge.OverCm = &pover
		}
		if given&2 != 0 {
			in.OwnGauge.OverCm = &oover
		}
		if given&4 != 0 {
			in.Items = []PatternCount{{Kind: CountKind(kind), Count: count}, {Kind: CountKind(kind), Count: count,
				Rule: &CountRule{Multiple: &multiple, Remainder: &remainder, Rounding: measure.Rounding(rounding)}}}
		}
		if given&8 != 0 {
			in.Sizes = []PrintedSize{{Name: "a", WidthCm: a, HeightCm: &b}, {WidthCm: b}}
		}
		if given&16 != 0 {
			in.WantedWidthCm = &wanted
		}
		out, err := ConvertGauge(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		for i, item := range out.Items {
			checkFitted(t, item.Fitted, in.Items[i].Rule)
		}
		if len(out.Items) != len(in.Items) || len(out.Sizes) != len(in.Sizes) || (out.FollowSizeNumber != nil) != (len(in.Sizes) > 0) {
			t.Fatalf("parts of %+v", out)
		}
		_, _ = out.Summary(), out.Sources()
	})
}
