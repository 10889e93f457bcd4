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
func (s *settled) steepest() float64 {
	if s.way == onEveryRow {
		return steepestOfDecreases
	}
	return steepest
}

// A height is what caps of so many rows have in common, in cm.
type height struct {
	foot, low  float64 // the underarm: how wide it is, and how high
	wide, high float64 // one side of the cap above it
	straight   float64 // the angle at which a straight line rises
	slow       float64 // and at which no edge may rise more steeply
	over, ends float64 // the top, 0 where it goes on as a strap; what the last row adds to a side
}

// height is the one of so many rows.
func (s *settled) height(rows int) height {
	row := s.rw.SizeCm(1)
	h := height{foot: s.st.SizeCm(s.underarm), low: s.rw.SizeCm(underarmRows), wide: s.st.SizeCm(s.capLost() - s.underarm),
		high: s.rw.SizeCm(rows - underarmRows), slow: math.Atan2(slowest*row, s.st.SizeCm(1)), ends: row / 2}
	h.straight = math.Atan2(h.high, h.wide)
	if s.style != StyleSaddle {
		h.over = s.st.SizeCm(s.top)
	}
	return h
}

// A bell is one side of a cap above its underarm, in cm: level, an arc of a circle, a straight
// line, an arc, level.
type bell struct {
	level              float64 // at its foot, and again at its top
	angle, radius      float64 // by how much an arc bends
	bentAcross, bentUp float64 // where the first one ends, from where it begins
}

// bell is the one of a slope. Where an arc of radius r bends by the angle a, two of them and the line between cross w and
// rise h if r = (w sin a - h cos a) / 2 (1 - cos a).
func (h height) bell(slope float64) bell {
	var b bell
	wide, straight := h.wide, h.straight
	if slope > 1 {
		b.level = h.wide * (slope - 1) / 4
		wide -= 2 * b.level
		straight = math.Atan2(h.high, wide)
	}
	most := min(2*straight, max(h.slow, (straight+math.Pi/2)/2))
	b.angle = straight + (most-straight)*min(slope, 1)
	sin, cos := math.Sincos(b.angle)
	b.radius = max(0, (wide*sin-h.high*cos)/(2*(1-cos)))
	b.bentAcross, b.bentUp = b.radius*sin, b.radius*(1-cos)
	return b
}

// curveCm is how long the curve of a cap is at each edge.
func (h height) curveCm(slope float64) float64 {
	b := h.bell(slope)
	line := math.Hypot(h.wide-2*(b.level+b.bentAcross), h.high-2*b.bentUp)
	return 2*(b.level+b.radius*b.angle) + line
}

// guess is about how long the edge of a cap will be.
func (h height) guess(slope float64) float64 { return 2*(h.foot+h.curveCm(slope)+h.ends) + h.over }

// path is the curve of a cap.
func (h height) path(slope float64) curve.Path {
	b := h.bell(slope)
	at := func(across, up float64) curve.Point { return curve.Point{X: h.foot + across, Y: h.low + up} }
	radius := b.radius
	if radius <= least*h.wide {
		radius = 0
	}
	return curve.From(at(0, 0)).Bows(
		curve.Bow{To: at(b.level, 0)},
		curve.Bow{To: at(b.level+b.bentAcross, b.bentUp), Radius: radius, Leaving: curve.LeavingAcross},
		curve.Bow{To: at(h.wide-b.level-b.bentAcross, h.high-b.bentUp)},
		curve.Bow{To: at(h.wide-b.level, h.high), Radius: radius, Leaving: curve.LeavingUp},
		curve.Bow{To: at(h.wide, h.high)})
}

// capLost is how many stitches a cap loses at each edge before its top.
func (s *settled) capLost() int { return (s.sleeve - s.top) / 2 }
