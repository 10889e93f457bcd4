package pattern

// moreRows reads ", 2 rows in white", ", then 4 rows st st" or ", in st st for 4 rows" after rows
// that are worked even: more of them.
func (p *parser) moreRows(info *lineInfo) bool {
	if info.kind != lineEven && info.kind != linePlain || info.counts == nil || info.pattern > 0 {
		return false
	}
	i, fabric := p.next, 0
	if p.tokens[i].is("in") && p.fabricEnd(i+1) != 0 {
		fabric = p.fabricEnd(i + 1)
		i = fabric
		if p.tokens[i].is("for") {
			i++
		}
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].row() {
		return false
	}
	end++
	colour, after := p.colourEnd(end), p.fabricEnd(end)
	switch {
	case colour != 0 && !p.startsItem(colour):
		end = colour
	case after != 0 && (p.endsAt(after) || p.tokens[after].is(",", ";")):
		end = after
	case fabric == 0:
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
