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
