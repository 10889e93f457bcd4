package pattern

// leftByTurn says of the row before, where that was turned early, what a row lacks that is worked again
// and fitted at first: "p33, turn" on 36 stitches leaves 2 that the next row works. It goes on as if
// they had been worked.
func (r *runner) leftByTurn(i int, p *profile, o outcome, claimed bool) bool {
	if claimed || r.quiet || r.round || o.reason != ReasonMissing || o.missing != r.now.behind || r.turned == 0 || r.lastLine < 0 ||
		r.lastLine == i || r.profiles[r.lastLine].stretches || r.turnGap != r.now.left {
		return false
	}
	at := r.piece.Lines[r.lastLine].info.at
	if r.wanted(ReasonUnworked, at) {
		r.fault(KindMistake, ReasonUnworked, at, int(o.missing), stitches(int(o.missing))+" "+remain(o.missing)+
			" before the turn, which the next row works")
	}
	r.now, r.other, r.machine = hand{left: r.now.total()}, nil, nil
	r.fitting(i, p, p.work(r.now.left), claimed)
	return true
}
