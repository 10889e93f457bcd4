package pattern

// inTurnAt reports whether intervals in brackets stand at token i, "[every row twice, then on the following 2nd row]".
func (p *parser) inTurnAt(i int) bool {
	if !p.tokens[i].is("[") {
		return false
	}
	for i++; p.tokens[i].is("on", "the"); i++ {
	}
	switch t, then := p.tokens[i], p.tokens[i+1]; {
	case t.is("every", "each"):
		return p.everyRowAt(i + 1)
	case t.is("next"):
		return then.row()
	case t.is("foll", "following"):
		return then.row() || p.nthAhead(i+1)
	}
	return false
}

// intervalsInTurn reads what inTurnAt has seen and how often: intervals of which each comes so many times before the next, and all
// of them again and again.
func (p *parser) intervalsInTurn(named bool) (shapings, bool) {
	from := p.peek().span
	p.next++
	s, rows := shapings{named: named}, 0
	for {
		t, ok := p.turn()
		if !ok || !p.spaced(&t, from) {
			return s, false
		}
		s.turns = append(s.turns, t)
		if rows += t.interval[0] * t.times[0]; t.times[0] > MaxRows || rows > MaxRows {
			p.mistake(ReasonTooLarge, from.to(p.last()), "rows in turn are at most 10000")
			return s, false
		}
		if p.accept("]") {
			break
		}
		p.accept(",", ";")
		p.accept("and")
		p.accept("then")
	}
	s.interval = s.turns[0].interval
	p.howLong(&s)
	return s, s.times != nil && s.until == nil && !s.total
}

// turn reads one of the intervals: "every row twice", "on the following 2nd row", "on the next row".
func (p *parser) turn() (shapings, bool) {
	t := shapings{}
	for p.accept("on", "the") {
	}
	ok := false
	switch {
	case p.peek().is("next") && p.ahead(1).row():
		p.next += 2
		t.interval, t.times = one, one
		return t, true
	case p.accept("every", "each"):
		ok = p.interval(&t)
	case p.accept("foll", "following"):
		t.times = one
		ok = p.interval(&t)
	}
	if !ok || t.second != nil {
		return t, false
	}
	if t.times == nil {
		p.howLong(&t)
	}
	if t.times == nil && t.until == nil {
		t.times = one
	}
	return t, t.until == nil && !t.total && len(t.times) == 1 && len(t.interval) == 1
}
