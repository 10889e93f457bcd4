package pattern

import "slices"

// takingOff reads what ends a piece without a row: "graft", "draw yarn through rem
// sts", "thread through rem 8 sts".
func (p *parser) takingOff(line *Line) bool {
	end := p.sentenceEnd(p.next)
	i := p.next
	off := p.tokens[i].is("graft", "kitchener")
	if p.tokens[i].among("draw thread pull run gather break cut fasten") {
		for n := i; n < end; n++ {
			if p.tokens[n].is("through", "thru") {
				off = true
			}
		}
	}
	if !off {
		return false
	}
	info := &line.info
	info.kind, info.all = lineOff, true
	info.counts = p.takenOff(end)
	p.next = end
	return true
}

// takenOff is how many stitches a sentence up to token end says that it takes off: those after
// "rem" or "all", or at once after the verb; of "the 10 sts on one needle to the 10 sts on the
// other" both together, and of "10 sts from each needle" twice as many. It is nil where that is
// not said, or they are those of an underarm, which are not on the needle.
func (p *parser) takenOff(end int) []int {
	if p.anyOf(p.next, end, "underarm", "underarms", "armpit", "gap", "gaps") {
		return nil
	}
	save, found := p.next, p.found.mark()
	defer func() { p.next = save }()
	graft := p.peek().is("graft", "kitchener")
	var sum, before []int
	for n, behind := save+1, 0; n < end; n++ {
		last := p.takenAt(n)
		if last == 0 || !p.ledTaken(n) && !(graft && p.ledGrafted(n, last, save+1, sum != nil)) {
			continue
		}
		p.next = n
		number := p.number()
		if number == nil {
			p.found.rewind(found)
			return nil
		}
		number = without(number)
		if before != nil && p.anyOf(behind, n, "to", "with") { // of what is grafted alone there are two numbers
			p.alikeGrafted(before, number, p.tokens[save].to(p.tokens[last].span))
		}
		before, behind = number, last
		if graft && (p.setsBefore(n) || p.ofEachNeedle(last+1) || p.tokens[n-1].is("each")) {
			number = p.timesEach(number, 2)
		}
		sum = added(sum, number, p.sizes)
		if !graft {
			break
		}
		n = last
	}
	return sum
}

// alikeGrafted asks about two sides that are grafted and have not as many stitches each.
func (p *parser) alikeGrafted(one, other []int, at span) {
	if !slices.Equal(one, other) {
		p.ask(ReasonUnread, at, "how are they grafted? one side has more stitches than the other")
	}
}

// takenAt is the index of the "sts" of a number of stitches at token i, 0 if none stands there.
func (p *parser) takenAt(i int) int {
	end, _ := p.sizedEnd(i)
	if end == 0 {
		return 0
	}
	return p.ofPart(end)
}

// ledTaken reports whether a word before token i says that so many stitches are taken off.
func (p *parser) ledTaken(i int) bool {
	return p.tokens[i-1].among("rem remaining last the all these first other")
}

// ledGrafted reports whether a number at token i, up to its "sts", is of stitches that are grafted: at once after the verb, of
// sets, of each needle, or joined to others.
func (p *parser) ledGrafted(i, sts, first int, others bool) bool {
	return i == first || p.setsBefore(i) || p.onEachNeedle(sts+1) || others && p.tokens[i-1].is("to", "with", "and")
}

// setsBefore reports whether "two sets of" stands before token i: there are twice as many.
func (p *parser) setsBefore(i int) bool {
	return i > 2 && p.tokens[i-1].is("of") && p.tokens[i-2].is("sets", "lots", "halves") && p.tokens[i-3].among("two 2 both the")
}

// onEachNeedle reports whether "on each needle", "on both needles" stands at token i.
func (p *parser) onEachNeedle(i int) bool {
	return p.tokens[i].is("on") && p.ofEachNeedle(i) && p.anyOf(i+2, min(i+5, len(p.tokens)), "needle", "needles", "dpn", "dpns")
}

// ofEachNeedle reports whether "from each", "on both" stands at token i.
func (p *parser) ofEachNeedle(i int) bool {
	return p.tokens[i].is("from", "on", "of") && p.tokens[i+1].is("each", "both")
}
