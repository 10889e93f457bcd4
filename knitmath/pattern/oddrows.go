package pattern

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// oddRowsTurn says where an odd number of rows, one of which has its side, is repeated back and forth to a length: the
// second time each of them is on the other side. One row alone is often repeated so, where its side only says which
// is the right one.
func (r *runner) oddRowsTurn(l *Line, lines []int16) {
	n := len(lines)
	if r.round || n < 3 || n%2 == 0 || !r.wanted(ReasonSide, l.info.at) {
		return
	}
	for k, line := range lines {
		if line < 0 {
			continue
		}
		row := &r.piece.Lines[line].info
		if row.side == stitch.SideUnspecified || row.otherSide || len(row.ranges) == 0 {
			continue
		}
		r.fault(KindMistake, ReasonSide, l.info.at, 0, report.CountOf(n, "rows")+" are repeated: the second time the "+
			report.Ordinal(k+1)+" of them is on the "+sideText(row.side.Other()))
		return
	}
}
