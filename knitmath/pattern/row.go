package pattern

import "example.com/knitmath/knitmath/stitch"

// row reads steps and the claim after them.
func (p *parser) row(line *Line) bool {
	p.rest, p.tidies, p.fastens, p.cable, p.asGiven = unworkedRest{}, false, false, nil, false
	steps, ok := p.items("")
	ok = ok && p.cableEmpty()
	line.Steps = steps
	line.info.asGiven = p.asGiven
	line.info.tidies, line.info.fastens = p.tidies, p.fastens
	line.info.holdRest, line.info.rest = p.rest.held, p.rest.count
	if !ok {
		line.info.kind = lineUnread
		return false
	}
	if p.claimAhead() && !p.claim(line) {
		line.info.kind = lineUnread
		return false
	}
	for line.ClaimedStitches != nil && p.passParts() || p.remarkEnd(p.next) != 0 {
		p.next = max(p.next, p.remarkEnd(p.next))
	}
	for p.peek().is(",", ";", "and", "then", ":") {
		p.next++
	}
	if p.claimAhead() && line.ClaimedStitches == nil && !p.claim(line) {
		line.info.kind = lineUnread
		return false
	}
	if t := p.peek(); t.is(".") {
		p.next++
		if p.claimAhead() && line.ClaimedStitches == nil && line.ClaimedChangeStitches == nil {
			if !p.claim(line) {
				line.info.kind = lineUnread
				return false
			}
			p.passParts()
			p.accept(".")
		}
	}
	if n := len(steps); n > 0 && steps[n-1].Operation.EndsRow() && p.rowAfterTurn() {
		if !p.placed(steps) || !p.loosened(line) {
			line.info.kind = lineUnread
			return false
		}
		p.fit(steps)
		p.passSigns()
		return true
	}
	t := p.peek()
	switch {
	case len(steps) > 0 && p.directionAhead():
		if p.placed(steps) {
			p.fit(steps)
			p.either(line)
			if !p.loosened(line) {
				break
			}
			return p.tokens[p.next-1].text != "." && t.kind != tokenNewline
		}
	case t.is(")", "]", "}"):
		p.mistake(ReasonStray, t.span, "no bracket is open here")
	case t.is("rep", "repeat") && !p.startsLine():
		p.mistake(ReasonNoStar, t.span, "no star is open here")
	case t.kind != tokenEnd && t.kind != tokenNewline && !p.startsLine() && p.tokens[p.next-1].text != ".":
		p.ask(ReasonUnread, t.span, "nothing is expected after the count")
	case len(steps) == 0:
		at := line.info.at
		if line.Label == "" || at.end == 0 {
			at = p.last()
		}
		p.mistake(ReasonEmpty, at, "the row has no steps")
	default:
		if p.placed(steps) {
			p.fit(steps)
			p.either(line)
			if !p.loosened(line) {
				break
			}
			return false
		}
	}
	line.info.kind = lineUnread
	return false
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
