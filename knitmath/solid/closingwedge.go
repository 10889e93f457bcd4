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
	// end is how many stitches may be left.
	end int
}

// wedges lays so many stitches out.
func (q Closing) wedges(stitches int) *wedges {
	w := &wedges{paired: q.Paired, end: q.EndStitches, edge: q.EdgeStitches, each: make([]int, q.Wedges), grows: q.Uneven == UnevenLeftOver}
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
	if !w.paired && (slices.Max(w.each) < w.least() || w.nearlyGathered()) {
		return w.gather()
	}
	if w.grows && w.leftOver >= w.each[0] {
		w.each = append(w.each, w.each[0])
		w.leftOver -= w.each[0]
	}
	s := step{from: w.total(), row: w.row()}
	for i, n := range w.each {
		if n >= w.least() {
			s.plain = max(s.plain, n-2*w.takes())
			w.each[i] -= w.takes()
		}
	}
	s.to = w.total()
	return s
}

// nearlyGathered reports whether every wedge has a stitch or two, and one each would be gathered in the round after: then
// all are gathered at once, instead of a round that decreases here and there.
func (w *wedges) nearlyGathered() bool {
	all := len(w.each)
	return w.leftOver == 0 && slices.Max(w.each) == w.least() && slices.Min(w.each) == 1 && all > w.end
}

// row is the round that decreases in every wedge that is wide enough. Wedges of two sizes that come again but for a last few
// are a repeat, and those; of few stitches, whose decreases meet, they are counted.
func (w *wedges) row() stitch.Row {
	n, again := len(w.each), w.period()
	if again < n || n < 4 || slices.Min(w.each) <= w.least() {
		return w.counted()
	}
	for part := 2; part <= n/2; part++ {
		if slices.Equal(w.each[part:], w.each[:n-part]) {
			rest := n % part
			repeat, last := wedges{paired: w.paired, edge: w.edge, each: w.each[:n-rest]}, *w
			last.each = w.each[n-rest:]
			return stitch.RowOf(append(repeat.counted().Steps, last.counted().Steps...)...)
		}
	}
	return w.counted()
}

// counted is the round wedge by wedge: wedges alike are
// repeated, and so is what comes again among wedges of two sizes. A wedge is written apart only
// where its decrease goes on in those after it.
func (w *wedges) counted() stitch.Row {
	period := w.period()
	once := period == len(w.each) // else brackets would stand within brackets
	var steps []stitch.Step
	for i := 0; i < period; {
		alike := 1
		for i+alike < period && w.each[i+alike] == w.each[i] {
			alike++
		}
		for _, next := range repeated(alike, w.wedge(w.each[i])) {
			if last := len(steps) - 1; once && last >= 0 && next.Group == nil && steps[last].Group == nil && steps[last].Op == next.Op {
				steps[last].Count += next.Count // nobody counts the same decreases in two parts
				continue
			}
			steps = append(steps, next)
		}
		i += alike
	}
	if times := len(w.each) / period; times > 1 {
		steps = repeated(times, steps)
	}
	if w.leftOver > 0 {
		steps = append(steps, stitch.Do(stitch.Knit, w.leftOver))
	}
	return stitch.RowOf(steps...)
}

// period is after how many wedges their sizes come again.
func (w *wedges) period() int {
	n := len(w.each)
	for period := 1; period < n; period++ {
		if n%period == 0 && slices.Equal(w.each[period:], w.each[:n-period]) {
			return period
		}
	}
	return n
}

// repeated is steps so many times; a single operation has a count.
func repeated(times int, steps []stitch.Step) []stitch.Step {
	switch {
	case times == 1:
		return steps
	case len(steps) == 1 && steps[0].Group == nil:
		return []stitch.Step{stitch.Do(steps[0].Op, times*steps[0].Count)}
	case len(steps) == 1:
		return []stitch.Step{stitch.Repeat(times*steps[0].Times, steps[0].Group...)}
	}
	return []stitch.Step{stitch.Repeat(times, steps...)}
}

// takes is how many stitches a wedge loses in a round.
func (w *wedges) takes() int {
	if w.paired {
		return 2
	}
	return 1
}

// wedge is a wedge of n stitches decreased, or knit where it is too narrow. Of three without
// an edge the two decreases are one.
func (w *wedges) wedge(n int) []stitch.Step {
	steps := make([]stitch.Step, 0, 5)
	do := func(op stitch.Op, count int) {
		if count > 0 {
			steps = append(steps, stitch.Do(op, count))
		}
	}
	switch {
	case n < w.least():
		do(stitch.Knit, n)
	case w.paired && w.edge == 0 && n == 3:
		do(stitch.CDD, 1)
	case w.paired:
		do(stitch.Knit, w.edge)
		do(stitch.SSK, 1)
		do(stitch.Knit, n-4-2*w.edge)
		do(stitch.K2tog, 1)
		do(stitch.Knit, w.edge)
	default:
		do(stitch.Knit, n-2)
		do(stitch.K2tog, 1)
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
