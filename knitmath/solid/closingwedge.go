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
	runs     []stitch.Run
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
	if w.paired {
		return 2*w.edge + 4
	}
	return 2
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
	for i, n := range w.each {
		switch {
		case n < w.least():
			s.runs = stitch.AppendRun(s.runs, stitch.Knit, n)
			continue
		case w.paired:
			s.plain = max(s.plain, n-4)
			s.runs = stitch.AppendRun(s.runs, stitch.Knit, w.edge)
			s.runs = stitch.AppendRun(s.runs, stitch.SSK, 1)
			s.runs = stitch.AppendRun(s.runs, stitch.Knit, n-4-2*w.edge)
			s.runs = stitch.AppendRun(s.runs, stitch.K2tog, 1)
			s.runs = stitch.AppendRun(s.runs, stitch.Knit, w.edge)
			w.each[i] -= 2
			continue
		}
		s.plain = max(s.plain, n-2)
		s.runs = stitch.AppendRun(s.runs, stitch.Knit, n-2)
		s.runs = stitch.AppendRun(s.runs, stitch.K2tog, 1)
		w.each[i]--
	}
	s.runs = stitch.AppendRun(s.runs, stitch.Knit, w.leftOver)
	s.to = w.total()
	return s
}

// gather knits all stitches together in pairs, when every wedge has one alone.
func (w *wedges) gather() step {
	all := w.total()
	s := step{from: all, to: all - all/2}
	s.runs = stitch.AppendRun(s.runs, stitch.K2tog, all/2)
	s.runs = stitch.AppendRun(s.runs, stitch.Knit, all%2)
	w.leftOver = 0
	w.each = slices.Repeat([]int{1}, s.to)
	return s
}
