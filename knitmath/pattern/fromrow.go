package pattern

// fromRow reads "from row 3", "from the 3rd row", "from 1st to 4th row" after "rep": that row and all that follow it, down to the
// last one above, or to the one that is said. It asks where it is not known which that is.
func (p *parser) fromRow(info *lineInfo) bool {
	from := p.peek().span
	save := p.next
	p.accept("from")
	p.accept("the")
	if !p.peek().row() && p.ordinalEnd(p.next) == 0 && !p.peek().is("first") {
		p.next = save
		return false
	}
	first, ok := p.rowOfRange()
	if !ok {
		p.next = save
		return false
	}
	last := p.lastNumbered()
	if p.peek().among("to through thru -") {
		p.next++
		p.accept("and")
		p.accept("including")
		p.accept("the")
		if last, ok = p.rowOfRange(); !ok {
			p.next = save
			return false
		}
		p.accept("inclusive", "incl")
	}
	if last < first || !p.name(int(last-first)+1, from) {
		p.ask(ReasonUnread, from.to(p.last()), "up to which row?")
		info.kind = lineUnread
		return true
	}
	info.ranges = []rowRange{{first, last}}
	return true
}

// rowOfRange reads "row 3", "3rd row", "3rd".
func (p *parser) rowOfRange() (int32, bool) {
	named := p.acceptRow()
	if t := p.peek(); t.kind == tokenNumber && (named || p.ordinalEnd(p.next) == 0) {
		p.next++
		p.acceptRow()
		return t.number, true
	}
	end := p.ordinalEnd(p.next)
	if end == 0 {
		return 0, false
	}
	n := p.ordinalValue(p.next)
	p.next = end
	p.acceptRow()
	return int32(n), true
}

// lastNumbered is the number of the last of the numbered rows that stand just above, with one that a rule adds; 0 if the line above has
// no number.
func (p *parser) lastNumbered() int32 {
	last, ruled := int32(0), false
	for i := len(p.piece.Lines) - 1; i >= 0; i-- {
		l := &p.piece.Lines[i]
		p.looked++
		if l.info.kind != lineRow || len(l.info.ranges) == 0 {
			break
		}
		ruled = ruled || l.info.every != everyNone
		last = max(last, l.info.ranges[len(l.info.ranges)-1].last)
		if l.info.ranges[0].first == 1 {
			break
		}
	}
	return last + last%2*int32(bit(ruled))
}
