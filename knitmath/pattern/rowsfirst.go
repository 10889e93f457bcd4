package pattern

// rowsFirst reads "24 rows St st", "6 rnds in k2, p2 rib": the number of rows before their fabric, and no verb.
func (p *parser) rowsFirst(line *Line) bool {
	first := p.next
	end := p.rowsFirstEnd(first)
	if end == 0 || p.onlyRows {
		return false
	}
	n := p.number()
	if n == nil {
		return false
	}
	p.next = p.afterMore(p.next)
	line.info.inRounds = !p.peek().is("row", "rows")
	p.next = end
	line.info.kind, line.info.counts = lineEven, without(n)
	p.rowOfFabric(&line.info)
	line.info.rib, line.info.ribAs = p.ribIn(first, p.next), p.ribAs(first)
	return true
}

// rowsFirstEnd is the index after them at token i; 0 if that is not what stands there, and nothing else.
func (p *parser) rowsFirstEnd(i int) int {
	rows, _ := p.sizedEnd(i)
	if rows == 0 || p.sentenceGoesOn(i) {
		return 0
	}
	if rows = p.afterMore(rows); !p.tokens[rows].row() {
		return 0
	}
	for rows++; p.tokens[rows].among("in of even straight"); rows++ {
	}
	end := p.fabricEnd(rows)
	if end == 0 || !p.endsAt(end) && !p.tokens[end].is(",", ";") && !p.tokens[end].is("(", "[") {
		return 0
	}
	return end
}

// sentenceGoesOn reports whether token i is within a sentence, where a number of rows says how many there are.
func (p *parser) sentenceGoesOn(i int) bool {
	before := &p.tokens[i-1]
	return before.kind != tokenNewline && !before.is(".", ":", ";")
}
