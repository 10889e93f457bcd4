package armhole

import (
	"math"

	"example.com/knitmath/knitmath/curve"
)

// The slope of a cap: 0 goes straight from the foot to the top; at 1 it leaves the foot along
// the row, bends upward, and bends back again to its top, as far as a decrease on every 4th row;
// beyond 1 it lies level at its foot and its top besides. The usual one comes to decreases on
// every 2nd row of its middle at common gauges, and to caps between three fifths and seven
// tenths of the armhole. Own choice; the order is that of published caps: bind-offs, then
// decreases every 2nd row, then faster towards the top.
const (
	straightest = 0.0
	usualSlope  = 0.3
	steepest    = 1.6

	// Where decreases alone shape a cap, a steeper one would have many in succession, many
	// rows even, and many again.
	steepestOfDecreases = 1

	least = 1e-6 // a radius that bends nothing, of the width
)

// A capWay is what a cap may be shaped by. The first that comes near enough is taken.
type capWay int

const (
	// narrowGroups: bind-offs no wider than the first, and decreases on right-side rows, none of
	// them more than [mostBend] times as quick as those before or as slow.
	narrowGroups capWay = iota
	// widerAtTop: those near the top may be an inch wide where the first is less, as of a small
	// child's.
	widerAtTop
	// abruptly and abruptlyWider: the same, however much they bend at once.
	abruptly
	abruptlyWider
	// onEveryRow: decreases alone, on every row. The steps of bind-offs are longer than the
	// slope that they stand for, and a low cap may want them so.
	onEveryRow
	capWays
)

// wider reports whether bind-offs may be wider than the first.
func (w capWay) wider() bool { return w == widerAtTop || w == abruptlyWider }

// bend is how many times as quick or as slow steps may become, 0 without limit.
func (w capWay) bend() int {
	if w < abruptly {
		return mostBend
	}
	return 0
}

// mostBend makes a bell: bind-offs of 4 lead to decreases on every 2nd row, those of 2 to every
// 4th, and back. Published caps go from decreases on every 2nd row to twice as many, or to
// bind-offs of half an inch.
const mostBend = 4

// steepest is the steepest slope of a cap whose height is given.
func (s settled) steepest() float64 {
	if s.way == onEveryRow {
		return steepestOfDecreases
	}
	return steepest
}

// A bell is one side of a cap above its underarm, in cm: level, an arc of a circle, a straight
// line, an arc, level.
type bell struct {
	wide, high         float64
	level              float64 // at its foot, and again at its top
	angle, radius      float64 // by how much an arc bends
	bentAcross, bentUp float64 // where the first one ends, from where it begins
}

// bell is the one of a cap so many rows high. Where an arc of radius r bends by the angle a, two
// of them and the line between cross w and rise h if r = (w sin a - h cos a) / 2 (1 - cos a).
func (s settled) bell(rows int, slope float64) bell {
	b := bell{wide: s.st.SizeCm(s.capLost() - s.underarm), high: s.rw.SizeCm(rows - underarmRows)}
	if slope > 1 {
		b.level = b.wide * (slope - 1) / 4
	}
	wide := b.wide - 2*b.level
	straight, slow := math.Atan2(b.high, wide), math.Atan2(slowest*s.rw.SizeCm(1), s.st.SizeCm(1))
	most := min(2*straight, max(slow, (straight+math.Pi/2)/2))
	b.angle = straight + (most-straight)*min(slope, 1)
	sin, cos := math.Sincos(b.angle)
	b.radius = max(0, (wide*sin-b.high*cos)/(2*(1-cos)))
	b.bentAcross, b.bentUp = b.radius*sin, b.radius*(1-cos)
	return b
}

// line is how long the line between the arcs is.
func (b bell) line() float64 {
	return math.Hypot(b.wide-2*(b.level+b.bentAcross), b.high-2*b.bentUp)
}

// capPath is the curve of a cap so many rows high.
func (s settled) capPath(rows int, slope float64) curve.Path {
	b := s.bell(rows, slope)
	foot, low := s.st.SizeCm(s.underarm), s.rw.SizeCm(underarmRows)
	path := curve.From(curve.Point{X: foot, Y: low})
	// to goes straight, or bent where a length is worth it.
	to := func(across, up, radius float64, leaving curve.Leaving) {
		end := curve.Point{X: foot + across, Y: low + up}
		if bent, ok := path.Arc(end, radius, leaving); ok && radius > least*b.wide {
			path = bent
		} else {
			path = path.Line(end)
		}
	}
	to(b.level, 0, 0, 0)
	to(b.level+b.bentAcross, b.bentUp, b.radius, curve.LeavingAcross)
	to(b.wide-b.level-b.bentAcross, b.high-b.bentUp, 0, 0)
	to(b.wide-b.level, b.high, b.radius, curve.LeavingUp)
	to(b.wide, b.high, 0, 0)
	return path
}

// capLost is how many stitches a cap loses at each edge before its top.
func (s settled) capLost() int { return (s.sleeve - s.top) / 2 }

// capCurveCm is how long the curve of a cap is at each edge.
func (s settled) capCurveCm(rows int, slope float64) float64 {
	b := s.bell(rows, slope)
	return 2*(b.level+b.radius*b.angle) + b.line()
}

// guess is about how long the edge of a cap will be.
func (s settled) guess(rows int, slope float64) float64 {
	side := s.st.SizeCm(s.underarm) + s.capCurveCm(rows, slope) + s.rw.SizeCm(1)/2
	if s.style == StyleSaddle {
		return 2 * side
	}
	return 2*side + s.st.SizeCm(s.top)
}
