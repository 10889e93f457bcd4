package pattern

// A rib may be told by its stitches alone: "k2, p2", "knit 2, purl 2", "2 plain, 2 purl", "2 and 2".

// ribPartEnd is the index after the knit or the purl stitches of a rib at token i, and whether they are knit; 0 if there are
// none.
func (p *parser) ribPartEnd(i int) (end int, knit bool) {
	t, then := &p.tokens[i], &p.tokens[i+1]
	_, written := then.written()
	switch {
	case t.among("k knit p purl") && (then.kind == tokenNumber || written):
		if i += 2; p.tokens[i].is("plain") && t.text[0] == 'k' {
			i++
		}
		return i, t.text[0] == 'k'
	case t.kind == tokenNumber && then.is("plain", "knit", "purl"):
		return i + 2, !then.is("purl")
	case t.kind == tokenWord && ribWord(t.text) && (t.text[0] == 'k' || t.text[0] == 'p'):
		return i + 1, t.text[0] == 'k'
	}
	return 0, false
}

// ribSpeltEnd is the index after a rib that is told by its stitches at token i, 0 if there is none.
func (p *parser) ribSpeltEnd(i int) int {
	closer := closers[p.tokens[i].text]
	star := p.tokens[i].kind == tokenStar
	if star || closer != "" {
		i++
	}
	if p.tokens[i].kind == tokenNumber && p.tokens[i+1].is("and") && p.tokens[i+2].kind == tokenNumber && p.tokens[i+2].number < 5 {
		return i + 3
	}
	first, knit := p.ribPartEnd(i)
	if first == 0 {
		return 0
	}
	if p.tokens[first].is(",", "and") {
		first++
	}
	end, purl := p.ribPartEnd(first)
	switch {
	case end == 0, knit == purl, closer != "" && !p.tokens[end].is(closer), star && p.tokens[end].kind != tokenStar:
		return 0
	case star || closer != "":
		end++
	}
	return end
}

// ribSpelt reads "knit 2, purl 2 for three inches", "(k3, p1) around until cuff measures 5 cm": rows of a rib that is told by its
// stitches, to a length.
func (p *parser) ribSpelt(line *Line) bool {
	end := p.ribSpeltEnd(p.next)
	if p.onlyRows || line.info.ranges != nil || end == 0 {
		return false
	}
	save := p.next
	for p.next = end; p.acceptAmong("ribbing rib around , alternately all round every row rnd to end"); {
	}
	w, ok := evenWork{verb: &p.tokens[save]}, false
	if p.peek().is("for", "until", "till") {
		ok = p.evenCount(&w, &line.info) || p.evenUntil(&w, &line.info)
	}
	if !ok || line.info.kind == lineUnread {
		p.next = save
		return false
	}
	line.info.kind, line.info.open, line.info.rib = lineEven, line.info.counts == nil, p.ribIn(save, p.next)
	return true
}
