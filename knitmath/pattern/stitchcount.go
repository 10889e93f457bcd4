package pattern

// stitchCount reads "Stitch count: 38", "Total sts: 38 (42)", "Sts: 38", in a line of its own,
// as the count after the row or direction above it.
func (p *parser) stitchCount() bool {
	n := len(p.piece.Lines)
	for n > 0 && p.piece.Lines[n-1].info.kind == linePassed && !p.piece.Lines[n-1].info.heading {
		n--
	}
	if !p.began || n == 0 {
		return false
	}
	end := p.countLed(p.next)
	if end == 0 {
		return false
	}
	last := &p.piece.Lines[n-1]
	if last.info.kind == lineUnread || last.info.defined || len(last.ClaimedStitches) > 0 || len(last.ClaimedChangeStitches) > 0 {
		return false
	}
	save, found := p.next, p.found.mark()
	from := p.peek().span
	p.next = end
	numbers := p.number()
	p.accept("st", "sts", "stitches")
	if numbers == nil || !p.endsAt(p.next) {
		p.next = save
		p.found.rewind(found)
		return false
	}
	last.ClaimedStitches, last.info.claimAt = numbers, from.to(p.last())
	last.info.at = last.info.at.to(p.last())
	if last.Direction != "" {
		last.Direction = joined(p.found.source[last.info.at.start:last.info.at.end])
	}
	return true
}

// countLed is the index after "stitch count:", "the total number of sts is now" at token i, 0 if it does not stand there.
func (p *parser) countLed(i int) int {
	for p.tokens[i].among("the your final new this") {
		i++
	}
	from, counts, called := i, false, false
	for ; p.tokens[i].among(countNouns) && i < from+7; i++ {
		called = called || p.tokens[i].stitches() || p.tokens[i].is("st")
		counts = counts || p.tokens[i].is("count", "total", "number") || i == from && called
	}
	switch {
	case !counts:
		return 0
	case p.tokens[i].is(":", "=", "-"):
		if end, _ := p.sizedEnd(i + 1); i > from+1 || called || end != 0 && p.tokens[end].stitches() {
			return i + 1
		}
		return 0
	}
	return p.countVerb(i, called)
}

// countVerb is the index after "is now" at token i before a number, which is of stitches where they were not called so before; else 0.
func (p *parser) countVerb(i int, called bool) int {
	verb := i
	for p.tokens[i].among("is are was should must will be now still again remains remain stays stay at to comes equals becomes makes") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if i == verb || i > verb+4 || end == 0 || !called && !p.tokens[end].stitches() {
		return 0
	}
	return i
}

// countNouns are the words of which what leads a count in is made.
const countNouns = "stitch st sts stitches count total number of the on all needle needles overall"
