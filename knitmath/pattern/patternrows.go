package pattern

// patternRows reads "the 8-row pattern", "this 12-rnd repeat": the rows above, if as many stand there
// together under their numbers.
func (p *parser) patternRows(info *lineInfo) bool {
	i := p.next
	for p.tokens[i].among("in the this whole entire full complete above same") {
		i++
	}
	n := int(p.tokens[i].number)
	if p.tokens[i].kind != tokenNumber || n < 2 {
		return false
	}
	if i++; p.tokens[i].is("-") {
		i++
	}
	if !p.tokens[i].row() || !p.tokens[i+1].among("patt pattern pat repeat rep sequence section lace cable") {
		return false
	}
	if p.rowsInSet() != n && p.rowsSaid != n {
		return false
	}
	for i++; p.tokens[i].among("patt pattern pat repeat rep sequence section lace cable"); i++ {
	}
	info.last, p.next = n, i
	return true
}
