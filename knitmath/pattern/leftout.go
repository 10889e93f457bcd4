package pattern

// overLeftOut works a row that lacks stitches over those that "on these only" left out too, where it
// takes all of both: after "The heel is worked over the first 30 sts" and its rows, "Next rnd: K30,
// pick up and knit 10 sts, k30" goes over the instep again. So does one that takes just those that lie beyond them,
// the others being on the right needle: "k24, turn, k10, turn", rows on these 10, "k10, pick up 7, k14".
func (r *runner) overLeftOut(i int, p *profile, o outcome, claimed bool) bool {
	if r.aside <= 0 || o.reason != ReasonMissing || r.quiet || p.turn != 0 || r.now.behind != 0 {
		return false
	}
	all, around := r.now.left+r.aside, true
	l := &r.piece.Lines[i]
	if ahead := r.asideAhead; ahead > 0 && ahead < r.aside && o.missing == ahead && r.side == r.asideSide {
		o = p.work(r.now.left + ahead) // the others lie on the right needle already
		o.takes, o.leaves, around = all, o.leaves+all-o.takes, false
	} else {
		o = p.work(all)
	}
	if o.reason != "" || o.takes != all {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked over the "+stitches(int(r.aside))+" too that were left out")
	r.aside = 0
	r.begin(all)
	r.round, r.leftRound = r.round || r.leftRound, false
	r.loseMarks()
	before := r.now
	r.fitting(i, p, o, claimed)
	if around {
		r.marksAround(l, before)
	}
	return true
}

// marksAround notes where the markers are behind a round that goes over all stitches at once.
func (r *runner) marksAround(l *Line, before hand) {
	w := walker{runner: r, left: before.left, began: -1}
	if r.known && w.stepsOrMovedBack(r.walked(l)) && w.pos == w.left {
		next := w.after(before, false)
		r.nextMarks = &next
	}
}
