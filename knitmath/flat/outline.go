package flat

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
)

// arcStep is the most degrees from one point of an arc to the next: the stroke between
// them then leaves the circle by less than 0.04 % of the radius.
const arcStep = 3.0

// outline draws the piece as it lies flat: round shapes about their centre at 0, 0, others
// standing on their lowest edge or corner, which has its middle there.
func (o Shape) outline() *outline.Outline {
	out := &outline.Outline{
		X: outline.Axis{Measure: "from the middle, to the right", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "upward", Unit: outline.UnitCm},
	}
	line := func(name string, points ...outline.Point) {
		out.Lines = append(out.Lines, outline.Line{Name: name, Points: points})
	}
	p, w, h := o.of, o.WidthCm, o.HeightCm
	r := p.rw.SizeCm(o.TotalRows)
	switch p.form {
	case FormDisc:
		line("rim", arc(r, 0, 360)...)
		out.Lines = append(out.Lines, o.changeLines(nil)...)
	case FormRing:
		line("outer rim", arc(w/2, 0, 360)...)
		line("inner rim", arc(w/2-r, 0, 360)...)
		out.Lines = append(out.Lines, o.changeLines(nil)...)
	case FormSector:
		turn := fault.Or(p.in.TurnDegrees, halfTurn)
		// The middle of the cast-on is at the centre; the rim hangs below it.
		edge := append([]outline.Point{{}}, arc(r, -90-turn/2, turn)...)
		line("edge", append(edge, outline.Point{})...)
	case FormPolygon:
		edge := corners(p.wedges, r)
		line("edge", edge...)
		out.Lines = append(out.Lines, o.changeLines(edge)...)
	case FormStar:
		x, y := p.starPoints()
		points := make([]outline.Point, len(x))
		for i := range x {
			points[i] = outline.Point{X: x[i], Y: y[i]}
		}
		line("edge", points...)
		out.Lines = append(out.Lines, o.changeLines(points)...)
	case FormMitredSquare:
		line("edge", outline.Point{}, outline.Point{X: w}, outline.Point{X: w, Y: h}, outline.Point{Y: h}, outline.Point{})
		line("centre", outline.Point{}, outline.Point{X: w, Y: h})
	case FormTriangleFromPoint:
		line("edge", outline.Point{}, outline.Point{X: w / 2, Y: h}, outline.Point{X: -w / 2, Y: h}, outline.Point{})
	case FormTriangleFromSide:
		line("edge", outline.Point{X: -w / 2}, outline.Point{X: w / 2}, outline.Point{Y: h}, outline.Point{X: -w / 2})
	case FormTriangleFromTop:
		line("edge", outline.Point{X: -w / 2}, outline.Point{Y: -h}, outline.Point{X: w / 2}, outline.Point{X: -w / 2})
		line("centre", outline.Point{}, outline.Point{Y: -h})
	case FormBiasStrip:
		wide, up := p.st.SizeCm(o.StartStitches), r
		across := up * math.Tan(*o.LeanDegrees*math.Pi/180)
		line("edge", outline.Point{}, outline.Point{X: wide}, outline.Point{X: wide + across, Y: up}, outline.Point{X: across, Y: up},
			outline.Point{})
	}
	return out.Framed()
}

// arc is a part of a circle about 0, 0, from one angle on, counterclockwise.
func arc(radius, from, turn float64) []outline.Point {
	n := measure.CeilQuotient(turn, arcStep)
	points := make([]outline.Point, n+1)
	for i := range points {
		sin, cos := math.Sincos((from + turn*float64(i)/float64(n)) * math.Pi / 180)
		points[i] = outline.Point{X: radius * cos, Y: radius * sin}
	}
	return points
}

// corners are those of a polygon that stands on a side, about its centre.
func corners(n int, apothem float64) []outline.Point {
	points := make([]outline.Point, n+1)
	for i := range points {
		sin, cos := math.Sincos(math.Pi * (-0.5 + float64(2*i+1)/float64(n)))
		points[i] = outline.Point{X: apothem / math.Cos(math.Pi/float64(n)) * cos, Y: apothem / math.Cos(math.Pi/float64(n)) * sin}
	}
	return points
}
