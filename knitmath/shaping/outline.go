package shaping

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
)

// outline draws where the changes of a row lie, in stitches of the row before. A
// change lies in the middle of the stitches it takes.
func (s spacing) outline(o EvenSpacing) *outline.Outline {
	changes := make([]outline.Point, 0, s.k)
	takes := s.op.Takes()
	at := o.FirstGapStitches // stitches before the next change
	change := func() {
		changes = append(changes, outline.Point{X: float64(2*at+takes) / 2, Y: 1})
		at += takes
	}
	if !s.round || s.order == GapSpreadMirrored {
		change()
	}
	for _, g := range o.Gaps {
		for range g.Times {
			at += g.Stitches
			change()
		}
	}
	out := &outline.Outline{
		X: outline.Axis{Measure: "stitches from the beginning of the row, as worked", Unit: outline.UnitStitches},
		Y: outline.Axis{Measure: "the row before and the row of the changes", Unit: outline.UnitRows},
		Lines: []outline.Line{
			{Name: "stitches before", Points: []outline.Point{{X: 0, Y: 0}, {X: float64(s.start), Y: 0}}},
			{Name: "changes", Points: changes},
		},
	}
	return out.Framed()
}

// edgesOutline draws the two edges of a piece of which the shaping rows are
// known: from the start straight up to the row before each shaping row, from
// there slanting to the count after it, and so to the last row. x is measured
// from the centre line of the first row; an edge that is not shaped keeps its
// distance from there.
func (t taper) edgesOutline(shaped []ShapingRow, st, rw gauge.Density) *outline.Outline {
	line := []outline.Corner{{Across: t.start, Up: 0}}
	count := t.start
	for _, r := range shaped {
		line = outline.AppendCorner(line, outline.Corner{Across: count, Up: r.RowNumber - 1})
		count = r.EndStitches
		line = outline.AppendCorner(line, outline.Corner{Across: count, Up: r.RowNumber})
	}
	line = outline.AppendCorner(line, outline.Corner{Across: count, Up: t.rows})
	straight := []outline.Corner{{Across: t.start, Up: 0}, {Across: t.start, Up: t.rows}}

	right := func(stitches int) int { return stitches }                // half of them, in half stitches
	left := func(stitches int) int { return -stitches }                // the same to the left
	fromLeft := func(stitches int) int { return 2*stitches - t.start } // all of them, from the left edge
	fromRight := func(stitches int) int { return t.start - 2*stitches }
	rightEdge, leftEdge := outline.Line{Name: "right edge"}, outline.Line{Name: "left edge"}
	switch t.edges {
	case ShapedEdgesBeginning: // right-side rows begin at the right edge
		rightEdge.Points, leftEdge.Points = outline.SizedBy(line, st, rw, fromLeft), outline.SizedBy(straight, st, rw, left)
	case ShapedEdgesEnd:
		rightEdge.Points, leftEdge.Points = outline.SizedBy(straight, st, rw, right), outline.SizedBy(line, st, rw, fromRight)
	default:
		rightEdge.Points, leftEdge.Points = outline.SizedBy(line, st, rw, right), outline.SizedBy(line, st, rw, left)
	}
	out := &outline.Outline{
		X:     outline.Axis{Measure: "from the centre line of the first row", Unit: outline.UnitStitches},
		Y:     outline.Axis{Measure: "height", Unit: outline.UnitRows},
		Lines: []outline.Line{rightEdge, leftEdge},
	}
	if !st.IsZero() {
		out.X.Unit, out.Y.Unit = outline.UnitCm, outline.UnitCm
	}
	return out.Framed()
}
