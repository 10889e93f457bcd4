package pattern

// timesAt reports whether a number of times stands at token i: "5 times", "5 (6, 7) more", "5x", "5 further times", "5 (more) times".
func (p *parser) timesAt(i int) bool {
	end, _ := p.sizedEnd(i)
	if end == 0 {
		return false
	}
	t, then := &p.tokens[end], &p.tokens[end+1]
	return t.among("times time more x") || t.is("additional", "further", "extra") && then.is("times", "time") ||
		t.is("(") && then.is("more", "further") && p.tokens[end+2].is(")")
}

// timesEnd is the index after a number of times with the words around it at token i, "another 5 times", "a total of 5 times";
// 0 if that is not what stands there.
func (p *parser) timesEnd(i int) int {
	if t := &p.tokens[i]; t.kind == tokenNumber && !p.timesAt(i) {
		return 0
	}
	save, found := p.next, p.found.mark()
	p.next = i
	n, _, _ := p.manyTimes()
	end := p.next
	p.next = save
	p.found.rewind(found)
	if n == nil {
		return 0
	}
	return end
}

// commaBeforeTimes passes over the comma of "rep Rows 1-4, 3 times more".
func (p *parser) commaBeforeTimes() {
	if p.peek().is(",") && p.timesEnd(p.next+1) != 0 {
		p.next++
	}
}

// times reads "5 times", "5 more times", "5 times more".
func (p *parser) times() (extent, bool) {
	n := p.number()
	if n == nil {
		return extent{}, false
	}
	more := p.moreSaid()
	p.accept("times", "time", "x")
	more = p.moreSaid() || more
	return extent{times: without(n), more: more}, true
}

// moreSaid reads "more", "further", "(more)".
func (p *parser) moreSaid() bool {
	return p.acceptAmong("more further additional extra") || p.acceptAll("(", "more", ")") || p.acceptAll("(", "further", ")")
}

// manyTimes reads "5 more times", "another 5 times", "a total of 5 times", "5 times in
// all", "once more", "twice"; nil if that is not what follows.
func (p *parser) manyTimes() (n []int, total, more bool) {
	save := p.next
	p.accept("for")
	switch {
	case p.acceptAll("a", "total", "of"), p.acceptAll("total", "of"), p.acceptAll("in", "all"), p.acceptAll("in", "total"):
		total = true
	case p.acceptAll("a", "further"), p.accept("another", "further"), p.acceptAll("an", "additional"), p.acceptAll("an", "extra"):
		more = true
	}
	if n, more = p.timesSaid(more); n == nil {
		p.next = save
		return nil, false, false
	}
	for {
		switch {
		case p.moreSaid(), p.accept("again"):
			more = true
		case p.accept("times", "time", "x"):
		case p.acceptAll("in", "all"), p.acceptAll("in", "total"), p.accept("total", "altogether", "overall"):
			total = true
		default:
			return n, total, more
		}
	}
}

// timesSaid reads "twice", "again", "5 times", or "time" of "another time"; nil if none of them
// follows. more says that what was worked already is not among them.
func (p *parser) timesSaid(more bool) ([]int, bool) {
	switch {
	case p.accept("once"):
		return one, more
	case p.peek().is("again") && p.clauseStopsAt(p.next+1):
		p.next++
		return one, true
	case p.accept("twice"):
		return []int{2}, more
	case p.accept("thrice"):
		return []int{3}, more
	case p.timesAt(p.next):
		if n := p.number(); n != nil {
			return without(n), more
		}
		return nil, more
	}
	if more && p.accept("time") {
		return one, more
	}
	return nil, more
}
