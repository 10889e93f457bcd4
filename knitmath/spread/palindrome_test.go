package spread

import (
	"math/big"
	"slices"
	"testing"
)

// By hand. 11 over 3 gaps is 3 each and 2 more; 10 is 3 each and one more, which
// only the very middle can take; of 4 gaps there is no middle.
func TestPalindromeByHand(t *testing.T) {
	for _, c := range []struct {
		n, plain int
		want     []GapRun
		ok       bool
	}{
		{3, 11, []GapRun{{4, 1}, {3, 1}, {4, 1}}, true},
		{3, 10, []GapRun{{3, 1}, {4, 1}, {3, 1}}, true},
		{3, 9, []GapRun{{3, 3}}, true},
		{4, 10, []GapRun{{3, 1}, {2, 2}, {3, 1}}, true},
		{4, 9, nil, false},
		{5, 13, []GapRun{{3, 1}, {2, 1}, {3, 1}, {2, 1}, {3, 1}}, true},
		{5, 14, []GapRun{{3, 2}, {2, 1}, {3, 2}}, true},
		{1, 7, []GapRun{{7, 1}}, true},
		{2, 1, nil, false},
		{3, 0, []GapRun{{0, 3}}, true},
		{0, 0, nil, true},
		{0, 1, nil, false},
	} {
		got, ok := Palindrome(c.n, c.plain)
		if ok != c.ok || !slices.Equal(got, c.want) {
			t.Errorf("%d gaps of %d: %v, %v, want %v, %v", c.n, c.plain, got, ok, c.want, c.ok)
		}
	}
}

// Against trying: every order of gaps that differ by at most one is written out
// and those that read the same from both ends are kept. There is an answer just
// when one is left, and it is one of them.
func TestPalindromeAgainstTrying(t *testing.T) {
	for n := 1; n <= 9; n++ {
		for plain := range 40 {
			found := ordersThatMirror(n, plain)
			runs, ok := Palindrome(n, plain)
			if ok != (len(found) > 0) {
				t.Fatalf("%d gaps of %d: %v, %v, tried %v", n, plain, runs, ok, found)
			}
			var gaps []int
			for i, r := range runs {
				if r.Times < 1 || i > 0 && runs[i-1].Stitches == r.Stitches {
					t.Fatalf("%d gaps of %d: %v is not joined", n, plain, runs)
				}
				gaps = append(gaps, slices.Repeat([]int{r.Stitches}, r.Times)...)
			}
			if ok && !slices.ContainsFunc(found, func(f []int) bool { return slices.Equal(f, gaps) }) {
				t.Fatalf("%d gaps of %d: %v, tried %v", n, plain, gaps, found)
			}
		}
	}
}

// ordersThatMirror lists what reads the same from both ends among all orders of n
// gaps of plain/n or one more that sum to plain.
func ordersThatMirror(n, plain int) [][]int {
	var found [][]int
	for bits := range 1 << n {
		gaps, sum := make([]int, n), 0
		for i := range gaps {
			gaps[i] = plain/n + bits>>i&1
			sum += gaps[i]
		}
		back := slices.Clone(gaps)
		slices.Reverse(back)
		if sum == plain && slices.Equal(gaps, back) {
			found = append(found, gaps)
		}
	}
	return found
}

func TestGcd(t *testing.T) {
	for a := range int64(60) {
		for b := range int64(60) {
			want := new(big.Int).GCD(nil, nil, big.NewInt(a), big.NewInt(b))
			if got := Gcd(int(a), int(b)); big.NewInt(int64(got)).Cmp(want) != 0 {
				t.Fatalf("Gcd(%d, %d) = %d, want %d", a, b, got, want)
			}
		}
	}
}
