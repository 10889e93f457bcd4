package neck

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// ruledNeck is a neck whose counts rules bind, one of its measures in cm, by a number.
func ruledNeck(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 31))
	rule := func() *gauge.CountRule {
		if r.IntN(4) == 0 {
			return nil
		}
		m := 1 + r.IntN(8)
		return &gauge.CountRule{Multiple: &m, Remainder: new(r.IntN(m)), Rounding: measure.Rounding(r.IntN(4))}
	}
	in := Input{Gauge: &gauge.Gauge{Stitches: float64(28+r.IntN(36)) / 2, Rows: 30}, WidthRule: rule(), NeckRule: rule()}
	cm := func(low, wide float64) *float64 { return new(math.Round(10*(low+wide*r.Float64())) / 10) }
	switch r.IntN(5) {
	case 0:
		in.WidthCm, in.NeckStitches, in.NeckRule = cm(32, 20), new(24+r.IntN(30)), nil
	case 1:
		in.WidthCm, in.ShoulderStitches = cm(34, 20), new(10+r.IntN(20))
	case 2:
		in.WidthCm, in.NeckCm = cm(32, 20), cm(13, 8)
	case 3:
		in.WidthCm = cm(32, 20)
	default:
		in.NeckCm, in.ShoulderStitches = cm(13, 8), new(10+r.IntN(20))
	}
	return in
}

// A width or a neck that is worked out from a measure has the nearest count, of those of its rule on the side that it rounds to,
// with which the other can be had, by brute force over all counts within a repeat; where there is one nothing is refused for a
// rule. Of these questions a fifth were.
func TestCountsAreChosenTogether(t *testing.T) {
	done, moved, refused := 0, 0, 0
	for seed := range knittest.Sweep(6_000, 600) {
		in := ruledNeck(uint64(seed))
		free, other, shoulders, asked := in.WidthRule, in.NeckRule, -2, in.WidthCm
		if asked == nil {
			free, other, shoulders, asked = in.NeckRule, in.WidthRule, 2, in.NeckCm
		}
		goes := func(n int) bool {
			if in.NeckStitches != nil {
				return (n-*in.NeckStitches)%2 == 0
			}
			if in.ShoulderStitches != nil {
				return hasCount(other, n+shoulders**in.ShoulderStitches)
			}
			for m := 1 + (n+1)%2; m <= 40; m += 2 { // every parity that a rule has, it has up to 40
				if hasCount(other, m) {
					return true
				}
			}
			return false
		}
		exact := *asked * in.Gauge.Stitches / 10
		alone, together := nearestCount(free, exact, func(int) bool { return true }), nearestCount(free, exact, goes)
		far := 1
		for _, r := range []*gauge.CountRule{free, other} {
			if r != nil {
				far = max(far, *r.Multiple)
			}
		}
		var c fault.Checks
		s := settler{c: &c, in: in, st: gauge.NewDensity(in.Gauge.Stitches, 10)}
		got := s.settle()
		count := got.width
		if in.WidthCm == nil {
			count = got.neck
		}
		switch {
		case together == 0 || measure.Abs(together-alone) > far:
			refused++
		case count != together:
			t.Errorf("question %d: %d, and %d goes with the others: %+v, %v", seed, count, together, in, c.Err())
		default:
			done++
			moved += min(1, measure.Abs(together-alone))
		}
	}
	t.Logf("%d settled, %d of them beside the nearest count, %d with none near", done, moved, refused)
	if done < knittest.Sweep(4_000, 400) || moved < knittest.Sweep(1_000, 100) {
		t.Errorf("%d settled, %d of them beside the nearest count, %d with none near", done, moved, refused)
	}
}

// hasCount reports whether a rule has a count, by the words that say what a rule is.
func hasCount(r *gauge.CountRule, n int) bool {
	if r == nil {
		return n > 0
	}
	for m := *r.Remainder; m <= n; m += *r.Multiple {
		if m == n && n > 0 {
			return true
		}
	}
	return false
}

// nearestCount is the count of a rule nearest to so many, halves up, that goes with others.
func nearestCount(r *gauge.CountRule, exact float64, goes func(int) bool) int {
	best, n := math.Inf(1), 0
	for k := 1; k < 400; k++ {
		off := float64(k) - exact
		if !hasCount(r, k) || !goes(k) || r != nil && (r.Rounding == measure.RoundingUp && off < -1e-9 ||
			r.Rounding == measure.RoundingDown && off > 1e-9) {
			continue
		}
		if off = math.Abs(off); off <= best+1e-9 {
			best, n = off, k
		}
	}
	return n
}
