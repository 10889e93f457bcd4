package pattern

// inFabric passes over "in St st", "in moss st", after "work 12".
func (p *parser) inFabric() bool {
	i := p.next
	if p.tokens[i].among("of from in foll following") {
		save := p.next
		p.next++
		p.accept("the")
		at := p.peek().span
		if p.peek().row() && p.ahead(1).kind == tokenNumber && p.ahead(2).is("of", "from") {
			p.next += 3
			p.accept("the")
		}
		if p.chartAhead() {
			p.reading(at.to(p.last()), "the chart is not in the text: read as if it kept the count of stitches")
			return true
		}
		p.next = save
	}
	if !p.tokens[i].is("in", "over") {
		return false
	}
	for i++; p.tokens[i].among("the est established reverse"); i++ {
	}
	if end, _ := p.patternAt(i); end != 0 {
		p.next = end
		return true
	}
	if end := p.fabricEnd(i); end != 0 {
		p.next = end
		return true
	}
	return false
}

// fromChart reads "Row 1 of Chart A over next 45 sts" after "work", of which the text
// says only how many stitches it is worked on.
func (p *parser) fromChart() bool {
	save := p.next
	if p.peek().row() && p.ahead(1).kind == tokenNumber {
		p.next += 2
		p.accept("of", "from")
	}
	p.acceptAmong("in from foll following the")
	p.accept("the")
	at := p.peek().span
	if !p.chartAhead() || p.peek().row() {
		p.next = save
		return false
	}
	spanned := p.spanned != "" && p.last1().is(p.spanned)
	if p.peek().is("patt", "pattern") {
		p.next++
	}
	if !p.acceptAll("from", "left", "to", "right") {
		p.acceptAll("from", "right", "to", "left")
	}
	if p.peek().is("over", "across", "on") && p.numberOfStsAt(p.next+1) {
		p.next++
	} else if spanned && p.peek().is("to") && p.ahead(1).is("last") {
		// on those of which the row before said how many they are
	} else if end, _ := p.sizedEnd(p.next); end == 0 {
		p.ask(ReasonUnread, at.to(p.last()), "the chart is not in the text: does it keep the count of stitches?")
		return true
	}
	p.reading(at.to(p.last()), "the chart is not in the text: read as if it kept the count of stitches")
	return true
}

// chartSpan reads "beg with st 1 (5) of Chart D work to st 57 (69)": so many stitches of a chart.
func (p *parser) chartSpan() (Step, bool) {
	i := p.next
	if !p.tokens[i].among("beg beginning starting start begin") || !p.tokens[i+1].is("with", "at") ||
		!p.tokens[i+2].is("st", "stitch") {
		return Step{}, false
	}
	save, found, from := p.next, p.found.mark(), p.peek().span
	p.next += 3
	first := p.number()
	ok := first != nil && p.accept("of", "on") && p.chartAhead()
	name := p.last1().text
	p.accept(",", "and")
	ok = ok && p.acceptAll("work", "to") && p.accept("st", "stitch")
	var last []int
	if ok {
		last = p.number()
	}
	if last == nil {
		p.next = save
		p.found.rewind(found)
		return Step{}, false
	}
	span := make([]int, p.sizes)
	for size := range span {
		span[size] = at(without(last), size) - at(without(first), size) + 1
	}
	p.spanned = name
	p.reading(from.to(p.last()), "the chart is not in the text: read as if it kept the count of stitches")
	return Step{Name: "work", takes: 1, leaves: 1, Times: tidy(span), at: from.to(p.last())}, true
}

// edgeNext reports whether a number of stitches and a place, "37 sts across back", stands at
// token i.
func (p *parser) edgeNext(i int) bool {
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].stitches() && p.tokens[end+1].among("along from up down across at around over in")
}

// morePickedUp reads "and 37 sts across back", which are picked up with those before them.
func (p *parser) morePickedUp(s *Step) bool {
	i := p.next + 1
	if p.tokens[i-1].is(",") && p.tokens[i].is("then", "and") {
		i++
	}
	if s.Name != pickedUp || !p.peek().is("and", ",") || !p.edgeNext(i) {
		return false
	}
	p.next = i
	if n := p.number(); n != nil {
		s.Times = added(s.Times, without(n), p.sizes)
	}
	p.acceptAmong("st sts stitch stitches")
	p.alongEdge()
	return true
}

// gapClosed is the index after "closing gaps", "to close the hole", "to avoid a gap" at token i: what stitches are
// picked up or worked together for; 0 if that is not what stands there.
func (p *parser) gapClosed(i int) int {
	if p.tokens[i].is("to") {
		i++
	}
	if !p.tokens[i].among("closing close avoiding avoid prevent preventing") {
		return 0
	}
	for i++; p.tokens[i].among("up the a any all"); i++ {
	}
	if !p.tokens[i].among("gap gaps hole holes") || !p.clauseStopsAt(i+1) {
		return 0
	}
	return i + 1
}

// alongEdge passes over where stitches are picked up.
func (p *parser) alongEdge() bool {
	if p.acceptEnd(p.gapClosed(p.next)) {
		return true
	}
	if !p.peek().among("along from around across up down over at in evenly") {
		return false
	}
	for !p.endsAt(p.next) && !p.peek().among(", ; ( )") && !p.claimAhead() && !(p.peek().is("and", "then") && p.startsItem(p.next+1)) &&
		!(p.peek().is("and") && p.edgeNext(p.next+1)) {
		p.next++
	}
	return true
}
