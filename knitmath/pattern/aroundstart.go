package pattern

import "example.com/knitmath/knitmath/stitch"

// aroundStart goes on after a row that is worked back past the beginning of the round, "k15,
// turn; sl 1, p29, turn": the heel lies on both sides of it. What the row does not work waits
// behind it.
func (r *runner) aroundStart(i int, p *profile, o outcome, claimed bool) bool {
	total := r.now.total()
	if !r.round || o.reason != ReasonMissing || p.turn == 0 || r.turned == 0 || p.stretches && !r.facts[i].toMarker || r.now.behind == 0 ||
		o.takes > total || !r.crossed && o.takes != o.leaves && toGap(r.piece.Lines[i].Steps) {
		return false
	}
	l := &r.piece.Lines[i]
	before := r.now
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked back past the beginning of the round")
	r.now, r.other, r.machine = hand{left: o.leaves, behind: total - o.takes}, nil, nil
	r.loseMarks()
	r.turnGap, r.crossed = o.leaves, true
	o.reason, o.missing = "", 0
	r.finish(i, o)
	if claimed && !l.info.holdRest {
		r.compare(l, before)
	}
	return true
}

// toGap reports whether a row goes to the gap that the last turn left. Where it decreases there it works towards the stitches
// beyond, and those of a heel that was not worked across the beginning of the round before end with their piece.
func toGap(steps []Step) bool {
	for i := range steps {
		if steps[i].gap || toGap(steps[i].Steps) {
			return true
		}
	}
	return false
}

// mustTurn is the profile of a row of a round that must end with a turn although its words do
// not say so: it is on the wrong side, and what follows puts the others aside, or is on the
// right side.
func (r *runner) mustTurn(i int, p *profile) *profile {
	if !r.round || p.turn != 0 || p.stretches || r.side != stitch.WrongSide || !r.dividesAfter(i) {
		return p
	}
	r.turningRow = *p
	r.turningRow.turn = stitch.Turn
	return &r.turningRow
}

// dividesAfter reports whether what follows a line puts stitches aside, or is a row of the
// right side.
func (r *runner) dividesAfter(i int) bool {
	for n := i + 1; n < len(r.piece.Lines) && n < i+4; n++ {
		switch info := &r.piece.Lines[n].info; {
		case info.kind == linePassed:
		case info.kind == lineHold, info.only != nil, info.side == stitch.RightSide:
			return true
		default:
			return false
		}
	}
	return false
}

// turnBefore turns the work of a round before a row on the wrong side, where the text has just
// said "turn".
func (r *runner) turnBefore(l *Line, p *profile) {
	if r.turnSaid && r.round && r.side == stitch.RightSide && (p.turn != 0 || l.info.side == stitch.WrongSide) {
		r.side, r.turned = stitch.WrongSide, stitch.Turn
	}
	r.turnSaid = false
}
