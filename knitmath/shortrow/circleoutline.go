package shortrow

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
)

// arcStep is the most degrees from one point of an arc to the next: the stroke
// between them then leaves the circle by less than 0.04 % of the radius.
const arcStep = 3.0

// fullTurn is the degrees of a whole circle.
const fullTurn = 360.0

// outline draws the disc or ring as it lies flat, its centre at 0, 0: both edges,
// from the right (3 o'clock) counterclockwise, the way it grows seen from the
// right side; and the lines along which wedges meet. A wedge takes as much of the
// turn as of the rows of the outer edge, so that the closure error is spread over
// all of them. Where the turn is not a full one the end of the last wedge lies
// elsewhere than the beginning of the first, and is drawn too.
func (o Circle) outline() *outline.Outline {
	arcs := measure.CeilQuotient(o.degrees, arcStep)
	outer, inner := make([]outline.Point, arcs+1), make([]outline.Point, arcs+1)
	for i := range outer {
		turn := o.degrees * float64(i) / float64(arcs)
		outer[i], inner[i] = onCircle(o.OuterRadiusCm, turn), onCircle(o.InnerRadiusCm, turn)
	}
	lines := []outline.Line{{Name: "outer edge", Points: outer}, {Name: "inner edge", Points: inner}}
	across := func(name string, turn float64) {
		lines = append(lines, outline.Line{Name: name,
			Points: []outline.Point{onCircle(o.InnerRadiusCm, turn), onCircle(o.OuterRadiusCm, turn)}})
	}
	rows := 0
	for _, run := range o.Sequence {
		w := o.Wedges[run.WedgeNumber-1]
		for range run.Times {
			across("beginning of a wedge", o.degrees*float64(rows)/float64(o.OuterRows))
			rows += 2*w.PairCount + w.FullRows
		}
	}
	if o.degrees != fullTurn {
		across("end of the last wedge", o.degrees)
	}
	out := &outline.Outline{
		X:     outline.Axis{Measure: "from the centre, to the right", Unit: outline.UnitCm},
		Y:     outline.Axis{Measure: "from the centre, upward", Unit: outline.UnitCm},
		Lines: lines,
	}
	return out.Framed()
}

// onCircle is the point of a circle at so many degrees from 3 o'clock.
func onCircle(radius, degrees float64) outline.Point {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return outline.Point{X: radius * cos, Y: radius * sin}
}
