package sock

import "example.com/knitmath/knitmath/outline"

// span is how wide a part lies flat at some row, in quarters of a stitch.
type span struct{ quarters, row int }

// drawn is a part as a line around it, about the middle: up its left edge, down its right.
func (r rounds) drawn(name string, spans []span) outline.Line {
	var corners []outline.Corner
	for _, s := range spans {
		corners = outline.AppendCorner(corners, outline.Corner{Across: s.quarters, Up: s.row})
	}
	n := len(corners)
	line := outline.Line{Name: name, Points: make([]outline.Point, 2*n+1)}
	for i, c := range corners {
		x, y := float64(c.Across)/8, float64(c.Up)
		if !r.st.IsZero() {
			x, y = r.st.SizeCm(c.Across)/8, r.rw.SizeCm(c.Up)
		}
		line.Points[i] = outline.Point{X: -x, Y: y}
		line.Points[2*n-1-i] = outline.Point{X: x, Y: y}
	}
	line.Points[2*n] = line.Points[0]
	return line
}

// framed is a drawing of parts.
func (r rounds) framed(lines ...outline.Line) *outline.Outline {
	o := &outline.Outline{
		X:     outline.Axis{Measure: "from the middle", Unit: outline.UnitStitches},
		Y:     outline.Axis{Measure: "rows worked", Unit: outline.UnitRows},
		Lines: lines,
	}
	if !r.st.IsZero() {
		o.X.Unit, o.Y.Unit = outline.UnitCm, outline.UnitCm
	}
	return o.Framed()
}

// outline draws flap, turn and gussets with the sole laid flat, or the half of a heel
// without a flap down to its fold.
func (h heel) outline(out Heel) *outline.Outline {
	switch h.kind {
	case HeelKindShortRows:
		fold := (len(out.Rows) - 2) / 2
		return h.framed(h.drawn("short rows", []span{{4 * h.stitches, 0}, {4 * h.centre, fold}}))
	case HeelKindWasteYarn:
		spans, row := []span{{2 * *out.ClosingStitches, 0}}, 0
		for _, r := range out.Rows {
			if r.Part == HeelPartClosing {
				row++
				spans = append(spans, span{2 * r.Instruction.EndStitches, row})
			}
		}
		return h.framed(h.drawn("closing", spans))
	}
	if h.toeUp {
		return h.toeUpOutline(out)
	}
	return h.flapOutline(out)
}

// flapOutline draws a heel of flap and gusset.
func (h heel) flapOutline(out Heel) *outline.Outline {
	top := h.flapRows + h.stitches - *out.TurnedStitches // one stitch fewer in every row of the turn
	flap := h.drawn("flap and turn", []span{{4 * h.stitches, 0}, {4 * h.stitches, h.flapRows}, {4 * *out.TurnedStitches, top}})
	sole := []span{{4 * (*out.GreatestRoundStitches - h.instep), top}}
	for _, r := range out.Rows {
		if r.Part == HeelPartGusset && r.Instruction.EndStitches < r.Instruction.StartStitches {
			sole = append(sole, span{4 * (r.Instruction.EndStitches - h.instep), top + r.RowNumber})
		}
	}
	if len(sole) == 1 { // nothing to decrease
		return h.framed(flap)
	}
	return h.framed(flap, h.drawn("sole and gussets", sole))
}

// outline draws the toe laid flat.
func (t toe) outline(out Toe) *outline.Outline {
	spans := []span{{2 * t.round, 0}}
	if t.toeUp {
		spans = []span{{2 * out.TipStitches, 0}}
	}
	if t.kind == ToeKindShortRows {
		spans = append(spans, span{4 * *out.CentreStitches, out.LengthRows})
		return t.framed(t.drawn("toe", spans))
	}
	for _, r := range out.Rows {
		spans = append(spans, span{2 * r.Instruction.EndStitches, r.RowNumber})
	}
	return t.framed(t.drawn("toe", spans))
}

// toeUpOutline draws a heel of gussets worked from the toe up.
func (h heel) toeUpOutline(out Heel) *outline.Outline {
	sole, row := []span{{4 * h.stitches, 0}}, 0
	for _, r := range out.Rows {
		if r.Part == HeelPartGusset {
			row++
			sole = append(sole, span{4 * (r.Instruction.EndStitches - h.instep), row})
		}
	}
	lines := []outline.Line{h.drawn("sole and gussets", sole)}
	switch h.kind {
	case HeelKindHeart:
		return h.framed(append(lines, h.drawn("turn", []span{{4 * h.centre, row}, {4 * h.stitches, row + 2*h.grown}}))...)
	case HeelKindRound:
		turn := h.stitches - h.centre
		lines = append(lines, h.drawn("turn", []span{{4 * h.stitches, row}, {4 * h.centre, row + turn}}))
		row += turn
	}
	return h.framed(append(lines, h.drawn("flap", []span{{4 * h.stitches, row}, {4 * h.stitches, row + h.flapRows}}))...)
}
