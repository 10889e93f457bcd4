package pattern

import "example.com/knitmath/knitmath/stitch"

// directionAhead says which kind of direction begins with the next token;
// lineRow if none does.
func (p *parser) directionAhead() lineKind {
	t, second, third := p.peek(), p.ahead(1), p.ahead(2)
	if t.kind != tokenWord {
		return lineRow
	}
	if p.headingAhead() {
		return linePassed
	}
	switch t.text {
	case "rep", "repeat":
		if second.is("the", "these", "those", "this", "last", "both", "prev", "previous") || second.row() {
			return lineRepeat
		}
	case "work", "cont", "continue":
		if second.is("even", "straight") || third.is("rows", "rnds", "rounds", "row", "rnd") && second.kind == tokenNumber || p.rowsAfterList() ||
			second.is("in") && t.text != "work" || second.is("in") && p.saidUntil() {
			return lineEven
		}
	case "knit", "purl", "k", "p":
		if second.is("even") {
			return lineEven
		}
		if p.rowsAfterList() {
			return linePlain
		}
	case "co", "cast", "bo", "bind":
		return p.edgeAhead()
	case "join":
		if p.sentenceHas("rnd", "round", "rounds", "rnds") {
			return lineJoin
		}
	case "change", "switch", "break", "cut", "fasten", "weave", "block":
		return linePassed
	}
	return lineRow
}

// rowsAfterList reports whether a number, those of the other sizes, and "rows"
// follow the next word.
func (p *parser) rowsAfterList() bool {
	i := p.next + 1
	if t := &p.tokens[i]; t.kind != tokenNumber {
		if _, ok := numberWords[t.text]; !ok || t.kind != tokenWord {
			return false
		}
	}
	i++
	for {
		end, _ := p.listEnd(i)
		if end == 0 {
			if p.tokens[i].is("more") {
				i++
			}
			return p.tokens[i].row()
		}
		i = end
	}
}

// sentenceHas reports whether one of the words stands in the next dozen tokens
// of the sentence.
func (p *parser) sentenceHas(texts ...string) bool {
	for i := range 12 {
		t := p.ahead(i)
		if t.kind == tokenEnd || t.kind == tokenNewline || t.is(".") {
			return false
		}
		if t.is(texts...) {
			return true
		}
	}
	return false
}

func (p *parser) saidUntil() bool { return p.sentenceHas("until", "rows", "rnds", "rounds") }

// edgeAhead tells "CO 96 sts" and "BO 4 sts at beg of next 2 rows" from rows that
// begin so.
func (p *parser) edgeAhead() lineKind {
	i := p.next + 1
	on := p.peek().is("co")
	if p.peek().is("cast", "bind") {
		on = p.tokens[i].is("on")
		i++
	}
	if p.tokens[min(i, len(p.tokens)-1)].kind != tokenNumber {
		return lineRow
	}
	i++
	for {
		end, _ := p.listEnd(i)
		if end == 0 {
			break
		}
		i = end
	}
	if !p.tokens[i].is("st", "sts", "stitch", "stitches") {
		return lineRow
	}
	i++
	if p.tokens[i].is("at") && (p.tokens[i+1].is("beg", "beginning", "start") || p.tokens[i+1].is("the")) {
		return lineBeginning
	}
	if t := &p.tokens[i]; on && (t.kind == tokenEnd || t.kind == tokenNewline || t.is(".", "using", "with", "and", "by", "-")) {
		return lineCastOn
	}
	return lineRow
}

// direction reads a line that is no row of steps. It takes nothing if there is
// none.
func (p *parser) direction(line *Line) bool {
	kind := p.directionAhead()
	if kind == lineRow {
		return false
	}
	info := &line.info
	info.kind = kind
	from := p.peek().span
	ok := true
	switch kind {
	case lineRepeat:
		ok = p.repeatRows(info)
	case lineEven, linePlain:
		ok = p.even(info, kind == linePlain)
	case lineCastOn:
		ok = p.castOn(info)
	case lineBeginning:
		ok = p.beginning(info)
	}
	p.sentence(info)
	if kind == linePassed {
		p.found.add(KindReading, ReasonPassedOver, from.to(p.last()), "passed over: it changes no count")
	}
	if !ok {
		info.kind = lineUnread
	}
	return true
}

// sentence passes over the rest of a sentence up to a claim, and notes the side
// of its last row.
func (p *parser) sentence(info *lineInfo) {
	for {
		t := p.peek()
		if t.kind == tokenEnd || t.kind == tokenNewline || t.is(".") || p.claimAhead() {
			return
		}
		if t.is("ending", "end", "ends") {
			for i := 1; i < 5; i++ {
				switch next := p.ahead(i); {
				case next.is("ws", "wrong"):
					info.endSide = SideWS
				case next.is("rs", "right"):
					info.endSide = SideRS
				}
			}
		}
		p.next++
	}
}

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
