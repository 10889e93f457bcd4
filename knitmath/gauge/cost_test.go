package gauge

import (
	"testing"

	"example.com/knitmath/knitmath/measure"
)

// A price never grows less with what is asked, never passes the most, and takes what is
// missing or absurd for nothing.
func TestPricesFollowTheQuestion(t *testing.T) {
	g := &Gauge{Stitches: 22, Rows: 30}
	count := func(n int) *int { return &n }
	cm := func(x float64) *float64 { return &x }
	for _, c := range []struct {
		name string
		got  int
		want int
	}{
		{"stitches given", PriceStitches(g, count(120), nil, 500), 120},
		{"more than the most", PriceStitches(g, count(5000), nil, 500), 500},
		{"fewer than none", PriceStitches(g, count(-3), nil, 500), 0},
		{"50 cm at 22 stitches to 10 cm", PriceStitches(g, nil, cm(50), 500), 110},
		{"50 cm at 30 rows to 10 cm", PriceRows(g, nil, cm(50), 500), 150},
		{"a length without a gauge", PriceRows(nil, nil, cm(50), 500), 0},
		{"no length", PriceStitches(g, nil, nil, 500), 0},
		{"no gauge", PriceStitches(nil, count(7), nil, 500), 7},
		{"a length beyond all", PriceRows(g, nil, cm(1e300), 500), 500},
		{"a cast-on", CastOnInput{}.Cost(), 10},
		{"two counts and three sizes", ConversionInput{Items: make([]PatternCount, 2), Sizes: make([]PrintedSize, 3)}.Cost(), 30},
		{"counts beyond the limit", ConversionInput{Items: make([]PatternCount, 10*MaxItems)}.Cost(), 10 + 4*MaxItems},
	} {
		if c.got != c.want {
			t.Errorf("%s: %d, not %d", c.name, c.got, c.want)
		}
	}
}

// CountedEven against the two even counts around the exact one: never farther than a stitch,
// and the greater of two that are as near.
func TestCountedEvenIsTheNearestEven(t *testing.T) {
	d := NewDensity(22, DefaultOverCm)
	for mm := 1; mm <= 3000; mm++ {
		cm := float64(mm) / 10
		n := d.CountedEven(nil, &cm)
		num, den := d.Exact(measure.Micrometres(cm))
		// 2 |n - exact| <= 2, with the half-way case going up.
		if off := int64(n)*den - num; n%2 != 0 || off > den || off <= -den {
			t.Fatalf("%v cm: %d, exactly %v", cm, n, float64(num)/float64(den))
		}
	}
	for n := range 50 {
		if got := d.CountedEven(&n, nil); got != n+n%2 {
			t.Errorf("%d comes to %d", n, got)
		}
	}
}
