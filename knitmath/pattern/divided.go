package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// dividedAtMarks looks whether the sleeves that a row puts aside, two sets of stitches, lie alike between the four
// places that part a yoke: markers, or in the round the beginning too. A seam stitch may belong to either side, but
// then it does so at both sleeves.
func (r *runner) dividedAtMarks(i int, had hand) {
	if r.quiet || had.behind != 0 || !r.yokeMarked() {
		return
	}
	w := divideWalk{size: r.size, left: had.left}
	for _, m := range r.marks.at[:r.marks.count] {
		w.places = append(w.places, int64(m))
	}
	if !w.steps(r.walked(&r.piece.Lines[i])) || len(w.held) != 2 {
		return
	}
	w.places = append(w.places, 0, had.left)
	slices.Sort(w.places)
	wrong := w.wrong()
	if wrong == nil {
		return
	}
	if at := wrong.step.at; r.wanted(ReasonMarker, at) {
		r.fault(KindMistake, ReasonMarker, at, 0, "stitches "+strconv.Itoa(int(wrong.from+1))+" to "+strconv.Itoa(int(wrong.to))+
			" are put aside, and the markers nearest to them are after "+strconv.Itoa(int(w.nearest(wrong.from)))+" and "+
			strconv.Itoa(int(w.nearest(wrong.to))))
	}
}

// yokeMarked reports whether four places part the stitches, as those of a yoke.
func (r *runner) yokeMarked() bool {
	return !r.marks.lost && (r.marks.count == 4 || r.marks.count == 3 && r.round)
}

// wrong is which of two sets of stitches does not lie between its markers as the other does, nil if both do.
func (w *divideWalk) wrong() *heldPart {
	first, second := w.beside(w.held[0]), w.beside(w.held[1])
	switch {
	case first.far() || second.far():
		return nil
	case first == second && (first.after+first.before != 0 || first.after == 0), first == second.turned():
		return nil
	case second == beside{}:
		return &w.held[0]
	}
	return &w.held[1]
}

// heldPart is stitches that a row puts aside, after so many and up to so many of it.
type heldPart struct {
	from, to int64
	step     *Step
}

// beside is how far stitches begin after a marker and end before another.
type beside struct{ after, before int64 }

func (b beside) turned() beside { return beside{b.before, b.after} }

// far reports whether they have nothing to do with those markers.
func (b beside) far() bool { return max(b.after, -b.after, b.before, -b.before) > 4 }

// divideWalk goes through a row that puts stitches aside.
type divideWalk struct {
	places    []int64
	left, pos int64
	size      int
	held      []heldPart
}

// steps walks through a row, and is false where it cannot be told what it takes.
func (w *divideWalk) steps(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		each, from := s.pass(w.size), w.pos
		switch {
		case s.Operation.EndsRow():
			return true
		case s.stretch() && (s.toFit || s.gap || each.takes < 1 || s.Operation != stitch.Knit && s.Operation != stitch.Purl && s.Steps == nil):
			return false
		case s.BeforeMarkerStitches != nil:
			w.pos = w.ahead() - int64(at(s.BeforeMarkerStitches, w.size))
		case s.RemainingStitches != nil:
			w.pos = w.left - int64(at(s.RemainingStitches, w.size))
		default:
			w.pos += times(each.takes, int64(s.workings(w.size)))
		}
		if s.Name == "hold" && w.pos > from {
			w.held = append(w.held, heldPart{from, w.pos, s})
		}
	}
	return true
}

// ahead is the next marker, or the end of the row.
func (w *divideWalk) ahead() int64 {
	for _, m := range w.places {
		if m > w.pos {
			return m
		}
	}
	return w.left
}

// nearest is the place of those that is nearest.
func (w *divideWalk) nearest(at int64) int64 {
	best := w.left
	for _, m := range w.places {
		if max(m-at, at-m) < max(best-at, at-best) {
			best = m
		}
	}
	return best
}

func (w *divideWalk) beside(h heldPart) beside {
	return beside{h.from - w.nearest(h.from), w.nearest(h.to) - h.to}
}
