package pattern

// toBefore reads "3 sts before marker", "st before wrapped st". found is false if no such place
// is said; the number is passed over nevertheless.
func (p *parser) toBefore() (to extent, found, ok bool) {
	for p.acceptAmong("there are is only just") {
	}
	if p.numberAhead() {
		n := p.number()
		if n == nil {
			return extent{}, true, false
		}
		p.acceptAmong("st sts stitch stitches")
		if to, ok = p.beforePlace(n); ok {
			return to, true, true
		}
	}
	if p.peek().is("st", "stitch") && p.ahead(1).is("before") {
		p.next++
		if to, ok = p.beforePlace(one); ok {
			return to, true, true
		}
		p.next--
	}
	return extent{}, false, false
}

// acceptEnd goes on to token end, if that is one.
func (p *parser) acceptEnd(end int) bool {
	if end == 0 {
		return false
	}
	p.next = end
	return true
}

// toPlace is how far it is to a marker, a gap or another place at token i, so many stitches
// before it.
func (p *parser) toPlace(i int, before []int) (extent, bool) {
	switch {
	case p.acceptEnd(p.markerAt(i)):
		return extent{mark: before}, true
	case p.acceptEnd(p.gapAt(i)):
		p.asGiven = true
		return extent{mark: p.beforeDouble(before), gap: true}, true
	case p.acceptEnd(p.loosePlace(i)):
		return extent{last: toEnd, loose: true}, true
	}
	return extent{}, false
}

// lastStitches reads what follows "to last".
func (p *parser) lastStitches(from span) (extent, bool) {
	if p.accept("st", "stitch") {
		return extent{last: one, loose: p.onThisNeedle()}, true
	}
	n := p.number()
	if n == nil {
		p.ask(ReasonUnread, from.to(p.last()), "a number of stitches is expected after \"to last\"")
		return extent{}, false
	}
	p.acceptAmong("st sts stitch stitches")
	if p.peek().is("before") { // "to last 2 sts before m"
		if to, ok := p.beforePlace(n); ok {
			return to, true
		}
	}
	return extent{last: without(n), loose: p.onThisNeedle()}, true
}

// beforeTheEnd are the words for the end of a row after a number of stitches.
var beforeTheEnd = wordings("before end", "from end", "before the end", "from the end", "of the end", "of end")

// beforePlace reads which place so many stitches lie before.
func (p *parser) beforePlace(n []int) (extent, bool) {
	if p.peek().is("before", "from", "prior") || p.peek().is("of") && p.tokens[p.next+1].among("gap marker m the") {
		i := p.next + 1
		if p.tokens[i].is("to") {
			i++
		}
		if p.tokens[i].is("the") {
			i++
		}
		if to, ok := p.toPlace(i, without(n)); ok {
			return to, true
		}
	}
	if p.peek().is("past", "after", "beyond") {
		beyond := make([]int, len(n))
		for i := range n {
			beyond[i] = -at1(n, i)
		}
		if to, ok := p.toPlace(p.next+1, beyond); ok && !to.loose {
			p.asGiven = true
			return to, true
		}
	}
	if p.acceptEnd(p.remainEnd(p.next)) {
		return extent{last: without(n), loose: p.onThisNeedle()}, true
	}
	if !p.acceptAny(beforeTheEnd) {
		return extent{}, false
	}
	if p.onThisNeedle() {
		return extent{last: without(n), loose: true}, true
	}
	if p.accept("of") {
		p.accept("the")
		p.accept("row", "rnd", "round")
	}
	return extent{last: without(n)}, true
}

// remainEnd is the index after "remain", "are left" at token i, 0 if that is not what stands there.
func (p *parser) remainEnd(i int) int {
	if p.tokens[i].is("are", "is") && p.tokens[i+1].is("left", "remaining") {
		return i + 2
	}
	if p.tokens[i].among("rem remain remains remaining left") {
		return i + 1
	}
	return 0
}

// theRest reads "the rest", "all the rest of the row", "the rest until 3 remain", "plain to end": it is not found where that is not
// what comes next.
func (p *parser) theRest() (to extent, found, ok bool) {
	i := p.next
	for p.tokens[i].is("all", "the") {
		i++
	}
	rest := p.tokens[i].is("rest")
	if rest {
		i++
		for p.tokens[i].among("of the row rnd round") || p.tokens[i].stitches() {
			i++
		}
	} else if i > p.next {
		return extent{}, false, true
	}
	plain := p.acceptedAt(&i, "plain")
	switch further := p.tokens[i].is("to", "until", "till"); {
	case further && (rest || plain):
		p.next = i
		to, ok = p.toLast()
		return to, true, ok
	case rest && (p.clauseStopsAt(i) || p.tokens[i].among(", ; ) ]") || p.claimAt(i)):
		p.next = i
		return extent{last: toEnd}, true, true
	}
	return extent{}, false, true
}

// strokeTimes is how often "x4" says, 0 if it says nothing.
func strokeTimes(t *token) int {
	if t.kind != tokenWord || len(t.text) < 2 || len(t.text) > 5 || t.text[0] != 'x' {
		return 0
	}
	n, ok := whole(t.text[1:])
	if !ok || n > MaxNumber {
		return 0
	}
	return n
}

// markerAt is the index after "m", "next marker" or "BOR m" at token i, 0 if there is
// none.
func (p *parser) markerAt(i int) int {
	if p.letterAt(i) && p.markNamed(p.tokens[i].text) {
		return i + 1
	}
	for p.tokens[i].among("next first second third last raglan side the a bor center centre 1st 2nd " +
		"gusset " +
		"following foll beg-of-rnd eor thumb") {
		i++
	}
	if p.tokens[i].among("m marker mkr mk m1 ma mb") && !p.tokens[i].is("m1", "mb") {
		return i + 1
	}
	if p.tokens[i-1].is("bor", "eor") {
		return i
	}
	return 0
}

// markNamed reports whether the text places a marker by that letter: "pm A".
func (p *parser) markNamed(letter string) bool {
	if p.markNames == nil {
		p.markNames = map[string]bool{}
		for i := range len(p.tokens) - 1 {
			if p.tokens[i].is("pm", "marker", "m") && p.letterAt(i+1) {
				p.markNames[p.tokens[i+1].text] = true
			}
		}
		p.looked += len(p.tokens)
	}
	return p.markNames[letter]
}

// numberOfStsAt reports whether "45 sts" or "next 45 sts" stands at token i.
func (p *parser) numberOfStsAt(i int) bool {
	for p.tokens[i].among("the next first last centre center rem foll following") {
		i++
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].stitches()
}
