package pattern

import "example.com/knitmath/knitmath/report"

// claimAhead reports whether a count of stitches comes next, such as
// "(96, 104, 112 sts)", "- 96 (104, 112) sts" or "(2 sts dec)".
func (p *parser) claimAhead() bool {
	i := p.next
	for n := 0; n < 2 && p.tokens[i].is("-", "=", ":"); n++ {
		i++
	}
	return p.claimWords(i)
}

// claimWords reports whether numbers followed by "sts" begin at token i.
func (p *parser) claimWords(i int) bool {
	if p.tokens[i].is("(", "[", "{") {
		i++
		for p.tokens[i].kind == tokenNumber && p.tokens[i+1].is(",") || p.tokens[i].is("-") && p.tokens[i+1].is(",") {
			p.looked++
			i += 2
		}
	}
	if p.tokens[i].kind != tokenNumber && !p.tokens[i].is("-") {
		return false
	}
	i++
	for {
		end, _ := p.listEnd(i)
		if end == 0 {
			return p.tokens[i].is("st", "sts", "stitch", "stitches")
		}
		i = end
	}
}

// claim reads what claimAhead has seen.
func (p *parser) claim(line *Line) bool {
	from := p.peek().span
	for p.accept("-", "=", ":") {
	}
	closer := ""
	if c, ok := closers[p.peek().text]; ok && p.peek().kind == tokenMark {
		closer = c
		p.next++
	}
	numbers, ok := p.claimedNumbers()
	if !ok {
		return false
	}
	sign := p.claimedChange()
	if closer != "" && !p.accept(closer) {
		p.mistake(ReasonOpenBracket, from, "a "+closer+" is missing after the count")
		return false
	}
	line.info.claimAt = from.to(p.last())
	if len(numbers) != 1 && len(numbers) != p.sizes {
		p.mistake(ReasonSizes, line.info.claimAt, report.CountOf(len(numbers), "numbers")+" for "+report.CountOf(p.sizes, "sizes"))
		return true
	}
	if p.listed += len(numbers); p.listed > MaxListed {
		p.mistake(ReasonTooMany, from, "the lists of this text hold more than 20000 numbers")
		return false
	}
	if sign == 0 {
		line.ClaimedStitches = tidy(numbers)
		return true
	}
	numbers = without(numbers)
	for i := range numbers {
		numbers[i] *= sign
	}
	line.ClaimedChangeStitches = numbers
	return true
}

// claimedNumbers reads the numbers of a claim and its "sts"; -1 stands for "-".
func (p *parser) claimedNumbers() ([]int, bool) {
	var numbers []int
	for !p.accept("st", "sts", "stitch", "stitches") {
		switch t := p.peek(); {
		case t.kind == tokenNumber && t.number > MaxNumber:
			p.mistake(ReasonTooLarge, t.span, "a count here is at most 10000")
			return nil, false
		case t.kind == tokenNumber:
			numbers = append(numbers, int(t.number))
		case t.is("-"):
			numbers = append(numbers, -1)
		}
		p.next++
	}
	return numbers, true
}

// claimedChange reads what follows the "sts" of a claim: 1 if it claims an
// increase, -1 a decrease, 0 a count.
func (p *parser) claimedChange() (sign int) {
	for {
		switch {
		case p.accept("inc", "inc'd", "inc’d", "increased"):
			sign = 1
		case p.accept("dec", "dec'd", "dec’d", "decreased"):
			sign = -1
		case p.accept("rem", "remain", "remaining", "total", "in", "now", "on", "needle", "needles", "each", "for", "all", "sizes", "left"):
		default:
			return sign
		}
	}
}
