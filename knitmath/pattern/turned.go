package pattern

// rowAfterTurn reports whether what follows the turn that was just read, "k16, turn; p32",
// is a row of its own, or a direction, in the same sentence or the next.
func (p *parser) rowAfterTurn() bool {
	if p.onlyRows || p.depth > 0 || p.inside > 0 || len(p.stars) > 0 || p.claimAhead() {
		return false
	}
	save := p.next
	p.passTurnSigns()
	// A bracket may hold a remark on the turn, or a count.
	ok := !p.endsAt(p.next) && !p.claimAhead() && p.remarkEnd(p.next) == 0 && p.labelEnd(p.next) == 0 &&
		!p.peek().among("leave leaving place placing put slip sl") && p.startsItem(p.next)
	_, on := p.onTheseEnd(p.next)
	ok = ok && on == 0 || p.peek().is("sl", "slip") && p.startsItem(p.next) && !p.heldAfter(p.next)
	p.next = save
	return ok
}

// turnEnds reports whether ", turn" stands at token i and nothing more of its row: "Knit, turn."
// is a whole row.
func (p *parser) turnEnds(i int) bool {
	for p.tokens[i].among(", ; and then") {
		i++
	}
	if !p.tokens[i].is("turn") {
		return false
	}
	for i++; p.tokens[i].is("the", "work", "piece"); i++ {
	}
	return p.endsAt(i) || p.tokens[i].among(", ; ( and then - leaving")
}

// passSigns passes over commas and the words that join clauses.
func (p *parser) passSigns() {
	for p.peek().among(", ; and then &") {
		p.next++
	}
}

// passTurnSigns passes over them, and over a full stop, behind a turn: what follows in its line is another row.
func (p *parser) passTurnSigns() {
	p.passSigns()
	if p.peek().is(".") && p.labelEnd(p.next+1) == 0 && p.startsItem(p.next+1) {
		p.next++
	}
}

// turnedBefore reports whether a turn stands right before token i, "turn and cast on 4 sts":
// what is cast on then is beside what is there.
func (p *parser) turnedBefore(i int) bool {
	for i--; i >= 0; i-- {
		switch t := &p.tokens[i]; {
		case t.among("and , ; then work the piece"):
		default:
			return t.is("turn", "turning")
		}
	}
	return false
}

// turnedOnCastOn reports whether the text turns at a line after stitches that were cast on where a row was turned, and nothing else was
// worked: "k21, turn and cast on 28 sts, turn, k21" is one row.
func (r *runner) turnedOnCastOn(i int) bool {
	lines := r.piece.Lines
	return i > 1 && lines[i-1].info.kind == lineCastOn && r.lastLine == i-2 && turnsAtEnd(lines[i-2].Steps) &&
		lines[i].info.at.line == lines[i-2].info.at.line
}
