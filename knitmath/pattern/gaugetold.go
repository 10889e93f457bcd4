package pattern

// gaugeTold passes over "22 sts and 32 rnds = 10 cm", "17 sts to 10 cm" in a sentence of its own: a gauge, and no count.
func (p *parser) gaugeTold() bool {
	i, _ := p.sizedEnd(p.next)
	if i == 0 || p.onlyRows || !p.tokens[i].stitches() {
		return false
	}
	if i++; p.tokens[i].among("and & x by / ,") && p.tokens[i+1].kind == tokenNumber && p.tokens[i+2].row() {
		i += 3
	}
	if !p.tokens[i].among("= to per over make measure equal") {
		return false
	}
	for i++; p.tokens[i].is("a"); i++ {
	}
	if p.tokens[i].kind != tokenNumber || p.tokens[i+1].system() == unitNone || !p.endsAt(i+2) {
		return false
	}
	p.passTail(i + 2)
	return true
}
