package pattern

// offAsFollows passes over how all stitches are bound off, told stitch by stitch: "as follows: k1,
// *k1, slip both sts back to left needle, k2tog tbl; rep from * to end".
func (p *parser) offAsFollows(info *lineInfo) bool {
	i := p.next
	for p.tokens[i].among("as foll follows thus this way in") {
		i++
	}
	if !p.tokens[i].is(":") && !(i > p.next && p.tokens[i].is(",")) {
		return false
	}
	end, star, all := i+1, false, false
	for ; !p.endsAt(end); end++ {
		t := &p.tokens[end]
		p.looked++
		star = star || t.kind == tokenStar
		all = all || t.among("end until across around")
	}
	if !star || !all {
		return false
	}
	from := p.peek().span
	info.picots = p.picotsIn(i, end)
	p.next = end
	p.passed(from.to(p.last()))
	return true
}
