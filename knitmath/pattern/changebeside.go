package pattern

// changeClaimed notes that a line says, at a place, by how many stitches it changes the count.
func (l *Line) changeClaimed(numbers []int, sign int, at span) {
	l.ClaimedChangeStitches, l.info.changeAt = signedBy(numbers, sign), at
}

// changeAlone reports whether a finding is about the change that a line tells beside a count which is right: the
// row was meant as it is.
func (c *corrector) changeAlone(f *Finding, i int) bool {
	l := &c.piece.Lines[i]
	if f.at != l.info.changeAt || len(l.ClaimedStitches) == 0 {
		return false
	}
	size := f.SizeNumbers[0] - 1
	return at(l.ClaimedStitches, size) == c.worked.Lines[i].EndStitches[size]
}

// changeBeside reads "(2 sts dec'd)" after a count: by how many stitches the row changes it.
func (p *parser) changeBeside(line *Line) {
	if line.ClaimedStitches == nil || line.ClaimedChangeStitches != nil {
		return
	}
	save, found := p.next, p.found.mark()
	open := p.accept("(", "[")
	from := p.peek().span
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
	line.changeClaimed(without(n), sign, from.to(p.last()))
	line.info.claimAt = line.info.claimAt.to(p.last())
}
