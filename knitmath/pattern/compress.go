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
const maxRuns = 10_000

// compressed rewrites steps that lie in so many groups. stitch.Compress nests two
// brackets deep; deeper in, steps stay as they are, so that the whole stays within
// stitch.MaxDepth.
func (c *compressor) compressed(steps []Step, depth int) []Step {
	var out []Step
	for i := 0; i < len(steps); {
		var runs []stitch.Run
		j := i
		for ; j < len(steps) && depth+2 <= stitch.MaxDepth; j++ {
			n := len(runs)
			var last stitch.Run
			if n > 0 {
				last = runs[n-1]
			}
			more, ok := c.runs(runs, &steps[j])
			if !ok { // as it was before
				if runs = more[:n]; n > 0 {
					runs[n-1] = last
				}
				break
			}
			runs = more
		}
		if j > i {
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

// runs appends what a step comes to, if it is the same in all sizes and made of
// operations alone. If it is not, some of it may have been appended, or joined to
// the last run.
func (c *compressor) runs(runs []stitch.Run, s *Step) ([]stitch.Run, bool) {
	if s.RemainingStitches != nil || s.IntoOneStitch || s.Manner != 0 || s.Name != "" || len(s.Times) > 1 {
		return runs, false
	}
	n := 1
	if s.Times != nil {
		n = s.Times[0]
	}
	if s.Operation != 0 {
		return c.append(runs, s.Operation, n)
	}
	var once []stitch.Run
	for i := range s.Steps {
		var ok bool
		if once, ok = c.runs(once, &s.Steps[i]); !ok {
			return runs, false
		}
	}
	if len(once) == 1 {
		return c.append(runs, once[0].Op, int(times(int64(once[0].Count), int64(n))))
	}
	ok := len(once) > 0
	for range n {
		for _, r := range once {
			if runs, ok = c.append(runs, r.Op, r.Count); !ok {
				return runs, false
			}
		}
	}
	return runs, ok
}

// append adds a run, joined to the last one if that is of the same operation.
func (c *compressor) append(runs []stitch.Run, op stitch.Op, n int) ([]stitch.Run, bool) {
	if n < 1 {
		return runs, true
	}
	if k := len(runs); k > 0 && runs[k-1].Op == op && !op.EndsRow() {
		if n += runs[k-1].Count; n > stitch.MaxOperations {
			return runs, false
		}
		runs[k-1].Count = n
		return runs, true
	}
	if n > stitch.MaxOperations || len(runs) >= c.left {
		return runs, false
	}
	return append(runs, stitch.Run{Op: op, Count: n}), true
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
func Compress(lines []Line) []Line {
	out := make([]Line, len(lines))
	c := compressor{left: maxRuns}
	for i, l := range lines {
		if l.Direction == "" {
			if some := pruned(l.Steps); len(some) > 0 {
				l.Steps = c.compressed(some, 0)
			}
		}
		out[i] = l
	}
	return out
}
