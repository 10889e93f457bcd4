package pattern

import "example.com/knitmath/knitmath/stitch"

// directionAhead says which kind of direction begins with the next token;
// lineRow if none does.
func (p *parser) directionAhead() lineKind {
	t, second := p.peek(), p.ahead(1)
	if t.kind != tokenWord {
		return lineRow
	}
	if p.headingAhead() || t.is("where") && p.zeroAhead() {
		return linePassed
	}
	if t.is("rep", "repeat", "work") && p.scheduleAhead() {
		return lineSchedule
	}
	switch t.text {
	case "rep", "repeat":
		if second.row() || second.is("the", "these", "those", "this", "last", "both", "prev", "previous") {
			return lineRepeat
		}
	case "work", "cont", "continue":
		if p.evenAhead() {
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

// evenAhead tells "work even", "work 10 rows" and "cont in patt" from rows that
// begin so; "work in patt" is one of these only until something.
func (p *parser) evenAhead() bool {
	second := p.ahead(1)
	return second.is("even", "straight") || p.rowsAfterList() || second.is("in") && (!p.peek().is("work") || p.saidUntil())
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
	case lineSchedule:
		ok = p.schedule(info)
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
		p.looked++
		t := p.peek()
		if t.kind == tokenEnd || t.kind == tokenNewline || t.is(".") || p.claimAhead() {
			return
		}
		if t.is("ending", "end", "ends") {
			for i := 1; i < 5; i++ {
				switch next := p.ahead(i); {
				case next.is("ws", "wrong"):
					info.endSide = stitch.WrongSide
				case next.is("rs", "right"):
					info.endSide = stitch.RightSide
				}
			}
		}
		p.next++
	}
}
