package pattern

// patternRows reads "the 8-row pattern", "this 12-rnd repeat": the rows above, if as many stand there
// together under their numbers.
func (p *parser) patternRows(info *lineInfo) bool {
	i := p.next
	for p.tokens[i].among("in the this these all whole entire full complete above same") {
		i++
	}
	if p.stripesAgain(info, i) {
		return true
	}
	n := int(p.tokens[i].number)
	if p.tokens[i].kind != tokenNumber || n < 2 {
		return false
	}
	if i++; p.tokens[i].is("-") {
		i++
	}
	if i = p.patternRowsAt(i); i == 0 {
		return false
	}
	if p.rowsInSet() != n && p.rowsSaid != n {
		return false
	}
	for i++; p.tokens[i].among("patt pattern pat repeat rep sequence section lace cable stripe"); i++ {
	}
	info.last, p.next = n, i
	return true
}

// ofPatternEnd is the index after "of the pattern", "of patt" at token i; 0 if it does not stand there.
func (p *parser) ofPatternEnd(i int) int {
	if !p.tokens[i].is("of") {
		return 0
	}
	for i++; p.tokens[i].among("the this"); i++ {
	}
	if !p.tokens[i].among("patt pattern pat repeat rep sequence") {
		return 0
	}
	return i + 1
}

// patternRowsAt is the index of the last word of "rows of patt", "pattern rows", "row repeat" at token i, behind their number; 0 if it
// does not stand there. "The 4 rows" are those only where it is said how often.
func (p *parser) patternRowsAt(i int) int {
	the := p.tokens[i-1].kind == tokenNumber && p.tokens[i-2].is("the")
	switch {
	case p.tokens[i].among("patt pattern pat lace") && p.tokens[i+1].row():
		return i + 1
	case !p.tokens[i].row():
		return 0
	case p.ofPatternEnd(i+1) != 0:
		return p.ofPatternEnd(i+1) - 1
	case the && p.timesAt(i+1), p.tokens[i+1].among("patt pattern pat repeat rep sequence section lace cable stripe"):
		return i
	}
	return 0
}

// stripesAgain reads "sequence", "stripe pattern" at token i, where the rows just above were told by their colours.
func (p *parser) stripesAgain(info *lineInfo, i int) bool {
	last := len(p.piece.Lines) - 1
	if !p.tokens[i-1].among("the this same whole full") || last < 0 || p.rowsSaid == 0 ||
		p.piece.Lines[last].info.kind != lineEven || !single(p.piece.Lines[last].info.counts, p.rowsSaid) {
		return false
	}
	for p.tokens[i].among("stripe striped colour color") {
		i++
	}
	if !p.tokens[i].among("sequence pattern patt repeat stripes") {
		return false
	}
	info.last, p.next = p.rowsSaid, i+1
	return true
}

// patternGoesOn notes that rows by their numbers, "then Rows 1 and 2 once more", are those of the stitch pattern whose rows were
// just worked.
func (p *parser) patternGoesOn(info *lineInfo) {
	n := len(p.piece.Lines)
	if n == 0 || info.ranges == nil || info.pattern != 0 || info.lines != nil {
		return
	}
	if before := &p.piece.Lines[n-1].info; before.kind == lineRepeat && before.pattern > 0 {
		info.pattern, info.afresh = before.pattern, true
	}
}
