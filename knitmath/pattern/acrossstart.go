package pattern

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// acrossStart goes on after a round that binds off or puts aside more stitches than are
// before the place it was worked to, "k to last 4 sts, BO 8 sts removing marker": across the
// beginning of the round, or beyond the marker. The count is followed; where the marker is
// not said to go, it is asked whether this is meant.
func (r *runner) acrossStart(i int, p *profile, o outcome, claimed bool) bool {
	l := &r.piece.Lines[i]
	if !r.round || o.reason != ReasonMissing && o.reason != ReasonUnworked || !r.leavesAcross(r.walked(l), o.reason == ReasonUnworked) {
		return false
	}
	t, ok := looseTally(r.walked(l), r.size)
	if !ok || r.now.left < t.takes {
		return false
	}
	said := strings.Contains(strings.ToLower(r.piece.source[l.info.at.start:l.info.at.end]), "remov")
	switch {
	case o.reason == ReasonUnworked:
		if !said {
			return false
		}
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "does the round end here? "+stitches(int(o.unworked))+" of it "+
			remain(o.unworked))
	case said:
		r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked across the beginning of the round")
	default:
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "is this worked across the beginning of the round? "+stitches(int(o.missing))+
			" more than there are before it")
	}
	q := *p
	q.stretches, q.turn = true, 0
	r.other, r.machine = nil, nil
	r.fitting(i, &q, outcome{takes: r.now.left, leaves: r.now.left - t.takes + t.leaves}, claimed)
	r.loseMarks()
	return true
}

// leavesAcross reports whether steps come to a place and take more off the needle there than
// lies before it; ends says that nothing may follow.
func (r *runner) leavesAcross(steps []Step, ends bool) bool {
	k := slices.IndexFunc(steps, func(s Step) bool { return s.RemainingStitches != nil || s.BeforeMarkerStitches != nil && !s.gap })
	if k < 0 || k+1 >= len(steps) {
		return false
	}
	before := steps[k].RemainingStitches
	if before == nil {
		before = steps[k].BeforeMarkerStitches
	}
	s := &steps[k+1]
	if s.Operation != stitch.BindOff && s.Name != "hold" || s.stretch() || s.workings(r.size) <= at(before, r.size) {
		return false
	}
	return !ends || k+2 == len(steps)
}
