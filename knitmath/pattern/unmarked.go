package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// unmarked goes on after a row up to markers of which the text says that they are there,
// and not where: the change of the count is known all the same.
func (r *runner) unmarked(i int, p *profile, claimed bool) bool {
	l := &r.piece.Lines[i]
	before := len(r.start.Counts) > 0 && r.round && r.marks.count == 0 // the text goes on from what is on the needles
	if !r.marks.lost && !r.placed && !before {
		return false
	}
	t, ok := looseTally(l.worked(), r.size)
	if !ok || r.now.left < t.takes {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "where the markers are is not known: the count is followed, the places are not")
	q := *p
	q.stretches, q.turn = true, 0
	r.shiftOther(t.leaves - t.takes)
	r.fitting(i, &q, outcome{takes: r.now.left, leaves: r.now.left - t.takes + t.leaves}, claimed)
	r.marks = marks{lost: true}
	return true
}

// shortOfMarks compares what stands between "k to 3 sts before m" and "sl m" with those 3 stitches, wherever the marker lies.
func (r *runner) shortOfMarks(steps []Step) {
	for i := range steps {
		s := &steps[i]
		if s.Steps != nil {
			r.shortOfMarks(s.Steps)
		}
		if s.BeforeMarkerStitches == nil || s.gap || s.loose {
			continue
		}
		n, takes, last := int64(at(s.BeforeMarkerStitches, r.size)), int64(0), i+1
		for ; last < len(steps) && !steps[last].stretch() && steps[last].Operation != stitch.SlipMarker && !removes(steps[last].Name); last++ {
			takes += steps[last].pass(r.size).takes * int64(steps[last].workings(r.size))
		}
		if last == len(steps) || steps[last].stretch() || takes == n || s.at.end == 0 || !r.wanted(ReasonMarker, s.at) {
			continue
		}
		r.fault(KindMistake, ReasonMarker, s.at, int(n-takes), "what follows before the marker takes "+stitches(int(takes))+", not "+
			strconv.Itoa(int(n)))
	}
}
