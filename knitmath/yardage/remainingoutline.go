package yardage

import "example.com/knitmath/knitmath/outline"

// outlinePoints is how many steps a line is drawn in: rows beyond that many are passed
// over evenly, and every point that stands lies on the line.
const outlinePoints = 100

// outline draws what is left of each yarn against the rows: of one yarn by all three
// figures, of several by the likely one.
func (q *remainder) outline(rows int) *outline.Outline {
	out := &outline.Outline{
		X: outline.Axis{Measure: "rows from now", Unit: outline.UnitRows},
		Y: outline.Axis{Measure: "yarn left, of what is likely left now", Unit: outline.UnitPercent},
	}
	for i := range q.supplies {
		s := &q.supplies[i]
		if len(q.supplies) > 1 {
			out.Lines = append(out.Lines, s.line(nameOf(q.in.Yarns[i].Name, i), s.left.Likely, s.perStitch.Likely, rows))
			continue
		}
		out.Lines = append(out.Lines, s.line("low", s.left.Low, s.perStitch.High, rows),
			s.line("likely", s.left.Likely, s.perStitch.Likely, rows), s.line("high", s.left.High, s.perStitch.Low, rows))
	}
	return out.Framed()
}

// line is what is left of one yarn after each row, as long as there is any.
func (s *supply) line(name string, left, perStitch float64, rows int) outline.Line {
	l := outline.Line{Name: name}
	step := (rows + outlinePoints - 1) / outlinePoints
	for r := 0; ; r = min(r+step, rows) {
		now := left - float64(s.spent[r])/millionths*perStitch
		if now < 0 {
			return l
		}
		l.Points = append(l.Points, outline.Point{X: float64(r), Y: 100 * now / s.left.Likely})
		if r == rows {
			return l
		}
	}
}
