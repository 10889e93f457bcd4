package pattern

// claimOfParts reads "45 sts for right front, 85 sts for back, 45 sts for left front", "12 sts on N1, 24 sts on N2, 12 sts on
// N3" in the place of a count, with no count of all before them: that is their sum.
func (p *parser) claimOfParts(line *Line) bool {
	save, found := p.next, p.found.mark()
	for p.accept("-", "=", ":") {
	}
	open := p.accept("(", "[")
	parts, end := p.partsOfAll(open)
	if parts == nil {
		p.next = save
		p.found.rewind(found)
		return false
	}
	all := p.peek().to(p.tokens[end-1].span)
	p.next = end
	if open {
		p.accept(")", "]")
	}
	sum := make([]int, p.sizes)
	for size := range sum {
		for _, part := range parts {
			sum[size] = min(sum[size]+part.times*max(at(part.n, size), 0), MaxNumber)
		}
	}
	line.ClaimedStitches, line.info.claimAt = tidy(sum), all
	line.info.partsTold, line.info.partsAt = parts, all
	return true
}

// partsOfAll are the parts from the next token on, and the index after them, where they are two or more, each with its place,
// and all of a piece or of the needles; none if they are not.
func (p *parser) partsOfAll(open bool) (parts []partOf, end int) {
	if to, _ := p.sizedEnd(p.next); to == 0 || !p.tokens[to].stitches() {
		return nil, 0
	}
	if end = p.partsEnd(p.next, open); end == 0 {
		return nil, 0
	}
	if open {
		end--
	}
	p.next--
	parts, known := p.partsUpTo(end)
	p.next++
	if !known || len(parts) < 2 || !p.wholePiece(parts) {
		return nil, 0
	}
	for i := range parts {
		if parts[i].bare || parts[i].between {
			return nil, 0
		}
	}
	return parts, end
}
