package armhole

import (
	"math"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
)

// Where the height is free the slope stays nearer to the usual one, and the height moves, as
// long as that serves.
const (
	straighter = 0.0
	steeper    = 0.8
)

// heights are how many rows higher than by its curve a cap of free height is tried, in this
// order; all even, so that both edges have as many rows.
var heights = [...]int{0, -2, 2, -4, 4, -6}

// How many caps are tried, and when no other is.
const (
	mostTries    = 12
	triesOfSlope = 3    // at a height
	triesOfFirst = 6    // the same, as long as there is no cap
	goodEnough   = 0.5  // percent from the excess that is wanted: two millimetres of 40 cm, which nobody sews
	easyEnough   = 0.75 // the same, of a cap with little to remember
	nearEnough   = 1.0  // the same, before decreases on every row are tried
	unsure       = 1.5  // percent by which a curve foretells an edge wrongly, once one is known
	wide         = 4.0  // the same before, and more
	sameSlope    = 0.03 // how near slopes are to one another whose plans are the same

	easy = effortOfUnderarm + 3*2 // the effort of three runs above the underarm
)

// cap finds a cap for an armhole of so many cm. A height by a rule is a rule of thumb: it
// is moved by up to half an inch if it must.
func (s *settled) cap(around float64) *sought {
	x := s.seek(around)
	defer x.learn()
	if s.capRows == 0 {
		x.high()
		return x
	}
	moved := 0
	if s.rule > CapHeightRuleFree {
		moved = s.rw.Nearest(measure.Micrometres(measure.CmPerInch / 2))
	}
	for n := 0; n <= moved/2*2; n++ {
		rows := s.capRows + 2*((n+1)/2)*(1-n%2*2) // as it is, two rows lower, two higher, four lower
		if x.sloped(max(rows, leastCapRows), straightest, x.steepest()); x.best.rows > 0 {
			break
		}
	}
	return x
}

// sought is the best of the caps that were tried.
type sought struct {
	settled
	around, wanted float64 // edges
	best           shaped
	nearest        float64 // percent from the excess that is wanted
	asKnit         float64 // as many times as long as its curve the edge last tried was
	left           int     // caps that may be tried
	tried          []tried
}

// tried is a cap that was worked out, and how long its edge is, 0 if there is none; and by its curve.
type tried struct {
	rows                 int
	slope, length, guess float64
}

func (s *settled) seek(around float64) *sought {
	return &sought{settled: *s, around: around, wanted: around * (1 + s.excess/100), nearest: math.Inf(1),
		asKnit: 1 + *s.longer/100, left: s.tries, tried: make([]tried, 0, s.tries)}
}

// try works out a cap, and keeps it if it is the best so far. It gives the length of its
// edge, 0 if there is no such cap or none may be tried any more.
func (x *sought) try(rows int, slope float64) float64 {
	for _, t := range x.tried {
		if t.rows == rows && math.Abs(t.slope-slope) < sameSlope {
			return t.length
		}
	}
	if x.left == 0 {
		return 0
	}
	x.left--
	h := x.height(rows)
	length, guess := x.work(rows, h.path(slope)), h.guess(slope)
	x.tried = append(x.tried, tried{rows, slope, length, guess})
	if length > 0 {
		x.asKnit = length / guess
	}
	return length
}

// done reports whether another cap is not worth a try.
func (x *sought) done() bool {
	return x.nearest <= goodEnough || x.nearest <= easyEnough && x.best.plan.Effort <= easy && x.ofForm(x.best) == 0
}

// work is try of a cap that was not tried before.
func (x *sought) work(rows int, path curve.Path) float64 {
	group := x.underarm
	switch {
	case x.way.wider():
		group = x.inch()
	case x.way == onEveryRow:
		group = 0
	}
	p, ok := x.follow(x.sleeve, x.capLost(), rows, group, path, true)
	if !ok || p.plan.Kinked && x.way == onEveryRow || p.swells() { // row after row and now and then not: nobody follows that
		return 0
	}
	p.top, p.strap = x.top, x.strapRows
	length := x.capEdgeCm(p)
	more := excess(length, x.around)
	off := math.Abs(more - x.excess)
	if p.plan.Kinked {
		off += MaxExcess // any that has no kink is better
	}
	off += x.ofForm(p)
	if more >= MinExcess && more <= MaxExcess && off < x.nearest {
		x.best, x.nearest = p, off
	}
	return length
}

// swells reports whether the foot of a cap binds off more in its second step than in its
// first, which no published cap does. Common practice.
func (p shaped) swells() bool {
	steps := p.plan.Right
	return len(steps) > 1 && steps[1].Kind == curve.KindBindOff && steps[1].Stitches > steps[0].Stitches
}

// learn keeps by how many percent an edge as knit is longer than its curve promises, on
// average.
func (x *sought) learn() {
	n, sum := 0.0, 0.0
	for _, t := range x.tried {
		if t.length > 0 {
			n++
			sum += excess(t.length, x.around) - excess(t.guess, x.around)
		}
	}
	if n > 0 {
		*x.longer = sum / n
	}
}

// high finds a cap of the height that its edge wants: of the usual slope, or of one that
// makes its edge as long as is wanted, and else of a height beside that one. An edge as knit
// is not as long as its curve; each try tells by how much.
func (x *sought) high() {
	rows := x.rowsFor(x.wanted, usualSlope)
	if x.try(rows, usualSlope) > 0 {
		rows = x.rowsFor(x.wanted/x.asKnit, usualSlope)
	}
	for _, slopes := range [...][2]float64{{straighter, steeper}, {straightest, x.steepest()}} {
		for _, more := range heights {
			if x.done() {
				return
			}
			if h := rows + more; h >= leastCapRows && h <= x.depth+x.depth%2 {
				x.sloped(h, slopes[0], slopes[1])
			}
		}
	}
}

// rowsFor is the least even height at which the curve of a cap is so long.
func (s *settled) rowsFor(length, slope float64) int {
	low, top := leastCapRows, s.depth
	for low < top {
		middle := (low + top) / 2
		if s.height(middle).guess(slope) < length {
			low = middle + 1
		} else {
			top = middle
		}
	}
	return low + low%2
}
