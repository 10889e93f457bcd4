package spread

import (
	"math/big"
	"slices"
	"strings"
	"testing"
)

// laid writes k things over n places as x and dots.
func laid(k, n int, p Phase) string {
	line := []byte(strings.Repeat(".", n))
	for i := range k {
		line[Place(i, k, n, p)] = 'x'
	}
	return string(line)
}

// By hand: 8 places for 3 things are 8/3 each, from 0: 0, 2.67, 5.33; with half
// of that before the first: 1.33, 4, 6.67. For 5 things 1.6 each: 0, 1.6, 3.2, 4.8,
// 6.4, and 0.8, 2.4, 4, 5.6, 7.2. The rhythms are those of Toussaint (2005),
// E(3,8) = x..x..x. and E(5,8) = x.xx.xx., which have another beginning.
func TestPlacesByHand(t *testing.T) {
	for _, c := range []struct {
		k, n             int
		atStart, centred string
		rhythm           string
	}{
		{3, 8, "x.x..x..", ".x..x.x.", "x..x..x."},
		{5, 8, "xx.xx.x.", "x.x.xx.x", "x.xx.xx."},
		{1, 5, "x....", "..x..", "x...."},
		{4, 4, "xxxx", "xxxx", "xxxx"},
		{2, 8, "x...x...", "..x...x.", "x...x..."},
	} {
		for p, want := range map[Phase]string{AtStart: c.atStart, Centred: c.centred} {
			got := laid(c.k, c.n, p)
			if got != want {
				t.Errorf("%d over %d, phase %d: %s, want %s", c.k, c.n, p, got, want)
			}
			if !strings.Contains(got+got, c.rhythm) {
				t.Errorf("%d over %d, phase %d: %s is no rotation of %s", c.k, c.n, p, got, c.rhythm)
			}
		}
	}
}

// What "as evenly as integers allow" means, measured without the formula: any two
// stretches of equal length, around the end too, hold numbers of things that
// differ by at most one.
func TestPlacesAreBalanced(t *testing.T) {
	for n := 1; n <= 24; n++ {
		for k := 1; k <= n; k++ {
			for _, p := range []Phase{AtStart, Centred} {
				line := laid(k, n, p)
				if got := strings.Count(line, "x"); got != k {
					t.Fatalf("%d over %d, phase %d: %s holds %d", k, n, p, line, got)
				}
				for size := 1; size < n; size++ {
					fewest, most := n, 0
					for at := range n {
						held := strings.Count((line + line)[at:at+size], "x")
						fewest, most = min(fewest, held), max(most, held)
					}
					if most-fewest > 1 {
						t.Fatalf("%d over %d, phase %d: %s holds from %d to %d in %d places", k, n, p, line, fewest, most, size)
					}
				}
			}
		}
	}
}

// Each place is the last not beyond the exact one, i*n/k or half a gap more, in
// rationals; up to the most stitches of a row.
func TestPlacesAgainstRationals(t *testing.T) {
	for _, n := range []int{1, 2, 7, 100, 9_973, 10_000} {
		for _, k := range []int{1, 2, 3, 7, 99, 9_999, 10_000} {
			for i := 0; i < k; i += max(1, k/50) {
				gap := big.NewRat(int64(n), int64(k))
				at := new(big.Rat).Mul(gap, big.NewRat(int64(i), 1))
				for p, exact := range map[Phase]*big.Rat{
					AtStart: at,
					Centred: new(big.Rat).Add(at, new(big.Rat).Quo(gap, big.NewRat(2, 1))),
				} {
					want := new(big.Int).Div(exact.Num(), exact.Denom())
					if got := Place(i, k, n, p); big.NewInt(int64(got)).Cmp(want) != 0 {
						t.Fatalf("thing %d of %d over %d, phase %d: at %d, want %d", i, k, n, p, got, want)
					}
				}
			}
		}
	}
}

// The shares are n/k rounded down or up, sum to n, and their running total is
// never further than a half from the straight line, half-way above it.
func TestSharesFollowTheLine(t *testing.T) {
	half := big.NewRat(1, 2)
	for _, n := range []int{0, 1, 2, 3, 10, 24, 97, 10_000} {
		for _, k := range []int{1, 2, 3, 4, 7, 24, 100} {
			sum := 0
			for i := range k {
				share := Share(i, k, n)
				if share != n/k && share != (n+k-1)/k {
					t.Fatalf("share %d of %d in %d: %d", i, k, n, share)
				}
				sum += share
				line := big.NewRat(int64(n)*int64(i+1), int64(k))
				off := line.Sub(big.NewRat(int64(sum), 1), line)
				if off.Cmp(half) > 0 || off.Cmp(new(big.Rat).Neg(half)) <= 0 {
					t.Fatalf("%d units in the first %d of %d parts of %d: off by %v", sum, i+1, k, n, off)
				}
			}
			if sum != n {
				t.Fatalf("%d parts of %d sum to %d", k, n, sum)
			}
		}
	}
}

func TestAppendGap(t *testing.T) {
	for _, c := range []struct {
		name     string
		runs     []GapRun
		n, times int
		want     []GapRun
	}{
		{"the first", nil, 4, 2, []GapRun{{4, 2}}},
		{"none", nil, 4, 0, nil},
		{"none behind others", []GapRun{{4, 2}}, 5, 0, []GapRun{{4, 2}}},
		{"none of the same", []GapRun{{4, 2}}, 4, 0, []GapRun{{4, 2}}},
		{"another", []GapRun{{4, 2}}, 5, 1, []GapRun{{4, 2}, {5, 1}}},
		{"the same", []GapRun{{4, 2}}, 4, 3, []GapRun{{4, 5}}},
		{"the same but not the last", []GapRun{{4, 2}, {5, 1}}, 4, 1, []GapRun{{4, 2}, {5, 1}, {4, 1}}},
		{"the last of two", []GapRun{{4, 2}, {5, 1}}, 5, 1, []GapRun{{4, 2}, {5, 2}}},
		{"no stitches between", []GapRun{{4, 2}}, 0, 2, []GapRun{{4, 2}, {0, 2}}},
	} {
		if got := AppendGap(slices.Clone(c.runs), c.n, c.times); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}
