package pattern

import "strconv"

// wrappedTold reads ", 10 wrapped sts at each side" beside a count of the stitches that are not wrapped.
func (p *parser) wrappedTold(line *Line) {
	save, found := p.next, p.found.mark()
	p.accept(",", ";")
	p.accept("and", "with")
	from, n := p.peek().span, []int(nil)
	if p.numberAhead() {
		n = p.number()
	}
	if n == nil || !p.accept("wrapped") || !p.accept("st", "sts", "stitches") || !p.skipPhrase(claimSides) && !p.acceptAny(bothEnds) {
		p.next = save
		p.found.rewind(found)
		return
	}
	line.info.wrapped, line.info.wrappedAt = without(n), from.to(p.last())
}

// compareUnwrapped compares how many stitches are said to lie between the turns of short rows with those that the last of them
// worked, and how many beyond them on each side with half of the others.
func (r *runner) compareUnwrapped(l *Line, n int64) {
	middle, total := r.turnGap, r.now.total()
	switch {
	case r.turned == 0 || middle < 0:
		r.fault(KindQuestion, ReasonUnread, l.info.claimAt, 0, "between which turns? the row before does not end with one")
		return
	case n != middle && r.wanted(ReasonClaim, l.info.claimAt):
		r.fault(KindMistake, ReasonClaim, l.info.claimAt, int(n-middle), stitches(int(middle))+" lie between the turns, not "+
			strconv.Itoa(int(n)))
	}
	if l.info.wrapped == nil {
		return
	}
	if each := int64(at(l.info.wrapped, r.size)); 2*each != total-middle && r.wanted(ReasonClaim, l.info.wrappedAt) {
		r.fault(KindMistake, ReasonClaim, l.info.wrappedAt, int(each-(total-middle)/2), stitches(int(total-middle))+
			" lie beyond the turns, which is not "+strconv.Itoa(int(each))+" on each side")
	}
}
