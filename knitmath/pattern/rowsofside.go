package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// sidesRows reports whether the label of a line is about rows of one side, "Next 3 RS rows", back and forth.
func (r *runner) sidesRows(l *Line) bool {
	return !r.round && l.info.side != stitch.SideUnspecified && strings.Contains(strings.ToLower(l.Label), "s rows")
}

// rowsOfSide works a row so many times, with an even one before it where the other side comes first, and between.
func (r *runner) rowsOfSide(i, n int) {
	l := &r.piece.Lines[i]
	r.fault(KindReading, ReasonReading, l.info.at, 0, "the rows between are read as worked even")
	even := func() bool { return r.side != l.info.side.Other() || r.plain(1, l.info.at) }
	for range n - 1 {
		if !even() || !r.passes([]int16{int16(i)}, 1, l.info.at) {
			return
		}
	}
	if even() {
		r.work(i, true)
		r.noteLast(i)
	}
}
