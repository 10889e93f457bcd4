package pattern

import "slices"

// besidePicked goes on after a row that only brings stitches, "pick up and knit 14 sts along flap, knit 30 held instep sts, pick up
// and knit 14 sts", beside those that are on the needle. Stitches that the row only calls those of another part are brought where its
// count says so.
func (r *runner) besidePicked(i int, p *profile, o outcome, claimed bool) bool {
	l := &r.piece.Lines[i]
	if r.quiet || p.turn != 0 || o.reason != ReasonUnworked && o.reason != ReasonMissing || !bringsAll(l.info.either) && !bringsAll(l.Steps) {
		return false
	}
	steps := l.Steps
	if own := bringsAll(steps); !own {
		steps = l.info.either
		if n, ok := r.claim(l); !ok || !claimed || n != r.now.total()+brings(steps, r.size) {
			return false
		}
		r.fromHolders(steps)
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as brought beside the "+stitches(int(r.now.total()))+" on the needle")
	q := *p
	q.stretches = true // which no hand follows
	r.now, r.other, r.machine = hand{left: r.now.total()}, nil, nil
	r.fitting(i, &q, outcome{takes: r.now.left, leaves: r.now.left + brings(steps, r.size)}, claimed)
	r.loseMarks()
	return true
}

// bringsAll reports whether steps bring stitches to the needle, and work none of those that are on it.
func bringsAll(steps []Step) bool {
	return slices.ContainsFunc(steps, func(s Step) bool { return s.Name == pickedUp || s.Name == takenUp }) &&
		!slices.ContainsFunc(steps, func(s Step) bool { return s.stretch() || s.Steps != nil || s.takes > 0 || s.Operation.EndsRow() })
}

// brings is how many stitches they bring in a size.
func brings(steps []Step, size int) int64 {
	t, _ := looseTally(steps, size)
	return t.leaves
}

// withNeedle is the index after "with 2nd needle", "using a new dpn" at token i: with which needle is worked changes no count; 0 if
// that is not what stands there.
func (p *parser) withNeedle(i int) int {
	if !p.tokens[i].is("with", "using") && !p.tokens[i-1].is("with") {
		return 0
	}
	if p.tokens[i].is("with", "using") {
		i++
	}
	for p.tokens[i].among("a the another new free spare second first third fourth same next empty extra") {
		i++
	}
	if end := p.ordinalEnd(i); end != 0 {
		i = end
	}
	if p.tokens[i].is("double-pointed") {
		i++
	}
	if !p.tokens[i].is("needle", "dpn") {
		return 0
	}
	return i + 1
}
