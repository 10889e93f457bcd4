package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// maxMarks is the most markers that are followed on one needle.
const maxMarks = 32

// marks are the markers on the needles, as the stitches before each that the next row
// comes to; below 0 for one that lies behind, on the right needle. The one at the
// beginning of a round is none of them.
type marks struct {
	count int
	at    [maxMarks]int32
	lost  bool // where they are is not known
}

func (m *marks) add(at int64) {
	if m.count == maxMarks {
		*m = marks{lost: true}
	}
	if m.lost {
		return
	}
	m.at[m.count] = int32(min(at, stitch.MaxStitches))
	m.count++
}

// turnBack tells the places from the other end of so many stitches.
func (m *marks) turnBack(total int64) {
	was := *m
	*m = marks{lost: was.lost}
	for k := was.count - 1; k >= 0; k-- {
		if n := total - int64(was.at[k]); n > 0 && n < total { // one at the end is that of the round
			m.add(n)
		}
	}
}

// markCentre places markers on either side of so many stitches in the middle of the needle, or so many in from its ends; false
// where they have no middle.
func (r *runner) markCentre(info *lineInfo) bool {
	n, total := int64(0), r.now.total()
	switch {
	case info.centre != nil:
		n = int64(at(info.centre, r.size))
	case info.inset != nil && !r.round:
		n = total - 2*int64(at(info.inset, r.size))
	default:
		return false
	}
	if !r.known || r.now.behind != 0 || n < 1 || n >= total || (total-n)%2 != 0 || r.marks.lost || r.marks.count > 0 {
		return false
	}
	r.marks.add((total - n) / 2)
	r.marks.add((total + n) / 2)
	return true
}

// whereYouLike asks where markers are that are placed "where you want the raglan lines".
func (p *parser) whereYouLike(from span) {
	if p.peek().is("where", "wherever") && p.ahead(1).among("you desired needed preferred wanted") {
		p.toClause()
		p.ask(ReasonUnread, from.to(p.last()), "where? the counts of rows that are worked to these markers depend on it")
	}
}

// loseMarks forgets where markers and gaps are.
func (r *runner) loseMarks() {
	r.marks, r.gaps = marks{lost: r.marks.lost || r.marks.count > 0}, marks{}
}

// walkOn works a row in which markers matter: it is walked through, from marker to
// marker.
func (r *runner) walkOn(i int, p *profile, claimed bool) {
	l := &r.piece.Lines[i]
	w := walker{runner: r, left: r.now.left, began: -1}
	if !r.facts[i].toMarker {
		r.walkBeside(i, p, &w, claimed)
		return
	}
	r.machine = nil
	if r.marks.count == 0 {
		r.shortOfMarks(r.walked(l))
	}
	ok := w.stepsOrMovedBack(r.walked(l))
	w.beyondHere(r.walked(l), p.turn != 0)
	if w.reason == "" {
		r.misplaced(&w, l)
	}
	if !ok && w.unknown != nil {
		r.markerMissing(i, p, &w, claimed)
		return
	}
	o := w.outcome(p.turn != 0)
	if o.reason != "" && (r.markless() && r.unmarked(i, p, claimed) || r.nonePlaced(i, p, claimed)) {
		return
	}
	q := *p
	q.stretches = true
	if o.reason == "" {
		before := r.now
		r.shiftOther(before.after(&q, o).total() - before.total())
		r.switched = false
		r.fitting(i, &q, o, claimed)
		if r.known && !r.switched {
			r.marks = w.after(before, p.turn != 0)
		}
		return
	}
	r.other, r.nextMarks = nil, nil
	r.misfitting(i, &q, o, claimed)
	r.finish(i, o)
	r.loseMarks()
	r.marks.lost = r.marks.lost || r.facts[i].marks
	r.takeNextMarks()
}

// stepsOrMovedBack walks through a row, once more with a marker back in its place that was moved for a claim which the row shows wrong.
func (w *walker) stepsOrMovedBack(steps []Step) bool {
	left := w.left
	ok := w.steps(steps)
	if w.none != nil && w.movedBack() {
		*w = walker{runner: w.runner, left: left, began: -1}
		ok = w.steps(steps)
	}
	return ok
}

// takeNextMarks puts the markers where a round has left them that is no whole one, and reports whether the row was such a one.
func (r *runner) takeNextMarks() bool {
	if r.nextMarks == nil {
		return false
	}
	r.marks = *r.nextMarks
	return true
}

// walkBeside works a row as any other, and walks through it to see where its markers lie
// afterwards.
func (r *runner) walkBeside(i int, p *profile, w *walker, claimed bool) {
	l := &r.piece.Lines[i]
	before := r.now
	r.switched = false
	known := r.misfits
	r.misfits, r.nextMarks = false, nil
	if r.now.left > 0 || !p.empty() {
		r.workOn(i, p, claimed)
	}
	misfits := r.misfits
	r.misfits = known || misfits
	if r.takeNextMarks() {
		return
	}
	if r.known && !r.switched && !(misfits && r.facts[i].marks) && w.stepsOrMovedBack(r.walked(l)) && w.pos <= w.left {
		r.marks = w.after(before, p.turn != 0)
	} else {
		r.loseMarks()
		r.marks.lost = r.marks.lost || r.facts[i].marks // those that it places lie nobody knows where
	}
	if !misfits { // a row that does not fit is said once
		r.misplaced(w, l)
	}
}

// markerMissing says that a row goes to a marker that is not there, or not known.
func (r *runner) markerMissing(i int, p *profile, w *walker, claimed bool) {
	if r.unmarked(i, p, claimed) {
		return
	}
	kind := KindQuestion
	if !r.marks.lost && r.marks.count > 0 && !r.placed {
		kind = KindMistake // all are known, and there are too few
	}
	r.fault(kind, ReasonNoMarker, w.unknown.at, 0, "no marker is known ahead: how many stitches is that?")
	r.unknown(&r.piece.Lines[i], claimed)
}

// outcome is what a row comes to that was walked through.
func (w *walker) outcome(turns bool) outcome {
	o := outcome{takes: w.pos, leaves: w.new, reason: w.reason, step: w.step, short: w.short, missing: w.missing}
	switch {
	case o.reason != "":
	case w.pos > w.left:
		o.reason, o.missing = ReasonMissing, w.pos-w.left
	case w.left > w.pos && !turns:
		o.reason, o.unworked = ReasonUnworked, w.left-w.pos
	}
	return o
}

// markless reports whether rounds are worked of which no marker was placed.
func (r *runner) markless() bool {
	return r.round && r.marks.count == 0 && len(r.start.Counts) > 0
}

// walked are the steps of a row as they are worked.
func (r *runner) walked(l *Line) []Step {
	if r.brings != nil {
		return r.brings
	}
	return l.worked()
}

// misplaced says that a marker is to be slipped where there is none.
func (r *runner) misplaced(w *walker, l *Line) {
	if w.none == nil || r.quiet {
		return
	}
	at := w.none.at
	if at.end == 0 {
		at = l.info.at
	}
	r.astray = true
	if r.wanted(ReasonMarker, at) {
		r.fault(KindMistake, ReasonMarker, at, 0, "no marker is here")
	}
}
