package gauge

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
)

// A gauge that is not sound gives two densities that are zero, and says why; one
// that is gives none that is zero.
func TestVet(t *testing.T) {
	long := 101.0
	for _, c := range []struct {
		gauge *Gauge
		want  []string
	}{
		{nil, []string{"gauge REQUIRED"}},
		{&Gauge{Stitches: 22}, []string{"gauge.rows REQUIRED"}},
		{&Gauge{Rows: 30}, []string{"gauge.stitches REQUIRED"}},
		{&Gauge{Stitches: MaxCount + 1, Rows: 30}, []string{"gauge.stitches OUT_OF_RANGE"}},
		{&Gauge{Stitches: 22, Rows: 30, OverCm: &long}, []string{"gauge.over_cm OUT_OF_RANGE"}},
		{&Gauge{Stitches: 22, Rows: 30}, nil},
		{&Gauge{Stitches: MinCount, Rows: MaxCount}, nil},
	} {
		var checks fault.Checks
		checks.Add("gauge_of_another", fault.ReasonRequired, "is no matter of this one")
		st, rw := Vet(&checks, "gauge", c.gauge)
		knittest.WantViolations(t, checks.Err(), append([]string{"gauge_of_another REQUIRED"}, c.want...)...)
		if sound := len(c.want) == 0; st.IsZero() == sound || rw.IsZero() == sound {
			t.Errorf("%+v: %+v and %+v", c.gauge, st, rw)
		}
	}
}

// 22 stitches to 10 cm, by hand.
func TestDensityByHand(t *testing.T) {
	d := NewDensity(22, 10)
	if d.IsZero() || !(Density{}).IsZero() || !NewDensity(0.4e-6, 10).IsZero() {
		t.Error("zero is a gauge that is not known, or is read as none")
	}
	knittest.Near(t, "per cm", d.PerCm(), 2.2, 1e-15)
	knittest.Near(t, "size of 11", d.SizeCm(11), 5, 0)
	knittest.Near(t, "over 2.5 cm", d.Over(25_000), 5.5, 0)
	if num, den := d.Exact(25_000); big.NewRat(num, den).Cmp(big.NewRat(11, 2)) != 0 {
		t.Errorf("2.5 cm are %d/%d stitches, want 5.5", num, den)
	}
	// 2.5 cm are 5.5 stitches, half-way, up.
	if n := d.Nearest(25_000); n != 6 {
		t.Errorf("2.5 cm are %d stitches, want 6", n)
	}
	seven, cm := 7, 2.4 // 5.28
	if n := d.Counted(&seven, nil); n != 7 {
		t.Errorf("7 given are %d", n)
	}
	if n := d.Counted(nil, &cm); n != 5 {
		t.Errorf("2.4 cm are %d stitches, want 5", n)
	}
	// Off by 2 of 22: 20 and 24 to 10 cm; by 22: nothing is left.
	for _, c := range []struct{ off, want float64 }{{2, 50}, {-2, 60}, {0, 120 / 2.2}} {
		if got, ok := d.SizeOff(120, c.off); !ok {
			t.Errorf("off by %v: no size", c.off)
		} else {
			knittest.Near(t, "size off", got, c.want, 1e-15)
		}
	}
	for _, off := range []float64{-22, -23} {
		if got, ok := d.SizeOff(120, off); ok {
			t.Errorf("off by %v: %v cm", off, got)
		}
	}
}

// Densities beside rationals: over other lengths the same gauge is equal, and a
// millionth more is not; the mean of any number is their mean.
func TestDensityBesideRationals(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	for range 2000 {
		densities := make([]Density, 1+rng.IntN(12))
		sum := new(big.Rat)
		for i := range densities {
			millionths, um := 1+rng.Int64N(1e9), 1000+rng.Int64N(999_001)
			densities[i] = NewDensity(float64(millionths)/1e6, float64(um)/1e4)
			sum.Add(sum, big.NewRat(millionths, 100*um)) // a stitch is 1e6 of them, a cm 1e4
		}
		want := sum.Quo(sum, big.NewRat(int64(len(densities)), 1))
		if got := MeanPerCm(densities...); got.Cmp(want) != 0 {
			t.Fatalf("%v: mean %v, want %v", densities, got, want)
		}
		d := densities[0]
		k := 1 + rng.Int64N(9)
		if same := (Density{d.count * k, d.span * k}); !d.Equal(same) || !same.Equal(d) {
			t.Fatalf("%v is not the gauge %v", d, same)
		}
		if more := (Density{d.count*k + 1, d.span * k}); d.Equal(more) {
			t.Fatalf("%v is the gauge %v", d, more)
		}
		// Of equal sizes, the counts are as the gauges are.
		e := densities[len(densities)-1]
		num, den := Change(d, e).CountRatio()
		if got, want := big.NewRat(num, den), new(big.Rat).Quo(MeanPerCm(e), MeanPerCm(d)); got.Cmp(want) != 0 {
			t.Fatalf("from %v to %v: ratio %v, want %v", d, e, got, want)
		}
	}
}
