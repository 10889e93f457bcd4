package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// heldInRow reads "place next 20 sts on holder" within a row, and "leaving rem 38 sts on
// a holder" after its turn.
func (p *parser) heldInRow(steps *[]Step) asideKind {
	first, save, found := p.peek(), p.next, p.found.mark()
	var line Line
	if p.heldUpToMarker(steps) {
		return asideRead
	}
	if !p.holding(&line) || line.info.kind != lineHold {
		p.next = save
		p.found.rewind(found)
		if first.among("leaving placing leave put slipping") {
			return p.unworkedAside(steps, first.span)
		}
		return asideNone
	}
	if p.depth == 0 && !p.onlyRows && atEnd(*steps) {
		p.next = save // which of the parts of the row is put aside is seen when they are known
		p.found.rewind(found)
		return asideEnds
	}
	if line.info.whole == wholeRest && !p.onlyRows && p.turnsBefore(first, *steps) {
		*steps = append(*steps, Step{Operation: stitch.Turn, Times: one, at: first.span}) // it is turned before them
	}
	if turnsAtEnd(*steps) {
		p.rest.held, p.rest.count = true, line.info.counts
		return asideRead
	}
	s := Step{Name: "hold", takes: 1, Times: line.info.counts, at: first.to(p.last())}
	switch {
	case p.holdsWorked(save, &line.info, *steps):
		if !p.heldBack(&s, *steps, line.info.whole == wholeThese) {
			return asideFault
		}
	case line.info.counts == nil:
		s.RemainingStitches = toEnd
	}
	*steps = append(*steps, s)
	return asideRead
}

// turnsBefore reports whether the work is turned before the rest that is left by a verb, "p16, leaving rem sts on hold": steps stop
// short of it, or the row before was turned and this one goes back as far.
func (p *parser) turnsBefore(verb *token, steps []Step) bool {
	n := len(p.piece.Lines)
	return stopsShort(steps) && (verb.is("leaving") || verb.is("leave") && n > 0 && turnsAtEnd(p.piece.Lines[n-1].Steps))
}

// atEnd reports whether steps go to the end of the row.
func atEnd(steps []Step) bool {
	n := len(steps)
	return n > 0 && single(steps[n-1].RemainingStitches, 0)
}

// holdsWorked reports whether an aside from token i on puts stitches aside that the steps before it
// have worked.
func (p *parser) holdsWorked(i int, info *lineInfo, steps []Step) bool {
	bare := p.tokens[i+1].is("on", "onto") && stopsAtStitch(steps) // "k20 and place on holder"
	return (info.worked || bare || p.lastOfAll(i, steps)) && len(steps) > 0 && !(info.whole == wholeThese && leaveJust(steps, info.counts))
}

// stopsShort reports whether steps stop within the row: after a stitch that is not worked to any
// place, and with no turn.
func stopsShort(steps []Step) bool {
	n := len(steps)
	return n > 0 && !steps[n-1].stretch() && !steps[n-1].Operation.EndsRow()
}

// lastOfAll reports whether an aside from token i on is about the last stitches of a row that has
// been worked to its end, "k to end, placing last 8 sts on hold".
func (p *parser) lastOfAll(i int, steps []Step) bool {
	return atEnd(steps) && p.anyOf(i, min(i+4, p.next), "last")
}

// leaveJust reports whether steps stop before so many stitches: "to last 4 sts, place these 4
// sts on a safety pin" is about those that have not been worked.
func leaveJust(steps []Step, n []int) bool {
	last := steps[len(steps)-1].RemainingStitches
	return n != nil && last != nil && slices.Equal(tidy(slices.Clone(last)), tidy(slices.Clone(n)))
}

var onNeedle = wordings("on the needle", "on needle", "on the right needle", "on right needle", "on the left needle", "on left needle",
	"on your needle", "on the needles", "on needles")

// unworkedAside passes over "leaving rem 38 sts unworked".
func (p *parser) unworkedAside(steps *[]Step, from span) asideKind {
	p.next++
	n, all, _, ok := p.someStitches()
	turns := turnsAtEnd(*steps)
	switch {
	case !ok:
	case p.accept("unworked", "unknit"):
		if turns {
			p.beyond, p.beyondAt = n, from.to(p.last())
			return asideRead
		}
		if n != nil && !p.onlyRows && stopsShort(*steps) {
			p.turnedBeforeRest(steps, n, from)
			return asideRead
		}
	case n != nil && !p.onlyRows && stopsAtStitch(*steps) && p.acceptAny(onNeedle):
		*steps = append(*steps, Step{Name: "work", takes: 1, leaves: 1, Times: n, at: from.to(p.last())}) // they stay where they are
		p.asGiven = true
		p.forWhich()
		return asideRead
	case turns && (n != nil || all) && !p.peek().is("on", "onto", "for"):
		return asideRead // they stay where they are
	}
	p.ask(ReasonUnread, from.to(p.last()), "what happens to these stitches?")
	return asideFault
}

// stopsAtStitch reports whether steps end with one that is not worked to any place.
func stopsAtStitch(steps []Step) bool {
	n := len(steps)
	return n > 0 && !steps[n-1].stretch()
}

// turnedBeforeRest turns a row before so many stitches that it leaves unworked.
func (p *parser) turnedBeforeRest(steps *[]Step, n []int, from span) {
	*steps = append(*steps, Step{Operation: stitch.Turn, Times: one, at: from})
	p.rest.held, p.rest.count = true, n
	if p.accept("for") {
		p.accept("the")
		p.acceptAmong("instep heel front back thumb")
	}
}
