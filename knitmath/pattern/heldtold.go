package pattern

// heldTold reads "the other 30 sts are left for the instep", "the remaining 30 instep sts wait on hold": stitches
// that are put aside, told and not ordered.
func (p *parser) heldTold(line *Line) bool {
	end, at := p.heldToldAt(p.next)
	if end == 0 || p.onlyRows || p.trying {
		return false
	}
	first := p.next
	n, _, _, ok := p.someStitches()
	if !ok || p.next != at {
		return false
	}
	line.info.kind, line.info.counts = lineHold, n
	if line.info.whole = wholeRest; p.anyOf(first, at, "other") {
		line.info.whole = wholeOther
	}
	p.next = end
	return true
}

// heldToldNext reports whether such words come next.
func (p *parser) heldToldNext() bool {
	end, _ := p.heldToldAt(p.next)
	return end != 0
}

// heldToldAt is the index after such words at token i, and that of the verb after the stitches; 0 if they do not
// stand there. What is done with the stitches after it is another clause.
func (p *parser) heldToldAt(i int) (end, verb int) {
	verb = p.restCounted(i)
	if verb == 0 {
		return 0, 0
	}
	i = verb
	for p.tokens[i].among("are is will be being now") {
		i++
	}
	if !p.tokens[i].among("wait waits waiting rest resting stay remain left kept held placed put slipped " +
		"unworked") {
		return 0, 0
	}
	for i++; !p.endsAt(i) && !p.tokens[i].is(",", ";", "("); i++ {
		t := &p.tokens[i]
		if t.kind == tokenNumber || t.kind == tokenWord && alarming(t.text) && !t.among("hold holder rest left") {
			return 0, 0
		}
	}
	return i, verb
}

// restCounted is the index after "the other 30 sts", "while the remaining 30 instep sts" at token i; 0 if they do not
// stand there.
func (p *parser) restCounted(i int) int {
	for p.tokens[i].among("the while and with") {
		i++
	}
	if !p.tokens[i].is("other", "rem", "remaining") {
		return 0
	}
	for i++; p.tokens[i].is("the"); i++ {
	}
	if n, _ := p.sizedEnd(i); n != 0 {
		i = n
	}
	if i = p.ofPart(i); i == 0 {
		return 0
	}
	return i + 1
}

// restLeft is the index after where the other stitches are left, 0 if the words from a verb on do not say so.
func (p *parser) restLeft(verbAt int, verb *token) int {
	if !verb.is("leave", "leaving") || !p.anyOf(verbAt, p.next, "other", "rem", "remaining", "instep") {
		return 0
	}
	return p.restsOnNeedles(p.next)
}

// restsOnNeedles is the index after "on one needle", "unworked on their two needles" beside other stitches that are
// left at token i: they wait there; 0 if that is not what stands there.
func (p *parser) restsOnNeedles(i int) int {
	for p.tokens[i].among("unworked to rest resting waiting wait aside") {
		i++
	}
	if !p.tokens[i].is("on", "upon") {
		return 0
	}
	for i++; p.tokens[i].among("the their own its a one two first second other two needles instep") ||
		p.tokens[i].kind == tokenNumber; i++ {
	}
	if !p.tokens[i].among("needle needles dpn dpns") && !p.tokens[i-1].is("needles") {
		return 0
	}
	if p.tokens[i].among("needle needles dpn dpns") {
		i++
	}
	if p.tokens[i].is("for", "as", "until") {
		for !p.endsAt(i) && !p.tokens[i].is(",", ";", "(") {
			i++
		}
	}
	return i
}
