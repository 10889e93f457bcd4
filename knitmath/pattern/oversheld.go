package pattern

// oversAside remembers that yarn overs of short rows may be among the stitches that a row puts aside:
// "place 31 sts on hold" does not count them.
func (r *runner) oversAside(l *Line) {
	if r.overs == 0 {
		return
	}
	for k := range l.Steps {
		if l.Steps[k].Name == "hold" {
			r.oversHeld = r.overs
		}
	}
}

// oversBack goes on with such yarn overs where a row works as many stitches more than were said to be
// taken up again.
func (r *runner) oversBack(i int, p *profile, o outcome, claimed bool) bool {
	if o.reason != ReasonMissing || o.missing > r.oversHeld || r.quiet || p.stretches {
		return false
	}
	l := &r.piece.Lines[i]
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read with "+stitches(int(o.missing))+
		" more that were put aside: yarn overs of short rows, which are not usually counted")
	r.now.left += o.missing
	r.oversHeld -= o.missing
	r.other, r.machine = nil, nil
	r.fitting(i, p, p.work(r.now.left), claimed)
	return true
}
