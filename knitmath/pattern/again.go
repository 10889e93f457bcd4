package pattern

// starOpen is a star before directions, from which they are worked again later.
type starOpen struct {
	text  string
	lines int // how many there were before it
}

// opensDirections passes over a star before directions, "*Knit 3 rows, purl 3 rows; rep from
// * twice more", which is none of a row. The directions are worked again where the text says
// so later.
func (p *parser) opensDirections() {
	star := p.peek()
	if p.stripesAt(p.next) || p.opensBracket() || star.kind != tokenStar || p.onlyRows || !p.repeatedLater(star.text) {
		return
	}
	save, found := p.next, p.found.mark()
	p.next++
	for p.peek().kind == tokenNewline && p.peek().number == 1 {
		p.next++
	}
	begin := p.next
	var info lineInfo
	p.leadIn(&info)
	ok := p.directionAhead() || p.labelEnd(p.next) != 0 && (begin > save+1 || p.repeatedInLine(star.text))
	p.next = save
	p.found.rewind(found)
	if !ok {
		return
	}
	p.next++
	if begin > save+1 {
		p.next = begin
	}
	p.begun = &starOpen{text: star.text, lines: len(p.piece.Lines)}
}

// repeatedLater reports whether "rep from *" follows in the text.
func (p *parser) repeatedLater(star string) bool {
	if p.lastFrom == nil {
		p.findFrom()
	}
	return p.lastFrom[star] > p.next
}

// findFrom looks where "from *" comes last, by the star: once, however many stars there are.
func (p *parser) findFrom() {
	p.lastFrom = map[string]int{}
	for i := range p.tokens[:len(p.tokens)-1] {
		p.looked++
		if star := &p.tokens[i+1]; star.kind == tokenStar && p.tokens[i].is("from", "between") {
			p.lastFrom[star.text] = i
		}
	}
}

// repeatedInLine reports whether "rep from *" begins a line of its own below, before which no other such star stands:
// whole rows are repeated from it.
func (p *parser) repeatedInLine(star string) bool {
	for i := p.next + 1; i < len(p.tokens)-2; i++ {
		p.looked++
		switch t := &p.tokens[i]; {
		case t.kind == tokenStar && t.text == star:
			return p.tokens[i-1].is("from") && p.tokens[i-2].is("rep", "repeat") && p.tokens[i-3].kind == tokenNewline
		case t.kind == tokenNewline && t.number > 1:
			return false
		}
	}
	return false
}

// again reads "rep from * 4 times more", of directions.
func (p *parser) again(line *Line) bool {
	info := &line.info
	if p.begun == nil || !p.peek().is("from") || p.ahead(1).kind != tokenStar || p.ahead(1).text != p.begun.text {
		return false
	}
	from := p.peek().span
	p.next += 2
	at := p.peek().span
	n, total, more := p.manyTimes()
	last := len(p.piece.Lines)
	if n == nil || p.begun.lines >= last {
		p.ask(ReasonUnread, from.to(p.last()), "how many times?")
		info.kind = lineUnread
		return true
	}
	if !total && !more {
		p.reading(at.to(p.last()), "a number of times is read as so many more than the first")
	}
	if total {
		n = less1(n)
	}
	info.kind, info.counts = lineAgain, n
	info.again = [2]int16{int16(p.begun.lines), int16(last)}
	return true
}

// again works lines once more, so often, without comparing their claims: those are of the
// first time.
func (r *runner) again(i int) {
	l := &r.piece.Lines[i]
	r.record(i)
	start, before := r.now, r.repeating
	r.repeating = true
	lines := r.piece.Lines
	for range at(l.info.counts, r.size) {
		for k := int(l.info.again[0]); k < int(l.info.again[1]) && !r.stopped; k++ {
			info := &lines[k].info
			if !r.spend(1) {
				break
			}
			switch {
			case info.defined || !info.isFor(r.size):
			case lines[k].numbered() && len(info.ranges) > 0:
				first, last := info.rangeIn(info.ranges[0], r.size)
				r.passes([]int16{int16(k)}, last-first+1, l.info.at)
			default:
				r.line(k)
			}
		}
		if r.stopped {
			break
		}
	}
	r.repeating = before
	r.close(i, start)
}
