package knitmath

// mirroredFlat lays the gaps of a flat row so that they read the same from both
// ends: equal end gaps, and the larger inner gaps at the outside. With an odd
// number of changes one of them sits in the middle, and the plain stitches must
// then be even in number.
func (s spacing) mirroredFlat(out *EvenSpacing) bool {
	plain, inner := out.PlainCount, s.k-1
	end := (plain + s.k) / (2 * s.k) // half a gap, to the nearest stitch
	if s.edge == 0 {
		end = max(end, s.least())
	}
	end = min(end, (plain-inner*s.least())/2)
	if inner == 0 {
		end = plain / 2
	}
	gaps, ok := palindrome(inner, plain-2*end)
	out.Gaps = gaps
	out.FirstGapCount, out.LastGapCount = s.edge+end, s.edge+end
	return ok
}

// mirroredRound lays the gaps of a round so that they read the same both ways
// from its beginning, which splits one gap in two equal halves. That gap must
// therefore be even.
func (s spacing) mirroredRound(out *EvenSpacing) bool {
	small, larger := out.PlainCount/s.k, out.PlainCount%s.k
	for _, split := range []struct{ gap, have int }{{small, s.k - larger}, {small + 1, larger}} {
		if split.gap%2 != 0 || split.have == 0 {
			continue
		}
		gaps, ok := palindrome(s.k-1, out.PlainCount-split.gap)
		if ok {
			out.Gaps = gaps
			out.FirstGapCount, out.LastGapCount = split.gap/2, split.gap/2
			return true
		}
	}
	return false
}

// palindrome orders n gaps that sum to plain so that they read the same from
// both ends. It fails when an even number of gaps would need an odd number of
// larger ones, or when there is no gap to hold what is left.
func palindrome(n, plain int) ([]GapRun, bool) {
	if n == 0 {
		return nil, plain == 0
	}
	small, larger := plain/n, plain%n
	if n%2 == 0 && larger%2 != 0 {
		return nil, false
	}
	half := larger / 2
	middle := n - 2*half // all smaller, or with one larger in the very middle
	runs := appendGap(nil, small+1, half)
	if larger%2 == 0 {
		runs = appendGap(runs, small, middle)
	} else {
		runs = appendGap(runs, small, (middle-1)/2)
		runs = appendGap(runs, small+1, 1)
		runs = appendGap(runs, small, (middle-1)/2)
	}
	return appendGap(runs, small+1, half), true
}
