package pattern

// extent is how often or how far something is worked: so many times, or until so
// many stitches are left; neither if the text does not say.
type extent struct {
	exact       bool // the times are those of single stitches
	loose       bool // up to a place that is not followed
	gap         bool // up to the gap that the last turn left
	times, last []int
	mark        []int // stitches before the next marker
	more        bool  // "3 more times"
}

var toEnd = []int{0} // never written to

// upTo reads how often or how far. all says that "all sts" and the like may
// stand for "to end".
func (p *parser) upTo(all bool) (extent, bool) {
	if p.peek().among("the all rest plain") {
		if to, found, ok := p.theRest(); found {
			return to, ok
		}
	}
	return p.howFar(all)
}

// howFar is upTo for any other words than "the rest".
func (p *parser) howFar(all bool) (extent, bool) {
	switch {
	case p.accept("once", "twice"):
		return extent{times: []int{1 + bit(p.last1().is("twice"))}, more: p.accept("more")}, true
	case p.acceptEnd(p.gapClosed(p.next)), p.peek().is("over", "across") && p.numberOfStsAt(p.next+1):
		return extent{}, true
	case p.allAlong():
		return extent{last: toEnd}, true
	case p.inEachOf():
		n := p.number()
		p.acceptAmong("st sts stitch stitches")
		return extent{times: without(n), exact: true}, n != nil
	case p.timesAt(p.next):
		return p.times()
	case p.peek().is("x", "×") && p.ahead(1).kind == tokenNumber, strokeTimes(p.peek()) > 0:
		return p.crossTimes()
	case p.peek().among("to until up till"), p.peek().is("back") && p.ahead(1).is("to") && p.accept("back"):
		return p.toLast()
	case p.peek().among("across around along thence"):
		return p.acrossRow()
	case all && p.peek().among("all every each rem remaining"):
		return p.allStitches()
	}
	return extent{}, true
}

// allAlong passes over "k back", "k plain", "k all round", "k in each st": to the end of the
// row.
func (p *parser) allAlong() bool {
	t, then := p.peek(), p.ahead(1)
	switch {
	case p.inNeedles && t.is("even", "straight") && p.last1().among("work patt pattern cont continue"):
		p.next++
		p.acceptAny(asEstablished)
		return true
	case t.is("back", "plain") && (p.endsAt(p.next+1) || then.among(", ; - (")):
		p.next++
		return true
	case t.is("all") && then.is("needles"):
		p.next += 2
		return true
	case t.is("all", "right", "the"):
		return p.acceptEnd(p.wayEnd(p.next))
	}
	return p.inEveryStitch()
}

// wayEnd is the index after "all round", "all the way around", "right across the row", "the whole way round" at token i; 0 if that
// is not what stands there.
func (p *parser) wayEnd(i int) int {
	from := i
	for p.tokens[i].among("all right the whole way") {
		i++
	}
	if i == from || !p.tokens[i].among("round around across along") || p.tokens[i-1].is("the") {
		return 0
	}
	for i++; p.tokens[i].among("the whole row rnd round"); i++ {
	}
	if !p.clauseStopsAt(i) && !p.tokens[i].is(")", "]", "*") {
		return 0
	}
	return i
}

// acrossRow reads "across row", "around all sts", "across to last 2 sts".
func (p *parser) acrossRow() (extent, bool) {
	p.next++
	p.acceptAmong("the whole entire next this")
	p.accept("row", "rnd", "round")
	if p.accept("all", "both") {
		p.acceptAmong("sts stitches pieces sets legs halves sleeves sides")
	}
	if end := p.partWordsEnd(p.next); p.tokens[end].is("to", "until") { // "across back to next m"
		p.next = end
		return p.toLast()
	}
	p.accept("plain")
	return extent{last: toEnd}, true
}

// inEveryStitch passes over "in each st", "into every st to end".
func (p *parser) inEveryStitch() bool {
	if !p.peek().is("in", "into") || !p.ahead(1).is("each", "every") || !p.ahead(2).is("st", "stitch") {
		return false
	}
	p.next += 3
	if !p.acceptAll("to", "end") {
		p.accept("across", "around")
	}
	return true
}

// inEachOf passes over "in each of the next", "into each of the first" before a number of
// stitches.
func (p *parser) inEachOf() bool {
	i := p.next
	if !p.tokens[i].is("in", "into") || !p.tokens[i+1].is("each", "every") {
		return false
	}
	i += 2
	for p.tokens[i].among("of the next first last foll following") {
		i++
	}
	if end, _ := p.sizedEnd(i); i == p.next+2 || end == 0 || !p.tokens[end].stitches() {
		return false
	}
	p.next = i
	return true
}

// allStitches reads "all sts", "every st", "rem sts".
func (p *parser) allStitches() (extent, bool) {
	i := 1
	if p.ahead(i).is("rem", "remaining", "the") {
		i++
	}
	if i == 1 && p.peek().is("all") && (p.clauseStopsAt(p.next+1) || p.claimAt(p.next+1)) { // "k all"
		p.next++
		return extent{last: toEnd}, true
	}
	if !p.ahead(i).among("st sts stitch stitches") {
		return extent{}, true
	}
	p.next += i + 1
	return extent{last: toEnd}, true
}

// crossTimes reads "x 4" and "x4".
func (p *parser) crossTimes() (extent, bool) {
	stroke := strokeTimes(p.peek())
	if p.next++; stroke > 0 {
		return extent{times: []int{stroke}}, true
	}
	n := p.number()
	return extent{times: without(n)}, n != nil
}

// toLast reads what follows "to" or "until".
func (p *parser) toLast() (extent, bool) {
	from := p.peek().span
	p.accept("up")
	p.next++
	p.accept("the")
	if p.peek().is("end") && p.ahead(1).is("of") && p.acceptEnd(p.loosePlace(p.next)) {
		return extent{last: toEnd, loose: true}, true
	}
	p.accept("within")
	if n, ok := p.rightNeedle(); ok {
		return extent{times: n, exact: true}, n != nil
	}
	if p.rowEndSaid() {
		return extent{last: toEnd}, true
	}
	if to, ok := p.toPlace(p.next, toEnd); ok {
		return to, true
	}
	if p.accept("last") {
		return p.lastStitches(from)
	}
	if to, found, ok := p.toBefore(); found {
		return to, ok
	}
	at := p.peek().span
	if p.peek().kind == tokenWord || p.peek().kind == tokenNumber {
		at = p.clauseSpan(p.next)
	}
	p.ask(ReasonUnread, from.to(at),
		"only \"to end\" and \"to last n sts\" are followed; "+
			"for a marker or another place say how many stitches remain")
	return extent{}, false
}

// rowEndSaid passes over "end", "end of rnd", "end of this row".
func (p *parser) rowEndSaid() bool {
	if !p.accept("end", "end-of-row", "end-of-rnd") {
		return false
	}
	if p.accept("of") {
		p.accept("the", "this")
		p.toRoundEnd = p.toRoundEnd || p.peek().is("rnd", "round")
		p.acceptAmong("row rnd round needle heel sts section chart flap heel-flap")
	} else {
		p.acceptRow()
	}
	return true
}
