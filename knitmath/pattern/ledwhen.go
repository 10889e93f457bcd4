package pattern

// leadWhen reads on which rows, and how often, something is done that is only said after it: "every 4th row, rep dec row
// 3 more times", "at each end of every 8th row 5 (6, 7) times, inc 1 st". It takes nothing where the verb does not follow.
func (p *parser) leadWhen() bool {
	if p.onlyRows || p.led.factor != 0 || p.led.when != nil || !p.whenBegins() {
		return false
	}
	save, found := p.next, p.found.mark()
	led := ledPlace{}
	switch {
	case p.acceptAny(bothEnds):
		led.factor = 2
	case p.acceptAny(oneEnd):
		led.factor = 1
	}
	p.changing, p.changingAt = nil, led.factor
	if p.scheduleAhead() {
		led.when = p.stretchesLed()
	}
	p.accept(",")
	if len(led.when) == 0 || !p.leadsTo(&led) {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.led = led
	return true
}

// whenBegins reports whether words of when or where may begin here.
func (p *parser) whenBegins() bool {
	t := p.peek()
	return t.kind == tokenWord && t.among("on at every each eor both alternate in next")
}

// stretchesLed reads the stretches of a schedule before its verb; nil where it cannot.
func (p *parser) stretchesLed() []shapings {
	var list []shapings
	for len(list) < 4 {
		s, ok := p.stretchOfRows(false, false)
		if !ok || s.turns != nil {
			return nil
		}
		if list = append(list, s); !p.stretchAfter(&lineInfo{}) {
			break
		}
	}
	return list
}

// leadsTo reports whether a change or a row that is worked again comes next, of which it has been said when, and, before
// or after it, how often. "On next row" is said of the row at hand, and is read elsewhere.
func (p *parser) leadsTo(led *ledPlace) bool {
	last := &led.when[len(led.when)-1]
	known := last.times != nil || last.until != nil
	if known && last.onNextRow() || len(led.when) > 1 && !known {
		return false
	}
	p.auxiliary()
	i := p.next
	if auxiliaries[p.tokens[i].text] {
		for i++; p.tokens[i].is("to", "on"); i++ {
		}
	}
	switch t := &p.tokens[i]; {
	case t.is("rep", "repeat", "work"):
		return led.factor == 0 && p.rowsWordedAt(i+1)
	case t.among("dec inc decrease increase decreasing increasing"):
		return known || led.factor == 0 && p.anyOf(i, p.sentenceEnd(i), "times", "twice", "until", "till", "more")
	}
	return false
}

// onNextRow reports whether a stretch is the next row alone.
func (s *shapings) onNextRow() bool {
	return s.next && single(s.interval, 1) && single(s.times, 1) && s.more == nil
}

// ledToRows takes the rows that were said before the verb for what is done, and reads how often where that comes after it.
func (p *parser) ledToRows(info *lineInfo, from span, named bool) {
	parts := p.led.when
	p.led.used = true
	info.kind = lineShape
	last := &parts[len(parts)-1]
	for i := range parts {
		parts[i].named = named
	}
	if last.times == nil && last.until == nil {
		p.howLong(last)
	}
	for i := range parts {
		if parts[i].times == nil && parts[i].until == nil || !p.spaced(&parts[i], from) {
			p.askTimes(info, from)
			return
		}
	}
	info.parts = parts
}

// timesThenWhen reads "3 more times every 4th row", "until 40 sts rem, on every RS row": how often comes first.
func (p *parser) timesThenWhen(info *lineInfo, from span, named bool) bool {
	save, found := p.next, p.found.mark()
	p.accept(",")
	p.accept("for")
	until := p.untilCount()
	n, total, _ := []int(nil), false, false
	if until == nil {
		n, total, _ = p.manyTimes()
	}
	if (until != nil || n != nil) && p.scheduleAhead() {
		s, ok := p.stretchOfRows(named, false)
		if ok && s.times == nil && s.until == nil && !s.next && s.turns == nil && p.spaced(&s, from) {
			s.times, s.until, s.total = n, until, total
			info.kind, info.parts = lineShape, append(info.parts, s)
			return true
		}
	}
	p.next = save
	p.found.rewind(found)
	return false
}

// placeSaidLate reads "at each end" after the rows on which a change is made, and counts it there as often.
func (p *parser) placeSaidLate(s *saidShaping) {
	save := p.next
	p.accept(",")
	w := 0
	switch {
	case p.acceptAny(bothEnds):
		w = 2
	case p.acceptAny(oneEnd):
		w = 1
	}
	if w == 0 || s.where.said && s.where.factor != w || !p.clauseEnds() {
		p.next = save
		return
	}
	s.where.factor, s.where.said = w, true
}

// sameChange passes over "1 st at each end of" in a later stretch of a schedule, where it is the change of the first.
func (p *parser) sameChange(info *lineInfo) {
	save := p.next
	end, _ := p.sizedEnd(p.next)
	if end != 0 && p.tokens[end].stitches() {
		n := p.number()
		if p.next++; n == nil || p.changing == nil || !sameNumbers(n, p.changing, p.sizes) {
			p.next = save
			return
		}
	}
	if !p.samePlace() {
		p.next = save
		return
	}
	p.accept("of")
	p.accept("on")
	p.accept("the")
	if !p.scheduleAhead() {
		p.next = save
	}
}

// samePlace passes over a place that a row has as often as the one of the change at hand.
func (p *parser) samePlace() bool {
	switch p.changingAt {
	case 1:
		return p.acceptAny(oneEnd)
	case 2:
		return p.acceptAny(bothEnds)
	}
	return false
}

// sameNumbers reports whether two lists say the same for each size.
func sameNumbers(a, b []int, sizes int) bool {
	for i := range sizes {
		if at(a, i) != at(b, i) {
			return false
		}
	}
	return true
}

// whenLeads reports whether a sentence begins with when something is done, "Every RS row, rep dec row", and so with no label.
func (p *parser) whenLeads() bool {
	if !p.whenBegins() {
		return false
	}
	save, found, before := p.next, p.found.mark(), p.led
	p.led = ledPlace{}
	ok := p.leadWhen()
	p.looked += p.next - save
	p.next, p.led = save, before
	p.found.rewind(found)
	return ok
}

// shapedInAll makes a change of a row that of all the rows that the label says, "Next 7 rows: dec 1 st at each end".
func (p *parser) shapedInAll(info *lineInfo) {
	if info.kind != lineShape || info.forRows == nil || info.hidden == nil || len(info.parts) != 1 {
		return
	}
	switch s := &info.parts[0]; {
	case !s.next || !single(s.times, 1) || !single(s.interval, 1) || s.more != nil || s.until != nil:
	default:
		p.reading(info.at.to(p.last()), "read as a change in each of these rows")
		s.times = without(info.forRows)
	}
}
