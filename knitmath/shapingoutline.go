package knitmath

// outline draws where the changes of a row lie, in stitches of the row before. A
// change lies in the middle of the stitches it takes.
func (s spacing) outline(o EvenSpacing) *Outline {
	changes := make([]OutlinePoint, 0, s.k)
	takes := s.op.Takes()
	at := o.FirstGapCount // stitches before the next change
	change := func() {
		changes = append(changes, OutlinePoint{float64(2*at+takes) / 2, 1})
		at += takes
	}
	if !s.round || s.order == SpacingOrderMirrored {
		change()
	}
	for _, g := range o.Gaps {
		for range g.Times {
			at += g.StitchCount
			change()
		}
	}
	out := &Outline{
		X: OutlineAxis{Measure: "stitches from the beginning of the row, as worked", Unit: OutlineUnitStitches},
		Y: OutlineAxis{Measure: "the row before and the row of the changes", Unit: OutlineUnitRows},
		Lines: []OutlineLine{
			{"stitches before", []OutlinePoint{{0, 0}, {float64(s.start), 0}}},
			{"changes", changes},
		},
	}
	return out.framed()
}

// edgesOutline draws the two edges of a piece of which the shaping rows are
// known: from the start straight up to the row before each shaping row, from
// there slanting to the count after it, and so to the last row. x is measured
// from the centre line of the first row; an edge that is not shaped keeps its
// distance from there.
func (t taper) edgesOutline(shaped []ShapingRow, st, rw density) *Outline {
	line := []corner{{t.start, 0}}
	count := t.start
	for _, r := range shaped {
		line = appendCorner(line, corner{count, r.RowNumber - 1})
		count = r.EndCount
		line = appendCorner(line, corner{count, r.RowNumber})
	}
	line = appendCorner(line, corner{count, t.rows})
	straight := []corner{{t.start, 0}, {t.start, t.rows}}

	right := func(stitches int) int { return stitches }                // half of them, in half stitches
	left := func(stitches int) int { return -stitches }                // the same to the left
	fromLeft := func(stitches int) int { return 2*stitches - t.start } // all of them, from the left edge
	fromRight := func(stitches int) int { return t.start - 2*stitches }
	rightEdge, leftEdge := OutlineLine{Name: "right edge"}, OutlineLine{Name: "left edge"}
	switch t.edges {
	case ShapedEdgesBeginning: // right-side rows begin at the right edge
		rightEdge.Points, leftEdge.Points = sizedBy(line, st, rw, fromLeft), sizedBy(straight, st, rw, left)
	case ShapedEdgesEnd:
		rightEdge.Points, leftEdge.Points = sizedBy(straight, st, rw, right), sizedBy(line, st, rw, fromRight)
	default:
		rightEdge.Points, leftEdge.Points = sizedBy(line, st, rw, right), sizedBy(line, st, rw, left)
	}
	out := &Outline{
		X:     OutlineAxis{Measure: "from the centre line of the first row", Unit: OutlineUnitStitches},
		Y:     OutlineAxis{Measure: "height", Unit: OutlineUnitRows},
		Lines: []OutlineLine{rightEdge, leftEdge},
	}
	if st.count > 0 {
		out.X.Unit, out.Y.Unit = OutlineUnitCm, OutlineUnitCm
	}
	return out.framed()
}
