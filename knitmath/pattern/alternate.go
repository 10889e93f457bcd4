package pattern

// alternating reads "alt k1, p1 to end": the two in turn. found is false, and nothing taken,
// if that is not what stands there.
func (p *parser) alternating() (s Step, found, ok bool) {
	i := p.next
	if !p.tokens[i].among("alt alternate alternately alternating") || !p.startsItem(i+1) {
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
	at := p.peek().span
	all := p.peek().is("all") && p.ahead(1).among("round around across along")
	if len(*steps) == 0 || !all && !p.peek().is("alternately") {
		return asideNone
	}
	from := turnBegins(*steps, all)
	if from < 0 {
		return asideNone
	}
	u := extent{last: toEnd}
	if p.next++; all {
		p.next++
	} else if to, ok := p.upTo(false); ok {
		u = to
	} else {
		return asideFault
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

// turnBegins is the first of the steps that are worked in turn: of all, of the last two, or of
// a group that stands last; below 0 if one of them cannot be worked again.
func turnBegins(steps []Step, all bool) int {
	n := len(steps)
	from := max(n-2, 0)
	if all {
		from = 0
	}
	if last := &steps[n-1]; last.Steps != nil && !last.IntoOneStitch {
		from = n - 1
	}
	for i := from; i < n; i++ {
		if s := &steps[i]; s.stretch() || s.Operation.EndsRow() {
			return -1
		}
	}
	return from
}
