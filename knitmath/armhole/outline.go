package armhole

import (
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/outline"
)

// apartCm is how far the cap is drawn from the back.
const apartCm = 5.0

// outline draws the back and, to its right, the cap, each from its first bind-off up.
func (s settled) outline(found sewn) *outline.Outline {
	o := &outline.Outline{X: outline.Axis{Measure: "width", Unit: outline.UnitCm}, Y: outline.Axis{Measure: "height", Unit: outline.UnitCm}}
	o.Lines = append(o.Lines, s.edges("back", found.back, 0)...)
	name := "sleeve cap"
	switch {
	case s.style.straight():
		name = "sleeve"
	case found.top.strap > 0:
		name = "cap and strap"
	}
	aside := (s.st.SizeCm(s.back)+s.st.SizeCm(s.sleeve))/2 + apartCm
	o.Lines = append(o.Lines, s.edges(name, found.top, aside)...)
	return o.Framed()
}

// edges are the two edges of a piece from its middle, moved aside.
func (s settled) edges(name string, p shaped, aside float64) []outline.Line {
	line := func(edge string, steps []curve.Step, way int) outline.Line {
		corners := curve.Corners(steps, 1, p.rows, 0)
		switch {
		case p.strap > 0:
			corners = outline.AppendCorner(corners, outline.Corner{Across: p.lost, Up: p.rows + p.strap})
			corners = outline.AppendCorner(corners, outline.Corner{Across: p.start / 2, Up: p.rows + p.strap})
		case p.top > 0:
			corners = outline.AppendCorner(corners, outline.Corner{Across: p.start / 2, Up: p.rows})
		}
		points := outline.SizedBy(corners, s.st, s.rw, func(fewer int) int { return way * (p.start - 2*fewer) })
		for i := range points {
			points[i].X += aside
		}
		return outline.Line{Name: name + ", " + edge, Points: points}
	}
	return []outline.Line{line("right edge", p.plan.Right, 1), line("left edge", p.plan.Left, -1)}
}
