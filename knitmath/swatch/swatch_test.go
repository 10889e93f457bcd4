package swatch

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// readingsOver are counts over one length.
func readingsOver(cm float64, counts ...float64) []Reading {
	rs := make([]Reading, len(counts))
	for i, c := range counts {
		rs[i] = Reading{Count: c, OverCm: &cm}
	}
	return rs
}

// By hand. Stitches before: 22, 23, 22.5, 21.5, 22, mean 111/5 = 22.2; squares
// .04 + .64 + .09 + .49 + .04 = 1.3, s = sqrt(1.3/4) = 0.570088; half-width
// 2.776445 * s / sqrt(5) = 0.7078574. After: 23, 23.5, 24, mean 23.5, s = 0.5,
// half-width 4.302653 * 0.5 / sqrt(3) = 1.242069. Rows before 30, 31, mean 30.5,
// s = 0.707107, half-width 12.706205 * 0.5 = 6.353102. Rows after 30 alone.
func TestGaugeByHand(t *testing.T) {
	width, height, needle := 50.0, 20.0, 4.0
	out, err := ComputeGauge(Input{
		StitchesBefore: readingsOver(10, 22, 23, 22.5, 21.5, 22),
		RowsBefore:     readingsOver(10, 30, 31),
		StitchesAfter:  readingsOver(10, 23, 23.5, 24),
		RowsAfter:      readingsOver(10, 30),
		WidthCm:        &width, HeightCm: &height, NeedleMm: &needle,
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name           string
		got            *Statistics
		n              int
		mean, sd, half float64
	}{
		{"stitches before", out.StitchesBefore, 5, 22.2, math.Sqrt(0.325), 0.7078574},
		{"rows before", out.RowsBefore, 2, 30.5, math.Sqrt(0.5), 6.3531024},
		{"stitches after", out.StitchesAfter, 3, 23.5, 0.5, 1.2420689},
	} {
		if c.got.ReadingCount != c.n {
			t.Errorf("%s: %d readings", c.name, c.got.ReadingCount)
		}
		knittest.Near(t, c.name+" mean", c.got.Mean, c.mean, 1e-14)
		knittest.Near(t, c.name+" deviation", *c.got.StandardDeviation, c.sd, 1e-13)
		knittest.Near(t, c.name+" half-width", *c.got.HalfWidth95, c.half, 2e-7)
	}
	if s := out.RowsAfter; s.Mean != 30 || s.StandardDeviation != nil || s.HalfWidth95 != nil {
		t.Errorf("a single reading: %+v", s)
	}
	// ISO 5077: 100*(after - before)/before of the size; 22.2 to 23.5 stitches is narrower, 30.5 to 30 rows
	// longer.
	knittest.Near(t, "width change", *out.WidthChangePercent, 100*(22.2/23.5-1), 1e-12)
	knittest.Near(t, "length change", *out.LengthChangePercent, 100*(30.5/30-1), 1e-12)
	// 50 cm * 2.35 = 117.5, half-way, up: 118.
	if out.Width.Count != 118 || out.Height.Count != 60 {
		t.Errorf("counts %d and %d, want 118 and 60", out.Width.Count, out.Height.Count)
	}
	knittest.Near(t, "width", out.Width.SizeCm, 118/2.35, 1e-14)
	knittest.Near(t, "smallest", *out.Width.SmallestCm, 1180/(23.5+1.2420689), 1e-7)
	knittest.Near(t, "largest", *out.Width.LargestCm, 1180/(23.5-1.2420689), 1e-7)
	if out.Height.SmallestCm != nil || out.Height.LargestCm != nil {
		t.Errorf("a single reading bounds a height: %+v", out.Height)
	}
	checkByHandInWords(t, out)
}

// checkByHandInWords checks what the answer by hand is called.
func checkByHandInWords(t *testing.T, out Result) {
	t.Helper()
	if g := out.Gauge; g == nil || g.Stitches != 23.5 || g.Rows != 30 || *g.OverCm != 10 || out.OverCm != 10 {
		t.Errorf("gauge %+v", out.Gauge)
	}
	// 23.5 to 10 cm: Fine (23-26) and Light (21-24).
	if len(out.YarnCategories) != 2 || out.YarnCategories[0].Category != 2 || out.YarnCategories[1].Category != 3 {
		t.Errorf("categories %+v", out.YarnCategories)
	}
	if out.Needle == nil || out.Needle.US != "6" || out.Needle.UK != "8" {
		t.Errorf("needle %+v", out.Needle)
	}
	want := "23.5 ± 1.24 stitches and 30 rows to 10 cm. 118 stitches: 50.2 cm wide, at 95 % from 47.7 cm to 53 cm. " +
		"60 rows: 20 cm tall."
	if got := out.Summary(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Shrinkage is negative: a swatch of 100 stitches that was 50 cm wide and is
// 47.5 cm after washing has changed by -5 %.
func TestWashingChangeSign(t *testing.T) {
	out, err := ComputeGauge(Input{
		StitchesBefore: readingsOver(50, 100), StitchesAfter: readingsOver(47.5, 100),
		RowsBefore: readingsOver(40, 100), RowsAfter: readingsOver(42, 100),
	})
	if err != nil {
		t.Fatal(err)
	}
	knittest.Near(t, "width", *out.WidthChangePercent, -5, 1e-13)
	knittest.Near(t, "length", *out.LengthChangePercent, 5, 1e-13)
}

// The interval does what it says: of many swatches drawn from a normal
// distribution, 95 % have the true gauge inside.
func TestIntervalCovers(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	const swatches, truth = 20_000, 22.0
	inside := 0
	for range swatches {
		l := readingList{readings: make([]gauge.Density, 5)}
		for i := range l.readings {
			l.readings[i] = gauge.NewDensity(truth+0.5*rng.NormFloat64(), 10)
		}
		l.summarise(100_000)
		if math.Abs(l.stats.Mean-truth) <= *l.stats.HalfWidth95 {
			inside++
		}
	}
	// The standard error of the share is sqrt(.95*.05/20000) = 0.0015.
	if share := float64(inside) / swatches; math.Abs(share-0.95) > 0.006 {
		t.Errorf("%.4f of the intervals hold the truth", share)
	}
}

func TestGaugeNotices(t *testing.T) {
	for _, c := range []struct {
		name string
		in   Input
		want []string
	}{
		{"quiet", Input{StitchesBefore: readingsOver(10, 22, 23, 22.5), RowsBefore: readingsOver(10, 30, 31)}, nil},
		{"single", Input{StitchesBefore: readingsOver(10, 22)}, []string{"stitches_before SINGLE_READING"}},
		{"no scatter", Input{RowsAfter: readingsOver(10, 30.1, 30.1, 30.1)}, []string{"rows_after NO_SCATTER"}},
		{"no scatter over several lengths",
			Input{RowsAfter: append(readingsOver(10, 30.3), readingsOver(5, 15.15)...)}, []string{"rows_after NO_SCATTER"}},
		// 22, 22, 22, 26: mean 23, s = 2, G = 1.5 > 1.481.
		{"outlying", Input{StitchesBefore: readingsOver(10, 22, 22, 26, 22)}, []string{"stitches_before[2] OUTLYING_READING"}},
		{"outlying below", Input{RowsBefore: readingsOver(10, 25, 30, 30.5, 30, 29.5)}, []string{"rows_before[0] OUTLYING_READING"}},
		// G = 2/sqrt(3) = 1.1547 > 1.1543, but half a stitch is how readings are taken.
		{"half a stitch", Input{StitchesBefore: readingsOver(10, 22, 22, 22.5)}, nil},
		{"a whole stitch", Input{StitchesBefore: readingsOver(10, 22, 22, 23)}, []string{"stitches_before[2] OUTLYING_READING"}},
		// The same half stitch over 5 cm is a whole one over 10.
		{"half a stitch over less", Input{StitchesBefore: readingsOver(5, 11, 11, 11.5)}, nil},
		// G = 1.1 of 22, 23, 25.5 (mean 23.5, s = 1.803; 2/1.803 = 1.109): below 1.154.
		{"far but not outlying", Input{StitchesBefore: readingsOver(10, 22, 23, 25.5)}, nil},
		// Five about the limit of 1.715: 1.7/1.0368 = 1.640 and 1.8/1.0368 = 1.736.
		{"inside the limit", Input{RowsBefore: readingsOver(10, 22, 22, 22.5, 23, 24.5)}, nil},
		{"outside the limit", Input{RowsBefore: readingsOver(10, 22, 22, 22.5, 22.5, 24.5)},
			[]string{"rows_before[4] OUTLYING_READING"}},
		{"two never outlie", Input{StitchesBefore: readingsOver(10, 20, 30)}, nil},
		{"mixed", Input{StitchesAfter: readingsOver(10, 22, 23), RowsBefore: readingsOver(10, 30, 31)},
			[]string{"rows_before MIXED_STATES"}},
		// 20 to 10 cm are 20.32 to 4 in, which no category holds.
		{"nominal", Input{StitchesAfter: readingsOver(10, 19.9, 20.1)}, []string{"stitches_after FOUR_INCHES"}},
		{"needle", Input{StitchesAfter: readingsOver(10, 22, 23), NeedleMm: knittest.Ptr(4.1)}, []string{"needle_mm UNLISTED_NEEDLE"}},
	} {
		out, err := ComputeGauge(c.in)
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		var got []string
		for _, n := range out.Notices {
			got = append(got, n.Field+" "+string(n.Reason))
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

// Readings scaled with their length change nothing; their order neither; twice
// the answer's length doubles every figure; the mean gauge asked of ComputeCastOn
// gives the same count.
func TestGaugeMetamorphic(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		counts := make([]float64, 2+rng.IntN(8))
		for i := range counts {
			counts[i] = 15 + float64(rng.IntN(60))/4
		}
		width := 20 + float64(rng.IntN(1000))/10
		ask := func(rs []Reading, over float64) Result {
			out, err := ComputeGauge(Input{StitchesBefore: rs, RowsBefore: rs, OverCm: &over, WidthCm: &width})
			if err != nil {
				t.Fatal(err)
			}
			return out
		}
		base := ask(readingsOver(10, counts...), 10)
		half := make([]float64, len(counts))
		for i, c := range counts {
			half[i] = c / 2
		}
		turned := slices.Clone(counts)
		slices.Reverse(turned)
		for _, other := range []Result{ask(readingsOver(5, half...), 10), ask(readingsOver(10, turned...), 10)} {
			knittest.Near(t, "mean", other.StitchesBefore.Mean, base.StitchesBefore.Mean, 1e-13)
			knittest.Near(t, "half-width", *other.StitchesBefore.HalfWidth95, *base.StitchesBefore.HalfWidth95, 1e-12)
		}
		double := ask(readingsOver(10, counts...), 20)
		knittest.Near(t, "mean over 20 cm", double.StitchesBefore.Mean, 2*base.StitchesBefore.Mean, 1e-13)
		knittest.Near(t, "half-width over 20 cm", *double.StitchesBefore.HalfWidth95, 2**base.StitchesBefore.HalfWidth95, 1e-12)
		// A mean that is no whole millionth is read a little finer over 20 cm, which
		// may move a half-way case.
		if double.Width.Count == base.Width.Count {
			knittest.Near(t, "largest", fault.Or(double.Width.LargestCm, 0), fault.Or(base.Width.LargestCm, 0), 1e-6)
		}

		cast, err := gauge.ComputeCastOn(gauge.CastOnInput{Gauge: base.Gauge, WidthCm: &width})
		if err != nil || cast.Stitches.Count != base.Width.Count || cast.Stitches.SizeCm != base.Width.SizeCm {
			t.Fatalf("cast on %+v, %v; consequence %+v", cast.Stitches, err, base.Width)
		}
		if l := base.Width.LargestCm; l != nil && (*base.Width.SmallestCm > base.Width.SizeCm || *l < base.Width.SizeCm) {
			t.Fatalf("size outside its interval: %+v", base.Width)
		}
	}
}

func BenchmarkComputeGauge(b *testing.B) {
	width := 50.0
	in := Input{
		StitchesBefore: readingsOver(10, 22, 23, 22.5, 21.5, 22), RowsBefore: readingsOver(10, 30, 31, 30, 30, 29.5),
		StitchesAfter: readingsOver(10, 23, 23.5, 24, 23, 23), RowsAfter: readingsOver(10, 30, 31, 32, 30, 31), WidthCm: &width,
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ComputeGauge(in); err != nil {
			b.Fatal(err)
		}
	}
}
