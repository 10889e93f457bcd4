package pattern

// endsDefinition ends the definition of a stitch pattern after the cast-on where a direction
// works something: "Work Rows 1-4 five times" works its rows, "Rep Rows 1-4 five more times"
// says that they have been worked once where they stand.
func (p *parser) endsDefinition(line *Line) {
	info := &line.info
	if p.current == 0 || !p.began || p.trying || p.onlyRows {
		return
	}
	d := &p.patterns[p.current-1]
	if !d.began || len(p.rowsFrom(d.from)) == 0 {
		return
	}
	switch info.kind {
	case lineRow, lineUnread, linePassed, lineJoin:
		return
	case lineRepeat:
		d.named = true
		if info.afresh && info.ranges != nil && info.pattern == 0 {
			info.pattern = p.current
		} else if info.pattern == 0 {
			p.workedHere(d)
		}
	}
	p.endPattern()
	info.defined = false
}

// workedHere makes the rows of a definition rows that are worked where they stand.
func (p *parser) workedHere(d *defined) {
	for i := d.from; i < len(p.piece.Lines); i++ {
		p.piece.Lines[i].info.defined = false
	}
}
