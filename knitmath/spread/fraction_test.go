package spread

import (
	"math/big"
	"testing"
)

// By hand. Pi between 3/1 and 22/7 (Archimedes); 355/113 lies beyond the limit.
// 0.7333 is 11/15, which in eighths is best said as 5/7 (0.0190 off) or 3/4
// (0.0167 off). The reciprocals the other way round.
func TestNearestSmallByHand(t *testing.T) {
	for _, c := range []struct {
		x     Fraction
		limit int64
		want  Fraction
	}{
		{Fraction{314159265, 100000000}, 8, Fraction{3, 1}},
		{Fraction{314159265, 100000000}, 22, Fraction{22, 7}},
		{Fraction{11, 15}, 8, Fraction{3, 4}},
		{Fraction{11, 15}, 15, Fraction{11, 15}},
		{Fraction{22, 30}, 20, Fraction{11, 15}},
		{Fraction{3, 4}, 8, Fraction{3, 4}},
		{Fraction{1, 1}, 8, Fraction{1, 1}},
		{Fraction{1, 1000}, 8, Fraction{1, 8}},
		{Fraction{1000, 1}, 8, Fraction{8, 1}},
		{Fraction{5, 2}, 2, Fraction{2, 1}},  // as far from 2 as from 3, which is above the limit
		{Fraction{3, 8}, 3, Fraction{1, 3}},  // 1/3 is 0.042 off, 1/2 is 0.125
		{Fraction{5, 12}, 3, Fraction{1, 2}}, // exactly half-way from 1/3 to 1/2
		{Fraction{1e15 - 1, 1e15}, 20, Fraction{1, 1}},
	} {
		if got := c.x.NearestSmall(c.limit); got != c.want {
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
				x := Fraction{num, den}
				got := x.NearestSmall(limit)
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

// At the bounds that the comment gives, where the products are largest: no
// fraction within the limit is nearer, in exact rationals.
func TestNearestSmallAtItsBounds(t *testing.T) {
	const most, limit = 1_000_000_000_000_000, 50
	for _, x := range []Fraction{
		{most, most}, {most, most - 1}, {most - 1, most}, {1, most}, {most, 1}, {most, 3}, {most / 7, most},
		{most, most/50*49 + 1}, {most/50*49 - 1, most}, {618_033_988_749_895, most}, {most, 318_309_886_183_791},
	} {
		at := big.NewRat(x.Num, x.Den)
		away := func(f Fraction) *big.Rat {
			d := new(big.Rat).Sub(big.NewRat(f.Num, f.Den), at)
			return d.Abs(d)
		}
		got := x.NearestSmall(limit)
		for p := int64(1); p <= limit; p++ {
			for q := int64(1); q <= limit; q++ {
				if away(Fraction{p, q}).Cmp(away(got)) < 0 {
					t.Fatalf("%v within %d: %v, but %d/%d is nearer", x, limit, got, p, q)
				}
			}
		}
	}
}

// nearestByTrying compares every fraction, the smaller numbers first.
func nearestByTrying(x Fraction, limit int64) Fraction {
	best := Fraction{1, 1}
	for p := int64(1); p <= limit; p++ {
		for q := int64(1); q <= limit; q++ {
			f := Fraction{p, q}
			// |x - f| < |x - best|, times all denominators
			switch d := x.distance(f)*best.Den - x.distance(best)*f.Den; {
			case d < 0, d == 0 && f.Num+f.Den < best.Num+best.Den:
				best = f
			}
		}
	}
	return best
}

// nearestByWalking goes down the tree by single mediants.
func nearestByWalking(x Fraction, limit int64) Fraction {
	at := big.NewRat(x.Num, x.Den)
	lo, hi := Fraction{0, 1}, Fraction{1, 0}
	best := Fraction{}
	gap := new(big.Rat)
	for {
		m := Fraction{lo.Num + hi.Num, lo.Den + hi.Den}
		if m.Num > limit || m.Den > limit {
			return best
		}
		d := new(big.Rat).Sub(big.NewRat(m.Num, m.Den), at)
		away := new(big.Rat).Abs(d)
		if best.Num == 0 || away.Cmp(gap) < 0 {
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
		x := Fraction{1 + (num&(1<<62-1))%most, 1 + (den&(1<<62-1))%most}
		limit = 1 + (limit&(1<<62-1))%20
		got := x.NearestSmall(limit)
		at := big.NewRat(x.Num, x.Den)
		gap := func(f Fraction) *big.Rat {
			d := new(big.Rat).Sub(big.NewRat(f.Num, f.Den), at)
			return d.Abs(d)
		}
		mine := gap(got)
		for p := int64(1); p <= limit; p++ {
			for q := int64(1); q <= limit; q++ {
				if gap(Fraction{p, q}).Cmp(mine) < 0 {
					t.Fatalf("%v within %d: %v, but %d/%d is nearer", x, limit, got, p, q)
				}
			}
		}
		if got.Num < 1 || got.Den < 1 || got.Num > limit || got.Den > limit {
			t.Fatalf("%v within %d: %v", x, limit, got)
		}
	})
}
