package pattern

import "example.com/knitmath/knitmath/stitch"

// A part of a round that goes on back and forth while the rest is put aside, as a heel does, and the round that takes the rest up again.

// flatAgain goes on back and forth where a row, and no round, is worked on the wrong side while the rest of the piece waits.
func (r *runner) flatAgain(l *Line) bool {
	if !r.divided || len(r.held)+len(r.inRows) == 0 || l.info.inRounds {
		return false
	}
	r.round, r.leftRound = false, true
	return true
}

// roundWithHeld works a round over the stitches that were put aside last too, where it takes just so many more than there are.
func (r *runner) roundWithHeld(i int, p *profile, o outcome, claimed bool) bool {
	l, list := &r.piece.Lines[i], &r.held
	if len(r.held) == 0 {
		list = &r.inRows
	}
	last := len(*list) - 1
	if o.reason != ReasonMissing || !l.info.inRounds || last < 0 || r.quiet || r.unsureHeld || r.now.behind > 0 ||
		len(r.partly) > 0 { // of a holder some stitches were taken: the others were left by mistake
		return false
	}
	n := (*list)[last]
	all := p.work(r.now.left + n)
	if o.missing != n || all.reason != "" {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked on the "+stitches(int(n))+" that were put aside last, too")
	*list = (*list)[:last]
	r.begin(r.now.left + n)
	r.round, r.side = true, stitch.RightSide
	r.fitting(i, p, all, claimed)
	return true
}
