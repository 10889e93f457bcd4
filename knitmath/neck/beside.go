package neck

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// follows tells of a count which others follow from it, and whether they can be had; nothing does where goes is nil.
type follows struct {
	goes func(n int) bool
	most int // how far from the nearest count another may lie: a repeat of what follows
}

// followsOf is what follows under a rule.
func followsOf(r *gauge.CountRule, goes func(n int) bool) follows {
	most := 1
	if r != nil {
		most = fault.Or(r.Multiple, 1)
	}
	return follows{goes, most}
}

// neckOf is whether a width leaves a neck.
func (s *settler) neckOf() follows {
	return followsOf(s.in.NeckRule, func(width int) bool {
		if n := s.in.NeckStitches; n != nil {
			return (width-*n)%2 == 0
		}
		return s.ruled(s.in.NeckRule, width, -2)
	})
}

// widthOf is whether a neck with its shoulders makes a width.
func (s *settler) widthOf() follows {
	return followsOf(s.in.WidthRule, func(neck int) bool { return s.ruled(s.in.WidthRule, neck, 2) })
}

// ruled is whether a rule has the count that is so many shoulders more, or one of the same parity where they are no
// whole number of stitches.
func (s *settler) ruled(r *gauge.CountRule, of, shoulders int) bool {
	if n := s.in.ShoulderStitches; n != nil {
		x, _ := combOf(r, anyParity)
		return x.allows(of + shoulders**n)
	}
	_, ok := combOf(r, of%2)
	return ok
}

// beside is the count nearest to an amount with which what follows can be had, the nearest itself where none near it is one.
func (f follows) beside(x comb, a amount, nearest int) int {
	if f.goes == nil || f.goes(nearest) {
		return nearest
	}
	step := int(x.step)
	sides := [2]int{1, -1} // the nearer first, halves up
	if int64(nearest)*a.den > a.num {
		sides = [2]int{-1, 1}
	}
	for off := step; off <= max(step, f.most); off += step {
		for _, side := range sides {
			if side > 0 && x.rounding == measure.RoundingDown || side < 0 && x.rounding == measure.RoundingUp {
				continue
			}
			if n := nearest + side*off; n > 0 && x.allows(n) && f.goes(n) {
				return n
			}
		}
	}
	return nearest
}
