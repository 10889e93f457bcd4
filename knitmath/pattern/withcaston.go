package pattern

import "example.com/knitmath/knitmath/stitch"

// withCastOn reads "k next st tog with corresponding st from cast-on edge", "knit tog 1 st from needle
// with 1 st from cast-on edge across": a hem is closed, and every stitch of the needle leaves one.
func (p *parser) withCastOn() (s Step, found bool) {
	from := p.peek().span
	op := stitch.Knit
	switch {
	case p.peek().is("p", "purl"):
		op = stitch.Purl
	case !p.peek().is("k", "knit"):
		return Step{}, false
	}
	end, all := p.hemEnd(p.next + 1)
	if end == 0 {
		return Step{}, false
	}
	p.next, p.asGiven = end, true
	s = Step{Operation: op, takes: 1, leaves: 1, Times: one}
	if all || p.accept("across", "around") || p.acceptAll("to", "end") {
		s.Times, s.RemainingStitches = nil, []int{0}
	}
	s.at = from.to(p.last())
	return s, true
}

// hemEnd is the index after the stitch of the needle and that of the cast-on edge, from the token after
// the verb on, and whether every stitch is said; 0 if that is not what stands there.
func (p *parser) hemEnd(i int) (end int, all bool) {
	tog := false
	for n := i; n < i+24 && !p.endsAt(n) && !p.tokens[n].among(", ; ( ["); n++ {
		p.looked++
		t := &p.tokens[n]
		switch {
		case t.is("tog", "together"):
			tog = true
		case t.is("each", "every", "all"):
			all = true
		case t.kind == tokenNumber && t.number != 1, t.row() && end == 0 && !p.tokens[n-1].is("cast-on"):
			return 0, false
		case t.among("cast-on cast hem foldline") && tog:
			end = n + 1
			for p.tokens[end].among("on edge row st sts stitch stitches loop loops of") {
				end++
			}
			return end, all
		}
	}
	return 0, false
}
