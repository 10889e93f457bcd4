package pattern

import "strconv"

// unworkedTold reads "10 sts unworked", "leaving 10 sts unworked" after the turn of a row: how many lie beyond it.
func (p *parser) unworkedTold(line *Line) {
	if line.info.beyond != nil || !turnsAtEnd(line.Steps) {
		return
	}
	save, found := p.next, p.found.mark()
	for p.acceptAmong(". , ; - ( there are leaving with") {
	}
	from := p.peek().span
	bracket := p.tokens[p.next-1].is("(")
	if end, _ := p.sizedEnd(p.next); end != 0 && p.tokens[end].stitches() {
		n := p.number()
		p.next++
		p.acceptAmong("rem remain remaining left are")
		if p.accept("unworked") && n != nil && (!bracket || p.accept(")")) && p.clauseEnds() {
			line.info.beyond, line.info.beyondAt = without(n), from.to(p.last())
			p.accept(".")
			return
		}
	}
	p.next = save
	p.found.rewind(found)
}

// compareBeyond compares what a text says to lie beyond a turn with what does.
func (r *runner) compareBeyond(l *Line) {
	if l.info.beyond == nil || r.quiet || !r.known {
		return
	}
	if n := int64(at(l.info.beyond, r.size)); n != r.now.behind && r.wanted(ReasonClaim, l.info.beyondAt) {
		r.fault(KindMistake, ReasonClaim, l.info.beyondAt, int(n-r.now.behind),
			stitches(int(r.now.behind))+" lie beyond the turn, not "+strconv.Itoa(int(n)))
	}
}

// eachOfEnd reads ", 28 on each needle", "(28 sts on each needle)" beside a count up to which rows are worked, or of stitches that
// are cast on: so many times that.
func (p *parser) eachOfEnd(line *Line) bool {
	count := line.info.until
	if line.info.kind == lineCastOn {
		count = line.info.counts
	}
	save, found, from := p.next, p.found.mark(), p.peek().span
	bracket := p.accept("(")
	if count == nil || !p.numberAhead() {
		p.next = save
		return false
	}
	n := p.number()
	p.accept("st", "sts", "stitches")
	if n == nil || !p.skipPhrase(claimNeedles) || bracket && !p.accept(")") || !p.clauseEnds() {
		p.next = save
		p.found.rewind(found)
		return false
	}
	for size := range p.sizes {
		each, all := at(n, size), at(count, size)
		if each < 1 || all%each != 0 || all/each > 6 || line.info.needles > 0 && all != each*line.info.needles {
			p.mistake(ReasonClaim, from.to(p.last()), strconv.Itoa(each)+" on each needle do not come to "+strconv.Itoa(all))
			break
		}
	}
	return true
}
