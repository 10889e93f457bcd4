package pattern

import "strconv"

// sidesUneven says where a row divides its stitches in two back and forth, by what it binds off or puts aside between them, and
// each side is told to have half of all but has not: the middle lies off the centre.
func (r *runner) sidesUneven(l *Line, before hand, n int64, where span) bool {
	parts := segments(l.worked(), r.size, before.left)
	if r.round || before.behind > 0 || len(parts) != 2 || parts[0]+parts[1] != 2*n || parts[0] == n || min(parts[0], parts[1]) == 0 {
		return false
	}
	if r.wanted(ReasonClaim, where) {
		r.fault(KindMistake, ReasonClaim, where, int(n-parts[0]), partsText(parts)+", not "+strconv.Itoa(int(n))+" on each of the sides")
	}
	return true
}
