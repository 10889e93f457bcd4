package pattern

// star reads "*k2, p2; rep from * 3 more times", "*k2, p2*, rep 3 more times" and
// "*k2, p2* 4 times".
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
		if s, ok := p.starredTimes(steps, t.span, depth); ok {
			return s, true
		}
		second := p.next
		if p.separators("*"); !p.starRepeatAt(p.next) && len(steps) > 0 {
			p.next = second
			return p.starredToFit(steps, t.span, depth), true
		}
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

// starredTimes reads "4 times", "x 4" or "to end" straight after a second star: the two
// are brackets.
func (p *parser) starredTimes(steps []Step, from span, depth int) (Step, bool) {
	if len(steps) == 0 || !p.timesAt(p.next) && strokeTimes(p.peek()) == 0 &&
		!p.peek().among("once twice x to across around") && p.wayEnd(p.next) == 0 ||
		p.peek().is("x") && p.ahead(1).kind != tokenNumber {
		return Step{}, false
	}
	u, ok := p.upTo(false)
	if !ok || u.more {
		return Step{}, false
	}
	p.acceptAll("in", "all")
	p.stars = p.stars[:depth-1]
	return simple(Step{Steps: steps, Times: u.times, RemainingStitches: u.last, BeforeMarkerStitches: u.mark, at: from.to(p.last())}), true
}

// starredToFit is "*k2, p2*" of which nothing is said: worked until what follows it in the row just remains.
func (p *parser) starredToFit(steps []Step, from span, depth int) Step {
	p.stars = p.stars[:depth-1]
	at := from.to(p.last())
	p.reading(at, "between two stars, and not said how often, is read as: until what follows it in the row just remains")
	return simple(Step{Steps: steps, toFit: true, at: at})
}

// starRepeatAt reports whether "rep", "work from *" or "from * to end" stands at token i.
func (p *parser) starRepeatAt(i int) bool {
	switch t := &p.tokens[i]; {
	case t.is("rep", "repeat"):
		return true
	case t.among("work knit cont continue"):
		return p.tokens[i+1].is("from") && p.tokens[i+2].kind == tokenStar
	case t.is("from"):
		return p.tokens[i+1].kind == tokenStar
	}
	return false
}

// starRepeat reads the "rep from *" that belongs to a star.
func (p *parser) starRepeat(star token) bool {
	if !p.starRepeatAt(p.next) {
		p.mistake(ReasonOpenStar, star.span, "no \"rep from "+star.text+"\" follows in this row")
		return false
	}
	p.acceptAmong("rep repeat work knit cont continue")
	p.skipLineBreak()
	if !p.acceptAmong("from between bet fr the") && p.peek().kind != tokenStar {
		return true
	}
	p.skipLineBreak()
	switch t := p.peek(); {
	case t.is("asterisks", "asterisk", "stars"):
	case t.kind != tokenStar:
		p.ask(ReasonUnread, t.span, "a star is expected here")
		return false
	case t.text != star.text:
		p.mistake(ReasonNoStar, t.span, "the star open here is "+star.text)
		return false
	}
	p.next++
	p.accept("s")
	if p.peek().is("to", "and", "-") && p.ahead(1).kind == tokenStar {
		p.next += 2
	}
	return true
}

// skipLineBreak passes over a line break within what belongs together.
func (p *parser) skipLineBreak() {
	if p.peek().kind == tokenNewline && p.peek().number == 1 {
		p.next++
	}
}

// starTimes reads how often or how far a starred repeat is worked.
func (p *parser) starTimes(steps []Step, from span) (Step, bool) {
	if p.peek().is(",") && p.ahead(1).is("to") && p.ahead(2).is("last", "end") {
		p.next++ // "rep from *, to last 3 sts"
	}
	p.skipLineBreakBefore("to", "across", "around", "until", "twice", "once")
	at := p.peek().span
	s := Step{Steps: steps, Times: one}
	n, total, more := p.manyTimes()
	if n != nil {
		s.at = from.to(p.last())
		if total {
			s.Times = n
			return simple(s), true
		}
		if !more {
			p.reading(at.to(p.last()), "\"rep from *\" and a number of times is read as so many more than the first")
		}
		s.Times = oneMore(n)
		return simple(s), true
	}
	if p.workedOnNeedles(&s, true) {
		s.at = from.to(p.last())
		return simple(s), true
	}
	u, ok := p.upTo(false)
	if !ok {
		return Step{}, false
	}
	s.at = from.to(p.last())
	switch {
	case u.times != nil:
		s.Times = oneMore(u.times)
	case u.last != nil && single(u.last, 0) && p.endingAfter():
		s.Times, s.toFit = nil, true
		p.reading(at, "read as: until what follows it in the row just remains")
	case u.last != nil:
		s.Times, s.RemainingStitches = nil, u.last
	case u.mark != nil:
		s.Times, s.BeforeMarkerStitches = nil, u.mark
	default:
		s.Times, s.toFit = nil, true
		p.reading(at, "\"rep from *\" without an end is read as: until what follows it in the row just remains")
	}
	return p.lastRepeat(simple(s), steps)
}

// oneMore is each number of times with the first working.
func oneMore(numbers []int) []int {
	out := make([]int, len(numbers))
	for i, n := range numbers {
		out[i] = n + 1
	}
	return out
}

// endingAfter reports whether ", ending k2" follows.
func (p *parser) endingAfter() bool {
	i := p.next
	if p.tokens[i].is(",", ";") {
		i++
	}
	if !p.tokens[i].is("end", "ending", "ends") {
		return false
	}
	if i++; p.tokens[i].is("with") {
		i++
	}
	return p.startsItem(i)
}

// skipLineBreakBefore passes over a line break before one of the words.
func (p *parser) skipLineBreakBefore(words ...string) {
	if p.peek().kind == tokenNewline && p.peek().number == 1 && p.ahead(1).is(words...) {
		p.next++
	}
}

// lastRepeat reads "end last rep k2": the last repeat ends otherwise than the others.
// What is other takes the place of the last step.
func (p *parser) lastRepeat(s Step, steps []Step) (Step, bool) {
	save := p.next
	omitted, ok := p.lastRepSaid()
	if !ok {
		p.next = save
		return s, true
	}
	if omitted || len(steps) < 2 || s.RemainingStitches != nil && !single(s.RemainingStitches, 0) {
		p.ask(ReasonAmbiguous, p.tokens[save].to(p.last()), "how does the last repeat end? write it out")
		return Step{}, false
	}
	p.endingRepeat = true
	end, ok := p.items("")
	p.endingRepeat = false
	if !ok || len(end) == 0 {
		return Step{}, ok
	}
	p.insteadOf()
	last := append(append([]Step(nil), steps[:len(steps)-1]...), end...)
	for i := range last {
		if last[i].stretch() {
			p.ask(ReasonAmbiguous, p.tokens[save].to(p.last()), "how does the last repeat end? write it out")
			return Step{}, false
		}
	}
	s.Times, s.toFit = nil, false
	s.RemainingStitches = make([]int, p.sizes)
	for size := range s.RemainingStitches {
		s.RemainingStitches[size] = int(min(fixed(last, size).takes, MaxNumber))
	}
	s.RemainingStitches = tidy(s.RemainingStitches)
	p.after = last
	return s, true
}

// endingFollows reports whether ", ending k1" stands after "[k1, p1] across": the brackets are worked
// until what follows just remains.
func (p *parser) endingFollows(last []int) bool {
	if !single(last, 0) || !p.peek().is(",", ";") || !p.ahead(1).is("ending", "end", "ends") {
		return false
	}
	i := p.next + 2
	if p.tokens[i].is("with", "in") {
		i++
	}
	_, _, _, counted := split(p.tokens[i].text)
	return counted && p.tokens[i].kind == tokenWord && !p.tokens[i+1].row()
}

// lastRepSaid passes over ", but end last rep with", and reports whether it was said; omitted says
// that something is left out there.
func (p *parser) lastRepSaid() (omitted, ok bool) {
	p.accept(",", ";")
	p.accept("but")
	omitted = p.peek().is("omitting")
	if !(p.acceptAmong("end ending ends omitting") && p.accept("last") && p.accept("rep", "repeat")) {
		return false, false
	}
	p.acceptAmong("with , : at as")
	return omitted, true
}

// insteadOf passes over "in place of k5", "instead of k5".
func (p *parser) insteadOf() {
	if !p.acceptAll("in", "place", "of") && !p.acceptAll("instead", "of") && !p.accept("instead") {
		return
	}
	for !p.endsAt(p.next) && !p.peek().is(",", ";", "(") && !p.claimAhead() {
		p.next++
	}
}
