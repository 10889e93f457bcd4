package pattern

// sizesEnd is the index after what ends the naming of sizes, 0 if it does not end.
func (p *parser) sizesEnd(i int) int {
	if p.tokens[i].is("only") {
		i++
	}
	if p.tokens[i].is(":", ",", "-", ")", "]") {
		return i + 1
	}
	if p.tokens[i].kind == tokenNewline {
		return i
	}
	return 0
}

// unknownSizes asks which sizes are meant by "the larger sizes", or by a name that is
// not among them.
func (p *parser) unknownSizes() bool {
	i := p.next
	if p.tokens[i].is("the", "for") {
		i++
	}
	named := p.tokens[i].is("size", "sizes") && p.tokens[i+1].kind == tokenWord
	if !named && !(p.tokens[i].is("larger", "smaller", "bigger", "middle", "other", "some") && p.tokens[i+1].is("sizes", "size")) {
		return false
	}
	end := 0
	for n := i; n < i+7 && !p.endsAt(n); n++ {
		if p.tokens[n].is(":") || p.tokens[n].is("only") {
			end = n + 1
			break
		}
	}
	if end == 0 || named && p.section == sectionFront || named && !p.began {
		return false
	}
	from := p.peek().span
	p.next = end
	p.accept(":")
	p.ask(ReasonSizesUnknown, from.to(p.last()), "which sizes are these? the text does not name them")
	line := Line{info: lineInfo{kind: lineUnread}}
	p.finish(&line, from)
	return true
}
