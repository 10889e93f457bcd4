package pattern

import "example.com/knitmath/knitmath/stitch"

// inEveryAt reports whether "inc in every 4th st", "dec 1 st in every 8 sts" or "inc in each
// of next 20 sts" stands at token i.
func (p *parser) inEveryAt(i int) bool {
	if !p.tokens[i].among("inc dec increase decrease increasing decreasing") {
		return false
	}
	i++
	if p.tokens[i].is("one", "1") {
		i++
	}
	if p.tokens[i].is("st", "stitch") {
		i++
	}
	if !p.tokens[i].is("in", "on") || !p.tokens[i+1].is("every", "each") {
		return false
	}
	i += 2
	if p.tokens[i].is("of") {
		for i++; p.tokens[i].among("the next first foll following last"); i++ {
		}
		end, _ := p.sizedEnd(i)
		return end != 0 && p.tokens[end].stitches()
	}
	if end := p.ordinalEnd(i); end != 0 {
		return p.tokens[end].is("st", "stitch")
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].stitches()
}

// inEvery reads what inEveryAt has seen: so many stitches worked and then the change, again
// and again.
func (p *parser) inEvery() (Step, bool) {
	from := p.peek().span
	change := Step{Name: "inc", takes: 1, leaves: 2, Times: one}
	if p.accept("dec", "decrease", "decreasing") {
		change = Step{Name: "dec", takes: 2, leaves: 1, Times: one}
	} else {
		p.next++
	}
	p.accept("one", "1")
	p.accept("st", "stitch")
	p.next += 2
	if p.accept("of") {
		return p.inEachOfNext(change.takes == 1, from)
	}
	n := p.everyWhich()
	if n == nil {
		return Step{}, false
	}
	p.acceptAmong("st sts stitch stitches")
	u, ok := p.upTo(false)
	if !ok {
		return Step{}, false
	}
	at := from.to(p.last())
	change.at = at
	plain := make([]int, len(n))
	for i := range n {
		if plain[i] = n[i] - int(change.takes); plain[i] < 0 {
			p.mistake(ReasonNever, at, "a change takes more stitches than this")
			return Step{}, false
		}
	}
	p.reading(at, "read as so many stitches with the change as the last of them, again and again")
	s := Step{Steps: []Step{{Name: "work", takes: 1, leaves: 1, Times: plain, at: at}, change}, RemainingStitches: u.last, at: at}
	switch {
	case u.times != nil && !u.more:
		s.Times, s.RemainingStitches = u.times, nil
	case u.last == nil && p.rowEnds():
		s.RemainingStitches = toEnd
	case u.last == nil:
		s.toFit = true
	}
	return s, true
}

// inEachOfNext reads "the next 20 sts" after "inc in each of". Of decreases it asks.
func (p *parser) inEachOfNext(increases bool, from span) (Step, bool) {
	for p.acceptAmong("the next first foll following last") {
	}
	n := p.number()
	p.acceptAmong("st sts stitch stitches")
	if n == nil || !increases {
		p.ask(ReasonUnread, from.to(p.last()), "how many stitches does this take, and how many are left?")
		return Step{}, false
	}
	return Step{Operation: stitch.KFB, takes: 1, leaves: 2, Times: without(n), at: from.to(p.last())}, true
}

// everyWhich reads "4th" or "8" of "in every 4th st".
func (p *parser) everyWhich() []int {
	end := p.ordinalEnd(p.next)
	if end == 0 {
		return p.number()
	}
	n := []int{p.ordinalValue(p.next)}
	p.next = end
	return n
}
