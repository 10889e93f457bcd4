package pattern

// betweenStitches is a row with every "inc" as a stitch made between two, which takes none
// of those that are there, and whether it has an inc or a dec at all.
func betweenStitches(steps []Step) ([]Step, bool) {
	found := false
	for i := range steps {
		s := &steps[i]
		if s.Name == "inc" || s.Name == "dec" {
			found = true
		} else if s.Steps != nil {
			_, inner := betweenStitches(s.Steps)
			found = found || inner
		}
	}
	if !found {
		return nil, false
	}
	other := append([]Step(nil), steps...)
	for i := range other {
		s := &other[i]
		switch {
		case s.Name == "inc":
			s.takes, s.leaves = 0, 1
		case s.Steps != nil:
			if in, ok := betweenStitches(s.Steps); ok {
				s.Steps = in
			}
		}
	}
	return other, true
}

// unnamed is the profile of a row with increases or decreases of which it is not said how
// they are made: the way in which the row fits, and in which its claim is right. If there
// is none it is asked.
func (r *runner) unnamed(i int, p *profile, claimed bool) *profile {
	l := &r.piece.Lines[i]
	between := profileOf(l.info.either, r.size)
	r.spend(2 * r.facts[i].stepCount)
	good := func(q *profile) bool {
		o := q.work(r.now.left)
		if o.reason != "" {
			return false
		}
		n, ok := r.claimAfter(l, r.now)
		return !ok || !claimed || r.now.after(q, o).total() == n
	}
	switch {
	case good(p):
	case good(&between):
		r.between = between
		return &r.between
	case p.work(r.now.left).reason != "" && between.work(r.now.left).reason != "":
		r.fault(KindQuestion, ReasonAmbiguous, r.facts[i].stepsAt, 0, "the row fits with no way to make its increases or decreases: name them")
	}
	return p
}
