package pattern

// opensBracket passes over a bracket before directions, "[Work 9 rnds even, then dec rnd] 3 more times", which is none of
// a row: rows are spoken of in it, and so many times stands after it.
func (p *parser) opensBracket() bool {
	closer := closers[p.peek().text]
	if closer == "" || p.peek().kind == tokenWord || p.onlyRows || p.trying || p.begunBracket() {
		return false
	}
	end := p.bracketOfRows(closer)
	if end == 0 || !p.manyTimesAt(end+1) {
		return false
	}
	open := p.peek().text
	p.next++
	if !p.directionAhead() {
		p.next--
		return false
	}
	p.begun = &starOpen{text: open, lines: len(p.piece.Lines)}
	return true
}

// bracketOfRows is the index of what closes the bracket that comes next, in which rows are spoken of and nothing lies deeper; 0 if
// it is no such bracket.
func (p *parser) bracketOfRows(closer string) int {
	rows := false
	for n := p.next + 1; n < p.next+60 && n < len(p.tokens)-1; n++ {
		switch t := &p.tokens[n]; {
		case t.is(closer) && rows:
			return n
		case p.endsAt(n), t.kind == tokenStar, t.among("[ ] { } )"):
			return 0
		case t.row():
			rows = true
		}
	}
	return 0
}

// manyTimesAt reports whether "3 more times" or "twice" stands at token i.
func (p *parser) manyTimesAt(i int) bool {
	save, found := p.next, p.found.mark()
	p.next = i
	n, _, _ := p.manyTimes()
	p.next = save
	p.found.rewind(found)
	return n != nil
}

func (p *parser) begunBracket() bool { return p.begun != nil && closers[p.begun.text] != "" }

// bracketCloses reports whether what closes the bracket of directions comes next.
func (p *parser) bracketCloses() bool { return p.begunBracket() && p.peek().is(closers[p.begun.text]) }

// closesBracket reads "] 3 more times" after directions: they are worked so often in all, since the bracket stands
// for none of what was worked before it.
func (p *parser) closesBracket(line *Line) bool {
	if !p.bracketCloses() {
		return false
	}
	info, from, first := &line.info, p.peek().span, p.begun.lines
	p.begun = nil
	p.next++
	n, _, _ := p.manyTimes()
	last := len(p.piece.Lines)
	for _, times := range n {
		if times < 1 || first >= last {
			n = nil
			break
		}
	}
	if n == nil {
		p.ask(ReasonUnread, from.to(p.last()), "how many times?")
		info.kind = lineUnread
		return true
	}
	info.kind, info.counts = lineAgain, less1(n)
	info.again = [2]int16{int16(first), int16(last)}
	return true
}

// calledNext reports whether a row above is called by its name alone, among what is to be worked: "knit 3 rnds, dec rnd".
// It is no label there.
func (p *parser) calledNext() bool {
	if !p.tokens[p.next-1].is(",", "and", "then") || p.onlyRows {
		return false
	}
	words, i := p.rowName()
	if len(words) == 0 || !p.tokens[i].is("row", "rnd", "round") || !p.mayName(words[0]) {
		return false
	}
	return (p.endsAt(i+1) || p.tokens[i+1].among(", ; ) ] and then")) && p.lineCalled(words) >= 0
}

// calledInBracket reads "dec rnd" alone, and "work dec rnd", among directions in a bracket, and the first among others.
func (p *parser) calledInBracket(line *Line) bool {
	if !p.begunBracket() && !p.calledNext() {
		return false
	}
	p.acceptAmong("work rep repeat knit")
	p.accept("the", "a")
	info := &line.info
	if !p.rowsNamed(info) || info.kind == lineUnread {
		return false
	}
	p.accept("once")
	info.kind, info.counts = lineRepeat, one
	info.afresh = true
	return p.bracketCloses() || p.clauseEnds()
}
