package pattern

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// walker goes through a row.
type walker struct {
	*runner
	left     int64 // stitches on the left needle
	pos, new int64 // of those, taken; and left on the right needle
	next     int   // the marker ahead
	reached  bool  // the last stretch ended at it
	here     *Step // a stretch up to a marker that is where it begins
	beyond   bool  // such a stretch goes on to the next marker
	within   int   // how many markers had been passed when one lay within a stitch that takes several
	out      marks
	began    int64 // stitches up to the marker of the beginning of the round, slipped at its end; below 0 if it was not

	unknown *Step // up to a marker that is not known
	none    *Step // a marker to be slipped that is not here
	reason  report.Reason
	step    *Step
	short   int64
	missing int64
}

// ahead is where the next marker is; false if there is none. In the round the
// beginning of the round is one.
func (w *walker) ahead() (int64, bool) {
	if w.marks.lost {
		return 0, false
	}
	for w.next < w.marks.count && int64(w.marks.at[w.next]) < 0 {
		w.next++
	}
	if w.next < w.marks.count {
		return int64(w.marks.at[w.next]), true
	}
	return w.left, w.round
}

// passMark takes the marker ahead along.
func (w *walker) passMark(at int64) {
	w.out.add(at)
	w.next++
	w.reached = false
}

// advance works something n times that takes and leaves stitches, and takes along the
// markers in between.
func (w *walker) advance(t tally, n int64) {
	end := w.pos + times(t.takes, n)
	for {
		m, ok := w.ahead()
		if !ok || w.next >= w.marks.count || m >= end || t.takes == 0 {
			break
		}
		before := max(m, w.pos) - w.pos
		k := (before + t.takes - 1) / t.takes
		w.passMark(w.new + times(t.leaves, k))
		if before%t.takes != 0 && t.takes == 2 && n == 1 {
			w.within = w.out.count
		}
	}
	w.pos = min(end, most)
	w.new = min(w.new+times(t.leaves, n), most)
}

// steps walks through steps; false when the row cannot go on.
func (w *walker) steps(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if !w.spend(1) {
			return false
		}
		if s.Operation.EndsRow() {
			return true
		}
		if !w.one(s) {
			return false
		}
	}
	return true
}

// one walks through one step.
func (w *walker) one(s *Step) bool {
	switch {
	case s.BeforeMarkerStitches != nil:
		return w.toMark(s)
	case s.RemainingStitches != nil:
		return w.toLast(s)
	case s.Operation == stitch.PlaceMarker:
		for range min(s.workings(w.size), maxMarks) {
			w.out.add(w.new)
		}
	case s.Operation == stitch.SlipMarker, removes(s.Name):
		for range min(s.workings(w.size), maxMarks) {
			w.slip(s)
		}
	case s.Steps != nil && !s.IntoOneStitch && w.markedWithin(s):
		for range s.workings(w.size) {
			if !w.steps(s.Steps) {
				return false
			}
			if w.pos > w.left {
				return w.fail(s, ReasonMissing, w.pos-w.left)
			}
		}
	default:
		w.advance(s.pass(w.size), int64(s.workings(w.size)))
		if s.Name == "hold" { // "place next 20 sts on holder, k to m" is up to the next but one
			place, ok := w.ahead()
			w.reached = ok && place == w.pos
		}
	}
	return true
}

func (w *walker) fail(s *Step, reason report.Reason, n int64) bool {
	w.reason, w.step = reason, s
	if reason == ReasonMissing {
		w.missing = n
	} else {
		w.short = n
	}
	return false
}

// markedWithin reports whether a group has to be walked through one by one: it names
// markers, or comes to one.
func (w *walker) markedWithin(s *Step) bool {
	var f facts
	f.gather(s.Steps)
	if f.marks || f.toMarker || f.slipsMarker {
		return true
	}
	m, ok := w.ahead()
	return ok && w.next < w.marks.count && m <= w.pos+times(s.pass(w.size).takes, int64(s.workings(w.size)))
}

// removes reports whether a step of this name takes a marker off the needle.
func removes(name string) bool {
	return name == "rm" || name == "remove m" || name == "remove marker" || name == "remove the marker"
}

// slip passes the marker that is here, or takes it off.
func (w *walker) slip(s *Step) {
	place, ok := w.ahead()
	switch {
	case w.next < w.marks.count && ok && place == w.pos:
		if removes(s.Name) {
			w.next++
			w.reached = false
			return
		}
		w.passMark(w.new)
	case w.round && w.pos == w.left && w.pos > 0 && !removes(s.Name):
		w.began = w.new
	case w.none == nil && !w.markMayBe():
		w.none = s
	}
}

// markMayBe reports whether a marker may be here that is not known: that of the beginning of the
// round, one that has been passed just now, or any where none is known.
func (w *walker) markMayBe() bool {
	return w.round && (w.pos == 0 || w.pos == w.left) || w.marks.lost || w.marks.count == 0 ||
		w.out.count > 0 && int64(w.out.at[w.out.count-1]) == w.new && w.within != w.out.count
}

// toMark works a step up to so many stitches before the next marker.
func (w *walker) toMark(s *Step) bool {
	if s.gap {
		if w.turnGap < 0 || w.turned == 0 {
			w.unknown = s
			return false
		}
		return w.upTo(s, w.turnGap-int64(at(s.BeforeMarkerStitches, w.size)))
	}
	before := int64(at(s.BeforeMarkerStitches, w.size))
	place, ok := w.markAfter(s, before)
	if !ok {
		w.unknown = s
		return false
	}
	if !w.upTo(s, place-before) {
		return false
	}
	w.reached = before == 0
	return true
}

// markAfter is where the marker lies that a stretch goes up to, behind those that it passes.
func (w *walker) markAfter(s *Step, before int64) (place int64, ok bool) {
	if w.reached {
		if place, ok := w.ahead(); ok && place == w.pos && w.next < w.marks.count {
			w.passMark(w.new)
		}
	}
	place, ok = w.ahead()
	if ok && w.next < w.marks.count && place == w.pos && before == 0 {
		w.here = s
	}
	for ok && w.next < w.marks.count && place <= w.pos && (before > 0 || w.beyond) {
		w.passMark(w.new)
		place, ok = w.ahead()
	}
	return place, ok
}

// toLast works a step until so many stitches remain.
func (w *walker) toLast(s *Step) bool {
	last := int64(at(s.RemainingStitches, w.size))
	if s.Steps != nil && w.markedWithin(s) {
		for w.pos < w.left-last {
			from := w.pos
			if !w.steps(s.Steps) {
				return false
			}
			if w.pos == from || w.pos > w.left-last {
				return w.fail(s, ReasonUneven, w.left-last-from)
			}
		}
		return true
	}
	return w.upTo(s, w.left-last)
}

// upTo works a step up to a place on the left needle.
func (w *walker) upTo(s *Step, target int64) bool {
	each := s.pass(w.size)
	switch gap := target - w.pos; {
	case gap < 0:
		return w.fail(s, ReasonMissing, -gap)
	case each.takes == 0:
		return gap == 0 || w.fail(s, ReasonUneven, gap)
	case gap%each.takes != 0:
		return w.fail(s, ReasonUneven, gap%each.takes)
	default:
		w.advance(each, gap/each.takes)
	}
	return true
}
