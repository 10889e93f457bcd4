package pattern

// noteEnd is where a note in the line of token i ends, "Note: work loosely. K2tog across.": before a sentence that is an
// order, which is worked and said to be; else the end of the line.
func (p *parser) noteEnd(i, end int) int {
	if !p.tokens[i].among("note notes tip hint nb photo photograph picture fig figure caption") {
		return end
	}
	for n := i + 1; n < end-1; n++ {
		if p.tokens[n].is(".") && p.orderAt(n+1, end) {
			p.reading(p.tokens[n+1].to(p.tokens[end-1].span), "read as worked, and no part of the note before it")
			return n + 1
		}
	}
	return end
}

// orderAt reports whether the sentence at token i of a line orders what changes the count or works rows, and not what
// holds always: "knit the first stitch of every row".
func (p *parser) orderAt(i, end int) bool {
	stop := i
	for ; stop < end && !p.tokens[stop].is("."); stop++ {
		if p.tokens[stop].among("every each always when if all any may can") && !p.tokens[stop+1].is("end") {
			return false
		}
	}
	if off := p.phraseEnd(i, offs); p.labelEnd(i) != 0 || off != 0 && p.tokens[off].kind == tokenNumber {
		return true
	}
	if p.worksAt(i) {
		return p.ribEnd(i) == 0 // "K1, p1 rib looks best"
	}
	save := p.next
	p.next = i
	ordered := p.directionAhead() && p.orders(&p.trial.info)
	p.next = save
	return ordered
}

var offs = wordings("bo", "bind off", "cast off")

// orders reports whether a direction says how many stitches or rows it is about.
func (p *parser) orders(info *lineInfo) bool {
	switch info.kind {
	case lineShape, lineBeginning, lineRepeat:
		return true
	case lineCastOn, lineEven, linePlain, lineHold, lineTake, linePickUp, lineOff:
		return info.counts != nil
	}
	return false
}
