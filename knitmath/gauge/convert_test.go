package gauge

import (
	"math/big"
	"math/rand/v2"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// convertedByHand is a pattern of six counts and three sizes.
func convertedByHand(t *testing.T) Conversion {
	t.Helper()
	n := func(i int) *int { return &i }
	out, err := ConvertGauge(ConversionInput{
		PatternGauge: &Gauge{Stitches: 20, Rows: 28}, OwnGauge: &Gauge{Stitches: 22, Rows: 30},
		Items: []PatternCount{
			{Name: "body", Kind: CountKindStitches, Count: 200},                                                // 220
			{Kind: CountKindStitches, Count: 100, Rule: &CountRule{Multiple: n(4), Remainder: n(2)}},           // 110 = 27*4+2
			{Kind: CountKindRows, Count: 70},                                                                   // 75
			{Kind: CountKindStitches, Count: 5},                                                                // 5.5, half-way: 6
			{Kind: CountKindRows, Count: 99, Rule: &CountRule{Multiple: n(2), Rounding: measure.RoundingDown}}, // 106.07: 106
			{Kind: CountKindStitches, Count: 101, Rule: &CountRule{Rounding: measure.RoundingUp}},              // 111.1: 112
		},
		Sizes: []PrintedSize{
			{Name: "S", WidthCm: 90, HeightCm: knittest.Ptr(56.0)}, {Name: "M", WidthCm: 99}, {Name: "L", WidthCm: 110},
		},
		WantedWidthCm: knittest.Ptr(95.0),
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// By hand: a pattern at 20 stitches and 28 rows to 10 cm, knit at 22 and 30.
func TestConvertByHand(t *testing.T) {
	out := convertedByHand(t)
	for i, want := range []int{220, 110, 75, 6, 106, 112} {
		if got := out.Items[i].Fitted; got.Count != want || got.Halfway != (i == 3) {
			t.Errorf("item %d: got %+v, want %d", i, got, want)
		}
	}
	body := out.Items[0]
	if body.Name != "body" || body.Kind != CountKindStitches || body.Printed != 200 {
		t.Errorf("item carried as %+v", body)
	}
	// 200 at 20 are 100 cm, at 22 90.9; 220 give 100 exactly; 219 and 221 beside it.
	knittest.Near(t, "asked", body.Fitted.AskedCm, 100, 0)
	knittest.Near(t, "as written", body.AsWrittenCm, 200/2.2, 1e-15)
	knittest.Near(t, "exact", out.Items[3].Fitted.Exact, 5.5, 1e-15)
	knittest.Near(t, "exact", out.Items[4].Fitted.Exact, 99*30.0/28, 1e-15)
	knittest.Near(t, "size", body.Fitted.SizeCm, 100, 0)
	knittest.Near(t, "difference", body.Fitted.DifferenceCm, 0, 0)
	knittest.Near(t, "below", body.Fitted.Below.DifferenceCm, -1/2.2, 1e-13)
	knittest.Near(t, "above", body.Fitted.Above.DifferenceCm, 1/2.2, 1e-13)
}

// The same pattern as a whole, its sizes and what is said of it: 20/22 - 1 and
// 28/30 - 1.
func TestConvertSizesByHand(t *testing.T) {
	out := convertedByHand(t)
	knittest.Near(t, "width change", out.WidthChangePercent, -100.0/11, 1e-14)
	knittest.Near(t, "length change", out.LengthChangePercent, -100.0/15, 1e-14)
	// 90*20/22 = 81.8, 99 -> 90, 110 -> 100: 90 and 100 are both 5 away from 95, so the wider.
	if out.FollowSizeNumber == nil || *out.FollowSizeNumber != 3 {
		t.Fatalf("follow %v, want 3", out.FollowSizeNumber)
	}
	knittest.Near(t, "M", out.Sizes[1].WidthCm, 90, 1e-15)
	knittest.Near(t, "M", out.Sizes[1].DifferenceCm, -5, 1e-15)
	knittest.Near(t, "L", out.Sizes[2].DifferenceCm, 5, 1e-15)
	knittest.Near(t, "height of S", *out.Sizes[0].HeightCm, 56*28.0/30, 1e-15)
	if out.Sizes[1].HeightCm != nil {
		t.Error("a height that is not printed")
	}
	if len(out.Notices) != 2 || out.Notices[0].Reason != "HALFWAY" || out.Notices[0].Field != "items[3].count" ||
		out.Notices[1].Reason != "EQUALLY_NEAR" || out.Notices[1].Field != "sizes[1]" {
		t.Errorf("notices %+v", out.Notices)
	}
	want := "Knit as written it comes out 9.1 % narrower and 6.7 % shorter. Follow size L: 100 cm wide, 5 cm more than asked. " +
		"6 counts refitted."
	if got := out.Summary(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Which size to follow, the tie in every order and among equals.
func TestFollow(t *testing.T) {
	g := &Gauge{Stitches: 20, Rows: 28}
	for _, c := range []struct {
		own    float64
		widths []float64
		wanted float64
		want   int
		tied   string
	}{
		{20, []float64{90, 100, 110}, 104, 1, ""},
		{20, []float64{90, 100, 110}, 95, 1, "sizes[0]"},
		{20, []float64{110, 100, 90}, 95, 1, "sizes[2]"},
		// Two of one width: the first, and the other is named; so in every order.
		{20, []float64{100, 100}, 100, 0, "sizes[1]"},
		{20, []float64{100, 90, 100}, 104, 0, "sizes[2]"},
		{20, []float64{90, 100, 100, 90}, 95, 1, "sizes[0] sizes[2] sizes[3]"},
		{20, []float64{90, 90, 100}, 95, 2, "sizes[0] sizes[1]"},
		{20, []float64{90, 90, 96}, 95, 2, ""},
		{20, []float64{90, 100, 95}, 95, 2, ""},
		{20, []float64{50}, 200, 0, ""},
		// Thirds: at 30 stitches all comes out at two thirds; 100.5 -> 67 and 99 -> 66 about 66.5.
		{30, []float64{99, 100.5}, 66.5, 1, "sizes[0]"},
		// A micrometre off the tie decides.
		{30, []float64{99, 100.5}, 66.4999, 0, ""},
	} {
		in := ConversionInput{PatternGauge: g, OwnGauge: &Gauge{Stitches: c.own, Rows: 28}, WantedWidthCm: &c.wanted}
		for _, w := range c.widths {
			in.Sizes = append(in.Sizes, PrintedSize{WidthCm: w})
		}
		out, err := ConvertGauge(in)
		if err != nil {
			t.Fatal(err)
		}
		var tied []string
		for _, n := range out.Notices {
			tied = append(tied, n.Field)
			i, _ := strconv.Atoi(strings.TrimSuffix(strings.TrimPrefix(n.Field, "sizes["), "]"))
			if same := c.widths[i] == c.widths[c.want]; same != strings.Contains(n.Description, "the same width") {
				t.Errorf("%+v: %s %s", c, n.Field, n.Description)
			}
		}
		if *out.FollowSizeNumber-1 != c.want || strings.Join(tied, " ") != c.tied {
			t.Errorf("%+v: got %d, tied %q", c, *out.FollowSizeNumber, tied)
		}
	}
}

// New counts against rationals, over ordinary gauges and over the widest ones
// that are legal, where the products need all 64 bits.
func TestConvertAgainstRationals(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	halves := 0
	for i := range 100_000 {
		g := Regauge{
			Density{(32 + rng.Int64N(130)) * 250_000, 100_000 + 1600*rng.Int64N(2)},
			Density{(32 + rng.Int64N(130)) * 250_000, 100_000 + 1600*rng.Int64N(2)},
		}
		n := 1 + rng.IntN(400)
		if i%2 == 1 { // any legal gauge with an answer
			g = Regauge{
				Density{1 + rng.Int64N(1e9), 1000 + rng.Int64N(999_001)},
				Density{1 + rng.Int64N(1e9), 1000 + rng.Int64N(999_001)},
			}
			n = 1 + rng.IntN(stitch.MaxStitches)
		}
		exact := new(big.Rat).Mul(big.NewRat(g.own.count, g.own.span), big.NewRat(g.pattern.span, g.pattern.count))
		exact.Mul(exact, big.NewRat(int64(n), 1))
		want, half := nearestByRat(exact)
		want = max(want, 1)
		f := g.fit(n, AnyCount)
		ok := f != nil
		if ok != (want <= stitch.MaxStitches) || ok && (int64(f.Count) != want || f.Halfway != (half && want > 1)) {
			t.Fatalf("%d, %+v: got %+v (%v), want %d (%v)", n, g, f, ok, want, half)
		}
		if ok && half {
			halves++
		}
	}
	if halves < 100 {
		t.Errorf("only %d half-way cases", halves)
	}
	// The largest products there are.
	g := Regauge{Density{1e9, 1e6}, Density{1e9, 1e6}}
	if f := g.fit(stitch.MaxStitches, AnyCount); f == nil || f.Count != stitch.MaxStitches || f.DifferenceCm != 0 {
		t.Errorf("at the limit: %+v", f)
	}
}

// There and back again: a count refitted and refitted back is off by no more
// than the half stitch each rounding may take; with equal gauges nothing changes.
// Both gauges over another length change nothing either.
func TestConvertRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	convert := func(a, b *Gauge, n int) FittedCount {
		out, err := ConvertGauge(ConversionInput{PatternGauge: a, OwnGauge: b,
			Items: []PatternCount{{Kind: CountKindStitches, Count: n}}})
		if err != nil {
			t.Fatal(err)
		}
		return out.Items[0].Fitted
	}
	for range 5000 {
		a := &Gauge{Stitches: float64(40+rng.IntN(120)) / 4, Rows: 30}
		b := &Gauge{Stitches: float64(40+rng.IntN(120)) / 4, Rows: 30}
		n := 10 + rng.IntN(400)
		there := convert(a, b, n)
		back := convert(b, a, there.Count)
		// Half a stitch at b is a.Stitches/b.Stitches/2 at a, and half more for a's own rounding.
		if off := float64(back.Count - n); off > a.Stitches/b.Stitches/2+0.5 || -off > a.Stitches/b.Stitches/2+0.5 {
			t.Fatalf("%d at %v: %d at %v, back %d", n, a.Stitches, there.Count, b.Stitches, back.Count)
		}
		knittest.Near(t, "size there", there.AskedCm, float64(n)/a.Stitches*10, 1e-14)
		if same := convert(a, a, n); same.Count != n || same.DifferenceCm != 0 || same.Halfway {
			t.Fatalf("to its own gauge: %+v", same)
		}
		over := 20.0
		if twice := convert(&Gauge{2 * a.Stitches, 60, &over}, &Gauge{2 * b.Stitches, 60, &over}, n); !reflect.DeepEqual(twice, there) {
			t.Fatalf("over 20 cm: %+v, over 10 cm: %+v", twice, there)
		}
	}
}

func BenchmarkConvertGauge(b *testing.B) {
	in := ConversionInput{
		PatternGauge: &Gauge{Stitches: 20, Rows: 28}, OwnGauge: &Gauge{Stitches: 22, Rows: 30},
		Items: []PatternCount{{Kind: CountKindStitches, Count: 200}, {Kind: CountKindRows, Count: 70}},
		Sizes: []PrintedSize{{WidthCm: 90}, {WidthCm: 99}, {WidthCm: 110}}, WantedWidthCm: knittest.Ptr(95.0),
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ConvertGauge(in); err != nil {
			b.Fatal(err)
		}
	}
}
