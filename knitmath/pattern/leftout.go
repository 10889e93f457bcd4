package pattern

// overLeftOut works a row that lacks stitches over those that "on these only" left out too, where it
// takes all of both: after "The heel is worked over the first 30 sts" and its rows, "Next rnd: K30,
// pick up and knit 10 sts, k30" goes over the instep again.
func (r *runner) overLeftOut(i int, p *profile, o outcome, claimed bool) bool {
	if r.aside <= 0 || o.reason != ReasonMissing || r.quiet || p.turn != 0 || r.now.behind != 0 {
		return false
	}
	all := r.now.left + r.aside
	o = p.work(all)
	l := &r.piece.Lines[i]
	if o.reason != "" || o.takes != all {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked over the "+stitches(int(r.aside))+" too that were left out")
	r.aside = 0
	r.begin(all)
	r.round, r.leftRound = r.round || r.leftRound, false
	r.loseMarks()
	r.fitting(i, p, o, claimed)
	return true
}
