package pattern

// sizesInTail reads "on second size only", "for sizes M and L only" after a direction: it is for those.
func (p *parser) sizesInTail(info *lineInfo) bool {
	i := p.next
	if p.sizes < 2 || p.forSizes != 0 || p.onlyRows || !p.tokens[i].is("on", "for", "in", "(") {
		return false
	}
	bracket := p.tokens[i].is("(")
	if i++; bracket && p.tokens[i].is("for", "on") {
		i++
	}
	mask, end := p.sizeSet(i)
	if mask == 0 || !p.tokens[end].is("only") || bracket && !p.tokens[end+1].is(")") || info.kind == linePassed {
		return false
	}
	info.forSizes = mask
	p.next = end + 1 + bit(bracket)
	return true
}
