package curve

import (
	"math"

	"example.com/knitmath/knitmath/gauge"
)

// A Point is a place on a curve, in cm: how far the edge has moved in or, with
// a falling X, out, and how high.
type Point struct{ X, Y float64 }

// At is the point so many stitches in and so many rows up, at a gauge.
func At(stitches, rows int, st, rw gauge.Density) Point {
	return Point{st.SizeCm(stitches), rw.SizeCm(rows)}
}

// Leaving is the direction in which a quarter ellipse or an arc leaves its first
// point: which of two curves between the same points it is.
type Leaving int32

// The directions.
const (
	LeavingUnspecified Leaving = iota // across
	// LeavingAcross is along the row: how an armhole or a round neck begins.
	LeavingAcross
	// LeavingUp is straight up the piece.
	LeavingUp
)

// A Path is a curve from a first point upward, piece after piece. Its height never
// falls; how far in it lies may grow and lessen. See [From].
type Path struct {
	first  Point
	pieces []piece
}

// A piece is a straight line, or a part of an ellipse that lies within one quarter of
// it and whose axes lie along and across the rows.
type piece struct {
	from, to Point
	centre   Point
	axes     Point // half of each; 0 of a straight line
}

// From is where a path begins.
func From(first Point) Path { return Path{first: first} }

// Start is the first point of a path.
func (p Path) Start() Point { return p.first }

// End is the last point of a path.
func (p Path) End() Point {
	if n := len(p.pieces); n > 0 {
		return p.pieces[n-1].to
	}
	return p.first
}

// add is a path with more pieces. Two paths may go on from one.
func (p Path) add(more ...piece) Path {
	p.pieces = append(p.pieces[:len(p.pieces):len(p.pieces)], more...)
	return p
}

// Line goes straight to a point, which may lie level with the last or right above it.
func (p Path) Line(to Point) Path { return p.add(piece{from: p.End(), to: to}) }

// Lines goes straight from point to point: a curve that is none of the others, in
// strokes.
func (p Path) Lines(to ...Point) Path {
	more := make([]piece, len(to))
	from := p.End()
	for i, q := range to {
		more[i] = piece{from: from, to: q}
		from = q
	}
	return p.add(more...)
}

// Ellipse goes to a point along the quarter of an ellipse that is level at one of the
// two points and upright at the other.
func (p Path) Ellipse(to Point, leaving Leaving) Path {
	from := p.End()
	centre := Point{from.X, to.Y}
	if leaving == LeavingUp {
		centre = Point{to.X, from.Y}
	}
	axes := Point{math.Abs(to.X - from.X), to.Y - from.Y}
	if axes.X == 0 || axes.Y == 0 {
		return p.Line(to)
	}
	return p.add(piece{from, to, centre, axes})
}

// arcSlack is how far past its highest or lowest point an arc may seem to begin or end
// by the rounding of floats, in radii.
const arcSlack = 1e-9

// Arc goes to a point along an arc of a circle, of which it is less than half: the one
// that leaves more nearly across than the straight line does, or more nearly upright;
// between two points that lie one above the other, the one that goes in first, or out.
// It is false where no such arc rises all the way: where the two lie farther
// apart than twice the radius, or the arc would dip at either end.
func (p Path) Arc(to Point, radius float64, leaving Leaving) (Path, bool) {
	pieces, n := arc(p.End(), to, radius, leaving)
	return p.add(pieces[:n]...), n > 0
}

// A Bow goes to a point along an arc, as [Path.Arc] has it, or straight where there is no such arc.
type Bow struct {
	To      Point
	Radius  float64
	Leaving Leaving
}

// Bows goes from point to point along bows.
func (p Path) Bows(bows ...Bow) Path {
	all, from := make([]piece, len(p.pieces), len(p.pieces)+2*len(bows)), p.End()
	copy(all, p.pieces)
	for _, b := range bows {
		pieces, n := arc(from, b.To, b.Radius, b.Leaving)
		if n == 0 {
			pieces[0], n = piece{from: from, to: b.To}, 1
		}
		all = append(all, pieces[:n]...)
		from = b.To
	}
	p.pieces = all
	return p
}

// arc are the one or two pieces of an arc, none where there is no such arc.
func arc(from, to Point, radius float64, leaving Leaving) (pieces [2]piece, n int) {
	dx, dy := to.X-from.X, to.Y-from.Y
	chord := math.Hypot(dx, dy)
	if dy <= 0 || 2*radius <= chord {
		return pieces, 0
	}
	// The centre lies off the middle of the straight line, opposite to the bulge.
	off := math.Sqrt(radius*radius-chord*chord/4) / chord
	if dx < 0 == (leaving != LeavingUp) {
		off = -off
	}
	centre := Point{(from.X+to.X)/2 - dy*off, (from.Y+to.Y)/2 + dx*off}
	if (from.X-centre.X)*(to.X-centre.X) < -arcSlack*radius*radius {
		return pieces, 0 // above and below its centre on both sides: it dips
	}
	axes := Point{radius, radius}
	if from.Y >= centre.Y-arcSlack*radius || to.Y <= centre.Y+arcSlack*radius {
		return [2]piece{{from, to, centre, axes}}, 1
	}
	turn := Point{centre.X + math.Copysign(radius, (from.X+to.X)/2-centre.X), centre.Y}
	return [2]piece{{from, turn, centre, axes}, {turn, to, centre, axes}}, 2
}

// side is on which side of its centre a piece of an ellipse lies, along one axis.
func side(from, to, centre float64) float64 { return math.Copysign(1, (from+to)/2-centre) }

// across is how far in the piece lies at a height between its ends. Of a level piece
// it is both ends.
func (p piece) across(y float64) (low, high float64) {
	switch {
	case y < p.from.Y, y == p.from.Y && y < p.to.Y:
		return p.from.X, p.from.X
	case y > p.to.Y, y == p.to.Y && y > p.from.Y:
		return p.to.X, p.to.X
	case p.to.Y == p.from.Y:
		return p.from.X, p.to.X
	case p.axes.X == 0:
		x := p.from.X + (p.to.X-p.from.X)*(y-p.from.Y)/(p.to.Y-p.from.Y)
		return x, x
	}
	x := p.centre.X + side(p.from.X, p.to.X, p.centre.X)*p.axes.X*leg((y-p.centre.Y)/p.axes.Y)
	return x, x
}

// turned is the piece with its axes changed over, so that across of it asks for heights.
func (p piece) turned() piece {
	swap := func(a Point) Point { return Point{a.Y, a.X} }
	t := piece{swap(p.from), swap(p.to), swap(p.centre), swap(p.axes)}
	if t.to.Y < t.from.Y {
		t.from, t.to = t.to, t.from
	}
	return t
}

// leg is the other leg of a right triangle whose longest side is 1.
func leg(a float64) float64 { return math.Sqrt(max(0, (1-a)*(1+a))) }
