package pattern

// colourAtCount is the index after "changing to CC when there are 31 sts", also in brackets, at token i: where a
// colour is changed is no count of where rows end. It is 0 if that is not what stands there.
func (p *parser) colourAtCount(i int) int {
	open := p.acceptedAt(&i, "(", "[")
	if !p.acceptedAt(&i, "changing", "change", "joining", "join", "switching", "switch", "introducing", "introduce") {
		return 0
	}
	for p.acceptedAt(&i, "to", "in", "the", "a", "new", "second", "next", "other") {
	}
	from := i
	if end := p.colourEnd(i); end != 0 {
		i = end
	}
	for p.acceptedAt(&i, "colour", "color", "colours", "colors", "contrast", "contrasting", "yarn") {
	}
	if i == from || !p.acceptedAt(&i, "after", "at", "when", "once") {
		return 0
	}
	for p.acceptedAt(&i, "there", "are", "you", "have", "reaching", "reach", "the", "count", "is") {
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].stitches() {
		return 0
	}
	if end++; open {
		if !p.tokens[end].is(")", "]") {
			return 0
		}
		return end + 1
	}
	if !p.clauseStopsAt(end) {
		return 0
	}
	return end
}

// colourAtCountTold passes over such words in a sentence of their own.
func (p *parser) colourAtCountTold(line *Line) bool {
	from := p.peek().span
	if !p.acceptEnd(p.colourAtCount(p.next)) {
		return false
	}
	p.passed(from.to(p.last()))
	line.info.kind = linePassed
	return true
}
