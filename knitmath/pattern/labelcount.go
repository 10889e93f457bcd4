package pattern

// labelCount is the index after a count in the brackets of a label at token i, "Row 1 (20
// sts):", which it notes; 0 if there is none.
func (p *parser) labelCount(i int, info *lineInfo) int {
	end, _ := p.sizedEnd(i + 1)
	if end == 0 || !p.tokens[end].stitches() || !p.tokens[end+1].is(closers[p.tokens[i].text]) || !p.tokens[end+2].is(":") {
		return 0
	}
	if info != nil {
		info.labelClaim = i
	}
	return end + 2
}

// claimOfLabel reads the count of a label, which is that after the row.
func (p *parser) claimOfLabel(line *Line) {
	if line.info.labelClaim == 0 {
		return
	}
	save := p.next
	p.next = line.info.labelClaim
	p.claim(line)
	p.next = save
}

// labelSizes notes for which sizes a row is, by the brackets of its label: "Next row (size
// L only):". It asks where they are not known.
func (p *parser) labelSizes(i int) bool {
	if !p.tokens[i].is("size", "sizes", "for") || p.trying {
		return false
	}
	mask, end := p.sizesAt(i)
	if end == 0 && !p.tokens[i].is("for") {
		p.ask(ReasonSizesUnknown, p.tokens[i].span, "which sizes are these? the text does not name them")
		return true
	}
	p.rowSizes = mask
	return end != 0
}
