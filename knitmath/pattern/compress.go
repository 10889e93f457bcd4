package pattern

import "example.com/knitmath/knitmath/stitch"

// compressor rewrites steps in the shortest honest way: stretches of them that
// are the same in all sizes go through stitch.Compress; the others stay. What is
// knit does not change.
type compressor struct {
	left int // runs that may still be compressed
}

// maxRuns bounds what is written out to be compressed in one text: some tens of
// milliseconds. Rows beyond it keep the repeats that they have. It counts runs
// of one operation, which are the same however they are written.
const maxRuns = 6_000

// runsFor is how many runs a text of so many bytes may have compressed: those of an
// ordinary row whatever its length, and beyond them fewer than a pattern writes out, so
// that a short text of repeats in repeats takes memory in proportion to itself.
func runsFor(bytes int) int { return min(500+bytes/2, maxRuns) }

// compressed rewrites steps that lie in so many groups. stitch.Compress nests two
// brackets deep; deeper in, steps stay as they are, so that the whole stays within
// stitch.MaxDepth.
func (c *compressor) compressed(steps []Step, depth int) []Step {
	var out []Step
	for i := 0; i < len(steps); {
		var all sequence
		j := i
		for ; j < len(steps) && depth+2 <= stitch.MaxDepth; j++ {
			more, ok := c.sequence(&steps[j])
			if more, ok = all.then(more, ok); !ok || more.runs > c.left {
				break
			}
			all = more
		}
		if j > i {
			runs := make([]stitch.Run, 0, all.runs)
			for k := i; k < j; k++ {
				runs = c.runs(runs, &steps[k])
			}
			c.left -= len(runs)
			short := FromRow(stitch.Compress(runs))
			if width(short) > width(steps[i:j]) { // it nested deeper already
				short = steps[i:j]
			}
			out = append(out, short...)
			i = j
			continue
		}
		s := steps[i]
		if s.Steps != nil && !s.IntoOneStitch {
			s.Steps = c.compressed(s.Steps, depth+1)
			s = simple(s)
		}
		out = append(out, s)
		i++
	}
	return out
}

// pruned leaves out what is worked in no size.
func pruned(steps []Step) []Step {
	out := make([]Step, 0, len(steps))
	for _, s := range steps {
		if single(s.Times, 0) {
			continue
		}
		if s.Steps != nil && !s.IntoOneStitch {
			if s.Steps = pruned(s.Steps); len(s.Steps) == 0 {
				continue
			}
			s = simple(s)
		}
		out = append(out, s)
	}
	return out
}

// width is the length of the text of steps.
func width(steps []Step) int {
	var w writer
	w.steps(steps, true)
	return w.Len()
}

// sequence is what steps come to as runs, without writing them out: how many there
// are, and those at its ends, which join with their neighbours.
type sequence struct {
	runs        int
	first, last stitch.Run
}

// sequence is false for a step that is not the same in all sizes and made of
// operations alone, or that has more runs than may be compressed.
func (c *compressor) sequence(s *Step) (sequence, bool) {
	if s.RemainingStitches != nil || s.BeforeMarkerStitches != nil || s.IntoOneStitch || s.Manner != 0 || s.Name != "" || len(s.Times) > 1 {
		return sequence{}, false
	}
	n := 1
	if s.Times != nil {
		n = s.Times[0]
	}
	if s.Operation != 0 {
		return sequenceOf(s.Operation, n)
	}
	var once sequence
	for i := range s.Steps {
		next, ok := c.sequence(&s.Steps[i])
		if once, ok = once.then(next, ok); !ok || once.runs > c.left {
			return sequence{}, false
		}
	}
	return once.times(n)
}

// sequenceOf is an operation worked n times.
func sequenceOf(op stitch.Op, n int) (sequence, bool) {
	if n < 1 {
		return sequence{}, true
	}
	run := stitch.Run{Op: op, Count: n}
	return sequence{1, run, run}, n <= stitch.MaxOperations
}

// then is a sequence with another after it, which is there if ok.
func (q sequence) then(next sequence, ok bool) (sequence, bool) {
	switch {
	case !ok || next.runs == 0:
		return q, ok
	case q.runs == 0:
		return next, true
	case q.last.Op != next.first.Op || q.last.Op.EndsRow():
		return sequence{q.runs + next.runs, q.first, next.last}, true
	}
	joined := stitch.Run{Op: q.last.Op, Count: q.last.Count + next.first.Count}
	if q.runs == 1 {
		q.first = joined
	}
	if next.runs == 1 {
		next.last = joined
	}
	return sequence{q.runs + next.runs - 1, q.first, next.last}, joined.Count <= stitch.MaxOperations
}

// times is a sequence worked n times; false if it is nothing.
func (q sequence) times(n int) (sequence, bool) {
	switch {
	case q.runs == 0:
		return q, false
	case q.runs == 1:
		return sequenceOf(q.first.Op, int(times(int64(q.first.Count), int64(n))))
	case n < 1:
		return sequence{}, true
	case n == 1:
		return q, true
	}
	twice, ok := q.then(q, true)
	twice.runs += (n - 2) * (twice.runs - q.runs)
	return twice, ok
}

// runs appends what a step comes to, which is a sequence.
func (c *compressor) runs(runs []stitch.Run, s *Step) []stitch.Run {
	n := 1
	if s.Times != nil {
		n = s.Times[0]
	}
	if s.Operation != 0 {
		return joinedTo(runs, s.Operation, n)
	}
	var once []stitch.Run
	for i := range s.Steps {
		once = c.runs(once, &s.Steps[i])
	}
	if len(once) == 1 {
		return joinedTo(runs, once[0].Op, n*once[0].Count)
	}
	for range n {
		for _, r := range once {
			runs = joinedTo(runs, r.Op, r.Count)
		}
	}
	return runs
}

// joinedTo appends a run, joined to the last one if that is of the same operation.
func joinedTo(runs []stitch.Run, op stitch.Op, n int) []stitch.Run {
	if k := len(runs); k > 0 && n > 0 && runs[k-1].Op == op && !op.EndsRow() {
		runs[k-1].Count += n
		return runs
	}
	if n < 1 {
		return runs
	}
	return append(runs, stitch.Run{Op: op, Count: n})
}

// fromStitch is a step of package stitch as one of this package, in all sizes.
func fromStitch(s stitch.Step) Step {
	switch {
	case s.Group != nil:
		group := make([]Step, len(s.Group))
		for i, in := range s.Group {
			group[i] = fromStitch(in)
		}
		return Step{Steps: group, Times: []int{s.Times}}
	case s.ToLast != nil:
		return Step{Operation: s.Op, RemainingStitches: []int{*s.ToLast}, takes: int16(s.Op.Takes()), leaves: int16(s.Op.Leaves())}
	}
	return Step{Operation: s.Op, Times: []int{s.Count}, takes: int16(s.Op.Takes()), leaves: int16(s.Op.Leaves())}
}

// FromRow is a row of package stitch as steps.
func FromRow(row stitch.Row) []Step {
	steps := make([]Step, len(row.Steps))
	for i, s := range row.Steps {
		steps[i] = fromStitch(s)
	}
	return steps
}

// Compress rewrites the rows in the shortest honest way.
func Compress(lines []Line) []Line { return compressed(lines, maxRuns) }

// compressed does, as far as so many runs go.
func compressed(lines []Line, runs int) []Line {
	out := make([]Line, len(lines))
	c := compressor{left: runs}
	for i, l := range lines {
		if l.Direction == "" && l.toldBySteps() {
			if some := pruned(l.Steps); len(some) > 0 {
				l.Steps = c.compressed(some, 0)
			}
		}
		out[i] = l
	}
	return out
}
