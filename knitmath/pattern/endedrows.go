package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// endsAmong says that rows are repeated which the row with which they are to end is none of.
func (r *runner) endsAmong(l *Line, lines []int16) {
	n := l.info.endRow
	if n == 0 || l.info.pattern != 0 || len(lines) == 0 || !r.wanted(ReasonNoRow, l.info.at) {
		return
	}
	for _, line := range lines {
		if line < 0 {
			return
		}
		info := &r.piece.Lines[line].info
		if len(info.ranges) == 0 || info.every != everyNone {
			return
		}
		for _, q := range info.ranges {
			if first, last := info.rangeIn(q, r.size); first <= int(n) && int(n) <= last {
				return
			}
		}
	}
	r.fault(KindMistake, ReasonNoRow, l.info.at, 0, "row "+strconv.Itoa(int(n))+" is none of the rows that are repeated")
}

// ended compares the last row with what the text says of it: its side, or which row it is.
// Of rows whose number is left open, it says on which side the next one is.
func (r *runner) ended(l *Line) {
	end := l.info.endSide
	if n := l.info.endRow; n > 0 && end == stitch.SideUnspecified {
		if r.otherRowLast(l, n) {
			return
		}
		end = r.sideOfRow(l, n)
	}
	if end == stitch.SideUnspecified || r.round {
		return
	}
	if l.info.open || l.info.endRow > 0 && l.info.until != nil {
		r.settleSide()
		r.side, r.sideSaid, r.sides = end.Other(), true, sideClaims{said: 1} // as many rows as it takes
		return
	}
	r.saidSide(l.info.at, end.Other(), "the last row is on the "+sideText(end.Other()), "by the rows after it the last row is on the "+
		sideText(end.Other()))
}

// otherRowLast says that another row than the one that is named was worked last, where how
// many were worked is said.
func (r *runner) otherRowLast(l *Line, n int32) bool {
	if l.info.open || l.info.until != nil || r.lastLine < 0 || !r.known {
		return false
	}
	last := &r.piece.Lines[r.lastLine].info
	if len(last.ranges) == 0 || last.every != everyNone {
		return false
	}
	for _, q := range last.ranges {
		if first, end := last.rangeIn(q, r.size); first <= int(n) && int(n) <= end {
			return false
		}
	}
	if r.wanted(ReasonRowNumber, l.info.at) {
		r.fault(KindMistake, ReasonRowNumber, l.info.at, 0, "the last row that is worked is not row "+strconv.Itoa(int(n)))
	}
	return true
}

// sideOfRow is the side of a numbered row: the one its label says, or the one on which it was
// worked first.
func (r *runner) sideOfRow(l *Line, n int32) stitch.Side {
	line := r.lineOf(n, 0)
	if k := l.info.pattern; k > 0 {
		rows := r.piece.patterns[k-1].lines
		if int(n) > len(rows) {
			return stitch.SideUnspecified
		}
		line = int(rows[n-1])
	}
	if line < 0 {
		return stitch.SideUnspecified
	}
	info := &r.piece.Lines[line].info
	side := info.side
	if side == stitch.SideUnspecified {
		side = r.out.Lines[line].Side
	}
	if side == stitch.SideUnspecified || len(info.ranges) == 0 {
		return side
	}
	for _, q := range info.ranges {
		if first, end := info.rangeIn(q, r.size); first <= int(n) && int(n) <= end {
			if (int(n)-int(info.ranges[0].first))%2 != 0 {
				return side.Other()
			}
			return side
		}
	}
	if info.every != everyNone { // "Row 2 and all WS rows"
		return side
	}
	return stitch.SideUnspecified
}
