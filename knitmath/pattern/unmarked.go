package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// unmarked goes on after a row up to markers of which the text says that they are there,
// and not where: the change of the count is known all the same.
func (r *runner) unmarked(i int, p *profile, claimed bool) bool {
	l := &r.piece.Lines[i]
	if r.turnGap >= 0 && r.turned != 0 && firstToMark(l.worked()) == nil {
		return false // the gap of the last turn, which is known
	}
	before := len(r.start.Counts) > 0 && r.round && r.marks.count == 0 // the text goes on from what is on the needles
	if !r.marks.lost && !r.placed && !before {
		return false
	}
	t, ok := looseTally(l.worked(), r.size)
	if !ok || r.now.left < t.takes {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "where the markers are is not known: the count is followed, the places are not")
	r.countAlone(i, p, t, claimed)
	return true
}

// nonePlaced asks where the markers are of a round that goes past one, where none was placed before, and follows its count alone. The
// beginning of the round, which is one, is not enough for it.
func (r *runner) nonePlaced(i int, p *profile, claimed bool) bool {
	l := &r.piece.Lines[i]
	t, ok := looseTally(l.worked(), r.size)
	first := firstToMark(l.Steps)
	if !ok || first == nil || !r.facts[i].slipsMarker || !r.round || r.marks.lost || r.marks.count > 0 || r.placed ||
		r.now.left < t.takes || slices.ContainsFunc(r.facts[:i], func(f facts) bool { return f.marks }) {
		return false
	}
	r.fault(KindQuestion, ReasonNoMarker, first.at, 0, "no marker was placed before: where does it lie?")
	r.countAlone(i, p, t, claimed)
	return true
}

// firstToMark is the first step that goes to a marker, and not to the gap of a turn; nil if none does.
func firstToMark(steps []Step) *Step {
	for k := range steps {
		if s := &steps[k]; s.BeforeMarkerStitches != nil && !s.gap {
			return s
		}
		if s := firstToMark(steps[k].Steps); s != nil {
			return s
		}
	}
	return nil
}

// countAlone goes on after a row whose stitches change by a tally, and of which it is not known where its markers are.
func (r *runner) countAlone(i int, p *profile, t tally, claimed bool) {
	q := *p
	q.stretches, q.turn = true, 0
	r.shiftOther(t.leaves - t.takes)
	r.fitting(i, &q, outcome{takes: r.now.left, leaves: r.now.left - t.takes + t.leaves}, claimed)
	r.marks = marks{lost: true}
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
