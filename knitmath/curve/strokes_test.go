package curve

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"gonum.org/v1/gonum/interp"
)

// anyStrokes are marks at places that rise by 1 to so many, by a number.
func anyStrokes(r *rand.Rand, apart int64) Strokes[int64] {
	s := make(Strokes[int64], 2+r.IntN(30))
	place := r.Int64N(5) - 2
	for i := range s {
		s[i] = Mark[int64]{place, r.Int64N(4_000_000_001) - 2_000_000_000}
		place += 1 + r.Int64N(apart)
	}
	return s
}

// Whole values are exact everywhere: the same as the rational of the two marks that a
// search from the first finds. gonum's piecewise linear interpolation agrees, also for
// values that are not whole.
func TestStrokesAgainstRationalsAndGonum(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 19))
	for range knittest.Sweep(2_000, 200) {
		s := anyStrokes(r, 1+r.Int64N(9))
		floats, xs, ys := make(Strokes[float64], len(s)), make([]float64, len(s)), make([]float64, len(s))
		for i, m := range s {
			xs[i], ys[i] = float64(m.Place), float64(m.Value)/3
			floats[i] = Mark[float64]{m.Place, ys[i]}
		}
		var line interp.PiecewiseLinear
		if err := line.Fit(xs, ys); err != nil {
			t.Fatal(err)
		}
		first, last := s[0], s[len(s)-1]
		for range 20 {
			den := 1 + r.Int64N(2_000)
			num := (first.Place-1)*den + r.Int64N((last.Place-first.Place+2)*den+1)
			value, over := s.At(num, den)
			if got, want := big.NewRat(value, over), rational(s, big.NewRat(num, den)); got.Cmp(want) != 0 {
				t.Fatalf("%v at %d/%d: %v, not %v", s, num, den, got, want)
			}
			part, of := floats.At(num, den)
			knittest.Near(t, "gonum", part/of, line.Predict(float64(num)/float64(den)), 1e-6*math.Max(1, math.Abs(part/of)))
		}
	}
}

// rational is what strokes want at a place, mark by mark from below.
func rational(s Strokes[int64], at *big.Rat) *big.Rat {
	value := func(m Mark[int64]) *big.Rat { return new(big.Rat).SetInt64(m.Value) }
	place := func(m Mark[int64]) *big.Rat { return new(big.Rat).SetInt64(m.Place) }
	if at.Cmp(place(s[0])) <= 0 {
		return value(s[0])
	}
	for i, m := range s[1:] {
		if at.Cmp(place(m)) > 0 {
			continue
		}
		low, from := place(s[i]), value(s[i])
		part := new(big.Rat).Quo(new(big.Rat).Sub(at, low), new(big.Rat).Sub(place(m), low))
		return part.Mul(part, new(big.Rat).Sub(value(m), from)).Add(part, from)
	}
	return value(s[len(s)-1])
}

// Worked by hand: from 0 over 6 to 3, a third of the way up the first stroke 2, two thirds
// down the second 4.
func TestEvenly(t *testing.T) {
	s := Evenly[int64](0, 6, 3)
	for _, c := range [][4]int64{{-1, 1, 0, 1}, {1, 3, 6, 3}, {1, 1, 6, 1}, {5, 3, 12, 3}, {2, 1, 3, 1}, {9, 1, 3, 1}} {
		if value, over := s.At(c[0], c[1]); value != c[2] || over != c[3] {
			t.Errorf("at %d/%d: %d/%d", c[0], c[1], value, over)
		}
	}
}
