package pattern

// rowsInTurn reads "knit 1 row, purl 1 row, alternately, for 20 rows" after its two rows, which are the first of them.
func (p *parser) rowsInTurn(line *Line) bool {
	n := len(p.piece.Lines)
	if !p.peek().is("alternately", "alternating") || n < 2 || !p.oneRowPlain(n-1) || !p.oneRowPlain(n-2) {
		return false
	}
	p.next++
	p.accept(",")
	info := &line.info
	if !p.peek().is("for", "until", "till") {
		return false
	}
	if p.forRowsAhead() {
		p.next++
		if info.forRows, info.total = without(p.number()), true; info.forRows == nil || !p.acceptRow() {
			return false
		}
	} else {
		p.repeatUntil(info)
	}
	info.kind, info.last, info.afresh = lineRepeat, 2, true
	return true
}

// oneRowPlain reports whether a line is one row that is knit or purled.
func (p *parser) oneRowPlain(i int) bool {
	info := &p.piece.Lines[i].info
	return info.kind == linePlain && single(info.counts, 1)
}

// wholeRepeated repeats all steps of a row which "repeat to end" follows without a star.
func (p *parser) wholeRepeated(steps []Step) []Step {
	if len(steps) == 0 || p.onlyRows || !p.peek().is("rep", "repeat") ||
		!p.ahead(1).among("to across around all right the") || anyStretches(steps) {
		return steps
	}
	save, found := p.next, p.found.mark()
	p.next++
	at := p.last()
	u, ok := p.upTo(false)
	if !ok || u.last == nil || !single(u.last, 0) {
		p.next = save
		p.found.rewind(found)
		return steps
	}
	p.reading(at.to(p.last()), "no star stands in this row: read as all of it repeated")
	return []Step{simple(Step{Steps: steps, RemainingStitches: toEnd, at: steps[0].at.to(p.last())})}
}
