package pattern

import "example.com/knitmath/knitmath/stitch"

// wrapMissed asks about a stitch that a row takes with its wrap where the row has gone past a wrapped stitch before, and
// fewer wraps are left than it takes: the stitch there has none. waiting is how many lay ahead before the row.
func (r *runner) wrapMissed(fault *stitch.RowError, row stitch.Row, places []span, waiting int) {
	if fault.Reason != stitch.ReasonWrapped || r.turnsLeft {
		return
	}
	taken, last := 0, -1
	for i, s := range row.Steps {
		if s.Op == stitch.KnitWrapped || s.Op == stitch.PurlWrapped {
			taken, last = taken+s.Count, i
		}
	}
	if taken >= waiting && last >= 0 && places[last].end != 0 {
		r.fault(KindQuestion, ReasonHands, places[last], 0, "the stitch here has no wrap: a wrapped one was worked before it without its own")
	}
}
