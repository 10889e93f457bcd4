package pattern

// sizesLed reports whether words of sizes lead in what is worked, "for women's sizes only,": they end before token i,
// or a word after it.
func (p *parser) sizesLed(i int) bool {
	if !p.began || i == p.next {
		return false
	}
	for n := i; n < i+3 && p.tokens[n].kind == tokenWord; n++ {
		if p.tokens[n].is("size", "sizes") && p.tokens[n+1].is("only", ",", ":") {
			return true
		}
	}
	return false
}

// sizesLedEnd is the index after the colon, the "only" or, after words that lead in, the comma that ends the naming of
// sizes at token i; 0 if there is none.
func (p *parser) sizesLedEnd(i int) int {
	for n := i; n < i+9 && !p.endsAt(n); n++ {
		if p.tokens[n].is(":", "only") || i > p.next && p.tokens[n].is(",") {
			return n + 1
		}
	}
	return 0
}

// someSizesOnly reports whether "misses' sizes only", "size 9 only" stands at token i.
func (p *parser) someSizesOnly(i int) bool {
	sized := false
	for n := i; n < i+9 && !p.endsAt(n) && !p.tokens[n].row() && !directing[p.tokens[n].text]; n++ {
		if p.tokens[n].is("only") {
			return sized
		}
		sized = sized || p.tokens[n].is("size", "sizes")
	}
	return false
}

// unknownSizes asks which sizes are meant by "the larger sizes", or by a name that is
// not among them.
func (p *parser) unknownSizes() bool {
	i := p.next
	for p.tokens[i].among("the for in on ( [") {
		i++
	}
	if p.tokens[i].howMany() > 0 {
		i++
	}
	named := p.tokens[i].is("size", "sizes") && p.tokens[i+1].kind == tokenWord
	if !named && !p.sizesLed(i) && !p.someSizesOnly(i) &&
		!(p.tokens[i].among("larger smaller bigger middle other some largest smallest") &&
			p.tokens[i+1].is("sizes", "size")) {
		return false
	}
	end := p.sizesLedEnd(i)
	if end == 0 || named && (p.section == sectionFront || !p.began) {
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
