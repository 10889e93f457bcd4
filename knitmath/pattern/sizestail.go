package pattern

// sizesInTail reads "on second size only", "for sizes M and L only" after a direction: it is for those.
func (p *parser) sizesInTail(info *lineInfo) bool {
	i := p.next
	if p.sizes < 2 || p.forSizes != 0 || p.onlyRows || !p.tokens[i].among("on for in ( ,") {
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
	p.sizesTold++
	p.next = end + 1 + bit(bracket)
	return true
}

// sizesPassedOver asks about sizes that were said from token first on, "and, for the largest size only, on foll row", and by which
// nothing that was read there is told apart.
func (p *parser) sizesPassedOver(first int, since mark) {
	told := p.sizesTold
	if p.sizes < 2 || !p.began || p.onlyRows || p.trying {
		return
	}
	for _, f := range p.found.list[min(since.listed, len(p.found.list)):] {
		if f.Kind == KindQuestion || f.Kind == KindMistake {
			return
		}
	}
	for i := first; i < p.next; i++ {
		p.looked++
		then := &p.tokens[i+1]
		if !p.tokens[i].is("size", "sizes") || !then.is("only") && !directing[then.text] && !p.tokens[i+2].row() { // "for the larger size 6 rows"
			continue
		}
		if told--; told < 0 {
			p.ask(ReasonSizesUnknown, p.tokens[i].to(p.tokens[i+1].span), "what is for some sizes only here? say so before the row")
			return
		}
	}
}
