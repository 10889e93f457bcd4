package flat

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// leastWide is the least side of a triangle: more than any point.
const leastWide = 7

// mostWide is how wide MaxChanges rows can make a triangle.
const mostWide = 5 + 4*MaxChanges

// pointStitches are those of a point: two edges and what lies between them. Decreases beside
// both edges leave two more, and two increases at each edge need as many.
func pointStitches(form Form, each int) int {
	if form == FormTriangleFromSide || each > 1 {
		return 5
	}
	return 3
}

// triangle is a taper from a point to a side, or back. It is tried on right-side rows, on
// any row, and with two stitches at each edge, whichever is possible first.
func triangle(c *fault.Checks, in Input, st, rw gauge.Density) Shape {
	p := piece{in: in, form: in.Form, st: st, rw: rw, sizeField: "width_cm"}
	wide := max(p.stitchesOf(*in.WidthCm), leastWide)
	wide += 1 - wide%2 // both edges gain alike from an odd point
	rows := p.rowsOf(*in.HeightCm)
	if rows < 2 || rows > MaxRows || wide > mostWide {
		c.Infeasible("the triangle would have "+report.CountOf(rows, "rows")+" and "+report.CountOf(wide, "stitches")+
			"; it must have from 2 to 4000 rows and at most 2005 stitches", "width_cm", "height_cm")
		return Shape{}
	}
	taper, ask, ok := tapered(in, wide, rows)
	if !ok {
		c.Infeasible("the sides lie too flat for rows that gain or lose two stitches at each edge", "width_cm", "height_cm")
		return Shape{}
	}
	p.rows, p.start = rows, min(ask.StartStitches, ask.EndStitches)
	p.inwards, p.anyRow = in.Form == FormTriangleFromSide, taper.WrongSideRow != nil
	wide = max(ask.StartStitches, ask.EndStitches)
	p.grows = float64(wide) / float64(rows)
	out := Shape{Construction: stitch.Flat, StartStitches: ask.StartStitches, EndStitches: ask.EndStitches, TotalRows: rows,
		GrowthStitches: p.grows, WantedRimStitches: *in.WidthCm * st.PerCm(), Effort: taper.Effort,
		GreatestDepartureStitches: 2 * taper.GreatestDepartureStitches,
		WidthCm:                   st.SizeCm(wide), HeightCm: rw.SizeCm(rows), words: taper.Directions(), of: p}
	out.Rows = taperRows(taper, ask.StartStitches)
	if p.anyRow {
		out.Notices = []report.Notice{p.steep(taper)}
	}
	return out
}

// steep says that wrong-side rows change the count of a triangle too, and how high it would be without.
func (p *piece) steep(taper shaping.Taper) report.Notice {
	return report.Notice{Reason: ShapedOnBothSides, Field: "height_cm",
		Description: "the sides lie so flat that wrong-side rows change the count too; from about " +
			p.in.DisplayUnit.Size(p.rw.SizeCm(2*taper.ShapingRows+1)) + " high right-side rows are enough"}
}

// tapered is the taper that is easiest to work of those that come out, and what was asked
// for it: with two at each edge it changes by four in every row, and its side comes as near
// to what is wanted.
func tapered(in Input, wide, rows int) (shaping.Taper, shaping.TaperInput, bool) {
	one, two := 1, 2
	for _, each := range []*int{&one, &two} {
		change, point := 2**each, pointStitches(in.Form, *each)
		changes := max((wide-point+change/2)/change, 1)
		if changes > min(MaxChanges, rows) {
			continue
		}
		ask := shaping.TaperInput{StartStitches: point, EndStitches: point + change*changes, HeightRows: &rows, Gauge: in.Gauge,
			DisplayUnit: in.DisplayUnit, Edges: shaping.ShapedEdgesBoth, EdgeChangeStitches: each}
		ask.ToleranceStitches = edgeTolerance(in, *each*changes, rows)
		if in.Form == FormTriangleFromSide {
			ask.StartStitches, ask.EndStitches = ask.EndStitches, ask.StartStitches
		}
		for _, choice := range []shaping.RowChoice{shaping.RowChoiceRightSide, shaping.RowChoiceAny} {
			ask.RowChoice = choice
			if taper, err := shaping.PlanTaper(ask); err == nil {
				return taper, ask, true
			}
		}
	}
	return shaping.Taper{}, shaping.TaperInput{}, false
}

// edgeTolerance is how far each edge may lie from its straight line, in stitches: along its slope a row is so much of one. Left
// out it is a stitch, or as of all shapes a fiftieth of the rows.
func edgeTolerance(in Input, side, rows int) *float64 {
	stitches := max(1, defaultTolerancePart*float64(side))
	if in.ToleranceRows != nil {
		stitches = *in.ToleranceRows * float64(side) / float64(rows)
	}
	return &stitches
}

// taperRows are the rows of a taper, each with its own counts.
func taperRows(taper shaping.Taper, count int) []Row {
	var rows []Row
	for _, r := range taper.Rows {
		in := taper.RightSideRow
		if r.Side == stitch.WrongSide {
			in = taper.WrongSideRow
		}
		rows = append(rows, Row{RowNumber: r.RowNumber, Side: r.Side,
			Instruction: stitch.Instruction{Row: in.Row, StartStitches: count, EndStitches: r.EndStitches}})
		count = r.EndStitches
	}
	return rows
}
