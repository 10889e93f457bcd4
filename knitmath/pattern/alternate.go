package pattern

// alternating reads "alt k1, p1 to end": the two in turn. found is false, and nothing taken,
// if that is not what stands there.
func (p *parser) alternating() (s Step, found, ok bool) {
	i := p.next
	if !p.tokens[i].is("alt", "alternate", "alternately", "alternating") || !p.startsItem(i+1) {
		return Step{}, false, true
	}
	from := p.peek().span
	p.next++
	p.inTurn = true
	defer func() { p.inTurn = false }()
	first, ok := p.item(false)
	if !ok {
		return Step{}, true, false
	}
	p.accept(",")
	p.accept("and")
	second, ok := p.item(false)
	if !ok {
		return Step{}, true, false
	}
	s = Step{RemainingStitches: second.RemainingStitches, at: from.to(p.last())}
	second.RemainingStitches, second.counted = nil, false
	if first.stretch() || second.stretch() || s.RemainingStitches == nil {
		p.ask(ReasonUnread, s.at, "up to where are these worked in turn?")
		return Step{}, true, false
	}
	s.Steps = []Step{first, second}
	p.asGiven = true
	return s, true, true
}

// alternately reads "k2, p2 alternately to end" and "k1, p1, all round", after the steps that
// are worked again and again.
func (p *parser) alternately(steps *[]Step) asideKind {
	n := len(*steps)
	t := p.peek()
	all := t.is("all") && p.ahead(1).is("round", "around", "across", "along")
	if n == 0 || !all && !t.is("alternately") {
		return asideNone
	}
	from := max(n-2, 0)
	if all {
		from = 0
	}
	if s := &(*steps)[n-1]; s.Steps != nil && !s.IntoOneStitch {
		from = n - 1
	}
	for i := from; i < n; i++ {
		if s := &(*steps)[i]; s.stretch() || s.Operation.EndsRow() {
			return asideNone
		}
	}
	at := p.peek().span
	u := extent{last: toEnd}
	if all {
		p.next += 2
	} else {
		p.next++
		var ok bool
		if u, ok = p.upTo(false); !ok {
			return asideFault
		}
	}
	if u.more || u.mark != nil || u.last == nil && u.times == nil {
		p.ask(ReasonUnread, at.to(p.last()), "up to where are these worked in turn?")
		return asideFault
	}
	group := append([]Step(nil), (*steps)[from:]...)
	p.reading(at.to(p.last()), "read as a repeat of what comes before it")
	p.asGiven = true
	*steps = append((*steps)[:from], simple(Step{Steps: group, Times: u.times, RemainingStitches: u.last, at: group[0].at.to(p.last())}))
	return asideRead
}
