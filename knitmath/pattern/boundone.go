package pattern

import "example.com/knitmath/knitmath/stitch"

// leftByBindingOff goes on after a row that begins with binding off and leaves one stitch unworked,
// where the count that it claims is right: the stitch that binding off leaves on the right needle is
// then not counted among those that are worked after it, as older patterns do.
func (r *runner) leftByBindingOff(i int, o outcome, claimed bool) bool {
	l := &r.piece.Lines[i]
	if o.reason != ReasonUnworked || o.unworked != 1 || len(l.Steps) == 0 || l.Steps[0].Operation != stitch.BindOff {
		return false
	}
	if len(l.Steps) == 1 { // of 12 stitches 11 are bound off: the last one is on the right needle
		r.begin(r.now.total() + o.leaves - o.takes)
		r.finish(i, outcome{})
		if claimed {
			r.compare(l, r.now)
		}
		return true
	}
	for k := range l.Steps { // what is told from the end of the row counts all
		if s := &l.Steps[k]; s.RemainingStitches != nil && at(s.RemainingStitches, r.size) > 0 {
			return false
		}
	}
	left := r.now.total() + o.leaves - o.takes
	n, ok := r.claim(l)
	switch {
	case claimed && ok && n == left:
		r.oneMore = i
		r.fault(KindReading, ReasonReading, l.Steps[0].at, 0,
			"read without counting the stitch that binding off leaves on the right needle among those worked after it")
	case claimed || r.oneMore != i:
		return false
	}
	r.now, r.other, r.machine = hand{left: left}, nil, nil
	r.loseMarks()
	return true
}
