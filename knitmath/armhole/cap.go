package armhole

import (
	"math"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
)

// The slope of a cap: 0 goes straight from the foot to the top, 1 flattens out at
// either end over a quarter of the height and stands upright between. The usual one
// leaves a decrease on every second row of its middle at common gauges. Own choice; the
// order is that of published caps: bind-offs, then decreases every 2nd row, then faster
// towards the top.
const (
	straightest = 0.0
	usualSlope  = 0.6
	steepest    = 0.85

	// Where decreases alone shape a cap, a steeper one would have many in succession, many
	// rows even, and many again.
	steepestOfDecreases = 0.5
)

// Where the height is free the slope stays nearer to the usual one, and the height moves, as
// long as that serves.
const (
	straighter = 0.3
	steeper    = 0.75
)

// heights are how many rows higher than by its curve a cap of free height is tried, in this
// order; all even, so that both edges have as many rows.
var heights = [...]int{0, -2, 2, -4, 4}

// How many caps are tried, and when no other is.
const (
	mostTries    = 30
	triesOfSlope = 3
	goodEnough   = 0.25 // percent from the excess that is wanted: a millimetre, which nobody sews
	nearEnough   = 1.0  // the same, before decreases on every row are tried
	wide         = 4.0  // percent by which an edge as knit is longer than its curve, and more
)

// solve finds edges that go together.
func (s settled) solve() (sewn, bool) {
	if s.style.straight() {
		return s.straightPieces(), true
	}
	var found sewn
	if s.capRows < 0 {
		return found, false
	}
	var ok bool
	if found.back, ok = s.armhole(s.back, s.backLost); !ok {
		return found, false
	}
	found.front = found.back
	if s.front != s.back || s.frontLost != s.backLost {
		if found.front, ok = s.armhole(s.front, s.frontLost); !ok {
			return found, false
		}
	}
	around := s.edgeCm(found.back) + s.edgeCm(found.front)
	best := s.cap(around)
	if best.nearest > nearEnough {
		// The steps of bind-offs are longer than the slope that they stand for. A low cap
		// may want decreases instead, on every row.
		s.everyRow = true
		if other := s.cap(around); other.nearest < best.nearest-goodEnough || best.best.rows == 0 {
			best = other
		}
	}
	found.top = best.best
	return found, found.top.rows > 0
}

// armhole shapes a back or a front. Where it is not said over how many rows, it takes as
// many as it needs.
func (s settled) armhole(start, lost int) (shaped, bool) {
	group := s.largestGroup
	if group == 0 {
		group = s.underarm
	}
	p, ok := s.follow(start, lost, s.depth, group, s.armholePath(lost, s.shapingRows), false)
	for rows := max(s.rowsNeeded(lost), s.shapingRows+2); !ok && !s.shapingGiven && rows <= s.depth; rows += 2 {
		p, ok = s.follow(start, lost, s.depth, group, s.armholePath(lost, rows), false)
	}
	return p, ok
}

// rowsNeeded are the rows in which an edge loses so many, one in every right-side row
// above the underarm. A curve wants some more, since it goes in faster below.
func (s settled) rowsNeeded(lost int) int { return underarmRows + 2*(lost-s.underarm) }

// armholePath is the curve of a back or a front above its underarm.
func (s settled) armholePath(lost, rows int) curve.Path {
	return curve.From(curve.At(s.underarm, underarmRows, s.st, s.rw)).Ellipse(curve.At(lost, rows, s.st, s.rw), curve.LeavingAcross)
}

// cap finds a cap for an armhole of so many cm. A height by a rule is a rule of thumb: it
// is moved by up to half an inch if it must.
func (s settled) cap(around float64) *sought {
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

// steepest is the steepest slope of a cap whose height is given.
func (s settled) steepest() float64 {
	if s.everyRow {
		return steepestOfDecreases
	}
	return steepest
}

// capPath is the curve of a cap so many rows high.
func (s settled) capPath(rows int, slope float64) curve.Path {
	foot, side := float64(s.underarm), float64(s.capLost()-s.underarm)
	low, up := float64(underarmRows), float64(rows-underarmRows)
	at := func(across, high float64) curve.Point { return corner(foot+across*side, low+high*up, s.st, s.rw) }
	across, high := slope/2, slope/4
	return curve.From(at(0, 0)).Ellipse(at(across, high), curve.LeavingAcross).
		Line(at(1-across, 1-high)).Ellipse(at(1, 1), curve.LeavingUp)
}

// capLost is how many stitches a cap loses at each edge before its top.
func (s settled) capLost() int { return (s.sleeve - s.top) / 2 }

// guess is about how long the edge of a cap will be.
func (s settled) guess(rows int, slope float64) float64 {
	side := s.st.SizeCm(s.underarm) + s.capPath(rows, slope).Length() + s.rw.SizeCm(1)/2
	if s.style == StyleSaddle {
		return 2 * side
	}
	return 2*side + s.st.SizeCm(s.top)
}

// sought is the best of the caps that were tried.
type sought struct {
	settled
	around, wanted float64 // edges
	best           shaped
	nearest        float64 // percent from the excess that is wanted
	left           int     // caps that may be tried
	tried          []tried
}

// tried is a cap that was worked out, and how long its edge is; 0 if there is none.
type tried struct {
	rows          int
	slope, length float64
}

func (s settled) seek(around float64) *sought {
	return &sought{settled: s, around: around, wanted: around * (1 + s.excess/100), nearest: math.Inf(1), left: s.tries}
}

// try works out a cap, and keeps it if it is the best so far. It gives the length of its
// edge, 0 if there is no such cap or none may be tried any more.
func (x *sought) try(rows int, slope float64) float64 {
	for _, t := range x.tried {
		if t.rows == rows && t.slope == slope {
			return t.length
		}
	}
	if x.left == 0 {
		return 0
	}
	x.left--
	length := x.work(rows, slope)
	x.tried = append(x.tried, tried{rows, slope, length})
	return length
}

// work is try of a cap that was not tried before.
func (x *sought) work(rows int, slope float64) float64 {
	group := max(x.underarm, x.st.Nearest(measure.Micrometres(measure.CmPerInch)))
	if x.everyRow {
		group = 0
	}
	p, ok := x.follow(x.sleeve, x.capLost(), rows, group, x.capPath(rows, slope), true)
	if !ok || p.plan.Kinked && x.everyRow { // row after row and now and then not: nobody follows that
		return 0
	}
	p.top, p.strap = x.top, x.strapRows
	length := x.capEdgeCm(p)
	more := excess(length, x.around)
	off := math.Abs(more - x.excess)
	if p.plan.Kinked {
		off += MaxExcess // any that has no kink is better
	}
	if more >= MinExcess && more <= MaxExcess && off < x.nearest {
		x.best, x.nearest = p, off
	}
	return length
}

// learn keeps by how many percent an edge as knit is longer than its curve promises, on
// average.
func (x *sought) learn() {
	n, sum := 0.0, 0.0
	for _, t := range x.tried {
		if t.length > 0 {
			n++
			sum += excess(t.length, x.around) - excess(x.guess(t.rows, t.slope), x.around)
		}
	}
	if n > 0 {
		*x.longer = sum / n
	}
}

// high finds a cap of the height that its edge wants: of the usual slope, or of one that
// makes its edge as long as is wanted, and else of a height beside that one. An edge as knit
// is not as long as its curve; the first try tells by how much.
func (x *sought) high() {
	rows := x.rowsFor(x.wanted, usualSlope)
	if length := x.try(rows, usualSlope); length > 0 {
		rows = x.rowsFor(x.wanted*x.guess(rows, usualSlope)/length, usualSlope)
	}
	for _, slopes := range [...][2]float64{{straighter, steeper}, {straightest, x.steepest()}} {
		for _, more := range heights {
			if x.nearest <= goodEnough {
				return
			}
			if h := rows + more; h >= leastCapRows && h <= x.depth+x.depth%2 {
				x.sloped(h, slopes[0], slopes[1])
			}
		}
	}
}

// rowsFor is the least even height at which the curve of a cap is so long.
func (s settled) rowsFor(length, slope float64) int {
	low, top := leastCapRows, s.depth
	for low < top {
		middle := (low + top) / 2
		if s.guess(middle, slope) < length {
			low = middle + 1
		} else {
			top = middle
		}
	}
	return low + low%2
}

// sloped finds a cap of a height, of the slope between two that its edge wants.
func (x *sought) sloped(rows int, straight, steep float64) {
	target := x.wanted
	if excess(x.guess(rows, straight), x.around) > MaxExcess+wide || excess(x.guess(rows, steep), x.around) < MinExcess-wide {
		return // as knit an edge is not as long as its curve
	}
	last := x.try(rows, usualSlope)
	if last > 0 {
		target *= x.guess(rows, usualSlope) / last
	}
	for range triesOfSlope {
		if x.nearest <= goodEnough {
			return
		}
		low, top := straight, steep
		for range 10 {
			middle := (low + top) / 2
			if x.guess(rows, middle) < target {
				low = middle
			} else {
				top = middle
			}
		}
		length := x.try(rows, low)
		if length == 0 || length == last {
			return
		}
		last = length
		target = x.guess(rows, low) * x.wanted / length
	}
}
