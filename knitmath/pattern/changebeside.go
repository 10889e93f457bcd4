package pattern

// changeBeside reads "(2 sts dec'd)" after a count: by how many stitches the row changes it.
func (p *parser) changeBeside(line *Line) {
	if line.ClaimedStitches == nil || line.ClaimedChangeStitches != nil {
		return
	}
	save, found := p.next, p.found.mark()
	open := p.accept("(", "[")
	n := p.number()
	if n != nil {
		p.accept("st", "sts", "stitches")
	}
	sign := 0
	switch {
	case n == nil:
	case p.skipPhrase(claimUp):
		sign = 1
	case p.skipPhrase(claimDown):
		sign = -1
	}
	if sign == 0 || open && !p.accept(")", "]") || !open && !p.endsAt(p.next) {
		p.next = save
		p.found.rewind(found)
		return
	}
	line.ClaimedChangeStitches = signedBy(without(n), sign)
	line.info.claimAt = line.info.claimAt.to(p.last())
}
