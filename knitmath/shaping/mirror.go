package shaping

import (
	"example.com/knitmath/knitmath/spread"
)

// mirroredFlat lays the gaps of a flat row so that they read the same from both
// ends: equal end gaps, and the larger inner gaps at the outside. With an odd
// number of changes one of them sits in the middle, and the plain stitches must
// then be even in number.
func (s spacing) mirroredFlat(out *EvenSpacing) bool {
	plain, inner := out.PlainStitches, s.k-1
	end := (plain + s.k) / (2 * s.k) // half a gap, to the nearest stitch
	end = min(end, (plain-inner*s.least())/2)
	if inner == 0 {
		end = plain / 2
	}
	gaps, ok := spread.Palindrome(inner, plain-2*end)
	out.Gaps = gaps
	out.FirstGapStitches, out.LastGapStitches = s.edge+end, s.edge+end
	return ok
}

// mirroredRound lays the gaps of a round so that they read the same both ways
// from its beginning, which splits one gap in two equal halves. That gap must
// therefore be even.
func (s spacing) mirroredRound(out *EvenSpacing) bool {
	small, larger := out.PlainStitches/s.k, out.PlainStitches%s.k
	lengths := []int{small}
	if larger > 0 {
		lengths = append(lengths, small+1)
	}
	for _, split := range lengths {
		if split%2 != 0 {
			continue
		}
		gaps, ok := spread.Palindrome(s.k-1, out.PlainStitches-split)
		if ok {
			out.Gaps = gaps
			out.FirstGapStitches, out.LastGapStitches = split/2, split/2
			return true
		}
	}
	return false
}
