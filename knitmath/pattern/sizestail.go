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
	if p.tokens[i].is("the") {
		i++
	}
	mask, end := p.sizesSpelt(i)
	if mask == 0 || !p.tokens[end].is("only") || bracket && !p.tokens[end+1].is(")") || info.kind == linePassed {
		return false
	}
	info.forSizes = mask
	p.next = end + 1 + bit(bracket)
	return true
}

// sizesSpelt is the sizes named at token i, "second size", "largest size", "sizes M and L", and the index after them.
func (p *parser) sizesSpelt(i int) (mask uint32, end int) {
	switch t := &p.tokens[i]; {
	case t.is("size", "sizes"):
		return p.sizeMask(i + 1)
	case t.is("smallest") && p.tokens[i+1].is("size"):
		return 1, i + 2
	case t.is("largest", "last") && p.tokens[i+1].is("size"):
		return 1 << (p.sizes - 1), i + 2
	}
	end, ranges := p.ordinals(i, true)
	if end == 0 || !p.tokens[end].is("size", "sizes") {
		return 0, 0
	}
	for _, q := range ranges {
		for n := q.first; n <= q.last && int(n) <= p.sizes; n++ {
			mask |= 1 << (n - 1)
		}
	}
	return mask, end + 1
}
