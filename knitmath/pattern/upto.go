package pattern

// extent is how often or how far something is worked: so many times, or until so
// many stitches are left; neither if the text does not say.
type extent struct {
	times, last []int
	more        bool // "3 more times"
}

var toEnd = []int{0} // never written to

// upTo reads how often or how far. all says that "all sts" and the like may
// stand for "to end".
func (p *parser) upTo(all bool) (extent, bool) {
	switch {
	case p.accept("once"):
		return extent{times: one, more: p.accept("more")}, true
	case p.accept("twice"):
		return extent{times: []int{2}, more: p.accept("more")}, true
	case p.timesAhead():
		return p.times()
	case p.peek().is("x", "×") && (p.ahead(1).kind == tokenNumber):
		p.next++
		n := p.number()
		return extent{times: without(n)}, n != nil
	case p.peek().is("to", "until"):
		return p.toLast()
	case p.peek().is("across", "around"):
		p.next++
		p.accept("row", "rnd", "round")
		if p.accept("all") {
			p.accept("sts", "stitches")
		}
		if p.peek().is("to", "until") {
			return p.toLast()
		}
		return extent{last: toEnd}, true
	case all && p.peek().is("all", "every", "each", "rem", "remaining"):
		return p.allStitches()
	}
	return extent{}, true
}

// allStitches reads "all sts", "every st", "rem sts".
func (p *parser) allStitches() (extent, bool) {
	i := 1
	if p.ahead(i).is("rem", "remaining", "the") {
		i++
	}
	if !p.ahead(i).is("st", "sts", "stitch", "stitches") {
		return extent{}, true
	}
	p.next += i + 1
	return extent{last: toEnd}, true
}

// timesAhead reports whether a number with "times" or "more" comes next.
func (p *parser) timesAhead() bool {
	i := p.next
	if _, ok := numberWords[p.tokens[i].text]; ok && p.tokens[i].kind == tokenWord || p.tokens[i].kind == tokenNumber {
		i++
	} else if end, _ := p.listEnd(i); end == 0 {
		return false
	}
	for {
		end, _ := p.listEnd(i)
		if end == 0 {
			return p.tokens[i].is("times", "time", "more", "x")
		}
		i = end
	}
}

func (p *parser) times() (extent, bool) {
	n := p.number()
	if n == nil {
		return extent{}, false
	}
	more := p.accept("more")
	p.accept("times", "time", "x")
	more = p.accept("more") || more
	return extent{times: without(n), more: more}, true
}

// toLast reads what follows "to" or "until".
func (p *parser) toLast() (extent, bool) {
	from := p.peek().span
	p.next++
	p.accept("the")
	switch {
	case p.accept("end"):
		if p.accept("of") {
			p.accept("the")
			p.accept("row", "rnd", "round", "needle")
		}
		return extent{last: toEnd}, true
	case p.accept("last"):
		if p.accept("st", "stitch") {
			return extent{last: one}, true
		}
		n := p.number()
		if n == nil {
			p.ask(ReasonUnread, from.to(p.last()), "a number of stitches is expected after \"to last\"")
			return extent{}, false
		}
		p.accept("st", "sts", "stitch", "stitches")
		return extent{last: without(n)}, true
	case p.numberAhead():
		n := p.number()
		if n == nil {
			return extent{}, false
		}
		p.accept("st", "sts", "stitch", "stitches")
		if p.accept("rem", "remain", "remains", "remaining", "left") {
			return extent{last: without(n)}, true
		}
		if p.acceptAll("before", "end") || p.acceptAll("from", "end") || p.acceptAll("before", "the", "end") ||
			p.acceptAll("from", "the", "end") {
			return extent{last: without(n)}, true
		}
	}
	p.ask(ReasonUnread, from.to(p.peek().span),
		"only \"to end\" and \"to last n sts\" are followed; "+
			"for a marker or another place say how many stitches remain")
	return extent{}, false
}
