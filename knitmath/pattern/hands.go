package pattern

import (
	"errors"

	"example.com/knitmath/knitmath/stitch"
)

// needsHands reports whether counting an operation is not the whole truth of it.
func needsHands(op stitch.Op) bool {
	switch op {
	case stitch.M1, stitch.M1L, stitch.M1R, stitch.M1P, stitch.M1LP, stitch.M1RP,
		stitch.Turn, stitch.WrapTurn, stitch.MakeDouble, stitch.KnitDouble, stitch.PurlDouble,
		stitch.KnitWrapped, stitch.PurlWrapped, stitch.ShortRowYO:
		return true
	}
	return false
}

// picksUp reports whether an operation takes rows of an edge rather than stitches.
func picksUp(op stitch.Op) bool {
	return op == stitch.PickUp || op == stitch.PickUpTwo || op == stitch.SkipRow
}

// byHand has the stitch machine work a row that was counted already. The machine
// comes in with the first row that needs it, on plain knitting, and stays until
// no short row is open. What it refuses becomes a finding, and it goes.
func (r *runner) byHand(i int, p *profile, before hand, ops int64) {
	l := &r.piece.Lines[i]
	if l.info.tidies { // how wraps are picked up is said in words
		r.tidied(p.turn == 0)
		return
	}
	r.tidiedRows = 0
	if r.quiet || r.machine == nil && !r.needsMachine(i, before) {
		return
	}
	// A row of many operations on few stitches is as much work as one on many.
	work := int(max(3*before.total()+100, ops+4*int64(r.facts[i].stepCount)))
	if r.hands < work {
		r.hands, r.machine = 0, nil
		r.remark(ReasonCountedOnly, l.info.at, "from here on rows are counted, and no longer worked stitch by stitch")
		return
	}
	r.hands -= work
	r.changes++
	if r.machine == nil && !r.pickUp(before) {
		return
	}
	row, places, ok := r.rowOf(l.Steps, before.left)
	if !ok {
		r.letGo()
		return
	}
	waiting := r.machine.UnresolvedAhead()
	if err := r.machine.Work(row); err != nil {
		var fault *stitch.RowError
		if errors.As(err, &fault) {
			r.refused(l, fault, places)
			r.wrapMissed(fault, row, places, waiting)
		}
		r.letGo()
		return
	}
	closed := p.turn == 0 && !r.machine.ShortRowOpen() && r.machine.Unresolved() == 0
	if closed || int64(r.machine.StitchCount()) != r.now.total() {
		r.letGo()
	}
}

// tidied notes a row that picks up wraps along its way: those that it does not pass are taken up later. Two whole rows pass all.
func (r *runner) tidied(whole bool) {
	r.letGo()
	if r.tidiedRows++; !whole {
		r.tidiedRows = 0
	}
	if r.tidiedRows > 1 {
		r.turnsLeft, r.wrapsGiven = false, false
	}
}

// letGo has the machine go, and remembers whether it knew of stitches that were wrapped or made
// double: they are worked later, where it does not know them any more.
func (r *runner) letGo() {
	r.turnsLeft = r.turnsLeft || r.machine != nil && r.machine.Unresolved() > 0
	r.machine = nil
}

// needsMachine reports whether the machine has to come in with a row, and can: with
// all stitches on the left needle, on a side that is known.
func (r *runner) needsMachine(i int, before hand) bool {
	return r.facts[i].needsHands && before.behind == 0 && before.left > 0 && r.side != stitch.SideUnspecified
}

// pickUp puts the stitches on the machine's needles, in plain knitting, with the
// right side of the work facing.
func (r *runner) pickUp(before hand) bool {
	style, plain := stitch.Flat, 2
	if r.round {
		style, plain = stitch.InTheRound, 1
	}
	if r.side == stitch.WrongSide {
		if r.round {
			return false
		}
		plain = 1
	}
	m := r.room.needles(style)
	if m.CastOn(int(before.left)) != nil {
		return false
	}
	for range plain {
		if m.Work(stitch.RowOf(stitch.ToEnd(stitch.Slip))) != nil {
			return false
		}
	}
	r.machine = m
	return true
}

// handTexts is what the machine's refusals mean; others it has no say in.
var handTexts = map[stitch.Reason]string{
	stitch.ReasonDouble:     "a double stitch is worked here as an ordinary one: write k DS or p DS where it comes",
	stitch.ReasonNotDouble:  "the stitch here is no double stitch",
	stitch.ReasonNotWrapped: "the stitch here has no wrap",
	stitch.ReasonYarnOver:   "the yarn over of a short row is not worked together with its neighbour here",
	stitch.ReasonNotAtTurn:  "a double stitch is made at once after a turn",
	stitch.ReasonNoStrand:   "a make one needs a strand between two stitches: there is none here",
	stitch.ReasonStrandUsed: "the strand here has been lifted for a make one already",
	stitch.ReasonNoNext:     "no stitch is left here to wrap",
}

// refused makes a finding of what the machine refused.
func (r *runner) refused(l *Line, fault *stitch.RowError, places []span) {
	at := l.info.at
	if len(fault.Path) > 0 {
		if i := fault.Path[0].Step; i < len(places) {
			at = places[i]
		}
	}
	if at.end == 0 {
		r.letGo() // it met a step that only stands for another, as stitches that are put aside
		return
	}
	if fault.Reason == stitch.ReasonWrapped {
		r.fault(KindReading, ReasonPassedOver, at, 0, "a wrapped stitch is worked here without its wrap: the count is the same")
		return
	}
	if r.turnsLeft && fault.Reason == stitch.ReasonNotDouble || (r.turnsLeft || r.wrapsGiven) && fault.Reason == stitch.ReasonNotWrapped {
		r.remark(ReasonCountedOnly, l.info.at, "stitches that were put aside after a turn are counted here, and not followed one by one")
		return
	}
	text, ok := handTexts[fault.Reason]
	if !ok {
		r.letGo() // as a decrease straight after a bind-off, which is printed and slipped back
		return
	}
	r.fault(KindQuestion, ReasonHands, at, 0, text)
}
