package pattern

import "strings"

// neverHeld asks about stitches that are taken up where all that stands before has been read, and none was ever put aside or
// left, or all that were are on the needle again.
func (r *runner) neverHeld(l *Line, n int64) {
	onNeedle := r.known && r.now.total() > 0
	if r.quiet || r.unsureHeld || r.aside > 0 || len(r.start.Counts) > 0 || l.info.only != nil && (!r.known || onNeedle) {
		return
	}
	switch {
	case r.heldOnce:
		if r.allTakenUp(l, n) {
			r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "all that was put aside is on the needle again: which stitches are these?")
		}
	case !r.divided && (r.rows > 0 || onNeedle):
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "nothing was put aside before: which stitches are these?")
	}
}

// allTakenUp reports whether no stitches that were put aside wait any more, and all of them were noted, where n are taken up.
func (r *runner) allTakenUp(l *Line, n int64) bool {
	return n > 0 && r.heldSum() == 0 && len(r.inRows) == 0 && !r.workedTwice(l)
}

// workedTwice reports whether the text up to a line says of a piece that there are two of it, or that it is worked as another:
// what that one puts aside is said once.
func (r *runner) workedTwice(l *Line) bool {
	before := strings.ToLower(r.piece.source[:l.info.at.start])
	for _, said := range [...]string{"make 2", "make two", "(2)", "both", "second", "another", "each", "same", "work as", "as for"} {
		if strings.Contains(before, said) {
			return true
		}
	}
	return false
}
