package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// heldInRow reads "place next 20 sts on holder" within a row, and "leaving rem 38 sts on
// a holder" after its turn.
func (p *parser) heldInRow(steps *[]Step) asideKind {
	from := p.peek().span
	save, found := p.next, p.found.mark()
	var line Line
	first := p.peek().text
	if !p.holding(&line) || line.info.kind != lineHold {
		p.next = save
		p.found.rewind(found)
		if first == "place" || first == "slip" || first == "sl" {
			return asideNone
		}
		if first == "leaving" || first == "placing" || first == "leave" || first == "put" || first == "slipping" {
			return p.unworkedAside(steps, from)
		}
		return asideNone
	}
	if n := len(*steps); first == "leaving" && line.info.whole == wholeRest && n > 0 && !(*steps)[n-1].stretch() &&
		!(*steps)[n-1].Operation.EndsRow() && !p.onlyRows {
		*steps = append(*steps, Step{Operation: stitch.Turn, Times: one, at: from}) // it is turned before them
	}
	if n := len(*steps); n > 0 && (*steps)[n-1].Operation.EndsRow() {
		p.rest = unworkedRest{held: true, count: line.info.counts}
		return asideRead
	}
	s := Step{Name: "hold", takes: 1, Times: line.info.counts, at: from.to(p.last())}
	switch {
	case (line.info.worked || p.lastOfAll(save, *steps)) && len(*steps) > 0 && !(line.info.whole == wholeThese && leaveJust(*steps, s.Times)):
		if !p.heldBack(&s, *steps) {
			return asideFault
		}
	case line.info.counts == nil:
		s.RemainingStitches = toEnd
	}
	*steps = append(*steps, s)
	return asideRead
}

// lastOfAll reports whether an aside from token i on is about the last stitches of a row that has
// been worked to its end, "k to end, placing last 8 sts on hold".
func (p *parser) lastOfAll(i int, steps []Step) bool {
	n := len(steps)
	return n > 0 && single(steps[n-1].RemainingStitches, 0) && p.anyOf(i, min(i+4, p.next), "last")
}

// leaveJust reports whether steps stop before so many stitches: "to last 4 sts, place these 4
// sts on a safety pin" is about those that have not been worked.
func leaveJust(steps []Step, n []int) bool {
	last := steps[len(steps)-1].RemainingStitches
	return n != nil && last != nil && slices.Equal(tidy(slices.Clone(last)), tidy(slices.Clone(n)))
}

// unworkedAside passes over "leaving rem 38 sts unworked".
func (p *parser) unworkedAside(steps *[]Step, from span) asideKind {
	p.next++
	n, all, _, ok := p.someStitches()
	if ok && p.accept("unworked", "unknit") {
		k := len(*steps)
		switch {
		case k > 0 && (*steps)[k-1].Operation.EndsRow():
			return asideRead
		case k > 0 && n != nil && !(*steps)[k-1].stretch() && !p.onlyRows: // it is turned before them
			*steps = append(*steps, Step{Operation: stitch.Turn, Times: one, at: from})
			p.rest = unworkedRest{held: true, count: n}
			if p.accept("for") {
				p.accept("the")
				p.accept("instep", "heel", "front", "back", "thumb")
			}
			return asideRead
		}
	}
	if k := len(*steps); ok && k > 0 && (*steps)[k-1].Operation.EndsRow() && (n != nil || all) && !p.peek().is("on", "onto", "for") {
		return asideRead // they stay where they are
	}
	p.ask(ReasonUnread, from.to(p.last()), "what happens to these stitches?")
	return asideFault
}
