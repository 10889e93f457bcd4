package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// work works a row once. claimed says that its claim holds now.
func (r *runner) work(i int, claimed bool) {
	l := &r.piece.Lines[i]
	if l.info.kind == lineBeginning {
		r.edgeAgain(i)
		return
	}
	if !r.another(l.info.at) {
		return
	}
	r.beginRow(i, claimed)
	if l.info.onNeedles != nil {
		r.needlesFit(l)
	}
	if l.info.spread {
		start := r.now
		r.spreadRow(i)
		if claimed {
			r.close(i, start)
		}
		return
	}
	if !r.followed(i, claimed) || r.startMoved(i) {
		return
	}
	if r.turned == stitch.Turn && r.facts[i].startsOver {
		r.overs++
	}
	before := r.now
	r.reachedBack(l)
	r.chartFits(l)
	r.ribFits(i)
	r.brings = nil
	first := r.noting == i
	p := r.turnedProfile(i, claimed)
	switch {
	case r.markersMatter(i):
		r.walkOn(i, p, claimed)
	case r.now.left > 0 || !p.empty():
		r.workOn(i, p, claimed)
	}
	r.partsOf(l, before, claimed, p.turn != 0)
	r.restHeld(i, before, claimed)
	r.oversAside(l)
	r.putAside(l)
	if first {
		r.noteWithoutAside(i)
	}
	if r.machine == nil {
		r.overs = 0
	}
	r.worked(i, p.turn)
}

// noteWithoutAside notes the count after a row again, without what it has put aside: the next row begins with that.
func (r *runner) noteWithoutAside(i int) {
	if c := &r.out.Lines[i]; !r.quiet && r.known && c.EndStitches[r.size] >= 0 {
		c.EndStitches[r.size] = int(r.now.total())
	}
}

// turnedProfile is what a row takes and leaves, with its turn where that is not said.
func (r *runner) turnedProfile(i int, claimed bool) *profile {
	l := &r.piece.Lines[i]
	p := r.chosen(i, r.profile(i), claimed)
	if l.info.fastens {
		p = r.fastened(p)
	}
	r.turnBefore(l, p)
	return r.mustTurn(i, p)
}

// beginRow takes what the label of a row and the rows before it say of its side and of where it
// begins.
func (r *runner) beginRow(i int, claimed bool) {
	l := &r.piece.Lines[i]
	again := r.lastLine == i && (len(l.info.ranges) > 0 || l.info.forRows != nil) // the next of the rows of one label
	amongParts := l.info.kind == lineShape && r.seen[i] && len(l.info.parts) > 1
	if !again && !amongParts {
		r.checkSide(l, r.seen[i])
	}
	if claimed && l.info.kind == lineRow {
		r.setUp(l)
	}
	if !claimed {
		r.owes(l, 1)
	}
	r.beginsWith(l)
	r.resume(i, claimed)
	r.record(i)
}

// flatSaid goes on back and forth where words beside the rows say so.
func (r *runner) flatSaid(l *Line) {
	if l.info.turns == constructionFlat && r.round && (l.info.kind == linePassed || l.info.kind == lineCastOn) {
		r.round, r.side, r.sideSaid, r.leftRound = false, stitch.RightSide, false, true
	}
}

// beginsWith takes what the first row of a piece says of it: that it begins with stitches of others,
// or that it is a round.
func (r *runner) beginsWith(l *Line) {
	if !r.known && l.info.brings && r.rows <= 1 && len(r.start.Counts) == 0 && r.now.total() == 0 {
		r.known = true // the piece begins with stitches of others
	}
	if !r.known && l.info.kind == lineRow && picksAllUp(l.Steps) {
		r.begin(0) // a border: what was on the needle before is not in it
	}
	if r.first && r.rows <= 1 {
		r.namedRound(&l.info)
	}
}

// picksAllUp reports whether a row picks stitches up at once, and takes none off the needle.
func picksAllUp(steps []Step) bool {
	if len(steps) == 0 || steps[0].Name != pickedUp {
		return false
	}
	for i := range steps {
		s := &steps[i]
		if s.Name != pickedUp && s.Operation != stitch.PlaceMarker && (!s.brought || s.stretch()) {
			return false
		}
	}
	return true
}

// namedRound goes on in the round where the first of a piece is called a round.
func (r *runner) namedRound(info *lineInfo) {
	if info.inRounds && !r.round && r.start.Construction == 0 && !r.leftRound {
		r.round, r.side = true, stitch.RightSide
	}
}

// restHeld holds the stitches that a row leaves, where its words say so.
func (r *runner) restHeld(i int, before hand, claimed bool) {
	l := &r.piece.Lines[i]
	if !l.info.holdRest || !r.known {
		return
	}
	r.holdRest(i)
	if claimed {
		r.compare(l, before)
	}
}

// followed reports whether the stitches before a row are known and its own can be followed;
// if not, the row has been passed over.
func (r *runner) followed(i int, claimed bool) bool {
	l := &r.piece.Lines[i]
	if l.info.kind == lineUnread || !r.known {
		r.unfollowed(i, claimed)
		return false
	}
	if r.facts[i].picksUp {
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0,
			"stitches picked up along an edge are not followed: say how many there are at the end of the row")
		r.unfollowed(i, claimed)
		return false
	}
	return true
}

// markersMatter reports whether a row must be walked through from marker to marker.
func (r *runner) markersMatter(i int) bool {
	return r.facts[i].marks || r.marks.count > 0 && !r.quiet || r.facts[i].toMarker
}

// partsOf compares a claim about a part of the stitches with the row.
func (r *runner) partsOf(l *Line, before hand, claimed, turns bool) {
	if claimed && r.known && l.info.beside && (l.info.perNeedle != nil || l.info.perSide != nil) {
		r.compareParts(l, before)
	}
	if claimed && !r.countWrong(l) {
		r.partsBetweenMarks(l)
		r.partsBoundOff(l, before)
	}
	if !claimed || l.info.partial == nil || !r.known {
		return
	}
	n := int64(at(l.info.partial, r.size))
	r.comparePart(l, before, n)
	if l.info.inWork && turns && r.now.left == n {
		r.aside, r.now.behind, r.turned = r.now.behind, 0, 0
	}
}

// countWrong reports whether the count of all stitches that a line tells has just been called wrong.
func (r *runner) countWrong(l *Line) bool {
	i, found := r.found.at[findingKey{l.info.claimAt.start, ReasonClaim}]
	if !found || len(l.ClaimedStitches) == 0 {
		return false
	}
	sizes := r.found.list[i].SizeNumbers
	return len(sizes) > 0 && sizes[len(sizes)-1] == r.size+1
}

// unfollowed is a row of which the counts are not known.
func (r *runner) unfollowed(i int, claimed bool) {
	l := &r.piece.Lines[i]
	if !r.workedUnread(i, claimed) {
		r.marks.lost = r.marks.lost || r.facts[i].marks || l.info.kind == lineUnread // it may place them, where is not known
		r.unknown(l, claimed)
	}
	turn := stitch.Op(0)
	if turnsAtEnd(l.Steps) { // whatever the count is
		turn = l.Steps[len(l.Steps)-1].Operation
	}
	r.worked(i, turn)
	if l.info.kind == lineUnread && l.Label == "" && len(l.Steps) == 0 && !r.round {
		r.side, r.sideSaid = stitch.SideUnspecified, false
	}
}
