package pattern

// contInThisWay reads "cont to dec 4 sts every rnd in this way until 8 sts rem", which "cont to
// dec 4 sts every rnd" alone would not end.
func (p *parser) contInThisWay(line *Line) bool {
	return p.peek().among("cont continue keep proceed go") && !p.onlyRows && p.inThisWay(line)
}

// changeSaid is by how many stitches the words from one token to another say that rows change
// the count, "dec 6 sts", nil if they do not: of a change at a place nothing is said of the row.
func (p *parser) changeSaid(from, to int) []int {
	save, found := p.next, p.found.mark()
	defer func() { p.next = save }()
	for i := from; i < to; i++ {
		if !p.tokens[i].among("dec inc decrease increase decreasing increasing") {
			continue
		}
		end, _ := p.sizedEnd(i + 1)
		if end == 0 || !p.tokens[end].stitches() || p.placeAt(end+1) && !p.inMiddleAt(end+1) {
			return nil
		}
		p.next = i + 1
		n := p.number()
		if n == nil {
			p.found.rewind(found)
			return nil
		}
		if p.found.source[p.tokens[i].start]|0x20 == 'd' {
			return signedBy(n, -1)
		}
		return signedBy(n, 1)
	}
	return nil
}

// changeGoesOn compares the change with which a direction goes on, "cont to dec 6 sts every other
// rnd", with that of the last row above that changed the count the same way.
func (r *runner) changeGoesOn(i int) {
	l := &r.piece.Lines[i]
	if l.info.saidChange == nil || r.quiet {
		return
	}
	for k := i - 1; k >= 0 && k > i-8; k-- {
		above, c := &r.piece.Lines[k].info, &r.out.Lines[k]
		if above.kind != lineRow && above.kind != lineEven && above.kind != linePlain && above.kind != linePassed {
			return
		}
		if change := int64(c.EndStitches[r.size] - c.StartStitches[r.size]); c.EndStitches[r.size] >= 0 && c.StartStitches[r.size] >= 0 &&
			change != 0 {
			if (change < 0) == (at(l.info.saidChange, r.size) < 0) && above.kind == lineRow {
				r.changeAgain(l, change)
			}
			return
		}
	}
}

// changeAgain says where the rows that go on change the count by another number than is said.
func (r *runner) changeAgain(l *Line, change int64) {
	if l.info.saidChange == nil || r.quiet {
		return
	}
	if said := int64(at(l.info.saidChange, r.size)); said != change && r.wanted(ReasonClaim, l.info.at) {
		r.fault(KindMistake, ReasonClaim, l.info.at, int(said-change),
			"the row above changes the count by "+signed(change)+", not by "+signed(said))
	}
}

// inMiddleAt reports whether "at centre" stands at token i, which is one place.
func (p *parser) inMiddleAt(i int) bool {
	if !p.acceptedAt(&i, "at", "in") {
		return false
	}
	p.acceptedAt(&i, "the")
	return p.acceptedAt(&i, "centre", "center", "middle") && !p.tokens[i].stitches() && !p.tokens[i].is("marker", "m")
}
