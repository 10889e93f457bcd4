package pattern

// between reports whether a number outside brackets, after some in brackets, is that
// of one more size: "80 (88) 96 (104)", "80 (88) 96 sts".
func (p *parser) between(i, n int) bool {
	if p.tokens[i].kind != tokenNumber || p.sizes > 0 && n >= p.sizes {
		return false
	}
	if end, _ := p.listEnd(i + 1); end != 0 {
		return true
	}
	if p.sizes > 0 && n+1 != p.sizes {
		return false
	}
	if n > 1 && p.tokens[i-1].is(")", "]") && (p.tokens[i+1].is(",", ";", ")") || p.endsAt(i+1)) {
		return true // "k29 (31) 35,", "k20 (22) 24 (26) 28."
	}
	return p.tokens[i+1].among("st sts stitch stitches row rows rnds " +
		"rounds times time more cm ins inches repeats")
}

// chainEnd is sizedEnd of "80-88-96" and "80/88/96". Two numbers are a chain only
// where there are two sizes, and those joined by a stroke are no cable.
func (p *parser) chainEnd(i int) (end, n int) {
	sign := &p.tokens[i+1]
	if !sign.is("-", "/") {
		return 0, 0
	}
	n = 1
	for i++; p.tokens[i].is(sign.text) && p.tokens[i+1].kind == tokenNumber; i += 2 {
		p.looked++
		if n++; n > MaxSizes {
			return 0, 0
		}
	}
	switch {
	case n < 2 || n < 3 && (p.sizes != 2 || sign.text == "-") || p.sizes > 0 && n != p.sizes:
		return 0, 0
	case p.tokens[i].kind == tokenWord && crossingWords[p.tokens[i].text]:
		return 0, 0
	}
	return i, n
}

// chainAfter is the index after "/31/33" at token i, which goes on from "k29", where
// there are as many numbers as sizes; 0 if there is no such chain.
func (p *parser) chainAfter(i int) int {
	sign := &p.tokens[i]
	if p.sizes < 2 || !sign.is("/", "-") || sign.is("-") && p.sizes == 2 {
		return 0
	}
	n := 1
	for ; p.tokens[i].is(sign.text) && p.tokens[i+1].kind == tokenNumber; i += 2 {
		p.looked++
		if n++; n > p.sizes {
			return 0
		}
	}
	if n != p.sizes {
		return 0
	}
	return i
}
