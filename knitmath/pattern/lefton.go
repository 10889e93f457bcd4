package pattern

// leftOn reads "all but last st", "all sts except 10", "until 1 st rem": how many stitches
// stay on the needle of those that are bound off. It is false, and has said why, where that
// cannot be read.
func (p *parser) leftOn(info *lineInfo) bool {
	from, save := p.peek().span, p.next
	until := p.accept("until", "till")
	if p.peek().is("but") && p.ahead(1).among("do don't without loosely not") {
		return true
	}
	if !until && !p.acceptAmong("but except excepting save bar") {
		return true
	}
	p.accept("for")
	p.accept("the")
	last := p.acceptAmong("last final first centre center")
	n := one
	if p.numberAhead() {
		if n = p.number(); n == nil {
			return false
		}
	} else if !last || !p.peek().is("st", "stitch") {
		return p.notLeftOn(until, save, from)
	}
	p.acceptAmong("st sts stitch stitches")
	if until && !p.acceptAmong("rem remain remains remaining left") || p.goesOn() {
		return p.notLeftOn(until, save, from)
	}
	info.rest = without(n)
	if p.acceptAny(bothEnds) {
		info.rest = added(info.rest, info.rest, p.sizes)
	}
	return true
}

// notLeftOn goes back before words that are those of a row, "BO until 5 sts rem, k5", and asks
// about others.
func (p *parser) notLeftOn(row bool, save int, from span) bool {
	if row {
		p.next = save
		return true
	}
	p.ask(ReasonUnread, from.to(p.last()), "how many stitches stay on the needle?")
	return false
}
