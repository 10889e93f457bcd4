package knitmath

import (
	"math/big"
	"testing"
)

// By hand. Pi between 3/1 and 22/7 (Archimedes); 355/113 lies beyond the limit.
// 0.7333 is 11/15, which in eighths is best said as 5/7 (0.0190 off) or 3/4
// (0.0167 off). The reciprocals the other way round.
func TestNearestSmallByHand(t *testing.T) {
	for _, c := range []struct {
		x     fraction
		limit int64
		want  fraction
	}{
		{fraction{314159265, 100000000}, 8, fraction{3, 1}},
		{fraction{314159265, 100000000}, 22, fraction{22, 7}},
		{fraction{11, 15}, 8, fraction{3, 4}},
		{fraction{11, 15}, 15, fraction{11, 15}},
		{fraction{22, 30}, 20, fraction{11, 15}},
		{fraction{3, 4}, 8, fraction{3, 4}},
		{fraction{1, 1}, 8, fraction{1, 1}},
		{fraction{1, 1000}, 8, fraction{1, 8}},
		{fraction{1000, 1}, 8, fraction{8, 1}},
		{fraction{5, 2}, 2, fraction{2, 1}},  // as far from 2 as from 3, which is above the limit
		{fraction{3, 8}, 3, fraction{1, 3}},  // 1/3 is 0.042 off, 1/2 is 0.125
		{fraction{5, 12}, 3, fraction{1, 2}}, // exactly half-way from 1/3 to 1/2
		{fraction{1e15 - 1, 1e15}, 20, fraction{1, 1}},
	} {
		if got := c.x.nearestSmall(c.limit); got != c.want {
			t.Errorf("%v within %d: %v, want %v", c.x, c.limit, got, c.want)
		}
	}
}

// Against two oracles: every fraction within the limit tried, and the tree of
// Stern and Brocot walked one step at a time in exact rationals.
func TestNearestSmallAgainstOracles(t *testing.T) {
	for limit := int64(1); limit <= 20; limit++ {
		for num := int64(1); num <= 67; num++ {
			for den := int64(1); den <= 67; den++ {
				x := fraction{num, den}
				got := x.nearestSmall(limit)
				if want := nearestByTrying(x, limit); got != want {
					t.Fatalf("%v within %d: %v, tried %v", x, limit, got, want)
				}
				if want := nearestByWalking(x, limit); got != want {
					t.Fatalf("%v within %d: %v, walked %v", x, limit, got, want)
				}
			}
		}
	}
}

// nearestByTrying compares every fraction, the smaller numbers first.
func nearestByTrying(x fraction, limit int64) fraction {
	best := fraction{1, 1}
	for p := int64(1); p <= limit; p++ {
		for q := int64(1); q <= limit; q++ {
			f := fraction{p, q}
			// |x - f| < |x - best|, times all denominators
			switch d := x.distance(f)*best.den - x.distance(best)*f.den; {
			case d < 0, d == 0 && f.num+f.den < best.num+best.den:
				best = f
			}
		}
	}
	return best
}

// nearestByWalking goes down the tree by single mediants.
func nearestByWalking(x fraction, limit int64) fraction {
	at := big.NewRat(x.num, x.den)
	lo, hi := fraction{0, 1}, fraction{1, 0}
	best := fraction{}
	gap := new(big.Rat)
	for {
		m := fraction{lo.num + hi.num, lo.den + hi.den}
		if m.num > limit || m.den > limit {
			return best
		}
		d := new(big.Rat).Sub(big.NewRat(m.num, m.den), at)
		away := new(big.Rat).Abs(d)
		if best.num == 0 || away.Cmp(gap) < 0 {
			best, gap = m, away
		}
		switch d.Sign() {
		case 0:
			return m
		case -1:
			lo = m
		default:
			hi = m
		}
	}
}

func FuzzNearestSmall(f *testing.F) {
	f.Add(int64(22e11), int64(30e11), int64(8))
	f.Fuzz(func(t *testing.T, num, den, limit int64) {
		const most = 1_000_000_000_000_000
		x := fraction{1 + (num&(1<<62-1))%most, 1 + (den&(1<<62-1))%most}
		limit = 1 + (limit&(1<<62-1))%20
		got := x.nearestSmall(limit)
		at := big.NewRat(x.num, x.den)
		gap := func(f fraction) *big.Rat {
			d := new(big.Rat).Sub(big.NewRat(f.num, f.den), at)
			return d.Abs(d)
		}
		mine := gap(got)
		for p := int64(1); p <= limit; p++ {
			for q := int64(1); q <= limit; q++ {
				if gap(fraction{p, q}).Cmp(mine) < 0 {
					t.Fatalf("%v within %d: %v, but %d/%d is nearer", x, limit, got, p, q)
				}
			}
		}
		if got.num < 1 || got.den < 1 || got.num > limit || got.den > limit {
			t.Fatalf("%v within %d: %v", x, limit, got)
		}
	})
}
