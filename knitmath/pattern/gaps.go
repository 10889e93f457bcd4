package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// gapsWalk goes through a row, over the gaps that the row before has left between its stitches where it bound
// some off or put some aside. What is worked across a gap closes it, and so do stitches that are cast on there.
type gapsWalk struct {
	size, spare int
	left        int64 // stitches on the left needle
	pos, new    int64 // of those, taken; and left on the right needle
	out         marks // gaps on the right needle
	casts       []castWithin
}

// castWithin is stitches that are cast on within a row, after so many of it.
type castWithin struct {
	after int64
	step  *Step
}

// mostInGaps is how many steps of a row are walked through at most: nobody's row between two gaps has more.
const mostInGaps = 400

// steps walks through the steps of a row up to its turn; false where it cannot be told what they take.
func (w *gapsWalk) steps(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if w.spare--; w.spare < 0 || s.toFit || s.BeforeMarkerStitches != nil {
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

// one walks through a step with all its workings.
func (w *gapsWalk) one(s *Step) bool {
	each, n := s.pass(w.size), int64(s.workings(w.size))
	if s.RemainingStitches != nil {
		if each.takes < 1 {
			return false
		}
		n = max(w.left-int64(at(s.RemainingStitches, w.size))-w.pos, 0) / each.takes
	}
	if s.Steps != nil && !s.IntoOneStitch && opensGap(s.Steps) {
		for ; n > 0; n-- {
			if !w.steps(s.Steps) {
				return false
			}
		}
		return true
	}
	if s.Operation == stitch.CastOn {
		w.castOn(s)
	}
	w.pos, w.new = w.pos+times(each.takes, n), w.new+times(each.leaves, n)
	if opens(s) && !w.atGap() {
		w.out.add(w.new)
	}
	return w.pos <= w.left
}

// atGap reports whether the last stitch on the right needle lies at a gap.
func (w *gapsWalk) atGap() bool { return w.out.count > 0 && int64(w.out.at[w.out.count-1]) >= w.new }

// castOn closes the gap that the row itself has left here, or notes where stitches are cast on within it.
func (w *gapsWalk) castOn(s *Step) {
	switch {
	case w.atGap():
		w.out.count--
	case w.pos > 0 && w.pos < w.left:
		w.casts = append(w.casts, castWithin{w.pos, s})
	}
}

// opens reports whether a step takes stitches out of a row and leaves a gap.
func opens(s *Step) bool { return s.Operation == stitch.BindOff || s.Name == "hold" }

// opensGap reports whether steps leave a gap, or cast stitches on, which may close one.
func opensGap(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; opens(s) || s.Operation == stitch.CastOn || opensGap(s.Steps) {
			return true
		}
	}
	return false
}

// parts are the stitches before, between and after the gaps.
func (w *gapsWalk) parts() []int64 {
	parts, from := make([]int64, 0, w.out.count+1), int64(0)
	for _, g := range w.out.at[:w.out.count] {
		parts = append(parts, int64(g)-from)
		from = int64(g)
	}
	return append(parts, w.new-from)
}

// overGaps follows the gaps through a row that fits, and compares what it does with where they lie.
func (r *runner) overGaps(i int, p *profile, before hand) {
	had := r.gaps
	r.gaps = marks{}
	if had.count == 0 && !r.facts[i].opensGap {
		return
	}
	w := gapsWalk{size: r.size, left: before.left, new: before.behind, spare: mostInGaps}
	if !w.steps(r.walked(&r.piece.Lines[i])) {
		return
	}
	if had.count > 0 && !r.quiet {
		r.castOverGaps(&had, w.casts)
		r.turnedAtGap(i, p, &had, w.pos)
	}
	if p.turn != 0 || w.out.lost {
		return
	}
	r.gaps = w.out
	if !r.round {
		r.gaps.turnBack(r.now.total())
	}
}

// castOverGaps compares where stitches are cast on within a row with the gaps: where there are as many of either, or
// one lies near the other, they belong together.
func (r *runner) castOverGaps(gaps *marks, casts []castWithin) {
	for _, c := range casts {
		gap := gaps.nearest(c.after)
		if gap == c.after {
			continue
		}
		if len(casts) != gaps.count && max(gap-c.after, c.after-gap) > beyondGap {
			continue
		}
		if r.wanted(ReasonHands, c.step.at) {
			r.fault(KindMistake, ReasonHands, c.step.at, 0, "the gap is after "+stitches(int(gap))+", and these are cast on after "+
				strconv.Itoa(int(c.after)))
		}
		return
	}
}

// beyondGap is how far from a gap something that belongs there may be put by mistake.
const beyondGap = 3

// turnedAtGap compares where a row is turned with a gap just beside it: across it nothing is worked for so little, and
// what stays before it would be left over. A row that wraps its turn may be a short one.
func (r *runner) turnedAtGap(i int, p *profile, gaps *marks, pos int64) {
	gap := gaps.nearest(pos)
	at := r.facts[i].stepsAt
	switch {
	case p.turn != stitch.Turn || gap == pos:
	case pos > gap && pos-gap <= beyondGap && r.wanted(ReasonHands, at):
		r.fault(KindMistake, ReasonHands, at, 0, "the gap is after "+stitches(int(gap))+", and "+strconv.Itoa(int(pos))+
			" are worked before the turn")
	case pos < gap && gap-pos < beyondGap && r.wanted(ReasonUnread, at):
		r.fault(KindQuestion, ReasonUnread, at, 0, stitches(int(gap-pos))+" "+remain(gap-pos)+" before the gap: are they meant to?")
	}
}

// nearest is the place that is nearest to one of the stitches.
func (m *marks) nearest(to int64) int64 {
	best := int64(m.at[0])
	for _, g := range m.at[:m.count] {
		if g := int64(g); max(g-to, to-g) < max(best-to, to-best) {
			best = g
		}
	}
	return best
}
