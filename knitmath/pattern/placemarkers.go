package pattern

// markersPlaced reads what follows "pm": "after every 12 sts", "21 sts in from each end".
func (p *parser) markersPlaced(line *Line) bool {
	if p.onlyRows {
		return false
	}
	p.inFromEnds(line)
	if p.accept("after") || p.peek().is("every", "each") {
		p.accept("every", "each")
		p.accept("the")
		if p.number() != nil {
			p.accept("st", "sts", "stitches")
		}
	}
	return true
}

// besideCentre reads "on either side of centre 3 sts" after markers that are placed.
func (p *parser) besideCentre(line *Line) {
	if !p.acceptAny(eitherSide) {
		p.inFromEnds(line)
		return
	}
	p.accept("the")
	centre := p.acceptAmong("centre center central middle")
	n := p.number()
	if p.acceptAmong("st sts stitch stitches"); n == nil {
		n = one
	}
	if centre && p.clauseEnds() {
		line.info.centre = without(n)
	}
}

// inFromEnds reads "21 sts in from each end" after markers that are placed.
func (p *parser) inFromEnds(line *Line) {
	save, found := p.next, p.found.mark()
	if end, _ := p.sizedEnd(p.next); end != 0 && p.tokens[end].stitches() {
		n := p.number()
		p.next++
		p.accept("in")
		if n != nil && p.acceptAny(fromEachEnd) && p.clauseEnds() {
			line.info.inset = without(n)
			return
		}
	}
	p.next = save
	p.found.rewind(found)
}

// marker passes over "marker", "m" and what it is for.
func (p *parser) marker() bool {
	for p.acceptAmong("a an the first second beg-of-rnd bor new stitch st all end-of-rnd removable side " +
		"contrasting different beginning-of-round beg of rnd round beginning start") {
	}
	p.number()
	if !p.acceptAmong("marker markers m ms bor stitch-marker") {
		return false
	}
	if p.peek().is("(") && p.ahead(1).is("pm", "m") && p.ahead(2).is(")") { // "place marker (pm)"
		p.next += 3
	}
	return true
}
