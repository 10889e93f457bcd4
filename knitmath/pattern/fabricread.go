package pattern

import "example.com/knitmath/knitmath/draft"

// patternOnce reads "work Leaf lace twice": all its rows, so many times.
func (p *parser) patternOnce(info *lineInfo, from span) bool {
	info.kind, info.afresh = lineRepeat, true
	if p.peek().is("in") && p.fabricEnd(p.next+1) != 0 { // a sequence of stripes, in garter st
		p.next = p.fabricEnd(p.next + 1)
	}
	if p.timesAt(p.next) || p.peek().is("once", "twice") {
		return p.howOften(info, from)
	}
	info.counts = one
	return true
}

func (p *parser) fabricNext() bool { return p.fabricEnd(p.next) != 0 }

// fabricPart reads a stitch pattern, "in St st", "of k2, p2 rib", one that the text
// defines, or one that nobody knows, which it asks about.
func (p *parser) fabricPart(w *evenWork, info *lineInfo) bool {
	i := p.next
	for p.tokens[i].among("in of the working rows a") {
		i++
	}
	if end, number := p.patternAt(i); end != 0 {
		w.direct = i == p.next || i == p.next+1 && p.peek().is("the")
		p.next = end
		info.pattern, w.even = number, true
		return true
	}
	if end := p.fabricEnd(i); end != 0 && (i > p.next || !p.tokens[i].is("patt", "pattern", "pat") || w.verb.is("work", "cont", "continue")) {
		p.next = end
		w.even = true
		p.fabricBracket(info)
		return true
	}
	if i == p.next || !p.peek().is("in", "of") || !p.tokens[i-1].is("in", "of", "the") {
		return false
	}
	name := p.unknownFabric(i)
	if name < 0 {
		return false
	}
	p.unknownRows(i, name, w, info)
	return true
}

// unknownFabric is the index of the word that makes a name at token i that of a stitch pattern,
// "Leaf Lace pattern", "Leaf Chart"; below 0 if none does.
func (p *parser) unknownFabric(i int) int {
	for n := i; n < i+6; n++ {
		t := &p.tokens[min(n, len(p.tokens)-1)]
		if t.is("chart") || n > i && t.among("pattern patt pat st stitch lace") {
			return n
		}
		if t.kind != tokenWord || p.notation(t.text) && !t.is("m", "lace") {
			return -1
		}
	}
	return -1
}

// unknownRows passes over the name of a stitch pattern, which ends with the token name or with
// its letter, and asks about it, if the text has no such rows.
func (p *parser) unknownRows(i, name int, w *evenWork, info *lineInfo) {
	if p.tokens[name+1].among("a b c d 1 2") {
		name++
	}
	p.next = name + 1
	if t := p.peek(); t.kind == tokenWord && len(t.text) == 1 && p.tokens[name].is("chart") {
		p.next++
	}
	if p.chartRepeat(info) {
		w.even = true
		return
	}
	p.ask(ReasonUnread, p.tokens[i].span.to(p.last()), "the rows of this are not in the text: does the count stay the same?")
	info.kind = lineUnread
}

// fabricBracket passes over what a fabric is, "(k1 tbl, p1)", or what it is called.
func (p *parser) fabricBracket(info *lineInfo) {
	if p.rowOfFabric(info) || !p.peek().is("(") {
		return
	}
	for n := 1; n < 24; n++ {
		switch t := p.ahead(n); {
		case t.is(")"):
			p.next += n + 1
			return
		case t.kind == tokenWord && (ribWord(t.text) || t.among("tbl knit purl k p every all and rs ws on plain") ||
			t.row() || draft.Fabric(t.text) || t.is("st", "stitch")),
			t.kind == tokenNumber, t.is(",", ";"), n == 1 && t.is("=", "i.e", "ie"):
		default:
			return
		}
	}
}

// asEstablished passes over "every row", "in patt as est", "as set".
func (p *parser) asEstablished(w *evenWork) bool {
	switch {
	case p.peek().is("every", "each", "all") && p.ahead(1).row():
		if !w.verb.among("knit k purl p work rib") {
			return false
		}
		p.next += 2
		w.even = true
		return true
	case p.peek().is("as") && p.ahead(1).among("est established set before given now"):
		p.next += 2
		w.even = true
		return true
	}
	return false
}

// listedRows reads "work Rows 1-8 of Leaf lace twice".
func (p *parser) listedRows(line *Line) bool {
	info := &line.info
	info.kind = lineRepeat
	p.next++
	from := p.last()
	labelled := info.ranges
	info.ranges, info.firsts, info.lasts = nil, nil, nil
	if !p.rowNumbers(info) {
		info.kind = lineUnread
		return true
	}
	info.afresh = true
	p.accept("only", "alone")
	if p.acceptAll("of", "this", "section") || p.acceptAll("of", "this", "pattern") {
		p.accept("only")
	}
	if of := p.next; p.peek().is("of", "from", "in") {
		p.next++
		p.accept("the")
		at := p.peek().span
		if end, number := p.patternAt(p.next); end != 0 {
			p.next = end
			info.pattern = number
		} else if p.chartAhead() {
			rows := numbersOf(info.ranges)
			if p.chartRepeat(info) || p.chartKept(at) {
				return p.chartRows(info, at, labelled, len(rows))
			}
			p.ask(ReasonUnread, at.to(p.last()), "the rows of the chart are not in the text: does the count stay the same?")
			info.kind = lineUnread
			return true
		} else {
			after := p.next
			if p.next = of; !p.ofHeading(info) {
				p.next = after
			}
		}
	}
	p.patternGoesOn(info)
	if p.timesAt(p.next) || p.peek().among("once twice another until for a") || p.oneRow(info) && p.peek().is("every", "on") &&
		p.scheduleAhead() {
		return p.howOften(info, from)
	}
	info.counts = one
	return true
}

// chartAhead passes over "chart A", "Leaf chart".
func (p *parser) chartAhead() bool {
	for n := range 6 {
		t := p.ahead(n)
		if t.is("chart") {
			p.next += n + 1
			if t := p.peek(); t.kind == tokenWord && len(t.text) == 1 || t.kind == tokenNumber && !p.ahead(1).is("times", "time", "more") {
				p.next++
			}
			return true
		}
		if t.kind != tokenWord {
			return false
		}
	}
	return false
}
