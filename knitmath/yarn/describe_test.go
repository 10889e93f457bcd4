package yarn

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

func described(t *testing.T, in DescribeInput) Description {
	t.Helper()
	out, err := DescribeYarn(in)
	if err != nil {
		t.Fatal(err)
	}
	knittest.CheckFinite(t, out)
	return out
}

// One, two and no category, by each measure and by several: what is chosen, and what is
// said to disagree. Ranges from the charts in testdata/yarn/yarn_weights.csv.
func TestCategoriesOfYarns(t *testing.T) {
	band := func(m float64) *Count { return &Count{Number: &m, System: CountSystemMetresPer100G} }
	for _, c := range []struct {
		name string
		in   DescribeInput
		want []int
		says []report.Reason
	}{
		{"a gauge", DescribeInput{Stitches: new(22.0)}, []int{3}, nil},
		{"two by gauge", DescribeInput{Stitches: new(23.5)}, []int{2, 3}, []report.Reason{SeveralCategories}},
		{"a gap of the gauge", DescribeInput{Stitches: new(20.5), OverCm: new(10.16)}, nil, []report.Reason{NoCategory}},
		{"nominal", DescribeInput{Stitches: new(20.0)}, []int{4}, []report.Reason{NominalGauge}},
		// 230 m/100 g are 1,141 yd/lb.
		{"a band", DescribeInput{Count: band(230)}, []int{3}, nil},
		{"gauge narrowed by length", DescribeInput{Stitches: new(23.5), Count: band(230)}, []int{3}, nil},
		// 400 m/100 g are 1,984 yd/lb: Super Fine, not Light.
		{"gauge against length", DescribeInput{Stitches: new(22.0), Count: band(400)}, []int{3}, []report.Reason{Disagrees}},
		// 800 m/100 g are lace at any gauge; at that of lace nothing disagrees.
		{"lace worked loosely", DescribeInput{Stitches: new(24.0), Count: band(800)}, []int{0}, []report.Reason{Disagrees}},
		{"lace in a gap of the gauge", DescribeInput{Stitches: new(20.5), OverCm: new(10.16), Count: band(800)}, []int{0},
			[]report.Reason{NoCategory}},
		{"lace at its gauge", DescribeInput{Stitches: new(34.0), Count: band(800)}, []int{0}, nil},
		// 12 wraps: Light by the spinners' chart; Fine, Light or Medium by the standard one.
		{"wraps", DescribeInput{WrapsPerInch: new(12.0)}, []int{3}, nil},
		{"a gap of the wraps", DescribeInput{WrapsPerInch: new(15.5)}, []int{1, 2}, []report.Reason{NoCategory, SeveralCategories, ChartsDiffer}},
		// 25 wraps: Lace by one chart, Super Fine by the other.
		{"charts that differ", DescribeInput{WrapsPerInch: new(25.0)}, []int{0}, []report.Reason{Disagrees, ChartsDiffer}},
		// 200 m/100 g are 992 yd/lb: 11 to 12 wraps, not 30.
		{"diameters taken for wraps", DescribeInput{Count: band(200), WrapsPerInch: new(30.0)}, []int{3, 4},
			[]report.Reason{Disagrees, Disagrees, UsualGaugeDiffers, WrapsUnexpected}},
		// The chart of lengths begins its classes finer than hands knit: 1,000 yd/lb are knit at
		// 42 * 9.5 to 11.3 / sqrt(496) = 17.9 to 21.3 stitches, 601 yd/lb at 14 to 17.
		{"a length between two classes", DescribeInput{Count: &Count{Notation: "1000 yd/lb"}}, []int{3, 4},
			[]report.Reason{UsualGaugeDiffers}},
		{"another", DescribeInput{Count: &Count{Notation: "601 yd/lb"}}, []int{4, 5}, []report.Reason{UsualGaugeDiffers}},
		{"one that a gauge decides", DescribeInput{Count: &Count{Notation: "1000 yd/lb"}, Stitches: new(19.0)}, []int{4}, nil},
		{"one that wraps decide", DescribeInput{Count: &Count{Notation: "1000 yd/lb"}, WrapsPerInch: new(12.5)}, []int{3}, nil},
		{"beyond the finest gauge", DescribeInput{Stitches: new(45.0)}, nil, []report.Reason{BeyondChart}},
		{"a thick one of the spinners' chart", DescribeInput{Count: &Count{Notation: "200 yd/lb"}}, []int{6, 7},
			[]report.Reason{SeveralCategories}},
		{"a rope", DescribeInput{Count: &Count{Notation: "1000000 tex"}}, nil, []report.Reason{BeyondChart}},
		{"a fibre", DescribeInput{Count: &Count{Notation: "5 tex"}}, nil, []report.Reason{BeyondChart}},
		{"wraps of a rope", DescribeInput{WrapsPerInch: new(0.7)}, nil, []report.Reason{BeyondChart}},
		{"wraps of a fibre", DescribeInput{WrapsPerInch: new(250.0)}, nil, []report.Reason{BeyondChart}},
		{"needle", DescribeInput{Stitches: new(22.0), NeedleMm: new(6.0)}, []int{3}, []report.Reason{NeedleUnusual}},
		{"usual needle", DescribeInput{Stitches: new(22.0), NeedleMm: new(4.0)}, []int{3}, nil},
		{"plied count", DescribeInput{Count: &Count{Notation: "2/8 Nm"}}, []int{1}, []report.Reason{OtherReading, NoContraction}},
	} {
		out := described(t, c.in)
		var got []int
		for _, k := range out.Categories {
			got = append(got, k.Category)
		}
		var says []report.Reason
		for _, n := range out.Notices {
			says = append(says, n.Reason)
		}
		if !slices.Equal(got, c.want) || !slices.Equal(says, c.says) {
			t.Errorf("%s: %v %v, want %v %v", c.name, got, says, c.want, c.says)
		}
		if out.Summary() == "" || len(out.Sources()) == 0 {
			t.Errorf("%s: no words", c.name)
		}
	}
}

// A published example: 3,360 yards to the pound with k 0.9 are 52 diameters to the inch
// (52.17), from the weaving reference page. Wraps of the same yarn are another number.
func TestDiametersAreNotWraps(t *testing.T) {
	out := described(t, DescribeInput{Count: &Count{Number: new(3_360.0), System: CountSystemYardsPerPound}})
	knittest.Near(t, "diameters per inch", *out.DiametersPerInch, 52.17, 1e-4)
	knittest.Near(t, "diameter", *out.DiameterMm**out.DiametersPerInch, 25.4, 1e-12)
	knittest.Near(t, "wraps", *out.LowWrapsPerInch / *out.DiametersPerInch, 0.35/0.9, 1e-12)
	knittest.Near(t, "wraps", *out.HighWrapsPerInch / *out.DiametersPerInch, 0.39/0.9, 1e-12)
}

// Diameters to the cm are 0.2329, 0.2496 and 0.2634 x sqrt(m/kg) for k 0.84, 0.90, 0.95.
func TestDiametersInMetres(t *testing.T) {
	for spinning, want := range map[Spinning]float64{SpinningWoollen: 0.2329, SpinningWorsted: 0.2496, SpinningCotton: 0.2634} {
		out := described(t, DescribeInput{Count: &Count{Number: new(10.0), System: CountSystemMetric}, Spinning: spinning})
		knittest.Near(t, "per cm", *out.DiametersPerInch/2.54, want*math.Sqrt(10_000), 2e-4)
	}
}

// An examination question has a twist factor of 38.28 (turns to the cm, sqrt tex) in a yarn
// of 29.5 tex, and asks for the twist multiplier with Ne 30: 3.27.
//
// Source: GATE Textile Engineering 2006, question 31.
func TestTwist(t *testing.T) {
	perCm := 38.28 / math.Sqrt(29.5)
	out := described(t, DescribeInput{Count: &Count{Number: new(29.5), System: CountSystemTex}, TwistPerCm: &perCm})
	knittest.Near(t, "TF", out.Twist.Factor, 38.28, 1e-9)
	knittest.Near(t, "TM", out.Twist.PerInch/math.Sqrt(30), 3.27, 0.005)
	// By hand: a yarn of 2.54 cm / D with 1/(pi d) turns to the cm stands at 45 degrees.
	d := *out.DiameterMm / 10
	steep := 1 / (math.Pi * d)
	out = described(t, DescribeInput{Count: &Count{Number: new(29.5), System: CountSystemTex}, TwistPerCm: &steep})
	knittest.Near(t, "angle", out.Twist.AngleDegrees, 45, 1e-9)
}

// A ball of so many metres and grams is what its metres to 100 g are: the same words, and the
// same notices at put_up where those of a count stand at count.
func TestPutUpAsCount(t *testing.T) {
	differ := 0
	for metres := 20; metres <= 900; metres += 7 {
		for _, grams := range []float64{25, 50, 100} {
			ball := DescribeInput{PutUp: &PutUp{BallM: float64(metres), BallG: grams}, Stitches: new(22.0), TwistPerCm: new(2.0)}
			count := ball
			count.PutUp, count.Count = nil, &Count{Number: new(float64(metres) * 100 / grams), System: CountSystemMetresPer100G}
			got, want := described(t, ball), described(t, count)
			for i, n := range want.Notices {
				want.Notices[i].Field = strings.ReplaceAll(n.Field, "count", "put_up")
				if n.Field == "count" {
					differ++
				}
			}
			if got.Summary() != want.Summary() || !slices.Equal(got.Notices, want.Notices) || !slices.Equal(got.Sources(), want.Sources()) ||
				*got.DiameterMm != *want.DiameterMm || got.Twist.AngleDegrees != want.Twist.AngleDegrees {
				t.Fatalf("%d m, %v g: %q %+v, as a count %q %+v", metres, grams, got.Summary(), got.Notices, want.Summary(), want.Notices)
			}
		}
	}
	if differ == 0 {
		t.Error("no notice stood at the length")
	}
	_, err := DescribeYarn(DescribeInput{PutUp: &PutUp{BallM: 0, BallG: 50}, Count: &Count{Notation: "2 Nm"}})
	knittest.WantViolations(t, err, "put_up CONTRADICTORY", "count CONTRADICTORY", "put_up.ball_m REQUIRED")
}

func TestDescribeFaults(t *testing.T) {
	_, err := DescribeYarn(DescribeInput{})
	knittest.WantViolations(t, err, "count REQUIRED", "put_up REQUIRED", "wraps_per_inch REQUIRED", "stitches REQUIRED")
	_, err = DescribeYarn(DescribeInput{WrapsPerInch: new(math.NaN()), Stitches: new(0.0), OverCm: new(101.0), NeedleMm: new(-1.0),
		Spinning: 5, TwistPerCm: new(0.0), DisplayUnit: 3})
	knittest.WantViolations(t, err, "wraps_per_inch NOT_FINITE", "stitches OUT_OF_RANGE", "over_cm OUT_OF_RANGE", "needle_mm OUT_OF_RANGE",
		"spinning UNKNOWN_VALUE", "twist_per_cm OUT_OF_RANGE", "twist_per_cm CONTRADICTORY", "display_unit UNKNOWN_VALUE")
}

func TestDescriptionWords(t *testing.T) {
	for want, in := range map[string]DescribeInput{
		"Light (3): usually 21 to 24 stitches to 10 cm on 3.75 to 4.5 mm. It is 434.8 tex, 230 m/100 g. " +
			"Ordinary yarns of its length are knit at 19 to 23 stitches to 10 cm.": {
			Count: &Count{Notation: "230 m/100 g"}},
		"Fine (2) or Light (3): usually 23 to 26 stitches to 10 cm on 3.25 to 3.75 mm, or 21 to 24 stitches on 3.75 to 4.5 mm.": {
			Stitches: new(23.5)},
		"Light (3): usually 21 to 24 stitches to 4 in on 3.75 to 4.5 mm. It is 434.8 tex, 1141 yd/lb. " +
			"Ordinary yarns of its length are knit at 19 to 23 stitches to 4 in.": {
			Count: &Count{Notation: "230 m/100 g"}, DisplayUnit: measure.DisplayUnitIn},
		"No weight category: it is finer than the chart goes.":                    {Stitches: new(45.0)},
		"No weight category: it lies in the gaps of the chart.":                   {Stitches: new(20.5), OverCm: new(10.16)},
		"Jumbo (7): usually at most 6 stitches to 10 cm on 12.75 mm and thicker.": {Stitches: new(5.0)},
	} {
		if got := described(t, in).Summary(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if d := described(t, DescribeInput{WrapsPerInch: new(12.0)}).Directions(); len(d) != 1 || !strings.Contains(d[0], "ruler") {
		t.Errorf("%q", d)
	}
}

func FuzzDescribeYarn(f *testing.F) {
	f.Add(230.0, 12.0, 22.0, 10.0, 4.0, 3.0, int32(1), uint8(63))
	f.Fuzz(func(t *testing.T, number, wraps, stitches, over, needle, twist float64, spinning int32, given uint8) {
		in := DescribeInput{Spinning: Spinning(spinning)}
		if given&1 != 0 {
			in.Count = &Count{Number: &number, System: CountSystemMetresPer100G}
		}
		for i, p := range []struct {
			to **float64
			x  *float64
		}{{&in.WrapsPerInch, &wraps}, {&in.Stitches, &stitches}, {&in.OverCm, &over}, {&in.NeedleMm, &needle}, {&in.TwistPerCm, &twist}} {
			if given&(2<<i) != 0 {
				*p.to = p.x
			}
		}
		out, err := DescribeYarn(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		if out.Summary() == "" || len(out.Sources()) == 0 {
			t.Fatal("no words")
		}
	})
}

func BenchmarkDescribeYarn(b *testing.B) {
	in := DescribeInput{Count: &Count{Notation: "230 m/100 g"}, Stitches: new(22.0), WrapsPerInch: new(12.0)}
	for b.Loop() {
		out, err := DescribeYarn(in)
		if err != nil || out.Summary() == "" || len(out.Sources()) == 0 {
			b.Fatal(err)
		}
	}
}

// Where the spinners' chart of lengths and the usual gauge of a length differ the answer has
// both, at every length that has a usual gauge; and the gauge that is said is in one of them.
func TestLengthsHaveTheCategoryOfTheirGauge(t *testing.T) {
	differ := 0
	for m := 81.0; m < 500; m++ {
		out := described(t, DescribeInput{Count: &Count{Number: &m, System: CountSystemMetresPer100G}})
		// 42 * 10.5 / sqrt(1e5 / m) stitches, in whole ones.
		likely := int(42*10.5/math.Sqrt(1e5/m) + 0.5)
		fits := slices.ContainsFunc(out.Categories, func(c Category) bool {
			return (c.LowStitches == nil || likely >= *c.LowStitches) && likely <= c.HighStitches
		})
		if !fits || len(out.Categories) > 2 {
			t.Errorf("%v m to 100 g, likely %d stitches: %s", m, likely, out.Summary())
		}
		if len(out.Notices) > 0 {
			differ++
		}
	}
	if differ == 0 || differ > 200 {
		t.Errorf("%d of 419 lengths have two categories", differ)
	}
}
