package pattern

import "example.com/knitmath/knitmath/stitch"

// withWrap reads a stitch that is worked with the wrap that lies around it: "work next st with its
// wrap", "k it tog with its wraps", "knit wrap and st together", "pick up the wrap and purl it tog
// with the st": one stitch.
func (p *parser) withWrap() (s Step, found, ok bool) {
	from := p.peek().span
	verb, lifted := p.wrapLifted(p.next)
	op := stitch.KnitWrapped
	switch {
	case p.tokens[verb].is("p", "purl"):
		op = stitch.PurlWrapped
	case !p.tokens[verb].is("k", "knit", "work"):
		return Step{}, false, true
	}
	end := p.wrapTaken(verb+1, lifted)
	if end == 0 {
		return Step{}, false, true
	}
	p.next = end
	p.asGiven = true
	s = Step{Operation: op, takes: 1, leaves: 1, Times: one, at: from.to(p.last())}
	if p.tokens[verb].is("work") {
		p.tidies, s.Operation, s.Name = true, 0, "work"
	}
	return s, true, true
}

// wrapLifted is the index after "pick up the wrap and", "lift wraps," at token i, and whether they
// stand there.
func (p *parser) wrapLifted(i int) (int, bool) {
	end := i + 1
	switch {
	case p.tokens[i].is("pick") && p.tokens[end].is("up"):
		end++
	case !p.tokens[i].is("lift"):
		return i, false
	}
	for p.tokens[end].among("the its both two") {
		end++
	}
	if !p.tokens[end].is("wrap", "wraps") {
		return i, false
	}
	for end++; p.tokens[end].is("and", ",", "then"); end++ {
	}
	return end, true
}

// wrapTaken is the index after "it with its wrap", "wrap tog with st", "st and both wraps together" at
// token i, after the verb; 0 if that is not what stands there.
func (p *parser) wrapTaken(i int, wrap bool) int {
	st, both, end := false, false, 0
	for ; ; i++ {
		switch t := &p.tokens[i]; {
		case t.is("wrap", "wraps"):
			wrap, end = true, i+1
		case t.is("st", "stitch"):
			st, end = true, i+1
		case t.is("it", "them"):
			st, end = st || !wrap || both, i+1
		case t.is("tog", "together"):
			both, end = true, i+1
		case t.is("with", "and"):
			both = true
		case !t.among("the its this that next wrapped double-wrapped both two 2"):
			if wrap && st && both {
				return end
			}
			return 0
		}
	}
}
