package yardage

import (
	"slices"

	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
)

// outline draws the ranges as bars that lie on top of one another: what each method says,
// what to have with the reserve, and each colour of it; and across them, where one colour
// is bought, what the whole balls bring.
func (q *question) outline(o *Estimate) *outline.Outline {
	out := &outline.Outline{
		X: outline.Axis{Measure: "yarn", Unit: outline.UnitMetres},
		Y: outline.Axis{Measure: "figure", Unit: outline.UnitPlaces},
	}
	bar := func(name string, r Range) {
		out.Lines = append(out.Lines, outline.Line{Name: name, Points: []outline.Point{{X: r.Low}, {X: r.Likely}, {X: r.High}}})
	}
	if s := o.BySwatch; s != nil && s.LengthM != nil {
		bar("by swatch", *s.LengthM)
	}
	bar("by gauge", *o.ByLoop.LengthM)
	bar("with the reserve", o.LengthM)
	for i, c := range o.Colours {
		bar(colourName(c.Name, i), c.LengthM)
	}
	// Up is upward, so that the first has the highest place.
	for place, line := range slices.Backward(out.Lines) {
		for i := range line.Points {
			line.Points[i].Y = float64(len(out.Lines) - place)
		}
	}
	if o.BallCount != nil && len(o.Colours) == 0 {
		bought, top := float64(*o.BallCount)*q.ofBall(), float64(len(out.Lines))
		out.Lines = append(out.Lines, outline.Line{Name: "in " + report.CountOf(*o.BallCount, "balls"),
			Points: []outline.Point{{X: bought, Y: 1}, {X: bought, Y: top}}})
	}
	return out.Framed()
}

// colourName is the name of a colour, or which one it is.
func colourName(name string, i int) string {
	if name == "" {
		return "the " + report.Ordinal(i+1) + " colour"
	}
	return name
}
