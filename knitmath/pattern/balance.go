package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// Of several changes that would do, the likelier makes a row the same from both ends, as most
// rows of shaping and of lace are, or makes the numbers of a list of sizes grow more evenly.

// balanced tells how far a row is the same from both ends: 2 for all of it as it is knit, 1 for a row as
// it is written, or for a repeat of it, wherever it is taken to begin.
func balanced(steps []Step) int {
	var groups [][]Step
	for i := range steps {
		if s := &steps[i]; len(s.Steps) > 3 {
			groups = append(groups, s.Steps)
		}
	}
	switch {
	case mirroredWhole(steps):
		return 2
	case len(steps) > 1 && sameFromBothEnds(steps, 0, len(steps)):
		return 1
	}
	for _, g := range groups {
		if turnedRound(g) {
			return 1
		}
	}
	return 0
}

// mirroredWhole reports whether a row with one repeat is the same from both ends as it is knit: what
// stands before the repeat, and at its beginning, is what stands at its end and after it.
func mirroredWhole(steps []Step) bool {
	i := slices.IndexFunc(steps, func(s Step) bool { return len(s.Steps) > 1 })
	if i < 0 {
		return false
	}
	var memory [longestMirrored]likeSteps
	knit := memory[:0]
	for _, part := range [...][]Step{steps[:i], steps[i].Steps, steps[i].Steps, steps[i+1:]} {
		for k := range part {
			s := &part[k]
			if s.Steps != nil || len(s.Times) > 1 || len(knit) == longestMirrored {
				return false
			}
			like, n := likeSteps{s.takes, s.leaves, s.stretch(), s.workings(0)}, len(knit)
			switch {
			case s.marksOnly():
			case n > 0 && like.plain() && knit[n-1].plain():
				knit[n-1].times += like.times
			default:
				knit = append(knit, like)
			}
		}
	}
	n := len(knit)
	for k := range n / 2 {
		if knit[k] != knit[n-1-k] {
			return false
		}
	}
	return n > 2
}

// longestMirrored is how many steps a row has at most that is looked at from both ends: nobody's is longer.
const longestMirrored = 128

// likeSteps are steps that take and leave as much as one another, one after the other.
type likeSteps struct {
	takes, leaves int16
	stretch       bool
	times         int
}

// plain reports whether they are stitches worked one by one.
func (s *likeSteps) plain() bool { return s.takes == 1 && s.leaves == 1 && !s.stretch }

// turnedRound reports whether a repeat is the same from both ends from one of its steps on.
func turnedRound(steps []Step) bool {
	if len(steps) > 40 {
		return false
	}
	for i := range steps {
		if sameFromBothEnds(steps, i, len(steps)) || sameFromBothEnds(steps, i, len(steps)-1) {
			return true // around a step, another stands alone at the other side of the ring
		}
	}
	return false
}

// sameFromBothEnds reports whether n steps from one on are, the first following on the last; markers
// count for nothing.
func sameFromBothEnds(steps []Step, from, n int) bool {
	for i, k := 0, n-1; i < k; {
		first, last := &steps[(from+i)%len(steps)], &steps[(from+k)%len(steps)]
		switch {
		case first.marksOnly():
			i++
		case last.marksOnly():
			k--
		case !facing(first, last):
			return false
		default:
			i, k = i+1, k-1
		}
	}
	return true
}

// marksOnly reports whether a step works no stitch.
func (s *Step) marksOnly() bool {
	return s.Steps == nil && !s.stretch() && s.takes == 0 && s.leaves == 0
}

// facing reports whether two steps are each other's mirror image, or alike in what they take
// and leave.
func facing(a, b *Step) bool {
	if len(a.Steps) != len(b.Steps) || !slices.Equal(a.Times, b.Times) || a.stretch() != b.stretch() || a.stretch() && a.Steps != nil {
		return false
	}
	if a.Steps != nil {
		return a.pass(0) == b.pass(0)
	}
	return a.takes == b.takes && a.leaves == b.leaves
}

// mirrored is the operation that stands for another at the other end of a row.
func mirrored(op stitch.Op) stitch.Op {
	if m, ok := mirrorOps[op]; ok {
		return m
	}
	return op
}

// roughness is how unevenly the numbers of the sizes grow.
func roughness(numbers []int) int {
	sum := 0
	for i := 2; i < len(numbers); i++ {
		bend := numbers[i] - 2*numbers[i-1] + numbers[i-2]
		sum += max(bend, -bend)
	}
	return sum
}

// alikeBeside reports whether the repeat of the row takes as many stitches as that of a row near
// it in the text.
func (e *rowEdits) alikeBeside() bool {
	own := repeatTaken(e.steps)
	if own == 0 {
		return false
	}
	for k := max(e.row-3, 0); k < min(e.row+4, len(e.piece.Lines)); k++ {
		if l := &e.piece.Lines[k]; k != e.row && l.info.kind == lineRow && repeatTaken(l.Steps) == own {
			return true
		}
	}
	return false
}

// repeatTaken is how many stitches the repeat to the end of a row takes, 0 if it has none or
// several.
func repeatTaken(steps []Step) int64 {
	taken := int64(0)
	for i := range steps {
		if s := &steps[i]; s.Steps != nil && !s.IntoOneStitch {
			if taken != 0 {
				return 0
			}
			taken = s.pass(0).takes
		}
	}
	return taken
}
