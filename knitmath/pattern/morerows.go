package pattern

// moreRows reads ", 2 rows in white" after rows that were said to be worked in a colour: more
// rows of the same fabric.
func (p *parser) moreRows(info *lineInfo) bool {
	if info.kind != lineEven && info.kind != linePlain || info.counts == nil || info.pattern > 0 {
		return false
	}
	end, _ := p.sizedEnd(p.next)
	if end == 0 || !p.tokens[end].row() {
		return false
	}
	colour := p.colourEnd(end + 1)
	if colour == 0 || p.startsItem(colour) {
		return false
	}
	n := p.number()
	if n == nil {
		return false
	}
	p.next = colour
	info.counts = added(info.counts, without(n), p.sizes)
	return true
}

// passesOver reports whether stitches that are slipped at token i are passed over what is worked
// after them: "sl1, k1, psso" is a decrease, for which a yarn over makes up.
func (p *parser) passesOver(i int) bool {
	for n := i; n < i+9; n++ {
		t := &p.tokens[min(n, len(p.tokens)-1)]
		switch {
		case t.is("psso", "p2sso", "skp", "skpo", "sk2p", "sk2po") || t.is("pass") && p.tokens[n+1].is("slipped", "sl", "the", "it"):
			return true
		case p.endsAt(min(n, len(p.tokens)-1)), t.kind == tokenStar, t.is(";", ")", "]"):
			return false
		}
	}
	return false
}
