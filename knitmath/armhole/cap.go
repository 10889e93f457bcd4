package armhole

import (
	"math"

	"example.com/knitmath/knitmath/curve"
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

// A capWay is what a cap may be shaped by. The first that comes near enough is taken.
type capWay int

const (
	// narrowGroups: bind-offs no wider than the first, and decreases on right-side rows.
	narrowGroups capWay = iota
	// widerAtTop: those near the top may be an inch wide where the first is less, as of a small
	// child's.
	widerAtTop
	// onEveryRow: decreases alone, on every row. The steps of bind-offs are longer than the
	// slope that they stand for, and a low cap may want them so.
	onEveryRow
)

// steepest is the steepest slope of a cap whose height is given.
func (s settled) steepest() float64 {
	if s.way == onEveryRow {
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

// capCurveCm is how long the curve of a cap is at each edge, as [settled.capPath] goes: two equal
// quarters of an ellipse and the line between them.
func (s settled) capCurveCm(rows int, slope float64) float64 {
	across, high := s.st.SizeCm(s.capLost()-s.underarm), s.rw.SizeCm(rows-underarmRows)
	return 2*curve.Quarter(slope/2*across, slope/4*high) + math.Hypot((1-slope)*across, (1-slope/2)*high)
}

// guess is about how long the edge of a cap will be.
func (s settled) guess(rows int, slope float64) float64 {
	side := s.st.SizeCm(s.underarm) + s.capCurveCm(rows, slope) + s.rw.SizeCm(1)/2
	if s.style == StyleSaddle {
		return 2 * side
	}
	return 2*side + s.st.SizeCm(s.top)
}
