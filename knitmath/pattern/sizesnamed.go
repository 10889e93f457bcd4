package pattern

// sizesByOrdinal reads "1st size:", "2nd and 4th sizes only:" at token i.
func (p *parser) sizesByOrdinal(i int) (mask uint32, end int) {
	end, ranges := p.ordinals(i, true)
	if end == 0 || !p.tokens[end].is("size", "sizes") {
		return 0, 0
	}
	for _, q := range ranges {
		for n := q.first; n <= q.last; n++ {
			if int(n) > p.sizes {
				return 0, 0
			}
			mask |= 1 << (n - 1)
		}
	}
	return mask, p.sizesEnd(end + 1)
}

// sizesByDegree reads "larger size only:" of two sizes, "smallest size:", "two larger sizes only" at token i.
func (p *parser) sizesByDegree(i int) (mask uint32, end int) {
	t := &p.tokens[i]
	n, said := 1, t.howMany()
	if said == 0 && t.is("first", "last") { // "last two sizes"
		said = p.tokens[i+1].howMany()
	} else if said > 0 {
		t = &p.tokens[i+1]
	}
	if said > 0 {
		i++
		n = said
	}
	switch {
	case !p.tokens[i+1].is("size", "sizes") || p.tokens[i+1].is("sizes") != (said > 1) || n >= p.sizes:
		return 0, 0
	case said == 0 && t.is("smaller", "larger", "bigger") && p.sizes != 2: // which of them?
		return 0, 0
	}
	mask = 1<<n - 1
	switch {
	case t.is("smallest", "smaller", "first"):
	case t.is("largest", "larger", "bigger", "biggest", "last"):
		mask <<= p.sizes - n
	default:
		return 0, 0
	}
	return mask, p.sizesEnd(i + 2)
}

// sizesByList reads "- (-, M, L, XL):" at token i: those that are named in their places.
func (p *parser) sizesByList(i int) (mask uint32, end int) {
	for size := 0; i < len(p.tokens)-1; {
		switch t := &p.tokens[i]; {
		case t.is("(", ")", "[", "]", ","):
			i++
		case t.is("-"):
			size++
			i++
		case t.is(":"):
			if size != p.sizes {
				return 0, 0
			}
			return mask, i + 1
		default:
			k, next := p.sizeAt(i)
			if k < 0 || k != size {
				return 0, 0
			}
			mask |= 1 << k
			size++
			i = next
		}
	}
	return 0, 0
}

// allSizesAt is the index after "All sizes:", "For all sizes" at token i, 0 if that is not
// what stands there.
func (p *parser) allSizesAt(i int) int {
	if p.tokens[i].is("for") {
		i++
	}
	if !p.tokens[i].is("all", "both", "every") || !p.tokens[i+1].is("sizes", "size") {
		return 0
	}
	i += 2
	if p.tokens[i].is("again") {
		i++
	}
	switch t := &p.tokens[i]; {
	case t.is(":", ".", ",", "-"):
		return i + 1
	case t.kind == tokenNewline, t.kind == tokenEnd:
		return i
	}
	return 0
}

// anyOf reports whether one of the words stands between two tokens.
func (p *parser) anyOf(i, end int, words ...string) bool {
	for ; i < end; i++ {
		if p.tokens[i].is(words...) {
			return true
		}
	}
	return false
}
