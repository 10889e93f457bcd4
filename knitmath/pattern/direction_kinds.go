package pattern

import "example.com/knitmath/knitmath/stitch"

// repeatRows reads "rep rows 3 and 4 five more times".
func (p *parser) repeatRows(info *lineInfo) bool {
	p.next++
	p.accept("the")
	switch {
	case p.peek().row() && p.ahead(1).kind == tokenNumber:
		p.next++
		if !p.rowNumbers(info) {
			return false
		}
	case p.accept("these", "those", "this", "last", "both", "prev", "previous"):
		info.last = 1
		if p.tokens[p.next-1].text == "both" {
			info.last = 2
		}
		if t := p.peek(); t.kind == tokenNumber && t.number >= 1 && t.number <= MaxRows {
			info.last = int(t.number)
			p.next++
		} else if n, ok := numberWords[t.text]; ok && t.kind == tokenWord {
			info.last = n
			p.next++
		}
		if !p.peek().row() {
			p.ask(ReasonUnread, p.peek().span, "which rows?")
			return false
		}
		if !p.name(info.last, p.last()) {
			return false
		}
		if info.last == 1 && p.peek().is("rows", "rnds", "rounds") {
			p.ask(ReasonUnread, p.last().to(p.peek().span), "how many rows?")
			return false
		}
		p.next++
	default:
		p.ask(ReasonUnread, p.peek().span, "which rows?")
		return false
	}
	return p.howOften(info)
}

// howOften reads how often rows are repeated.
func (p *parser) howOften(info *lineInfo) bool {
	at := p.peek().span
	p.accept("for")
	if p.peek().is("until") || p.peek().is("to") {
		if t := p.ahead(1); t.kind == tokenNumber {
			save := p.next
			p.next++
			n := p.number()
			if n == nil {
				return false
			}
			if p.accept("st", "sts", "stitch", "stitches") && !p.peek().is("before") {
				info.until = without(n)
				return true
			}
			p.next = save
		}
		info.open = true
		return true
	}
	if p.peek().is("once", "twice") || p.timesAhead() {
		u, ok := p.upTo(false)
		if !ok {
			return false
		}
		info.counts = u.times
		if !u.more {
			p.reading(at.to(p.last()), "a number of times is read as so many more than they were worked already")
		}
		return true
	}
	info.open = true
	return true
}

// even reads "work even until ...", "work 10 (12, 14) rows even", "knit 4 rows".
func (p *parser) even(info *lineInfo, plain bool) bool {
	if plain {
		info.op = stitch.Knit
		if p.peek().is("purl", "p") {
			info.op = stitch.Purl
		}
	}
	p.next++
	for {
		t := p.peek()
		switch {
		case t.kind == tokenEnd || t.kind == tokenNewline || t.is(".") || p.claimAhead():
			info.open = info.counts == nil
			return true
		case t.is("until"):
			info.open = true
			return true
		case p.numberAhead():
			save := p.next
			n := p.number()
			if n == nil {
				return false
			}
			p.accept("more")
			if p.peek().row() {
				p.next++
				info.counts = without(n)
				return true
			}
			p.next = max(p.next, save+1)
		default:
			p.next++
		}
	}
}

// castOn reads "CO 96 (104, 112) sts".
func (p *parser) castOn(info *lineInfo) bool {
	if !p.accept("co") {
		p.next += 2
	}
	n := p.number()
	if n == nil {
		return false
	}
	p.accept("st", "sts", "stitch", "stitches")
	info.counts = without(n)
	return true
}

// beginning reads "BO 4 sts at beg of next 2 rows".
func (p *parser) beginning(info *lineInfo) bool {
	info.op = stitch.BindOff
	switch {
	case p.accept("co"), p.acceptAll("cast", "on"):
		info.op = stitch.CastOn
	case p.accept("bo"):
	default:
		p.next += 2
	}
	n := p.number()
	if n == nil {
		return false
	}
	info.counts = without(n)
	p.accept("st", "sts", "stitch", "stitches")
	p.accept("at")
	p.accept("the")
	p.accept("beg", "beginning", "start")
	p.accept("of")
	p.accept("the")
	if p.accept("next", "foll", "following") {
		info.until = one
		if p.numberAhead() {
			if info.until = without(p.number()); len(info.until) == 0 {
				return false
			}
		}
		if p.peek().row() {
			p.next++
			return true
		}
	}
	p.ask(ReasonUnread, p.peek().span, "\"of next n rows\" is expected here")
	return false
}
