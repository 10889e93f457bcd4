package curve

import (
	"math"

	"example.com/knitmath/knitmath/outline"
)

// strokes is how many straight strokes a round piece of a curve is drawn with.
const strokes = 16

// outline draws the edges as knit and the curve beside them. x is measured from the
// middle of the first row, to the right; an edge that does not follow is upright.
func (e *curvedEdge) outline(plan Plan) *outline.Outline {
	out := &outline.Outline{
		X: outline.Axis{Measure: "from the centre line of the first row", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "height", Unit: outline.UnitCm},
	}
	half := e.st.SizeCm(e.start) / 2
	for i, steps := range [2][]Step{plan.Right, plan.Left} {
		name, side := "right", 1
		if i == 1 {
			name, side = "left", -1
		}
		corners := Corners(steps, 1, e.rows(), 0)
		knit := outline.SizedBy(corners, e.st, e.rw, func(fewer int) int { return side * (e.start - 2*fewer) })
		out.Lines = append(out.Lines, outline.Line{Name: name + " edge", Points: knit})
		if steps != nil {
			out.Lines = append(out.Lines, outline.Line{Name: name + " curve", Points: e.path.drawn(func(p Point) outline.Point {
				return outline.Point{X: float64(side) * (half - p.X), Y: p.Y}
			})})
		}
	}
	return out.Framed()
}

// drawn are points along the path.
func (p Path) drawn(at func(Point) outline.Point) []outline.Point {
	points := []outline.Point{at(p.first)}
	for _, x := range p.pieces {
		if x.axes.X > 0 {
			for i := 1; i < strokes; i++ {
				points = append(points, at(x.between(float64(i)/strokes)))
			}
		}
		points = append(points, at(x.to))
	}
	return points
}

// between is a point of a round piece, at a part of the angle from its beginning.
func (p piece) between(part float64) Point {
	angle := func(a Point) float64 { return math.Atan2((a.Y-p.centre.Y)/p.axes.Y, (a.X-p.centre.X)/p.axes.X) }
	from := angle(p.from)
	turn := math.Remainder(angle(p.to)-from, 2*math.Pi)
	sin, cos := math.Sincos(from + part*turn)
	return Point{p.centre.X + p.axes.X*cos, p.centre.Y + p.axes.Y*sin}
}
