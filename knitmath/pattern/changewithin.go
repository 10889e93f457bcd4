package pattern

import "example.com/knitmath/knitmath/stitch"

// withinRowsBefore has a change that is made on every so manieth row, and of which it is not said how
// often, be made within the rows that its sentence has just said: "Knit 12 rows, dec 1 st each end of
// every 4th row", "Work 12 rows and at the same time inc 1 st at beg of RS rows" are twelve rows.
func (p *parser) withinRowsBefore(s *shapings) {
	if before := p.rowsJustSaid(s); before != nil {
		s.within, before.counts = before.counts, []int{0}
		p.sameTime = false
	}
}

// afterRowsBefore says of changes of which it is told how often that they are made after those rows, not within them:
// "Work 12 rows, dec 1 st at each end of every 4th row 5 times".
func (p *parser) afterRowsBefore(s *shapings, from span) {
	if before := p.rowsJustSaid(s); before != nil && !p.sameTime && !s.next {
		p.reading(from.to(p.last()), "read as worked after the rows that are said before, not within them")
	}
}

// rowsJustSaid are the rows that the sentence of a change on every so manieth row has just said; nil if it has said none.
func (p *parser) rowsJustSaid(s *shapings) *lineInfo {
	n := len(p.piece.Lines)
	if n == 0 || p.trying || len(s.interval) != 1 || s.second != nil || s.turns != nil || s.interval[0] < 1 {
		return nil
	}
	before := &p.piece.Lines[n-1].info
	if before.kind != lineEven && before.kind != linePlain || before.counts == nil || before.total || before.pattern != 0 ||
		!p.sameTime && p.sentenceBroken(before.at.end) {
		return nil
	}
	return before
}

// rowsWithin is how many of so many rows are shaped, from the row after so many on, and how many are
// worked after the last of them.
func rowsWithin(rows, lead, interval int) (shaped, rest int) {
	if rows <= lead {
		return 0, rows
	}
	shaped = 1 + (rows-lead-1)/interval
	return shaped, rows - lead - 1 - (shaped-1)*interval
}

// sideOpen asks on which side the rows begin, where that decides how many of them are shaped.
func (r *runner) sideOpen(l *Line, s *shapings) bool {
	if s.within == nil || s.side == stitch.SideUnspecified || r.side != stitch.SideUnspecified || r.round || s.lead != nil ||
		at(s.within, r.size)%2 == 0 {
		return false
	}
	r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "on which side is the first of these rows?")
	r.known = false
	return true
}
