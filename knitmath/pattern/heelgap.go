package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// gapClosed looks whether a row of a heel closes the gap that the last turn left: of its decreases beside the
// gap one takes stitches from either side of it. One that lies before it, or beyond it, leaves a hole, though
// the count is the same.
func (r *runner) gapClosed(i int, p *profile, before hand, o outcome) {
	if r.quiet || r.turned != stitch.Turn || p.turn != stitch.Turn || r.turnGap < 1 || o.takes < r.turnGap || o.takes == o.leaves {
		return
	}
	w := gapWalk{gap: r.turnGap, left: before.left, size: r.size}
	if !w.steps(r.walked(&r.piece.Lines[i])) || w.beside == nil || w.closed {
		return
	}
	at := w.beside.at
	if at.end == 0 {
		at = r.piece.Lines[i].info.at
	}
	text := "the gap of the last turn is after " + stitches(int(r.turnGap)) + ", and is not closed: this decrease begins after " +
		strconv.Itoa(int(w.begins))
	if r.wanted(ReasonHands, at) {
		r.fault(KindMistake, ReasonHands, at, 0, text)
	}
}

// gapWalk goes through a row to see what lies beside a gap.
type gapWalk struct {
	gap, left, pos int64
	size           int
	closed         bool
	beside         *Step // a decrease that lies beside the gap
	begins         int64 // after so many stitches
}

// steps walks through the steps of a row up to its turn; false where what they take from which side cannot be
// told.
func (w *gapWalk) steps(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		switch each := s.pass(w.size); {
		case s.Operation.EndsRow():
			return true
		case s.stretch():
			if each.takes != each.leaves || s.toFit || s.BeforeMarkerStitches != nil && !s.gap {
				return false
			}
			w.pos = w.stretchEnd(s)
		case s.Steps != nil:
			if each.takes != each.leaves {
				return false
			}
			w.pos += each.takes * int64(s.workings(w.size))
		default:
			for range s.workings(w.size) {
				w.one(s, each)
			}
		}
	}
	return true
}

// stretchEnd is where a stretch of a row ends.
func (w *gapWalk) stretchEnd(s *Step) int64 {
	if s.gap {
		return w.gap - int64(at(s.BeforeMarkerStitches, w.size))
	}
	return w.left - int64(at(s.RemainingStitches, w.size))
}

// one takes a stitch or a decrease; what is passed over it takes the ones before it along.
func (w *gapWalk) one(s *Step, each tally) {
	from, to := w.pos, w.pos+each.takes
	if each.takes == 0 && each.leaves < 0 {
		from += each.leaves - 1
	}
	w.pos = to
	if each.takes <= each.leaves {
		return
	}
	w.closed = w.closed || from < w.gap && w.gap < to
	if to >= w.gap-2 && from <= w.gap+2 {
		w.beside, w.begins = s, from
	}
}
