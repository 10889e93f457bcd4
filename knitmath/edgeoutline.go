package knitmath

import "example.com/knitmath/knitmath/stitch"

// outline draws the edge from its first row, in cm, and the places in it where a
// stitch is picked up: the middle of its row, or a third and two thirds of a row
// that takes two.
func (o PickUp) outline(rw density) *Outline {
	places := make([]OutlinePoint, 0, o.Stitches.Count)
	put := func(row int, part float64) {
		places = append(places, OutlinePoint{(float64(row) + part) / rw.perCm(), 1})
	}
	row := 0
	runs, _ := stitch.Expand(o.Instruction.Row, o.RowCount) // the planner's own row: it fits
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
	out := &Outline{
		X:     OutlineAxis{Measure: "along the edge, as worked", Unit: OutlineUnitCm},
		Y:     OutlineAxis{Measure: "the edge and the stitches picked up", Unit: OutlineUnitRows},
		Lines: []OutlineLine{{"edge", []OutlinePoint{{0, 0}, {rw.sizeCm(o.RowCount), 0}}}, {"picked up", places}},
	}
	return out.framed()
}

// outline draws the band and its holes, a stroke each, at the row that binds off:
// in cm, or in stitches and rows where there is no gauge.
func (b band) outline(o Buttonholes) *Outline {
	point := func(stitches, rows int) OutlinePoint {
		if b.gauge {
			return OutlinePoint{b.st.sizeCm(stitches), b.rw.sizeCm(rows)}
		}
		return OutlinePoint{float64(stitches), float64(rows)}
	}
	lines := []OutlineLine{{"band", []OutlinePoint{
		point(0, 0), point(o.StitchCount, 0), point(o.StitchCount, o.RowCount), point(0, o.RowCount), point(0, 0)}}}
	for _, h := range o.Holes {
		lines = append(lines, OutlineLine{"buttonhole",
			[]OutlinePoint{point(h.FirstStitch-1, h.BindOffRow), point(h.LastStitch, h.BindOffRow)}})
	}
	out := &Outline{
		X:     OutlineAxis{Measure: "along the stitches, as the holes are numbered", Unit: OutlineUnitStitches},
		Y:     OutlineAxis{Measure: "height", Unit: OutlineUnitRows},
		Lines: lines,
	}
	if b.gauge {
		out.X.Unit, out.Y.Unit = OutlineUnitCm, OutlineUnitCm
	}
	return out.framed()
}
