package pattern

// takingOff reads what ends a piece without a row: "graft", "draw yarn through rem
// sts", "thread through rem 8 sts".
func (p *parser) takingOff(line *Line) bool {
	end := p.sentenceEnd(p.next)
	i := p.next
	off := p.tokens[i].is("graft", "kitchener")
	if p.tokens[i].is("draw", "thread", "pull", "run", "gather", "break", "cut", "fasten") {
		for n := i; n < end; n++ {
			if p.tokens[n].is("through", "thru") {
				off = true
			}
		}
	}
	if !off {
		return false
	}
	info := &line.info
	info.kind, info.all = lineOff, true
	info.counts = p.takenOff(end)
	p.next = end
	return true
}

// takenOff is how many stitches a sentence up to token end says that it takes off: those after
// "rem" or "all", or at once after the verb; of "the 10 sts on one needle to the 10 sts on the
// other" both together, and of "10 sts from each needle" twice as many. It is nil where that is
// not said, or they are those of an underarm, which are not on the needle.
func (p *parser) takenOff(end int) []int {
	if p.anyOf(p.next, end, "underarm", "underarms", "armpit", "gap", "gaps") {
		return nil
	}
	save, found := p.next, p.found.mark()
	defer func() { p.next = save }()
	verb := p.tokens[save].is("graft", "kitchener")
	var sum []int
	for n := save + 1; n < end; n++ {
		to, _ := p.sizedEnd(n)
		if to == 0 || p.ofPart(to) == 0 {
			continue
		}
		led := p.tokens[n-1].is("rem", "remaining", "last", "the", "all", "these", "first", "other") || verb && n == save+1
		if !led && !(verb && sum != nil && p.tokens[n-1].is("to", "with", "and")) {
			continue
		}
		p.next = n
		number := p.number()
		if number == nil {
			p.found.rewind(found)
			return nil
		}
		to = p.ofPart(to) + 1
		number = without(number)
		if verb && (p.tokens[to].is("from", "on", "of") && p.tokens[to+1].is("each", "both") || p.tokens[n-1].is("each")) {
			number = p.timesEach(number, 2)
		}
		sum = added(sum, number, p.sizes)
		if !verb {
			break
		}
		n = to - 1
	}
	return sum
}
