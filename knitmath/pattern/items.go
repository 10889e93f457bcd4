package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// items reads steps up to a closing bracket, the end of the row, a claim, or
// "rep from *". inner is the closing bracket awaited, "" at the top.
func (p *parser) items(inner string) ([]Step, bool) {
	at := p.within
	if at == len(p.inHand) {
		p.inHand = append(p.inHand, nil)
	}
	p.within++ // what is within a bracket gets another piece
	steps, ok := p.itemsInto(p.inHand[at][:0], inner)
	p.within, p.inHand[at] = at, steps
	return p.kept(steps), ok
}

// kept is a copy of steps that were read, in the room if it has some left.
func (p *parser) kept(steps []Step) []Step {
	if len(steps) == 0 {
		return nil
	}
	n := len(p.stepRoom)
	if cap(p.stepRoom)-n < len(steps) {
		return slices.Clone(steps)
	}
	p.stepRoom = append(p.stepRoom, steps...)
	return slices.Clip(p.stepRoom[n:])
}

// itemsInto is items, in memory that is there already.
func (p *parser) itemsInto(steps []Step, inner string) ([]Step, bool) {
	for {
		p.looked++
		p.sofar = steps
		if p.separators(inner) || p.itemsEnd(inner) {
			return steps, true
		}
		switch p.aside(&steps, inner) {
		case asideRead:
			continue
		case asideEnds:
			return steps, true
		case asideFault:
			return steps, false
		}
		if p.steps++; p.steps > MaxSteps {
			p.mistake(ReasonTooMany, p.peek().span, "a text has at most "+strconv.Itoa(MaxSteps)+" steps; the row is not read from here on")
			return steps, false
		}
		p.sofar = steps
		from := p.next
		s, ok := p.item(len(steps) == 0 && inner == "")
		if !ok {
			return steps, false
		}
		p.gloss(&s, from)
		if s, ok := p.passedOver(steps, s); ok {
			steps = s
			p.gloss(&steps[len(steps)-1], from-4)
			continue
		}
		if n := len(steps); n == cap(steps) { // as much again, up to what there may be
			steps = slices.Grow(steps, max(1, min(n, MaxSteps-n)))
		}
		steps = append(steps, s)
		steps, p.after = append(steps, p.after...), nil
		if s.Operation.EndsRow() && inner == "" && p.rowAfterTurn() {
			return steps, true
		}
	}
}

// itemsEnd reports whether what comes next is no step of these any more.
func (p *parser) itemsEnd(inner string) bool {
	t := p.peek()
	if p.inNeedles {
		if end, _ := p.needleHeader(p.next); end != 0 {
			return true
		}
	}
	if p.inFabricRow && p.eachRowEnd(p.next) != 0 || p.endingRepeat && p.insteadNext(t) {
		return true
	}
	switch {
	case t.kind == tokenEnd || t.is(")", "]", "}") || p.countNext(), p.rowsSaidAt(inner):
		return true
	case p.starRepeatAt(p.next):
		return t.is("rep", "repeat") && inner == "" || len(p.stars) > 0
	}
	return t.kind == tokenStar && len(p.stars) > 0 && p.stars[len(p.stars)-1] == t.text
}

// insteadNext reports whether "instead", "in place of" comes next.
func (p *parser) insteadNext(t *token) bool {
	return t.is("instead") || t.is("in") && p.ahead(1).is("place")
}

// countNext reports whether a count comes next, and not more stitches that are picked up or
// brought.
func (p *parser) countNext() bool {
	return p.claimAhead() && !(p.peek().kind == tokenNumber && (p.alsoPickedUp() || p.alsoBrought()))
}

// separators passes over commas, full stops and the like. It reports whether the
// row ends here: with its line, unless a comma came last, or where the next
// sentence begins a line of its own.
func (p *parser) separators(inner string) bool {
	comma := false
	atTop := inner == "" && p.inside == 0
	for {
		t := p.peek()
		switch {
		case t.is(",", ";", ":"):
			comma = true
		case p.dashed(), p.joinsSteps():
		case t.is("."):
			if p.next++; p.stopEndsSteps(atTop) {
				return true
			}
			continue
		case t.kind == tokenNewline:
			if p.next++; p.lineEndsRow(atTop, comma) {
				p.next--
				return true
			}
			continue
		default:
			return false
		}
		if p.next++; atTop && p.numberedAt(p.next) {
			return true
		}
	}
}

// stopEndsSteps reports whether the steps of a row end with the full stop just before: the line
// ends, or a row, a direction or a sentence that only tells begins.
func (p *parser) stopEndsSteps(atTop bool) bool {
	if end, _ := p.wrapsClosedEnd(p.next); !atTop || end != 0 {
		return end == 0 && p.startsLine()
	}
	return p.peek().kind == tokenNewline || !p.turnsOnSome() && (p.startsLine() || p.tellsNext() || p.ledDirection())
}

// ledDirection reports whether a sentence comes next that says with what, how or when a direction or another row is
// worked, "Using larger needles, dec 1 st at each end of next row". It reads it on trial, and takes nothing.
func (p *parser) ledDirection() bool {
	if p.trying || p.onlyRows || p.peek().kind != tokenWord {
		return false
	}
	save, found, led := p.next, p.found.mark(), p.led
	p.leadIn(&lineInfo{})
	ok := p.next > save && (p.labelEnd(p.next) != 0 || p.directionAhead())
	p.looked += p.next - save
	p.next, p.led = save, led
	p.found.rewind(found)
	return ok
}

// turnsOnSome reports whether "Turn and work on these sts only", "Turn, leaving rem sts on a holder"
// comes next, which belongs to the row before the full stop: the row ends where it is turned.
func (p *parser) turnsOnSome() bool {
	if !p.inRow || !p.peek().is("turn") || !p.ahead(1).is("and", ",") {
		return false
	}
	if number, on := p.onTheseEnd(p.next + 2); on != 0 { // "the last 20 sts" are some of a whole row
		return number == 0 || !p.anyOf(p.next, number, "last")
	}
	return p.ahead(2).among("leave leaving place put")
}

// tellsNext reports whether a sentence comes next that only tells of the stitches: "These 32 sts
// form the heel", "8 markers placed".
func (p *parser) tellsNext() bool {
	return (p.peek().among("these those this work") || p.lastRowsAt(p.next)) && p.startSaid(p.next) == 0 &&
		phrasesHarmless(p, p.next) ||
		p.markersToldEnd(p.next) != 0 || p.setUpTold() || p.rowsForm(p.next) || p.onlyTells()
}

// ofTheRow are words with which a sentence goes on with the row before it.
var ofTheRow = []string{"place", "put", "leave", "leaving", "transfer", "return", "hold", "turn", "remove", "with", "using", "slip",
	"join", "rejoin", "break", "cut", "change", "drop", "fasten", "mark", "repeat", "rep", "end", "ending", "then", "over", "on", "at"}

// onlyTells reports whether a sentence comes next that works nothing and changes no count, "You should now have a neat edge.": it
// is no part of the row before it.
func (p *parser) onlyTells() bool {
	i := p.next
	t := &p.tokens[i]
	if p.onlyRows || p.trying || t.kind != tokenWord || p.startsItem(i) {
		return false
	}
	end := p.sentenceEnd(i)
	known := phrasesHarmless(p, i) || draft.Harmless(t.text)
	return end > i+2 && !t.is(ofTheRow...) && !p.anyOf(i, end, "rnd", "round", "beg", "beginning", "bor") &&
		(known || p.tells(i, end)) && p.doubtful(i, end, known) == 0
}

// joinsSteps reports whether a word comes next that only joins steps.
func (p *parser) joinsSteps() bool {
	t, after := p.peek(), p.ahead(1)
	return t.among("and then & ending end ends with finishing finish now") && !after.is("ws", "rs") &&
		!(t.is("end", "ending") && after.is("last")) && !(t.is("with") && p.colourEnd(p.next) != 0)
}

// lineEndsRow reports whether a row ends with the line that was read.
func (p *parser) lineEndsRow(atTop, comma bool) bool {
	return p.startsLine() || atTop && !comma && !p.repeatAhead() && !p.continues() && !p.piled() || p.tokens[p.next-1].number > 1 && atTop
}

// numberedAt reports whether the label of another row, with its number and a colon, stands
// at token i: "Row 1: knit; row 2: purl".
func (p *parser) numberedAt(i int) bool {
	if !p.inRow || !p.tokens[i].row() || p.tokens[i+1].kind != tokenNumber {
		return false
	}
	end := p.numberedLabel(i, nil)
	return end != 0 && p.tokens[end].is(":")
}

// piled reports whether the next step stands on a line of its own below the others, where
// the first already stood below its label.
func (p *parser) piled() bool {
	t := p.peek()
	_, _, _, counted := split(t.text)
	return p.stacked && p.tokens[p.next-1].number == 1 && (t.kind == tokenStar || counted && t.kind == tokenWord)
}

// dashed reports whether a dash with spaces around it only parts two steps, or one that parts slipped stitches, what is
// worked after them and their passing over, "sl 1-k2tog-psso".
func (p *parser) dashed() bool {
	t, next := p.peek(), p.ahead(1)
	if t.is("-") && (next.is("psso", "p2sso") || next.is("k2tog", "k1", "k") && p.passesAfter(p.next+1)) {
		return true
	}
	return t.is("-") && p.inRow && p.next > 0 && t.start > p.tokens[p.next-1].end && next.start > t.end &&
		(p.startsItem(p.next+1) || p.starRepeatAt(p.next+1)) && !next.is("m", "inc", "dec") && !p.claimAhead()
}

// passesAfter reports whether stitches are passed over that which is worked at token i.
func (p *parser) passesAfter(i int) bool {
	for n := i + 1; n < i+4; n++ {
		if p.tokens[n].is("psso", "p2sso") {
			return true
		}
	}
	return false
}

// repeatAhead reports whether "rep from *" comes next, which belongs to the row
// before it also on a new line.
func (p *parser) repeatAhead() bool {
	return len(p.stars) > 0 && p.starRepeatAt(p.next)
}

// passedOvers are decreases by passing slipped stitches over the one worked after
// them: the same as one operation.
var passedOvers = []struct {
	name       string
	slipped    int
	worked, op stitch.Op
}{
	{"psso", 1, stitch.Knit, stitch.SKP},
	{"psso", 1, stitch.K2tog, stitch.SK2P},
	{"psso", 2, stitch.Knit, stitch.CDD},
	{"p2sso", 2, stitch.Knit, stitch.CDD},
}

// passedOver makes "sl 1, k1, psso" one skp, "sl 1, k2tog, psso" one sk2p and
// "sl 2, k1, p2sso" one CDD: they are other words for them.
func (p *parser) passedOver(steps []Step, s Step) ([]Step, bool) {
	n := len(steps)
	if n < 2 || !single(s.Times, 1) {
		return nil, false
	}
	slipped, worked := &steps[n-2], &steps[n-1]
	if slipped.Operation != stitch.Slip || !single(worked.Times, 1) || worked.RemainingStitches != nil {
		return nil, false
	}
	for _, d := range passedOvers {
		if s.Name == d.name && single(slipped.Times, d.slipped) && worked.Operation == d.worked {
			return append(steps[:n-2], Step{Operation: d.op, Times: one, at: slipped.at.to(s.at),
				takes: int16(d.op.Takes()), leaves: int16(d.op.Leaves())}), true
		}
	}
	return nil, false
}

func single(numbers []int, n int) bool { return len(numbers) == 1 && numbers[0] == n }
