package pattern

// loneClaim reads a count that stands in a sentence of its own, and belongs to what was
// read before it.
func (p *parser) loneClaim() bool {
	n := p.lineBeforeClaim()
	if !p.loneClaimAhead() {
		return false
	}
	if p.given && p.nothingWorked(n) && p.claimAtStart() {
		return true
	}
	if n == 0 {
		return false
	}
	last := &p.piece.Lines[n-1]
	claimed := len(last.ClaimedStitches) > 0 || len(last.ClaimedChangeStitches) > 0
	if claimed || last.info.kind == linePassed || last.info.kind == lineUnread && last.Steps == nil && !p.lineStart() {
		return false
	}
	save, found := p.next, p.found.mark()
	line := *last
	if !p.claim(&line) || !p.endsAt(p.next) {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.claimFor(last, &line, n == len(p.piece.Lines))
	return true
}

// nothingWorked reports whether nothing is worked up to line n, from 1.
func (p *parser) nothingWorked(n int) bool {
	return n == 0 || n == 1 && p.piece.Lines[0].info.kind == linePassed
}

// lineBeforeClaim is the number of the last line, from 1, but for remarks that stand between it
// and a count; 0 if there is none.
func (p *parser) lineBeforeClaim() int {
	n := len(p.piece.Lines)
	for n > 1 && p.piece.Lines[n-1].info.kind == linePassed && !p.piece.Lines[n-1].info.heading {
		n--
	}
	return n
}

// loneClaimAhead reports whether a count comes next that may stand alone, and is no ordinal.
func (p *parser) loneClaimAhead() bool {
	t := p.peek()
	return (t.kind == tokenNumber || t.among("( [ = - there you") || p.countLed(p.next) != 0) && p.ordinalEnd(p.next) == 0 && p.claimAhead()
}

// claimFor gives a line the claim that was read into another; straight says that no remark stands
// between the two.
func (p *parser) claimFor(last, line *Line, straight bool) {
	last.ClaimedStitches, last.ClaimedChangeStitches = line.ClaimedStitches, line.ClaimedChangeStitches
	last.info.changeAt = line.info.changeAt
	last.info.perNeedle, last.info.perSide, last.info.claimAt = line.info.perNeedle, line.info.perSide, line.info.claimAt
	last.info.partial, last.info.between, last.info.beside = line.info.partial, line.info.between, line.info.beside
	last.info.halfNamed, last.info.partsTold, last.info.partsAt = line.info.halfNamed, line.info.partsTold, line.info.partsAt
	if last.Direction == "" && straight {
		last.info.at = last.info.at.to(p.last()) // so that it is not written twice
	}
	if last.Direction != "" {
		said := p.found.source[last.info.at.start:p.last().end]
		last.info.at = last.info.at.to(p.last())
		last.Direction = joined(said)
	}
}

// claimAtStart reads a count before anything is worked, of the stitches that the question gives:
// "Toe: 20 sts rem."
func (p *parser) claimAtStart() bool {
	save, found, from := p.next, p.found.mark(), p.peek().span
	line := Line{info: lineInfo{kind: linePassed}}
	if !p.claim(&line) || !p.endsAt(p.next) {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.passed(from.to(p.last()))
	p.finish(&line, from)
	return true
}
