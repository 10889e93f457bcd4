package pattern

// signedAt is the index after "(+4)", "[-2 sts]", "(+4; 48 sts)" or, at the end of a row, "+4 sts" at token i: by how many stitches a row
// changes the count, with a sign in the place of a word. It is 0 if that is not what stands there.
func (p *parser) signedAt(i int) int {
	closer := ""
	if p.tokens[i].is("-") && p.tokens[i+1].is("+") {
		i++
	}
	if p.tokens[i].is("(", "[") {
		closer = closers[p.tokens[i].text]
		i++
	}
	if !p.tokens[i].is("+") && (closer == "" || !p.tokens[i].is("-")) {
		return 0
	}
	i, _ = p.sizedEnd(i + 1)
	if i == 0 {
		return 0
	}
	counted := p.tokens[i].stitches()
	i += bit(counted)
	if closer == "" {
		if !counted || !p.endsAt(i) {
			return 0
		}
		return i
	}
	if p.tokens[i].among("; , = :") {
		if i, _ = p.sizedEnd(i + 1); i == 0 {
			return 0
		}
		i += bit(p.tokens[i].stitches())
	}
	if !p.tokens[i].is(closer) {
		return 0
	}
	return i + 1
}

// signedClaim reads it.
func (p *parser) signedClaim(line *Line) bool {
	end, from := p.signedAt(p.next), p.peek().span
	if end == 0 {
		return false
	}
	if p.peek().is("-") && p.ahead(1).is("+") {
		p.next++
	}
	p.accept("(", "[")
	tail := claimTail{sign: 1}
	if p.peek().is("-") {
		tail.sign = -1
	}
	p.next++
	first := p.peek().span
	numbers := p.number()
	tail.changeAt = first.to(p.last())
	p.acceptAmong("st sts stitch stitches ; , = :")
	if p.acceptAmong("; , = :"); p.next < end-1 {
		tail.total = p.number()
	}
	p.next = end
	return numbers != nil && p.claimSized(line, numbers, &tail, from)
}
