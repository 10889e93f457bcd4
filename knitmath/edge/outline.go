package edge

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/stitch"
)

// outline draws the edge from its first row, in cm, and the places in it where a
// stitch is picked up: the middle of its row, or a third and two thirds of a row
// that takes two.
func (o PickUp) outline(rw gauge.Density) *outline.Outline {
	places := make([]outline.Point, 0, o.Stitches.Count)
	put := func(row int, part float64) {
		places = append(places, outline.Point{X: (float64(row) + part) / rw.PerCm(), Y: 1})
	}
	row := 0
	runs, _ := stitch.Expand(o.Instruction.Row, o.LengthRows) // the planner's own row: it fits
	for _, r := range runs {
		for range r.Count {
			switch r.Op {
			case stitch.PickUp:
				put(row, 1.0/2)
			case stitch.PickUpTwo:
				put(row, 1.0/3)
				put(row, 2.0/3)
			}
			row++
		}
	}
	out := &outline.Outline{
		X: outline.Axis{Measure: "along the edge, as worked", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "the edge and the stitches picked up", Unit: outline.UnitRows},
		Lines: []outline.Line{
			{Name: "edge", Points: []outline.Point{{X: 0, Y: 0}, {X: rw.SizeCm(o.LengthRows), Y: 0}}},
			{Name: "picked up", Points: places},
		},
	}
	return out.Framed()
}

// outline draws the band and its holes, a stroke each, at the row that binds off:
// in cm, or in stitches and rows where there is no gauge.
func (b band) outline(o Buttonholes) *outline.Outline {
	point := func(stitches, rows int) outline.Point {
		if b.measured() {
			return outline.Point{X: b.st.SizeCm(stitches), Y: b.rw.SizeCm(rows)}
		}
		return outline.Point{X: float64(stitches), Y: float64(rows)}
	}
	lines := []outline.Line{{Name: "band", Points: []outline.Point{
		point(0, 0), point(o.BandStitches, 0), point(o.BandStitches, o.BandRows), point(0, o.BandRows), point(0, 0)}}}
	for _, h := range o.Holes {
		lines = append(lines, outline.Line{Name: "buttonhole",
			Points: []outline.Point{point(h.FirstStitchNumber-1, h.BindOffRowNumber), point(h.LastStitchNumber, h.BindOffRowNumber)}})
	}
	out := &outline.Outline{
		X:     outline.Axis{Measure: "along the stitches, as the holes are numbered", Unit: outline.UnitStitches},
		Y:     outline.Axis{Measure: "height", Unit: outline.UnitRows},
		Lines: lines,
	}
	if b.measured() {
		out.X.Unit, out.Y.Unit = outline.UnitCm, outline.UnitCm
	}
	return out.Framed()
}
