package pattern

// measured reports whether the number at token i is a length or a size, not a count.
func (p *parser) measured(i int) bool { return p.measuredEnd(i) != 0 }

// measuredEnd is the index after a number with a unit of length or weight, or the
// number of a needle; 0 if it is none.
func (p *parser) measuredEnd(i int) int {
	if p.tokens[i].kind != tokenNumber {
		return 0
	}
	end, _ := p.sizedEnd(i)
	for end < len(p.tokens)-1 && (p.tokens[end].is("-", "/", "\"", "'") || p.tokens[end].kind == tokenNumber && p.tokens[end-1].is("/", "-")) {
		end++
	}
	t := &p.tokens[end]
	switch {
	case t.is("cm", "cms", "mm", "in", "ins", "inch", "inches", "m", "yd", "yds", "yards", "metres", "meters", "g", "oz", "%", "ball",
		"balls", "needle", "needles", "dpn", "dpns", "double-pointed", "circular", "circulars", "strand", "strands"):
		return end + 1
	case p.tokens[i-1].is("us", "uk", "size", "no", "needle", "needles", "chart", "about", "measures", "approx", "approximately", "#",
		"than", "least"):
		return end
	case p.tokens[end-1].is("\"", "'"):
		return end
	}
	return 0
}
