package pattern

import "example.com/knitmath/knitmath/stitch"

// labelCount is the index after a count in the brackets of a label at token i, "Row 1 (20
// sts):", which it notes; 0 if there is none.
func (p *parser) labelCount(i int, info *lineInfo) int {
	open := i
	if end := p.signedAt(i); end != 0 && p.tokens[end].is(":") { // "Row 1 (+2):"
		if info != nil {
			info.labelClaim = i
		}
		return end
	}
	side := p.sideOf(i + 1)
	if side != stitch.SideUnspecified && p.tokens[p.sideEnd(i+1)].is(",", ";") { // "Row 1 (RS; 20 sts):"
		i = p.sideEnd(i + 1)
	}
	end, _ := p.sizedEnd(i + 1)
	if end == 0 || !p.tokens[end].stitches() || !p.tokens[end+1].is(closers[p.tokens[open].text]) || !p.tokens[end+2].is(":") {
		return 0
	}
	if info != nil {
		info.labelClaim = open
		if i > open {
			info.labelClaim = i + 1
			p.noteSide(side, info)
		}
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

// sizesInBracket is the index of the first word of "sizes 2 and 4 only", "2nd and 4th sizes", "for size
// M" in brackets that open at token i; 0 if they name no sizes.
func (p *parser) sizesInBracket(i int) int {
	closer := closers[p.tokens[i].text]
	from := i + 1
	if mask, next := p.sizeMask(from); mask != 0 && p.names != nil && p.tokens[next].is("only") { // "(L and XL only)"
		return from
	}
	for n := i + 1; n < min(i+24, len(p.tokens)) && !p.tokens[n].is(closer); n++ {
		switch t := &p.tokens[n]; {
		case t.is(";", ":"):
			from = n + 1
		case t.is("size", "sizes"):
			if p.tokens[from].is(",", "-") {
				from++
			}
			if p.sideOf(from) != stitch.SideUnspecified && from+1 < n {
				from++
			}
			if p.tokens[from].is(",", "-") {
				from++
			}
			return from
		}
	}
	return 0
}

// labelSizes notes for which sizes a row is, by the brackets of its label: "Next row (size
// L only):". It asks where they are not known.
func (p *parser) labelSizes(i int) bool {
	if p.trying {
		return false
	}
	p.sizesTold++
	mask, end := p.sizesAt(i)
	if end != 0 && mask == 0 {
		return true
	}
	if end == 0 && p.names != nil { // "(M)"
		mask, _ = p.sizeMask(i)
	}
	if mask == 0 {
		p.ask(ReasonSizesUnknown, p.tokens[i].span, "which sizes are these? the text does not name them")
		return true
	}
	p.rowSizes = mask
	return true
}
