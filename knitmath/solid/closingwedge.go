package solid

import (
	"slices"

	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// step is one decrease round before it has a number.
type step struct {
	from, to int
	plain    int // the most stitches between two decreases
	row      stitch.Row
}

// wedges are the parts of the tube as they are on the needles.
type wedges struct {
	paired bool
	edge   int
	each   []int
	// leftOver stitches stand after the last wedge; grows says that they become a wedge as
	// soon as there are as many as it has.
	leftOver int
	grows    bool
}

// wedges lays so many stitches out.
func (q Closing) wedges(stitches int) *wedges {
	w := &wedges{paired: q.Paired, edge: q.EdgeStitches, each: make([]int, q.Wedges), grows: q.Uneven == UnevenLeftOver}
	if w.grows {
		w.leftOver = stitches % q.Wedges
	}
	for i := range w.each {
		w.each[i] = spread.Share(i, q.Wedges, stitches-w.leftOver)
	}
	return w
}

// sizes are those of the wedges, and what is left over.
func (w *wedges) sizes() []int {
	all := slices.Clone(w.each)
	if w.leftOver > 0 {
		all = append(all, w.leftOver)
	}
	return all
}

func (w *wedges) total() int {
	sum := w.leftOver
	for _, n := range w.each {
		sum += n
	}
	return sum
}

// least is the smallest wedge that can be decreased.
func (w *wedges) least() int {
	switch {
	case !w.paired:
		return 2
	case w.edge == 0:
		return 3
	}
	return 2*w.edge + 4
}

// narrows reports whether there is anything to decrease still: a wedge, or stitches that
// are knit together in pairs.
func (w *wedges) narrows() bool {
	if w.paired {
		return slices.Max(w.each) >= w.least()
	}
	return w.total() >= 2
}

// decrease works one round.
func (w *wedges) decrease() step {
	if !w.paired && slices.Max(w.each) < w.least() {
		return w.gather()
	}
	if w.grows && w.leftOver >= w.each[0] {
		w.each = append(w.each, w.each[0])
		w.leftOver -= w.each[0]
	}
	s := step{from: w.total()}
	var runs []stitch.Run
	first := w.each[0]
	alike := first >= w.least()
	for i, n := range w.each {
		alike = alike && n == first
		if n < w.least() {
			runs = stitch.AppendRun(runs, stitch.Knit, n)
			continue
		}
		wedge := w.wedge(n)
		s.plain = max(s.plain, n-w.takes()*2)
		for _, r := range wedge {
			runs = stitch.AppendRun(runs, r.Op, r.Count)
		}
		w.each[i] -= w.takes()
	}
	runs = stitch.AppendRun(runs, stitch.Knit, w.leftOver)
	if s.row = stitch.RowOf(w.again(w.wedge(first))...); !alike {
		s.row = stitch.Compress(runs)
	}
	s.to = w.total()
	return s
}

// takes is how many stitches a wedge loses in a round.
func (w *wedges) takes() int {
	if w.paired {
		return 2
	}
	return 1
}

// wedge is a wedge of n stitches decreased. Of three without an edge the two decreases are
// one.
func (w *wedges) wedge(n int) []stitch.Run {
	switch {
	case w.paired && w.edge == 0 && n == 3:
		return []stitch.Run{{Op: stitch.CDD, Count: 1}}
	case w.paired:
		return []stitch.Run{{Op: stitch.Knit, Count: w.edge}, {Op: stitch.SSK, Count: 1}, {Op: stitch.Knit, Count: n - 4 - 2*w.edge},
			{Op: stitch.K2tog, Count: 1}, {Op: stitch.Knit, Count: w.edge}}
	}
	return []stitch.Run{{Op: stitch.Knit, Count: n - 2}, {Op: stitch.K2tog, Count: 1}}
}

// again is a round of wedges that are all alike, and what is left over.
func (w *wedges) again(wedge []stitch.Run) []stitch.Step {
	var one []stitch.Step
	for _, r := range wedge {
		if r.Count > 0 {
			one = append(one, stitch.Do(r.Op, r.Count))
		}
	}
	steps := one
	switch {
	case len(one) == 1:
		steps = []stitch.Step{stitch.Do(one[0].Op, len(w.each))}
	case len(w.each) > 1:
		steps = []stitch.Step{stitch.Repeat(len(w.each), one...)}
	}
	if w.leftOver > 0 {
		steps = append(steps, stitch.Do(stitch.Knit, w.leftOver))
	}
	return steps
}

// gather knits all stitches together in pairs, when every wedge has one alone.
func (w *wedges) gather() step {
	all := w.total()
	s := step{from: all, to: all - all/2}
	s.row = stitch.RowOf(stitch.Do(stitch.K2tog, all/2))
	if all%2 == 1 {
		s.row.Steps = append(s.row.Steps, stitch.Do(stitch.Knit, 1))
	}
	w.leftOver = 0
	w.each = slices.Repeat([]int{1}, s.to)
	return s
}
