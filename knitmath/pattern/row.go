package pattern

import "example.com/knitmath/knitmath/stitch"

// row reads steps and the claim after them, and reports whether a direction follows in its
// sentence.
func (p *parser) row(line *Line) bool {
	p.rest, p.tidies, p.fastens, p.cable, p.asGiven, p.startMoves, p.otherSide = unworkedRest{}, false, false, nil, false, false, false
	p.reachesBack, p.toRoundEnd, p.beyond, p.coloured = false, false, nil, false
	p.rowHoles = nil
	steps, ok := p.items("")
	line.info.holes, line.info.holesAt = p.rowHoles, p.rowHolesAt
	steps = p.wholeRepeated(steps)
	line.Steps = steps
	ok = ok && p.cableEmpty() && p.rowsOfSteps(line)
	steps = p.roundMoved(steps)
	line.Steps = steps
	line.info.asGiven, line.info.coloured = p.asGiven, p.coloured
	line.info.beyond, line.info.beyondAt = p.beyond, p.beyondAt
	line.info.otherSide = p.otherSide
	line.info.startMoves, line.info.reachesBack, line.info.toRoundEnd = p.startMoves, p.reachesBack, p.toRoundEnd
	line.info.tidies, line.info.fastens = p.tidies, p.fastens
	line.info.holdRest, line.info.rest = p.rest.held, p.rest.count
	if !ok || !p.rowClaims(line) {
		line.info.kind = lineUnread
		return false
	}
	if p.rest.worked != nil && line.info.partial == nil {
		line.info.partial, line.info.beside = p.rest.worked, true
		if line.info.claimAt.end == 0 {
			line.info.claimAt = p.rest.at
		}
	}
	follows, ok := p.rowEnd(line)
	if !ok {
		line.info.kind = lineUnread
	}
	return ok && follows
}

// rowClaims reads the claims after the steps of a row, with what is told beside them.
func (p *parser) rowClaims(line *Line) bool {
	p.holesSaid(line)
	if p.claimAhead() && !p.claim(line) {
		return false
	}
	p.holesSaid(line)
	for line.ClaimedStitches != nil && p.passParts(line) || p.remarkEnd(p.next) != 0 || p.acceptEnd(p.markersToldEnd(p.next)) {
		p.next = max(p.next, p.remarkEnd(p.next))
	}
	p.changeBeside(line)
	p.unworkedTold(line)
	for p.peek().among(", ; and then :") {
		p.next++
	}
	p.changeBeside(line)
	if p.claimAhead() && line.ClaimedStitches == nil && !p.claim(line) {
		return false
	}
	if p.accept(".") && p.claimAhead() && line.ClaimedStitches == nil {
		if !p.claim(line) {
			return false
		}
		p.passParts(line)
		p.accept(".")
	}
	return true
}

// rowEnd looks at what comes after a row. It is not ok when that cannot be, or the steps
// cannot be worked, which has been said.
func (p *parser) rowEnd(line *Line) (follows, ok bool) {
	steps, t := line.Steps, p.peek()
	switch {
	case turnsAtEnd(steps) && p.rowAfterTurn():
		return true, p.turned(line)
	case len(steps) > 0 && p.directionAhead():
		ok = p.fitted(line)
		return !p.afterStop() && t.kind != tokenNewline, ok
	case t.is(")", "]", "}"):
		p.mistake(ReasonStray, t.span, "no bracket is open here")
	case t.is("rep", "repeat") && !p.startsLine():
		p.mistake(ReasonNoStar, t.span, "no star is open here")
	case t.kind != tokenEnd && t.kind != tokenNewline && !p.startsLine() && !p.afterStop():
		p.ask(ReasonUnread, t.span, "nothing is expected after the count")
		if p.completeBefore(line) {
			p.recover(line)
			return false, p.fitted(line)
		}
	case len(steps) == 0:
		p.emptyRow(line)
	default:
		return false, p.fitted(line)
	}
	return false, false
}

// completeBefore reports whether a row is complete before words that were not expected: no stitch
// follows, and its claim is compared.
func (p *parser) completeBefore(line *Line) bool {
	return len(line.Steps) > 0 && line.ClaimedStitches != nil && !p.startsItem(p.next) && p.claimStandsAlone(&line.info)
}

// turned makes steps ready that end with a turn, after which the next row follows at once.
func (p *parser) turned(line *Line) bool {
	if !p.placed(line.Steps) || !p.loosened(line) {
		return false
	}
	p.fit(line.Steps)
	p.passTurnSigns()
	return true
}

func turnsAtEnd(steps []Step) bool {
	n := len(steps)
	return n > 0 && steps[n-1].Operation.EndsRow()
}

// afterStop reports whether a full stop was read just now.
func (p *parser) afterStop() bool { return p.tokens[p.next-1].text == "." }

// fitted makes the steps of a row ready to be worked.
func (p *parser) fitted(line *Line) bool {
	if !p.placed(line.Steps) {
		return false
	}
	p.fit(line.Steps)
	if p.picotRow(line) {
		return true
	}
	if p.castOffAgain(line.Steps) {
		return false
	}
	p.either(line)
	return p.loosened(line)
}

func (p *parser) emptyRow(line *Line) {
	at := line.info.at
	if line.Label == "" || at.end == 0 {
		at = p.last()
	}
	p.mistake(ReasonEmpty, at, "the row has no steps")
}

// fit gives every "rep from *" without an end the stitches that must remain.
func (p *parser) fit(steps []Step) {
	for i := range steps {
		if s := &steps[i]; s.toFit {
			s.toFit = false
			s.RemainingStitches = make([]int, p.sizes)
			for size := range s.RemainingStitches {
				s.RemainingStitches[size] = int(min(restTakes(steps[i+1:], size), MaxNumber))
			}
			s.RemainingStitches = tidy(s.RemainingStitches)
		}
	}
}

// placed checks that turns end their row, that nothing inside a repeat is worked
// to the last stitches, and how deep repeats lie.
func (p *parser) placed(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if s.Operation.EndsRow() && i == len(steps)-1 && len(s.Times) == 1 && s.Times[0] == 1 {
			continue
		}
		if !p.placedInside(s, 0) {
			return false
		}
	}
	return true
}

// pass is the most stitches that one working of a step takes in any size.
func (p *parser) pass(s *Step) int64 {
	n := int64(0)
	for size := range p.sizes {
		n = max(n, s.pass(size).takes)
	}
	return n
}

func (p *parser) placedInside(s *Step, depth int) bool {
	switch {
	case s.Steps != nil && depth == stitch.MaxDepth:
		p.tooDeep(s.at)
		return false
	case s.Steps != nil && turnsWithin(s.Steps) > 1: // entrelac: every triangle has rows of its own
		p.ask(ReasonUnread, s.at, "how is this worked? the work is turned again and again within the repeat, and rows on some of the stitches "+
			"are not followed")
		return false
	case s.Operation.EndsRow():
		p.mistake(ReasonTurnInside, s.at, "the work is turned here: what follows is a row of its own")
		return false
	case s.stretch() && s.BeforeMarkerStitches == nil && !s.loose && depth > 0:
		p.mistake(ReasonStretch, s.at, "within a repeat it would find no stitches the second time: say how many")
		return false
	case s.stretch() && p.pass(s) < 1:
		p.mistake(ReasonNever, s.at, "it takes no stitch from the left needle and never gets there")
		return false
	}
	for i := range s.Steps {
		if !p.placedInside(&s.Steps[i], depth+1) {
			return false
		}
	}
	return true
}

// turnsWithin is how often the work is turned among some steps.
func turnsWithin(steps []Step) int {
	n := 0
	for i := range steps {
		n += bit(steps[i].Operation.EndsRow())
	}
	return n
}
