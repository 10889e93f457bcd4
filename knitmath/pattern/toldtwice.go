package pattern

import (
	"strconv"
	"strings"
)

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

// leftUnsaid asks what becomes of stitches that are on the needle when a part with a heading of its own is cast on, where all before
// it has been read, nothing stands between but the heading, and no later number is theirs.
func (r *runner) leftUnsaid(i int) {
	if i < 2 || !r.fresh || !r.known || r.quiet || r.now.total() == 0 || r.rows == 0 || r.told.unsure || len(r.start.Counts) > 0 {
		return
	}
	heading, before := &r.piece.Lines[i-1], &r.piece.Lines[i-2]
	if heading.info.kind != linePassed || before.info.open || before.info.at.end == 0 {
		return
	}
	rest := r.piece.source[r.piece.Lines[i].info.at.end:]
	if strings.Contains(rest[:min(len(rest), 4000)], strconv.Itoa(int(r.now.total()))) { // it may be grafted to later
		return
	}
	if strings.ContainsAny(strings.TrimRight(heading.Direction, ":. "), ".:;,") || len(strings.Fields(heading.Direction)) > 3 {
		return
	}
	r.fault(KindQuestion, ReasonUnread, r.piece.Lines[i].info.at, 0, "what becomes of the "+strconv.Itoa(int(r.now.total()))+
		" stitches that are on the needle?")
}
