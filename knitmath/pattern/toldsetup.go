package pattern

// toldSetUp reads a sentence that tells on which stitches the rows after it are worked: "The
// heel is worked back and forth on the first 28 sts", "Worked flat on 80 sts".
func (p *parser) toldSetUp(line *Line) bool {
	verb := p.workedAt(p.next)
	if verb < 0 {
		return false
	}
	save, before := p.next, line.info
	w := evenWork{verb: &p.tokens[verb], from: p.peek().span}
	turned := p.next > 1 && p.tokens[p.next-1].is(".") && p.tokens[p.next-2].is("turn", "turned")
	p.next = verb + 1
	if p.accept("flat") || turned {
		line.info.turns, w.setUp = constructionFlat, true
	}
	for p.evenPart(&w, &line.info) {
		if line.info.kind == lineUnread {
			break
		}
	}
	if !w.setUp || w.counted || line.info.only == nil || line.info.kind == lineUnread {
		p.next, line.info = save, before
		return false
	}
	line.info.kind = lineEven
	return true
}

// setUpTold reports whether such a sentence comes next.
func (p *parser) setUpTold() bool {
	if p.trying || p.workedAt(p.next) < 0 {
		return false
	}
	p.trying = true
	save, found := p.next, p.found.mark()
	p.trial = Line{}
	told := p.toldSetUp(&p.trial)
	p.looked += p.next - save
	p.next, p.trying = save, false
	p.found.rewind(found)
	return told
}

// workedAt is the index of "worked" in "The heel is worked", "Worked" at token i; below 0 if that is
// not what stands there, or it is a repeat that is worked.
func (p *parser) workedAt(i int) int {
	from := i
	for p.tokens[i].among("you will now we are from here be") {
		i++
	}
	if i > from && p.tokens[i].is("work", "working") || p.tokens[i].is("working") && p.leadsRows(i+1) {
		return i
	}
	i = from
	for n := 0; n < 6 && !p.tokens[i].is("worked"); n++ {
		t := &p.tokens[i]
		if t.kind != tokenWord || t.among("repeat rep motif patt pattern chart") ||
			p.notation(t.text) && !t.is("heel", "toe") {
			return -1
		}
		i++
	}
	if !p.tokens[i].is("worked") || i > from && !p.tokens[i-1].among("is are now be") {
		return -1
	}
	return i
}

// leadsRows reports whether words from token i on, "on 28 sts only:", lead in rows that are written after a colon.
func (p *parser) leadsRows(i int) bool {
	for n := i; n < i+10; n++ {
		switch t := &p.tokens[n]; {
		case t.is(":"):
			return p.tokens[n+1].kind == tokenNewline || p.labelEnd(n+1) != 0
		case t.kind != tokenWord && t.kind != tokenNumber:
			return false
		}
	}
	return false
}
