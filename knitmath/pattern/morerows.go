package pattern

// moreRows reads ", 2 rows in white", ", then 4 rows st st" or ", in st st for 4 rows" after rows
// that are worked even: more of them.
func (p *parser) moreRows(info *lineInfo) bool {
	if info.kind != lineEven && info.kind != linePlain || info.counts == nil || info.pattern > 0 {
		return false
	}
	i, inFabric := p.next, false
	if p.tokens[i].is("in") {
		if end := p.fabricEnd(i + 1); end != 0 {
			i, inFabric = end, true
		}
		if inFabric && p.tokens[i].is("for") {
			i++
		}
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].row() {
		return false
	}
	end, said := p.inWhat(end + 1)
	if !said && !inFabric {
		return false
	}
	p.next = i
	n := p.number()
	if n == nil {
		return false
	}
	p.next = end
	info.counts = added(info.counts, without(n), p.sizes)
	return true
}

// inWhat is the index after a colour or a fabric at token i, and whether either stands there.
func (p *parser) inWhat(i int) (end int, said bool) {
	if colour := p.colourEnd(i); colour != 0 && !p.startsItem(colour) {
		return colour, true
	}
	if fabric := p.fabricEnd(i); fabric != 0 && (p.endsAt(fabric) || p.tokens[fabric].is(",", ";")) {
		return fabric, true
	}
	return i, false
}

// passesOver reports whether stitches that are slipped at token i are passed over what is worked
// after them: "sl1, k1, psso" is a decrease, for which a yarn over makes up.
func (p *parser) passesOver(i int) bool {
	for n := i; n < i+9; n++ {
		t := &p.tokens[min(n, len(p.tokens)-1)]
		switch {
		case t.among("psso p2sso skp skpo sk2p sk2po") || t.is("pass"):
			return true
		case p.endsAt(min(n, len(p.tokens)-1)), t.kind == tokenStar, t.is(";", ")", "]"):
			return false
		}
	}
	return false
}
