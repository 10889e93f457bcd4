package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// alike lays gaps that read the same from both ends: of kfb those of its bars, or where these counts
// have no such row those of the row as it is written, with a notice.
func (s *spacing) alike() (out EvenSpacing, ok bool) {
	s.bar = barOf(s.op)
	if out, ok = s.gaps(); ok || s.bar == 0 {
		return out, ok
	}
	s.bar = 0
	out, ok = s.gaps()
	out.Notices = append(out.Notices, barsUnlike(s.op))
	return out, ok
}

// barOf is how many stitches a change stands before what is seen of it: kfb knits a stitch and then
// makes its bar, so that rows whose bars lie alike from both ends have a stitch fewer before the
// first kfb than after the last: "kfb, k to last 2 sts, kfb, k1". Common practice.
func barOf(op stitch.Op) int {
	if op == stitch.KFB || op == stitch.PFB {
		return 1
	}
	return 0
}

// evenlyAlike is the row of those that read the same from both ends whose changes lie nearest to equal
// gaps: each of its first half at the stitch next to its place, and those of the other half as it has them.
// Where stitches must lie between changes, and that leaves none, it is the row that is given.
func (s spacing) evenlyAlike(given EvenSpacing) EvenSpacing {
	for _, up := range [...]int{0, 1} { // a place half-way between two stitches
		out := given
		if s.layEvenly(&out, up) && s.departureOf(out) < s.departureOf(given) {
			given = out
		}
	}
	return given
}

// layEvenly lays the gaps of that row, a place half-way between two stitches at the nearer end or, up, at the
// other. Bars are what reads the same, half a stitch from the place of their change. ok is false where
// stitches that must lie between changes do not.
func (s spacing) layEvenly(out *EvenSpacing, up int) (ok bool) {
	plain, last := out.PlainStitches, 0
	var half []int // the gaps of it
	for i := range s.k / 2 {
		at := ((2*i+1)*plain + s.k*s.bar + s.k - 1 + up) / (2 * s.k)
		half = append(half, at-last)
		last = at
	}
	if len(half) == 0 || half[0] < s.bar || s.edge == 0 && half[0] < s.least() {
		return false
	}
	middle := []int{plain + s.bar - 2*last}
	if s.k%2 == 1 {
		middle = []int{middle[0] / 2, middle[0] / 2}
	}
	gaps := slices.Concat(half[1:], middle)
	slices.Reverse(half)
	gaps = append(gaps, half[:len(half)-1]...)
	if slices.Min(gaps) < s.least() {
		return false
	}
	out.Gaps = nil
	for _, gap := range gaps {
		out.Gaps = spread.AppendGap(out.Gaps, gap, 1)
	}
	end := half[len(half)-1]
	out.FirstGapStitches, out.LastGapStitches = s.edge+end-s.bar, s.edge+end
	return true
}

// mirroredFlat lays the gaps of a flat row so that they read the same from both
// ends: equal end gaps, and the larger inner gaps at the outside. With an odd
// number of changes one of them sits in the middle, and the plain stitches must
// then be even in number; with bars, odd.
func (s spacing) mirroredFlat(out *EvenSpacing) bool {
	plain, inner := out.PlainStitches+s.bar, s.k-1
	end := (plain + s.k) / (2 * s.k) // half a gap, to the nearest stitch
	end = max(s.bar, min(end, (plain-inner*s.least())/2))
	if inner == 0 {
		end = plain / 2
	}
	if plain < 2*end || end < s.bar {
		return false
	}
	gaps, ok := spread.Palindrome(inner, plain-2*end)
	out.Gaps = gaps
	out.FirstGapStitches, out.LastGapStitches = s.edge+end-s.bar, s.edge+end
	return ok
}

// mirroredRound lays the gaps of a round so that they read the same both ways
// from its beginning, which splits one gap in two equal halves. That gap must
// therefore be even; with bars, odd.
func (s spacing) mirroredRound(out *EvenSpacing) bool {
	small, larger := out.PlainStitches/s.k, out.PlainStitches%s.k
	lengths := []int{small}
	if larger > 0 {
		lengths = append(lengths, small+1)
	}
	for _, split := range lengths {
		if (split+s.bar)%2 != 0 {
			continue
		}
		gaps, ok := spread.Palindrome(s.k-1, out.PlainStitches-split)
		if ok {
			out.Gaps = gaps
			out.LastGapStitches = (split + s.bar) / 2
			out.FirstGapStitches = split - out.LastGapStitches
			return true
		}
	}
	return false
}
