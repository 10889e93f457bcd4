package pattern

// shapeTitle passes over "Shape armholes".
func (p *parser) shapeTitle(line *Line) bool {
	from := p.peek().span
	for !p.endsAt(p.next) && !p.peek().is(":", "-") {
		if p.peek().kind != tokenWord || alarming(p.peek().text) {
			return false
		}
		if p.peek().among("as like until to however") {
			p.next = p.sentenceEnd(p.next)
			p.ask(ReasonUnread, from.to(p.last()), "what is to be done here? it may change the count, and cannot be read")
			line.info.kind = lineUnread
			return true
		}
		p.next++
	}
	p.passed(from.to(p.last()))
	line.info.kind = linePassed
	return true
}

// shapedRow passes over what a row is worked in that a change is made in: "purl 1
// row,", "work in patt across,", "k,".
func (p *parser) shapedRow() bool {
	if !p.peek().among("work knit k purl p rib cont continue patt") {
		return false
	}
	save := p.next
	p.next++
	if end := p.fabricEnd(p.next); end != 0 {
		p.next = end
	}
	if p.accept("in") {
		if end := p.fabricEnd(p.next); end != 0 {
			p.next = end
		}
	}
	for p.acceptAmong("across one row rnd round to end all sts even in patt pattern a") ||
		p.peek().kind == tokenNumber && p.peek().number == 1 && p.ahead(1).is("row", "rnd", "round") && p.accept(p.peek().text) {
	}
	p.accept(",", ";", "-")
	p.accept("and", "while", "but")
	p.accept("at", "same")
	if !p.peek().among("dec inc decrease increase decreasing increasing") {
		p.next = save
		return false
	}
	return true
}

// changeSign reads the verb: 1 for an increase, -1 for a decrease, 0 for neither.
func (p *parser) changeSign() int {
	switch {
	case p.accept("dec", "decrease", "decreasing"), p.narrowed():
		p.byTogether()
		return -1
	case p.accept("inc", "increase", "increasing"):
		return 1
	case p.twoTogether():
		return -1
	}
	return 0
}

// narrowed passes over "narrow" and "take in" of old booklets before words of where or how: a stitch is taken off there.
func (p *parser) narrowed() bool {
	n := 1 + bit(p.peek().is("take"))
	if p.onlyRows || !p.peek().is("narrow") && !(p.peek().is("take") && p.ahead(1).is("in")) || !p.ahead(n).among("by at each both") {
		return false
	}
	p.next += n
	return true
}

// byTogether passes over "by knitting 2 together" after "decrease".
func (p *parser) byTogether() {
	if end := p.togetherEnd(p.next + 1); p.peek().is("by", "working") && end != 0 && p.placeAt(end) {
		p.next = end
	}
}

// twoTogether passes over "k2tog" and "work 2 tog" where a place follows, "at each end of
// next row": a stitch is taken off there.
func (p *parser) twoTogether() bool {
	i := p.togetherEnd(p.next)
	if i == 0 {
		return false
	}
	if p.led.factor == 2 && p.ledTogether(i) {
		p.next = i
		return true
	}
	if !p.tokens[i].is("at", "each", "both") || p.onlyRows {
		return false
	}
	save := p.next
	p.next = i
	if !p.acceptAny(bothEnds) && !p.acceptAny(oneEnd) {
		p.next = save
		return false
	}
	p.next = i
	return true
}

// togetherEnd is the index after "k2tog", "work 2 tog" at token i; 0 if that is not what stands there.
func (p *parser) togetherEnd(i int) int {
	switch {
	case p.tokens[i].among("k2tog p2tog ssk skp skpo"):
		return i + 1
	case p.tokens[i].is("working", "knitting", "purling") && p.togetherEnd(i+1) != 0:
		return p.togetherEnd(i + 1)
	case p.tokens[i].among("k p work knit purl knitting working purling") && p.tokens[i+1].is2() &&
		p.tokens[i+2].is("tog", "together"):
		return i + 3
	}
	return 0
}

// is2 reports whether a token is the number 2, in digits or written out.
func (t *token) is2() bool { return t.kind == tokenNumber && t.number == 2 || t.is("two") }

// ledTogether reports whether nothing, or only on which rows, is said at token i after a decrease at
// the place before its verb.
func (p *parser) ledTogether(i int) bool {
	t := &p.tokens[i]
	return p.endsAt(i) || t.among("on every once twice") || t.is(",") && !p.startsItem(i+1)
}

// placeAt reports whether a place begins at token i.
func (p *parser) placeAt(i int) bool {
	return p.tokens[i].among("each both evenly at either across")
}

// where reads where in its row the change is made.
func (p *parser) where(info *lineInfo, from span) (place, bool) {
	w := place{factor: 1}
	for {
		switch {
		case p.acceptAny(bothEnds):
			w.factor, w.said = 2, true
			if p.peek().is("of") && p.markersAfter() {
				return w, p.askMarkers(info, from)
			}
			p.ofEvery()
		case p.acceptAny(oneEnd):
			w.said = true
			p.ofEvery()
		case w.said && p.remarkEnd(p.next) != 0 && !p.inTurnAt(p.next): // "at beg (neck edge)"
			p.next = p.remarkEnd(p.next)
			p.ofEvery()
		case p.accept("evenly", "spaced", "equally"):
			w.spread, w.said = true, true
		case w.spread && p.acceptAmong("across over along around in spaced on"):
			if !p.lastOfRows() {
				p.acceptAny(wholeRow)
			}
		case p.acceptAny(acrossRow):
			w.spread, w.said = true, true
		default:
			return w, true
		}
	}
}
