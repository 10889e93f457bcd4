package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// oddRowsTurn says where an odd number of rows is repeated back and forth: the second time each of them is on the other
// side. Where one of them has its side that is a mistake; where none has, it is said. One row alone is often repeated
// so. told is for rows that are worked as often as is said: what their own labels say of their sides is compared then.
func (r *runner) oddRowsTurn(l *Line, lines []int16, told bool) {
	n, alike := len(lines), true
	if r.round || n < 3 || n%2 == 0 || r.quiet {
		return
	}
	for k, line := range lines {
		if line < 0 {
			return
		}
		row := &r.piece.Lines[line]
		side := row.info.sideNamed()
		alike = alike && r.piece.Lines[lines[0]].bare() == row.bare()
		if side == stitch.SideUnspecified || row.info.otherSide || len(row.info.ranges) == 0 {
			continue
		}
		if row.info.side == stitch.SideUnspecified || !told {
			r.fault(KindMistake, ReasonSide, l.info.at, 0, report.CountOf(n, "rows")+" are repeated: the second time the "+
				report.Ordinal(k+1)+" of them is on the "+sideText(side.Other()))
		}
		return
	}
	if !alike {
		r.fault(KindReading, ReasonReading, l.info.at, 0, report.CountOf(n, "rows")+
			" are repeated back and forth: every second time each of them is on the other side")
	}
}

// onOtherSide says where the last row of a set whose labels name both sides is worked once more by itself, "then work Row 2
// once more": it would be on the other side than it says.
func (r *runner) onOtherSide(l *Line, lines []int16) {
	n := len(r.history)
	if r.round || r.quiet || len(lines) != 1 || n < 2 || lines[0] < 0 || r.history[n-1] != lines[0] || r.history[n-2] < 0 || r.turned != 0 {
		return
	}
	row, above := &r.piece.Lines[lines[0]], &r.piece.Lines[r.history[n-2]]
	side := row.info.side
	if side == stitch.SideUnspecified || above.info.side != side.Other() || r.side != side.Other() || row.bare() == above.bare() {
		return
	}
	r.fault(KindMistake, ReasonSide, l.info.at, 0, row.Label+" is worked on the "+sideText(side)+
		", and was just worked: this is a row on the "+sideText(r.side))
}

// sideNamed is the side that the label of a row says it is on, itself or those for which it stands.
func (info *lineInfo) sideNamed() stitch.Side {
	switch info.every {
	case everyWS:
		return stitch.WrongSide
	case everyRS:
		return stitch.RightSide
	}
	return info.side
}

// bare is the text of a row without its label.
func (l *Line) bare() string { return strings.TrimPrefix(l.Text(RepeatStyleBrackets), l.Label) }
