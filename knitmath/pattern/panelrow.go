package pattern

// patternRow reads "work Row 1 of Cable panel" within a row, with "over next 8 sts", "to
// last 3 sts" or nothing after it: the row of a stitch pattern that the text defines, on
// some of the stitches. found is false, and nothing taken, if that is not what stands there.
func (p *parser) patternRow() (s Step, found, ok bool) {
	i := p.next
	if p.tokens[i].among("work patt knit foll follow") {
		i++
	}
	number := &p.tokens[i+1]
	if !p.tokens[i].is("row", "rnd", "round") || number.kind != tokenNumber || !p.tokens[i+2].is("of", "from", "in") {
		return Step{}, false, true
	}
	i += 3
	if p.tokens[i].is("the") {
		i++
	}
	end, k := p.patternAt(i)
	if end == 0 {
		return Step{}, false, true
	}
	from := p.peek().span
	lines := p.patterns[k-1].lines
	p.next = end
	n := int(number.number)
	if n < 1 || n > len(lines) || lines[n-1] < 0 || len(p.piece.Lines[lines[n-1]].Steps) == 0 {
		p.ask(ReasonNoRow, from.to(p.last()), "this row of the pattern is not written")
		return Step{}, true, false
	}
	source := p.piece.Lines[lines[n-1]].Steps
	if p.steps += len(source); p.steps > MaxSteps {
		p.mistake(ReasonTooMany, from, "too many steps in all")
		return Step{}, true, false
	}
	p.asGiven = true
	s, ok = p.onSome(source, from)
	return s, true, ok
}

// onSome is a row worked on some of the stitches: those that are said after it. What
// follows its first step is left in p.after.
func (p *parser) onSome(source []Step, from span) (Step, bool) {
	over, u, ok := p.onHowMany()
	if !ok {
		return Step{}, false
	}
	at := from.to(p.last())
	steps, open, ok := p.rowOnSome(source, at)
	if !ok {
		p.ask(ReasonUnread, at, "how is this row worked on some of the stitches? write it out")
		return Step{}, false
	}
	switch {
	case u.mark != nil, u.more:
	case open < 0:
		return p.wholeTimes(Step{Steps: steps, at: at}, over, u)
	case over != nil:
		return p.stretchedOver(steps, open, over, at)
	case u.last != nil || p.rowEnds():
		return p.stretchedTo(steps, open, u.last), true
	}
	p.ask(ReasonUnread, at, "on how many stitches?")
	return Step{}, false
}

// onHowMany reads "over next 8 sts", or how often or how far.
func (p *parser) onHowMany() (over []int, u extent, ok bool) {
	if !p.peek().is("over", "across", "on") || !p.numberOfStsAt(p.next+1) {
		u, ok = p.upTo(false)
		return nil, u, ok
	}
	p.next++
	for p.acceptAmong("the next first last centre center rem foll following") {
	}
	if over = p.number(); over == nil {
		return nil, u, false
	}
	over = without(over)
	p.accept("st", "sts", "stitches")
	return over, u, true
}

// rowOnSome is a row that is said at a place, and which of its steps is its only stretch, below
// 0 if it has none. It is not ok if the row cannot be worked on some of the stitches.
func (p *parser) rowOnSome(source []Step, at span) (steps []Step, open int, ok bool) {
	steps, open = append([]Step(nil), source...), -1
	for i := range steps {
		s := &steps[i]
		s.at = at
		if s.BeforeMarkerStitches != nil || s.Operation.EndsRow() || s.stretch() && open >= 0 {
			return nil, 0, false
		}
		if s.stretch() {
			open = i
		}
	}
	return steps, open, true
}

// stretchedTo is a row with one stretch, until so many stitches of the whole row remain, nil for
// none.
func (p *parser) stretchedTo(steps []Step, open int, last []int) Step {
	rest := make([]int, p.sizes)
	for size := range rest {
		if last != nil {
			rest[size] = perSize(last, p.sizes)[size]
		}
		if steps[open].RemainingStitches == nil {
			rest[size] += int(min(restTakes(steps[open+1:], size), MaxNumber))
			continue
		}
		rest[size] += min(perSize(steps[open].RemainingStitches, p.sizes)[size], MaxNumber)
	}
	steps[open].RemainingStitches, steps[open].toFit = tidy(rest), false
	p.after = steps[1:]
	return steps[0]
}

// wholeTimes is a row of a fixed number of stitches, as often as it fits on those that are
// said.
func (p *parser) wholeTimes(s Step, over []int, u extent) (Step, bool) {
	switch {
	case over == nil && u.last != nil:
		s.RemainingStitches = u.last
	case over == nil && u.times != nil:
		s.Times = u.times
	case over == nil:
		s.Times = one
	default:
		s.Times = make([]int, p.sizes)
		for size := range s.Times {
			each, n := int(fixed(s.Steps, size).takes), perSize(over, p.sizes)[size]
			if each < 1 || n%each != 0 {
				p.mistake(ReasonUneven, s.at, "the pattern takes "+stitches(each)+": it does not come out on "+stitches(n))
				return Step{}, false
			}
			s.Times[size] = n / each
		}
		s.Times = tidy(s.Times)
	}
	return simple(s), true
}

// stretchedOver is a row with one stretch, on so many stitches.
func (p *parser) stretchedOver(steps []Step, open int, over []int, at span) (Step, bool) {
	counts := make([]int, p.sizes)
	for size := range counts {
		fixedTakes := fixed(steps[:open], size).takes + fixed(steps[open+1:], size).takes
		each, n := steps[open].pass(size).takes, int64(perSize(over, p.sizes)[size])-fixedTakes
		if each < 1 || n < 0 || n%each != 0 {
			p.mistake(ReasonUneven, at, "the row of the pattern does not come out on "+stitches(perSize(over, p.sizes)[size]))
			return Step{}, false
		}
		counts[size] = int(n / each)
	}
	s := &steps[open]
	s.RemainingStitches, s.toFit, s.Times = nil, false, tidy(counts)
	p.after = steps[1:]
	return steps[0], true
}

// fabricStitches reads stitches by the name of their fabric: "moss st 5", "garter 4", "work
// in St st over next 38 sts", "seed st to last 4 sts".
func (p *parser) fabricStitches() (s Step, found, ok bool) {
	end, in := p.fabricNamed()
	if end == 0 {
		return Step{}, false, true
	}
	from := p.peek().span
	s = Step{Name: "work", takes: 1, leaves: 1}
	t := &p.tokens[end]
	to, _ := p.sizedEnd(end)
	switch {
	case t.is("over", "across", "on") && p.numberOfStsAt(end+1):
		p.next = end + 1
		for p.acceptAmong("the next first last centre center rem foll following") {
		}
		s.Times, ok = p.fabricCount()
	case in:
		return Step{}, false, true
	case to != 0 && !p.tokens[to].row():
		p.next = end
		s.Times, ok = p.fabricCount()
	case t.is("to", "across", "around"):
		p.next = end
		var u extent
		u, ok = p.upTo(false)
		s.RemainingStitches, ok = u.last, ok && u.last != nil
	case len(p.sofar) == 0 && p.inRow && p.endsAt(end):
		p.next = end
		s.RemainingStitches, ok = toEnd, true
	default:
		return Step{}, false, true
	}
	s.at = from.to(p.last())
	return s, true, ok
}

// fabricNamed is the index after the name of a fabric that comes next, 0 if none does, and whether
// "work in" leads it.
func (p *parser) fabricNamed() (end int, in bool) {
	if p.peek().is("work", "cont", "continue") && p.ahead(1).is("in") {
		return p.fabricEnd(p.next + 2), true
	}
	if p.notation(p.peek().text) || !p.fabricWord(p.next) {
		return 0, false
	}
	return p.fabricEnd(p.next), false
}

// fabricCount reads how many stitches are worked in a fabric.
func (p *parser) fabricCount() ([]int, bool) {
	n := p.number()
	if n == nil {
		return nil, false
	}
	p.acceptAmong("st sts stitch stitches")
	return without(n), true
}
