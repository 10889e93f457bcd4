package pattern

// Where a count and a claim disagree either may be wrong, and both are carried on: the count in
// now, the one that was claimed in other. The first later line on which only one of them comes
// out tells which was meant; so one mistake is said once.

// doubt carries the count that was claimed on beside the one that was worked.
func (r *runner) doubt(claimed int64) {
	if !r.quiet {
		r.other = &hand{left: claimed - r.now.behind, behind: r.now.behind}
	}
}

// shiftOther changes the other count as the one at hand was changed.
func (r *runner) shiftOther(by int64) {
	if r.other == nil {
		return
	}
	if n := r.other.total() + by; n >= 0 {
		r.other = &hand{left: n}
		return
	}
	r.other = nil
}

// unevenCounts are by how many stitches fewer, or more, a repeat would have come out.
type unevenCounts struct {
	fewer, more int64
	at          int32 // where that repeat begins
}

// couldFit remembers the two counts nearest to the one at hand on which a repeat comes out that
// does not: the rows after it tell whether one of them was meant.
func (r *runner) couldFit(o *outcome) {
	each := o.step.pass(r.size).takes
	if r.quiet || each < 2 || o.short <= 0 || o.short >= each {
		return
	}
	r.uneven = &unevenCounts{fewer: o.short, more: each - o.short, at: o.step.at.start}
}

// fitsOtherwise goes on with one of these counts where another repeat comes out on it, and not
// on the one at hand: that was found at the first. Where it comes out on both, a claim tells
// which was meant.
func (r *runner) fitsOtherwise(p *profile, o *outcome) {
	if r.uneven == nil || r.other != nil || r.quiet || p.first.step == nil || p.first.step.at.start == r.uneven.at ||
		p.first.each.takes < 2 {
		return
	}
	was, had := r.uneven, r.now
	r.uneven = nil
	if o.reason == "" {
		return // the count at hand is right
	}
	for _, by := range [...]int64{was.more, -was.fewer} {
		alt := hand{left: had.left + by, behind: had.behind}
		if alt.left < 1 {
			continue
		}
		q := p.work(alt.left)
		switch {
		case q.reason != "":
		case o.reason != "":
			r.now, r.machine, *o, r.switched = alt, nil, q, true
		default:
			after := alt.after(p, q)
			r.other = &after
		}
	}
}

// meantOtherwise reports whether a claim is right by one of those counts.
func (r *runner) meantOtherwise(claimed int64) bool {
	if r.uneven == nil || r.quiet {
		return false
	}
	by := claimed - r.now.total()
	return by == r.uneven.more || by == -r.uneven.fewer
}

// resolved reports whether a claim that disagrees with the count at hand is right by what was
// found before: it is the other count, or that with the rows that are known to be off by so many
// worked again since then. The text goes on with it, and nothing more is said.
func (r *runner) resolved(l *Line, claimed int64) bool {
	total := r.now.total()
	meant := r.owed != 0 && claimed-total == r.owed
	if r.other != nil {
		meant = meant || claimed == r.other.total()+r.owed
	}
	meant = meant || r.meantOtherwise(claimed) || r.astray
	if !meant || r.quiet {
		return false
	}
	r.uneven, r.astray = nil, false
	r.now, r.other, r.machine, r.owed = hand{left: claimed - r.now.behind, behind: r.now.behind}, nil, nil, 0
	if r.now.left < 0 {
		r.now = hand{left: claimed}
	}
	r.loseMarks()
	r.switched = true
	if i := r.counted; i >= 0 && &r.piece.Lines[i] == l {
		r.out.Lines[i].EndStitches[r.size] = int(claimed)
	}
	return true
}

// fitsOwed goes on with the count that rows would have come to which are known to be off, where a
// row fits it and not the one at hand: they were worked again since.
func (r *runner) fitsOwed(p *profile, o *outcome) {
	if r.owed == 0 || o.reason == "" || r.quiet {
		return
	}
	alt := hand{left: r.now.left + r.owed, behind: r.now.behind}
	if alt.left < 1 {
		return
	}
	if q := p.work(alt.left); q.reason == "" {
		r.now, r.other, r.machine, r.owed, *o, r.switched = alt, nil, nil, 0, q, true
	}
}

// isOff remembers by how many stitches a row is off from its claim: worked again it is off by
// as many.
func (r *runner) isOff(l *Line, by int64) {
	if r.quiet || l.info.kind != lineRow {
		return
	}
	if r.offBy == nil {
		r.offBy = map[*Line]int64{}
	}
	r.offBy[l] = by
}

// owes adds up by how many stitches rows are off that are worked again, so often.
func (r *runner) owes(l *Line, workings int64) {
	if by, known := r.offBy[l]; known && !r.quiet {
		r.owed += by * workings
	}
}
