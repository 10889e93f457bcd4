package pattern

import "strings"

// heldTwice asks about stitches that are put aside in the very words in which some were put aside just before.
func (r *runner) heldTwice(l *Line) {
	i := r.directing
	if i < 1 || l != &r.piece.Lines[i] || r.quiet || l.info.counts == nil {
		return
	}
	before := &r.piece.Lines[i-1]
	if before.info.kind == lineHold && strings.EqualFold(before.Direction, l.Direction) {
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "the same is said twice: other stitches?")
	}
}
