package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// partRound goes on after a row that is no whole round: it stops where the round begins from then
// on or where the rest is grafted, or it goes past the beginning of the round, "pick up and knit 14
// sts, k8", over stitches that were worked already. The change of the count is that of its steps.
func (r *runner) partRound(i int, p *profile, o outcome, claimed bool) bool {
	l := &r.piece.Lines[i]
	if !r.round && !r.closesRound(l) || p.turn != 0 || r.now.behind > 0 || r.quiet {
		return false
	}
	said := r.partRoundSaid(i, o)
	t, ok := looseTally(r.walked(l), r.size)
	if said == "" || !ok {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, said)
	r.round = true
	next := r.marksOfNext(i, o)
	q := *p
	q.stretches = true // which no hand follows
	r.other, r.machine = nil, nil
	r.fitting(i, &q, outcome{takes: r.now.left, leaves: r.now.left - t.takes + t.leaves}, claimed)
	r.marks, r.nextMarks = next, &next
	return true
}

// marksOfNext is where the markers are for a round that begins where such a row ends, short of the end of its own round or past it.
func (r *runner) marksOfNext(i int, o outcome) marks {
	before := r.now
	w := walker{runner: r, left: before.left, began: -1}
	steps, past := r.walked(&r.piece.Lines[i]), int64(0)
	if o.reason == ReasonMissing { // its last stitches are the first of what it has worked
		last := len(steps) - 1
		past, steps = o.missing, slices.Clone(steps)
		steps[last].Times = []int{steps[last].workings(r.size) - int(past)}
	}
	if !w.steps(steps) || w.none != nil || past > 0 && w.pos != w.left {
		return marks{lost: r.marks.lost || r.marks.count > 0 || r.facts[i].marks}
	}
	if past == 0 {
		past = w.new
		w.advance(tally{takes: 1, leaves: 1}, w.left-w.pos)
	}
	next, total := w.after(before, false), int32(w.new)
	at := next.at[:next.count]
	for k := range at {
		at[k] = (at[k] - int32(past) + total) % total
	}
	inOrder(at)
	return next
}

// partRoundSaid is how a row is read that is no whole round, "" if it is not.
func (r *runner) partRoundSaid(i int, o outcome) string {
	l := &r.piece.Lines[i]
	switch {
	case o.reason == ReasonUnworked && l.info.startMoves && !fromEdgeToEdge(r.walked(l)) && marksPlaced(r.walked(l)) < 3:
		return "read as going to where the round begins from here on"
	case o.reason == ReasonUnworked && r.offNext(i) && plainSteps(r.walked(l)):
		return "read as going to where the stitches are taken off"
	case o.reason == ReasonMissing && r.goesPast(l, r.walked(l), o.missing):
		return "read as worked past the beginning of the round, over " + stitches(int(o.missing)) + " of it again"
	}
	return ""
}

// fromEdgeToEdge reports whether a round begins and ends with stitches that are picked up along an edge, as at an
// underarm: it goes over all that lie between.
func fromEdgeToEdge(steps []Step) bool {
	n := len(steps)
	for n > 0 && steps[n-1].takes == 0 && steps[n-1].leaves == 0 {
		n--
	}
	return n > 2 && steps[0].Name == pickedUp && steps[n-1].Name == pickedUp
}

// closesRound reports whether a row makes a round of what was worked flat.
func (r *runner) closesRound(l *Line) bool {
	return (l.info.inRounds || l.info.startMoves || l.info.brings) && goesRound(r.walked(l))
}

// goesRound reports whether stitches are picked up along two edges, after which those that the row began
// with come again: what was worked flat is a round.
func goesRound(steps []Step) bool {
	edges := 0
	for i := range steps {
		if steps[i].Name == pickedUp {
			edges++
		}
	}
	return edges > 1
}

// plainSteps reports whether nothing but stitches that keep the count is worked, "k10", "k to m",
// before the stitches are grafted. A row that shapes goes all round.
func plainSteps(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; s.Steps != nil || s.takes != 1 || s.leaves != 1 {
			return false
		}
	}
	return true
}

// offNext reports whether the stitches are grafted or bound off next.
func (r *runner) offNext(i int) bool {
	for n := i + 1; n < len(r.piece.Lines); n++ {
		switch r.piece.Lines[n].info.kind {
		case linePassed:
		case lineOff:
			return true
		default:
			return false
		}
	}
	return false
}

// goesPast reports whether so many stitches that a round lacks are its last: plain ones after
// stitches that were picked up, or with which the round begins from then on.
func (r *runner) goesPast(l *Line, steps []Step, missing int64) bool {
	last := len(steps) - 1
	if last < 1 {
		return false
	}
	s := &steps[last]
	n := int64(s.workings(r.size))
	if s.stretch() || s.Steps != nil || s.takes != 1 || s.leaves != 1 || missing > n {
		return false
	}
	if missing == n && steps[last-1].Name == pickedUp {
		return true
	}
	return l.info.startMoves && (missing == n || marksPlaced(steps) < 3) &&
		!(steps[last-1].Name == pickedUp && goesRound(steps)) // of those all come again
}

// marksPlaced is how many markers a row places: where there are several they part the whole round, and its last part is none of the next.
func marksPlaced(steps []Step) int {
	n := 0
	for i := range steps {
		n += bit(steps[i].Operation == stitch.PlaceMarker)
	}
	return n
}
