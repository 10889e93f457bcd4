package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// moved puts stitches aside or takes them up again, picks some up, or binds all off.
func (r *runner) moved(i int) {
	l := &r.piece.Lines[i]
	r.record(i)
	r.setUp(l)
	start := r.now
	r.numberOfOff(i)
	r.lastRow = 0
	if l.info.ranges != nil {
		r.lastRow = int(r.lastNumber(i))
	}
	switch l.info.kind {
	case lineHold:
		r.hold(l)
	case lineTake:
		r.take(l)
	case linePickUp:
		if r.known && start.total() == 0 {
			r.history = r.history[:0] // rows of another piece are none of "these"
		}
		r.fromHolders(l.info.waiting)
		r.seamedUnsaid(i)
		r.pickedUp(l)
		if !r.round {
			r.side = l.info.side.Other() // it is worked on the side that faces
		}
	case lineOff:
		r.off(l)
	}
	r.fresh = r.fresh && l.info.kind == lineHold
	r.close(i, start)
}

// begin goes on with so many stitches, of which nothing else is known.
func (r *runner) begin(n int64) {
	r.letGo()
	r.now, r.known, r.other = hand{left: min(n, stitch.MaxStitches)}, true, nil
	r.loseMarks()
	r.turned = 0
}

// changeBy goes on with so many stitches more, or fewer below 0, beside those that are there.
func (r *runner) changeBy(by int64) {
	r.shiftOther(by)
	other := r.other
	r.begin(r.now.total() + by)
	r.other = other
}

// heldCount is how many stitches are put aside: so many as is said, or all that were left out, or the
// rest that a turn has just left, or all there are.
func (r *runner) heldCount(l *Line) int64 {
	switch {
	case l.info.counts != nil:
		return int64(at(l.info.counts, r.size))
	case r.aside > 0:
		return r.aside
	case (l.info.whole == wholeRest || l.info.whole == wholeOther) && r.turned > 0 && r.now.behind > 0:
		return r.now.behind
	}
	return r.now.total()
}

// hold puts stitches aside.
func (r *runner) hold(l *Line) {
	if !r.known {
		r.unsureHeld = true
		return
	}
	total := r.now.total()
	n := r.heldCount(l)
	if total == 0 && l.info.counts != nil && r.aside == 0 && n <= r.heldSum() { // "slip centre st onto a safety pin"
		r.heldApartOf(n)
		return
	}
	r.heldTwice(l)
	if n > total && r.other != nil && r.other.total() == n && r.resolved(l, n) {
		total = n
	}
	n = r.heldOf(l, n)
	r.oversHeld = max(r.oversHeld, r.overs)
	if r.aside > 0 && n <= r.aside { // they were left out before
		r.put(n)
		r.aside -= n
		return
	}
	if n > total {
		r.tooFew(l, n, total)
		n = total
	}
	r.put(n)
	r.divided = true
	if r.changeBy(-n); r.now.total() == 0 && !r.round { // other pieces are taken up now
		r.forgetSide()
	}
}

// tooFew says that so many stitches are not there.
func (r *runner) tooFew(l *Line, n, total int64) {
	if r.wanted(ReasonMissing, l.info.at) {
		r.fault(KindMistake, ReasonMissing, l.info.at, int(total-n), stitches(int(n-total))+" missing: "+areThere(total))
	}
}

// forgetSide goes on with a side that nothing is known of.
func (r *runner) forgetSide() {
	r.settleSide()
	r.side, r.sideSaid, r.sides = stitch.SideUnspecified, false, sideClaims{}
}

// put remembers stitches that are put aside.
func (r *runner) put(n int64) {
	r.heldOnce = r.heldOnce || n > 0
	if n > 0 && len(r.held) < mostHolders {
		r.held = append(r.held, n)
	}
}

// holdRest puts aside what a row leaves unworked after its turn.
func (r *runner) holdRest(i int) {
	l := &r.piece.Lines[i]
	rest := r.now.behind
	if l.info.rest != nil {
		if n := int64(at(l.info.rest, r.size)); n != rest && r.wanted(ReasonClaim, l.info.at) {
			r.fault(KindMistake, ReasonClaim, l.info.at, int(n-rest), "there are "+stitches(int(rest))+" left, not "+strconv.Itoa(int(n)))
			r.astray = true
		}
	}
	r.put(rest)
	r.letGo()
	r.now.behind, r.other, r.turned = 0, nil, 0
	r.aside = 0
}

// turnOfLeftOut puts what "on these only" left out where it waits when all others are bound off; if some are on the needle
// still it is asked what becomes of them.
func (r *runner) turnOfLeftOut(l *Line) {
	switch {
	case !r.known || r.aside == 0:
	case r.now.total() == 0:
		r.putLeftOut()
	case l.info.only != nil && !r.quiet && !r.unsureHeld && !r.says(l, "these"):
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, stitches(int(r.now.total()))+" on the needle: what becomes of them?")
	}
}

// take takes stitches up again.
func (r *runner) take(l *Line) {
	r.turnOfLeftOut(l)
	if l.info.restOf != restNone {
		r.takeRest(l)
		return
	}
	if l.info.live && r.known {
		r.takeLive(l)
		return
	}
	n, ok := r.takeCount(l)
	if !ok {
		return
	}
	r.neverHeld(l, n)
	r.takenUp(n, l.info.at)
	r.broughtLast = n
	if r.known && l.info.only == nil && !r.fresh {
		n += r.now.total()
	}
	r.begin(n)
	r.fresh = false // what is picked up or cast on now comes to them
	if !r.round {
		r.side = stitch.SideUnspecified
	}
}

// takeCount is how many stitches are taken up: so many as is said, or all that were put aside. It is
// not ok where they are on the needle already, or nobody knows.
func (r *runner) takeCount(l *Line) (n int64, ok bool) {
	sum := r.heldSum()
	if l.info.counts == nil {
		if len(r.held) == 0 {
			r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "how many stitches are these?")
			r.known = false
		}
		return sum, len(r.held) > 0
	}
	n = int64(at(l.info.counts, r.size))
	if l.info.only != nil && r.known && n == r.now.total() {
		return n, false // those that were left on the needle
	}
	if sum > 0 && n > sum && r.wanted(ReasonMissing, l.info.at) {
		r.fault(KindMistake, ReasonMissing, l.info.at, int(sum-n), "only "+stitches(int(sum))+" were put aside")
	}
	return n, true
}

// takeLive takes stitches up that were never put aside, the loops of a cast-on that is undone.
func (r *runner) takeLive(l *Line) {
	r.broughtLast = int64(at(l.info.counts, r.size))
	if r.rows == 0 && len(r.start.Counts) > 0 && r.now.total() == r.broughtLast {
		return // those of the question
	}
	r.begin(r.now.total() + r.broughtLast)
	if !r.round {
		r.side = stitch.SideUnspecified
	}
}

// heldSum is how many stitches are put aside.
func (r *runner) heldSum() int64 {
	return sumOf(r.held)
}

// taken forgets stitches that were put aside: those of one time, or of all.
func (r *runner) taken(n int64) {
	for i, held := range r.held {
		if held == n {
			r.held = append(r.held[:i], r.held[i+1:]...)
			return
		}
	}
	for i := len(r.held) - 1; i >= 0 && n > 0; i-- {
		part := min(n, r.held[i])
		r.held[i] -= part
		n -= part
	}
}

// off binds off or grafts all stitches.
func (r *runner) off(l *Line) {
	total := r.now.total()
	r.compareOff(l)
	r.comesOff(l)
	if l.info.row {
		if !r.another(l.info.at) {
			return
		}
		r.now = hand{}
		r.worked(-1, 0)
	}
	if rest := l.info.rest; rest != nil {
		n := int64(at(rest, r.size))
		if n > total && r.known && r.wanted(ReasonMissing, l.info.at) {
			r.fault(KindMistake, ReasonMissing, l.info.at, int(total-n), stitches(int(n-total))+" missing: "+areThere(total))
		}
		r.begin(n)
		return
	}
	r.begin(0)
	r.first, r.turnsLeft = true, r.turnsLeft && len(r.held) > 0
	if len(r.held) == 0 {
		r.oversHeld = 0
	}
	r.putLeftOut() // they wait for their turn
	if !r.round {
		r.forgetSide()
	}
}

// compareOff compares the stitches with those that are bound off or grafted, of which both needles may
// have as many.
func (r *runner) compareOff(l *Line) {
	if l.info.counts == nil || !r.known {
		return
	}
	total, n := r.now.total(), int64(at(l.info.counts, r.size))
	if n == total || l.info.bothNeedles && 2*n == total || r.resolved(l, n) || !r.wanted(ReasonClaim, l.info.at) {
		return
	}
	r.fault(KindMistake, ReasonClaim, l.info.at, int(n-total), "there are "+stitches(int(total))+", not "+strconv.Itoa(int(n)))
}
