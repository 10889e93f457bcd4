package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// Of several changes that would do, the likelier makes a row the same from both ends, as most
// rows of shaping and of lace are, or makes the numbers of a list of sizes grow more evenly.

// balanced reports whether a row is the same from both ends, or a repeat of it is, wherever it
// is taken to begin.
func balanced(steps []Step) bool {
	var groups [][]Step
	for i := range steps {
		if s := &steps[i]; len(s.Steps) > 3 {
			groups = append(groups, s.Steps)
		}
	}
	if len(steps) > 1 && sameFromBothEnds(steps, 0, len(steps)) {
		return true
	}
	for _, g := range groups {
		if turnedRound(g) {
			return true
		}
	}
	return false
}

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
	if len(a.Steps) != len(b.Steps) || !slices.Equal(a.Times, b.Times) || a.stretch() || b.stretch() {
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
