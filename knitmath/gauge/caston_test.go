package gauge

import (
	"math"
	"math/big"
	"reflect"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// nearestByRat is the nearest integer, halves up, and whether it was a half.
func nearestByRat(x *big.Rat) (n int64, half bool) {
	twice := new(big.Rat).Mul(x, big.NewRat(2, 1))
	y := new(big.Rat).Add(x, big.NewRat(1, 2))
	n = new(big.Int).Div(y.Num(), y.Denom()).Int64() // Euclidean: floor for a positive denominator
	return n, twice.IsInt() && !x.IsInt()
}

// Every width from 0.5 cm to 150 cm in steps of 0.5 cm and every gauge from 8 to
// 40 stitches in steps of a quarter, over 10 cm and over 4 in, against rationals
// built from the decimals.
func TestCastOnSweepCm(t *testing.T) {
	halves, cases := 0, 0
	for _, over := range []int64{10_000, 10_160} { // thousandths of a cm
		overCm := float64(over) / 1000
		for quarter := int64(32); quarter <= 160; quarter++ {
			g := &Gauge{Stitches: float64(quarter) / 4, Rows: 30, OverCm: &overCm}
			for half := int64(1); half <= 300; half++ {
				w := float64(half) / 2
				out, err := ComputeCastOn(CastOnInput{Gauge: g, WidthCm: &w})
				if err != nil {
					t.Fatal(err)
				}
				// half/2 * quarter/4 / (over/1000)
				exact := big.NewRat(half*quarter*1000, 8*over)
				want, isHalf := nearestByRat(exact)
				isHalf = isHalf && want > 1 // between 0 and 1 stitch there is one legal count
				want = max(want, 1)
				if int64(out.Stitches.Count) != want || out.Stitches.Halfway != isHalf {
					t.Fatalf("%v cm at %v over %v: got %d (half-way %v), want %d (%v)", w, g.Stitches, overCm,
						out.Stitches.Count, out.Stitches.Halfway, want, isHalf)
				}
				if (len(out.Notices) == 1) != isHalf {
					t.Fatalf("%v cm at %v: notices %v", w, g.Stitches, out.Notices)
				}
				if isHalf {
					halves++
				}
				cases++
			}
		}
	}
	if halves < 500 {
		t.Errorf("only %d of %d cases are half-way: the sweep does not test it", halves, cases)
	}
	t.Logf("%d cases, %d of them half-way", cases, halves)
}

// Every quarter inch to 60 in at every quarter stitch over 4 in: the stitches are
// quarters of an inch times quarters of a stitch over 64, exactly.
func TestCastOnSweepInches(t *testing.T) {
	fourInches := 4 * measure.CmPerInch
	for quarter := int64(24); quarter <= 160; quarter++ {
		g := &Gauge{Stitches: float64(quarter) / 4, Rows: 30, OverCm: &fourInches}
		for q := int64(1); q <= 240; q++ {
			w := float64(q) / 4 * measure.CmPerInch
			out, err := ComputeCastOn(CastOnInput{Gauge: g, WidthCm: &w})
			if err != nil {
				t.Fatal(err)
			}
			want := max((2*q*quarter+64)/128, 1)
			half := (2*q*quarter+64)%128 == 0 && want > 1
			if int64(out.Stitches.Count) != want || out.Stitches.Halfway != half {
				t.Fatalf("%v in at %v to 4 in: got %d (%v), want %d (%v)", float64(q)/4, g.Stitches,
					out.Stitches.Count, out.Stitches.Halfway, want, half)
			}
		}
	}
}

// Counting in floats is off by a stitch where the exact count is whole or half:
// 22.5 cm at 28 to 10 cm are 63 stitches, and a float makes it 62.99999. Every
// tenth of a cm to 120 cm at every gauge from 10 to 40, rounded down and to the
// nearest, in integers.
func TestCastOnBesideFloats(t *testing.T) {
	down := &CountRule{Rounding: measure.RoundingDown}
	wrong, cases := 0, 0
	for st := int64(10); st <= 40; st++ {
		g := &Gauge{Stitches: float64(st), Rows: 30}
		for mm := int64(10); mm <= 1200; mm++ {
			w := float64(mm) / 10
			nearest, err := ComputeCastOn(CastOnInput{Gauge: g, WidthCm: &w})
			if err != nil {
				t.Fatal(err)
			}
			lower, err := ComputeCastOn(CastOnInput{Gauge: g, WidthCm: &w, StitchRule: down})
			if err != nil {
				t.Fatal(err)
			}
			if want := (2*mm*st + 100) / 200; int64(nearest.Stitches.Count) != want {
				t.Fatalf("%v cm at %d: got %d, want %d", w, st, nearest.Stitches.Count, want)
			}
			if want := mm * st / 100; int64(lower.Stitches.Count) != want {
				t.Fatalf("%v cm at %d, down: got %d, want %d", w, st, lower.Stitches.Count, want)
			}
			if math.Floor(w*(g.Stitches/10)) != float64(lower.Stitches.Count) {
				wrong++
			}
			cases++
		}
	}
	if wrong == 0 {
		t.Error("floats are never wrong: the sweep has lost its teeth")
	}
	t.Logf("floats are wrong in %d of %d cases", wrong, cases)
}

func TestCastOnByHand(t *testing.T) {
	p := func(x float64) *float64 { return &x }
	n := func(i int) *int { return &i }
	g := &Gauge{Stitches: 22, Rows: 30}
	for _, c := range []struct {
		in             CastOnInput
		stitches, rows int
		asked          float64
		summary        string
	}{
		// 88 + 8 = 96 cm; 96 * 2.2 = 211.2; of multiples of 4: 212 (0.8 away).
		{CastOnInput{Gauge: g, WidthCm: p(88), EaseCm: p(8), StitchRule: &CountRule{Multiple: n(4)}}, 212, 0, 96,
			"Work on 212 stitches: 96.4 cm wide, 0.4 cm more than asked."},
		// 88 less 10 % = 79.2 cm; 174.24.
		{CastOnInput{Gauge: g, WidthCm: p(88), EasePercent: p(-10)}, 174, 0, 79.2,
			"Work on 174 stitches: 79.1 cm wide, 0.1 cm less than asked."},
		// 22.5 cm at 28 to 10 cm: 63 exactly; 15 cm at 40: 60.
		{CastOnInput{Gauge: &Gauge{Stitches: 28, Rows: 40}, WidthCm: p(22.5), HeightCm: p(15)}, 63, 60, 22.5,
			"Work on 63 stitches: 22.5 cm wide, exactly as asked. Work 60 rows: 15 cm tall, exactly as asked."},
		// Rows alone, an even number: 45 cm * 3 = 135; of 134 and 136, equally near, the larger.
		{CastOnInput{Gauge: g, HeightCm: p(45), RowRule: &CountRule{Multiple: n(2)}}, 0, 136, 0,
			"Work 136 rows: 45.3 cm tall, 0.3 cm more than asked."},
		// 20 in at 22 to 10 cm: 50.8 * 2.2 = 111.76; 112 / 2.2 = 50.909 cm = 20.043 in, 0.043 more.
		{CastOnInput{Gauge: g, WidthCm: p(50.8), DisplayUnit: measure.DisplayUnitIn}, 112, 0, 50.8,
			"Work on 112 stitches: 20.04 in wide, 0.04 in more than asked."},
		// Half a millimetre of ease is kept: 10.05 * 2.2 = 22.11.
		{CastOnInput{Gauge: g, WidthCm: p(10), EaseCm: p(0.05)}, 22, 0, 10.05,
			"Work on 22 stitches: 10 cm wide, 0.1 cm less than asked."},
	} {
		out, err := ComputeCastOn(c.in)
		if err != nil {
			t.Fatal(err)
		}
		if (out.Stitches != nil) != (c.stitches > 0) || (out.Rows != nil) != (c.rows > 0) {
			t.Errorf("halves asked: %+v", out)
		}
		if s := out.Stitches; s != nil && (s.Count != c.stitches || s.AskedCm != c.asked) {
			t.Errorf("got %d stitches for %v cm; want %d for %v", s.Count, s.AskedCm, c.stitches, c.asked)
		}
		if out.Rows != nil && out.Rows.Count != c.rows {
			t.Errorf("got %d rows, want %d", out.Rows.Count, c.rows)
		}
		if got := out.Summary(); got != c.summary {
			t.Errorf("got %q, want %q", got, c.summary)
		}
	}
}

// Widths and the length of the gauge scaled together change nothing; stitches and
// rows with their sizes swapped answer each other.
func TestCastOnMetamorphic(t *testing.T) {
	for _, k := range []float64{0.5, 2, 2.5, 5} {
		for w := 1.0; w <= 120; w += 0.7 {
			for _, st := range []float64{9.25, 16, 22, 27.5, 33} {
				over, w1 := 10.0, math.Round(w*10)/10
				w2, over2 := w1*k, over*k
				rule := &CountRule{Multiple: new(int)}
				*rule.Multiple = 3
				a, errA := ComputeCastOn(CastOnInput{Gauge: &Gauge{st, 30, &over}, WidthCm: &w1, StitchRule: rule})
				b, errB := ComputeCastOn(CastOnInput{Gauge: &Gauge{st, 30, &over2}, WidthCm: &w2, StitchRule: rule})
				if errA != nil || errB != nil {
					t.Fatal(errA, errB)
				}
				if a.Stitches.Count != b.Stitches.Count || a.Stitches.Halfway != b.Stitches.Halfway ||
					a.Stitches.Exact != b.Stitches.Exact {
					t.Fatalf("%v cm at %v, times %v: %+v and %+v", w1, st, k, a.Stitches, b.Stitches)
				}
				knittest.Near(t, "size", b.Stitches.SizeCm, k*a.Stitches.SizeCm, 1e-14)
				c, err := ComputeCastOn(CastOnInput{Gauge: &Gauge{30, st, &over}, HeightCm: &w1, RowRule: rule})
				if err != nil || !reflect.DeepEqual(c.Rows, a.Stitches) {
					t.Fatalf("as rows: %+v, as stitches: %+v, %v", c.Rows, a.Stitches, err)
				}
			}
		}
	}
}

// Checking and fitting allocate nothing but the answer: two counts with two
// neighbours each.
func TestCastOnAllocatesItsAnswer(t *testing.T) {
	in := ordinaryCastOn()
	if n := testing.AllocsPerRun(100, func() {
		if _, err := ComputeCastOn(in); err != nil {
			t.Error(err)
		}
	}); n > 6 {
		t.Errorf("%v allocations a cast-on, want 6", n)
	}
}

func ordinaryCastOn() CastOnInput {
	w, e, h, m, r := 91.5, 7.5, 40.0, 4, 2
	return CastOnInput{
		Gauge: &Gauge{Stitches: 22, Rows: 30}, WidthCm: &w, EaseCm: &e,
		StitchRule: &CountRule{Multiple: &m, Remainder: &r}, HeightCm: &h,
	}
}

func BenchmarkComputeCastOn(b *testing.B) {
	in := ordinaryCastOn()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ComputeCastOn(in); err != nil {
			b.Fatal(err)
		}
	}
}
