package armhole

import "math"

// sloped finds a cap of a height, of the slope between two that its edge wants.
func (x *sought) sloped(rows int, straight, steep float64) {
	if x.beyond(rows, straight, steep) {
		return
	}
	b := bracket{math.Inf(-1), math.Inf(1)}
	for _, t := range x.tried {
		if t.rows == rows && t.length > 0 {
			b.learn(t.slope, t.length < x.wanted)
		}
	}
	last := 0.0
	for n := 0; n < triesOfSlope || n < triesOfFirst && x.best.rows == 0; n++ {
		if x.done() {
			return
		}
		slope, ok := b.within(x.slopeFor(rows, x.wanted/x.asKnit, straight, steep))
		if !ok {
			return
		}
		length := x.try(rows, slope)
		if length == 0 && last == 0 {
			slope = usualSlope
			length = x.try(rows, slope)
		}
		if length == 0 || length == last && x.best.rows > 0 {
			return
		}
		last = length
		b.learn(slope, length < x.wanted)
	}
}

// beyond reports whether no cap of a height has an edge that is nearer than the best so far, or
// near at all, as far as its curve tells.
func (x *sought) beyond(rows int, straight, steep float64) bool {
	h := x.height(rows)
	short, long := excess(h.guess(straight)*x.asKnit, x.around), excess(h.guess(steep)*x.asKnit, x.around)
	switch {
	case len(x.tried) == 0:
		return false // how long an edge is as knit is not known yet
	case x.best.rows == 0:
		return short > MaxExcess+wide || long < MinExcess-wide
	}
	return max(short-x.excess, x.excess-long)-unsure >= x.nearest
}

// slopeFor is the slope between two with which the curve of a cap so many rows high is so long.
func (x *sought) slopeFor(rows int, length, straight, steep float64) float64 {
	h := x.height(rows)
	for range 10 {
		middle := (straight + steep) / 2
		if h.guess(middle) < length {
			straight = middle
		} else {
			steep = middle
		}
	}
	return straight
}

// bracket is the slopes of a height between which the one that is wanted lies: with the one the
// edge was too short, with the other too long.
type bracket struct{ short, long float64 }

func (b *bracket) learn(slope float64, short bool) {
	if short {
		b.short = slope
	} else {
		b.long = slope
	}
}

// within is a slope between them, that one or the middle; false if there is none worth trying.
func (b bracket) within(slope float64) (float64, bool) {
	if slope <= b.short || slope >= b.long {
		slope = (b.short + b.long) / 2 // which is no slope where only one of them is known
	}
	return slope, !math.IsInf(slope, 0) && b.long-b.short >= sameSlope
}
