package pattern

// star reads "*k2, p2; rep from * 3 more times" and "*k2, p2*, rep 3 more times".
func (p *parser) star() (Step, bool) {
	t := *p.peek()
	p.next++
	if !p.open(t.span) {
		return Step{}, false
	}
	p.stars = append(p.stars, t.text)
	depth := len(p.stars)
	steps, ok := p.items("*")
	if !ok {
		return Step{}, false
	}
	p.depth--
	closed := p.peek().kind == tokenStar
	if closed {
		p.next++
		p.separators("*")
	}
	if !p.starRepeat(t) {
		return Step{}, false
	}
	p.stars = p.stars[:depth-1]
	if len(steps) == 0 {
		p.mistake(ReasonEmpty, t.span, "nothing stands after the star")
		return Step{}, false
	}
	return p.starTimes(steps, t.span)
}

// starRepeat reads the "rep from *" that belongs to a star.
func (p *parser) starRepeat(star token) bool {
	if !p.accept("rep", "repeat") {
		p.mistake(ReasonOpenStar, star.span, "no \"rep from "+star.text+"\" follows in this row")
		return false
	}
	if !p.accept("from", "between", "bet") {
		return true
	}
	switch t := p.peek(); {
	case t.kind != tokenStar:
		p.ask(ReasonUnread, t.span, "a star is expected here")
		return false
	case t.text != star.text:
		p.mistake(ReasonNoStar, t.span, "the star open here is "+star.text)
		return false
	}
	p.next++
	if p.peek().is("to", "and") && p.ahead(1).kind == tokenStar {
		p.next += 2
	}
	return true
}

// starTimes reads how often or how far a starred repeat is worked.
func (p *parser) starTimes(steps []Step, from span) (Step, bool) {
	at := p.peek().span
	s := Step{Steps: steps, Times: one}
	u, ok := p.upTo(false)
	if !ok {
		return Step{}, false
	}
	s.at = from.to(p.last())
	switch {
	case u.times != nil:
		if !u.more {
			p.reading(at.to(p.last()), "\"rep from *\" and a number of times is read as so many more than the first")
		}
		s.Times = make([]int, len(u.times))
		for i, n := range u.times {
			s.Times[i] = n + 1
		}
	case u.last != nil:
		s.Times, s.RemainingStitches = nil, u.last
	default:
		s.Times, s.toFit = nil, true
		p.reading(at, "\"rep from *\" without an end is read as: until what follows it in the row just remains")
	}
	return simple(s), true
}
