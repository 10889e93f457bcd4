package pattern

// Places on a needle of several, "k to last 3 sts of needle, k2tog, k1; rep from * on second needle": where the
// needles end is not followed, and how often it is worked is the number of needles.

// onThisNeedle passes over "of needle", "on the dpn", "on first needle".
func (p *parser) onThisNeedle() bool {
	i := p.next
	if !p.tokens[i].is("of", "on", "from") {
		return false
	}
	for i++; p.tokens[i].among("the this that same each every first second third your 1st 2nd"); i++ {
	}
	if !p.tokens[i].is("needle", "dpn") || p.tokens[i+1].kind == tokenNumber && !p.endsClause(i+2) {
		return false
	}
	if p.next = i + 1; p.peek().kind == tokenNumber {
		p.next++
	}
	return true
}

// workedOnNeedles reads "on each needle", "on second needle" after a group: so often as there are needles, or all
// round where that is not known and the group has a number of stitches. others says that the group was worked
// once before.
func (p *parser) workedOnNeedles(s *Step, others bool) bool {
	if n := p.onNeedlesTimes(others); n > 0 {
		s.Times = []int{n}
		return true
	}
	if hasLoose(s.Steps) || !p.peek().is("on", "for") || !p.ahead(1).is("each", "every", "all") ||
		!p.ahead(2).among("needle dpn needles dpns") {
		return false
	}
	p.next += 3
	s.Times, s.RemainingStitches = nil, toEnd
	return true
}

// onNeedlesTimes reads on which needles what was written for one is worked, "on each needle", "on second
// needle", "on the other 3 needles": how often in all. others says that the first working is one of them;
// 0 and nothing taken if that is not what comes next.
func (p *parser) onNeedlesTimes(others bool) int {
	save, found := p.next, p.found.mark()
	if p.acceptAmong("on for across over") {
		p.accept("the")
		if n := p.needlesCounted(others); n > 0 {
			return n
		}
	}
	p.next = save
	p.found.rewind(found)
	return 0
}

// needlesNumbered is how many "needles 2 and 3" are, with those before.
func (p *parser) needlesNumbered(first int) int {
	end, numbers := p.needleNumbers(p.next + 1)
	if p.next = end; len(numbers) == 0 {
		return 0
	}
	return first + len(numbers)
}

// needlesCounted is how many needles "each needle", "second and third needles", "needles 2 and 3", "other 3
// needles" are, with the first where they are the others.
func (p *parser) needlesCounted(others bool) int {
	first := 0
	if others {
		first = 1
	}
	if end, numbers := p.needlesShort(p.next); len(numbers) > 0 {
		p.next = end
		return first + len(numbers)
	}
	if p.peek().is("needle", "needles", "dpns") {
		return p.needlesNumbered(first)
	}
	each := p.acceptAmong("each every all both")
	p.accept("of")
	p.accept("the")
	rest := p.acceptAmong("other next rem remaining foll following")
	n := 0
	if !each {
		n = p.ordinalsListed()
	}
	said := p.peek().howMany()
	if said > 0 {
		p.next++
	}
	p.accept("dp", "double-pointed")
	if !p.acceptAmong("needle needles dpn dpns") || said > 5 {
		return 0
	}
	switch {
	case n > 0:
		return first + n
	case said > 0 && rest:
		return first + said
	case said > 0:
		return said
	case each:
		return p.needlesInText()
	case rest && others:
		return 2
	}
	return 0
}

// ordinalsListed is how many ordinals stand in a row, "second, third and fourth".
func (p *parser) ordinalsListed() int {
	n := 0
	for end := p.ordinalEnd(p.next); end != 0; end = p.ordinalEnd(p.next) {
		n, p.next = n+1, end
		p.accept(",")
		p.accept("and", "&")
	}
	return n
}

// howMany is the number that a token is, in figures or in words; 0 if it is none.
func (t *token) howMany() int {
	if t.kind == tokenNumber {
		return int(t.number)
	}
	n, _ := t.written()
	return n
}

// needlesInText is on how many needles the text says that the stitches lie, "on each of 4 dpns", "over 3 needles";
// 0 if it does not.
func (p *parser) needlesInText() int {
	for i := p.next - 1; i > 2; i-- {
		p.looked++
		if !p.tokens[i].is("needles", "dpns") {
			continue
		}
		at := i - 1
		for at > 0 && p.tokens[at].among("dp double-pointed pointed double circular short") {
			at--
		}
		n := p.tokens[at].howMany()
		if n == 0 {
			continue
		}
		if at--; p.tokens[at].is("the") {
			at--
		}
		if p.tokens[at].among("over on onto between among") || p.tokens[at].is("of") && p.tokens[at-1].is("each") {
			return n
		}
	}
	return 0
}

// needleWorked reports whether steps that go to the last stitches of a needle come to its end, and says so where
// they do not.
func (p *parser) needleWorked(steps []Step) bool {
	for size := range p.sizes {
		if left := leftAfterPlace(steps, size); left != 0 && looseLast(steps) {
			p.needleLeaves(steps, left)
			return false
		}
	}
	for i := range steps {
		if steps[i].Steps != nil && !p.needleWorked(steps[i].Steps) {
			return false
		}
	}
	return true
}

// looseLast reports whether one of the steps goes to the last stitches of a needle.
func looseLast(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; s.loose && s.RemainingStitches != nil && !single(s.RemainingStitches, 0) {
			return true
		}
	}
	return false
}
