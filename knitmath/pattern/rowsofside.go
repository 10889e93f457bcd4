package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// sidesRows reports whether the label of a line is about rows of one side, "Next 3 RS rows", back and forth.
func (r *runner) sidesRows(l *Line) bool {
	return !r.round && l.info.side != stitch.SideUnspecified && strings.Contains(strings.ToLower(l.Label), "s rows")
}

// rowsOfLabel works a row so many times, the last of which its claim is of. Rows of one side have an even one between
// them, and one before them where the other side comes first.
func (r *runner) rowsOfLabel(i, n int) {
	l := &r.piece.Lines[i]
	if r.sidesRows(l) {
		r.fault(KindReading, ReasonReading, l.info.at, 0, "the rows between are read as worked even")
		for ; n > 1; n-- {
			if !r.evenBefore(l) || !r.passes([]int16{int16(i)}, 1, l.info.at) {
				return
			}
		}
		if !r.evenBefore(l) {
			return
		}
	}
	if n > 1 && !r.passes([]int16{int16(i)}, n-1, l.info.at) {
		return
	}
	r.work(i, true)
	r.noteLast(i)
}

// evenBefore works an even row where the next is not on the side of a line.
func (r *runner) evenBefore(l *Line) bool {
	return r.side != l.info.side.Other() || r.plain(1, l.info.at)
}
