package pattern

import (
	"slices"
	"sort"

	"example.com/knitmath/knitmath/stitch"
)

// rowEdits finds other numbers and stitches with which a row fits and comes to what it
// claims. It counts, on a copy of the row; what it finds is tried afterwards.
type rowEdits struct {
	*corrector
	row   int
	steps []Step // the copy
	each  int    // what working it out once is charged, in steps
	bad   []int  // sizes in which something is wrong, from 0
	known []int  // sizes in which the stitches before the row are known
	found []candidate
	blind bool     // it cannot be counted: all changes are tried
	off   *Finding // of a row that is worked to markers: its count is off, with net changes of it
	net   []int64

	tried     []Step // memory for the row with other steps
	spellings map[stitch.Op]string
}

// rowEdits is nil for a row whose finding does not show on the stitches that were before
// its first working.
func (c *corrector) rowEdits(f *Finding, i int) *rowEdits {
	facts := factsOf(&c.piece.Lines[i])
	if !c.pay(1 + facts.stepCount/stepsCopied) {
		return nil
	}
	e := &rowEdits{corrector: c, row: i, steps: copied(c.piece.Lines[i].Steps), each: 1 + facts.stepCount/stepsCounted}
	for size, on := range c.worked.Lines[i].StartStitches {
		if on > 0 {
			e.known = append(e.known, size)
		}
	}
	for _, number := range f.SizeNumbers {
		e.bad = append(e.bad, number-1)
	}
	if len(f.SizeNumbers) == 0 {
		e.bad = slices.Clone(e.known)
	}
	if len(e.steps) == 0 {
		return nil
	}
	if facts.toMarker { // what they come to only trying shows, but for by how much they change the count
		e.blind = !e.changes(f)
		return e
	}
	for _, size := range e.known {
		if e.fits(size) == slices.Contains(e.bad, size) {
			return nil
		}
	}
	for _, size := range e.bad {
		if !slices.Contains(e.known, size) {
			return nil
		}
	}
	return e
}

// changes reports whether a finding is that a row changes the count by as much as all its steps do, of
// which none is worked as often as there is room.
func (e *rowEdits) changes(f *Finding) bool {
	if f.Reason != ReasonClaim || len(f.DifferenceStitches) != len(f.SizeNumbers) || len(f.SizeNumbers) == 0 {
		return false
	}
	for i := range e.steps {
		if s := &e.steps[i]; s.Steps != nil && s.stretch() {
			return false
		}
	}
	e.off, e.net, e.known = f, make([]int64, e.piece.SizeCount), e.bad
	for size := range e.net {
		e.net[size] = netChange(e.steps, size)
	}
	return true
}

// netChange is by how much steps change the count.
func netChange(steps []Step, size int) int64 {
	t := fixed(steps, size)
	return t.leaves - t.takes
}

// How many steps of a row are copied, and counted, in the time of a step of the price.
const (
	stepsCopied  = 10
	stepsCounted = 50
)

// copied is steps whose numbers may be written to.
func copied(steps []Step) []Step {
	out := slices.Clone(steps)
	for i := range out {
		s := &out[i]
		s.Times, s.RemainingStitches = slices.Clone(s.Times), slices.Clone(s.RemainingStitches)
		if s.Steps != nil {
			s.Steps = copied(s.Steps)
		}
	}
	return out
}

// gap is by how many stitches the row is off in a size, and whether it comes out.
func (e *rowEdits) gap(size int) (int64, bool) {
	e.pay(e.each)
	if e.off != nil {
		off := netChange(e.steps, size) - e.net[size] - int64(e.off.DifferenceStitches[slices.Index(e.off.SizeNumbers, size+1)])
		return off, off == 0
	}
	l := &e.piece.Lines[e.row]
	p := profileOf(e.steps, size)
	before := hand{left: int64(e.worked.Lines[e.row].StartStitches[size])}
	o := p.work(before.left)
	if o.reason != "" {
		return o.unworked + o.short - o.missing, false
	}
	end := before.after(&p, o).total()
	switch {
	case len(l.ClaimedStitches) > 0 && at(l.ClaimedStitches, size) >= 0:
		end -= int64(at(l.ClaimedStitches, size))
	case len(l.ClaimedChangeStitches) > 0:
		end -= before.total() + int64(at(l.ClaimedChangeStitches, size))
	default:
		return 0, true
	}
	return end, end == 0
}

func (e *rowEdits) fits(size int) bool {
	_, ok := e.gap(size)
	return ok
}

// slot is a list of numbers in the copy of a row.
type slot struct {
	numbers []int
	step    *Step // of the copy
	stretch bool
	end     bool // it stands at the end of the row
	top     bool // it stands in no repeat
}

func (e *rowEdits) candidates() []candidate {
	if e.blind {
		e.oneStitch()
		e.likelyFirst()
		return e.found
	}
	var repeats, others []slot
	slots(e.steps, true, func(s slot) {
		if s.step.Steps != nil && !s.stretch {
			repeats = append(repeats, s)
		} else {
			others = append(others, s)
		}
	})
	slices.Reverse(others)
	sort.SliceStable(others, func(i, k int) bool { return others[i].top && !others[k].top })
	for _, s := range append(repeats, others...) {
		if e.spare <= 0 || e.ctx.Err() != nil {
			return e.found
		}
		e.number(s, 1)
		e.number(s, -1)
	}
	e.stitches(e.steps)
	e.oneStitch()
	e.more()
	e.likelyFirst()
	return e.found
}

// likelyFirst puts those first that make the row the same from both ends.
func (e *rowEdits) likelyFirst() {
	sort.SliceStable(e.found, func(i, k int) bool { return e.found[i].balanced > e.found[k].balanced })
}

// slots tells of all numbers of steps, in the order of the row.
func slots(steps []Step, top bool, tell func(slot)) {
	for i := range steps {
		s := &steps[i]
		slots(s.Steps, false, tell)
		last := top && i == len(steps)-1
		if len(s.Times) > 0 {
			tell(slot{s.Times, s, false, last, top})
		}
		if len(s.RemainingStitches) > 0 {
			tell(slot{s.RemainingStitches, s, true, last, top})
		}
	}
}

// nearby is how far from a number others are tried one by one.
const nearby = 6

// number looks for a greater or a smaller number, or such in the sizes that are wrong, in one
// place.
func (e *rowEdits) number(s slot, way int) {
	spots := e.spots(s)
	if spots == nil {
		return
	}
	was := slices.Clone(s.numbers)
	shift := spots[0].value - was[0] // "3 more times" are 4
	ok := true
	if len(s.numbers) == 1 {
		ok = e.solve(s, 0, e.known, way)
	} else {
		for _, size := range e.bad {
			ok = ok && e.solve(s, size, []int{size}, way)
		}
	}
	if !ok {
		copy(s.numbers, was)
		return
	}
	now, level, alike := slices.Clone(s.numbers), balanced(e.steps), e.alikeBeside()
	copy(s.numbers, was)
	r := renumbering{list: spots}
	for k := range spots {
		if now[k]+shift < 0 || !r.set(&spots[k], now[k]+shift) {
			return
		}
	}
	where := ""
	if s.end && !s.stretch && s.step.Steps == nil {
		where = " at the end"
	}
	for _, q := range r.candidate(e.piece.source, e.row, where) {
		q.balanced, q.alike = level, alike
		e.found = append(e.found, q)
	}
}

// solve looks for a greater or a smaller number with which the row comes out in sizes: near the
// one that is there, or where the straight line through two of them meets.
func (e *rowEdits) solve(s slot, k int, sizes []int, way int) bool {
	was := s.numbers[k]
	try := func(n int) bool {
		if n < 0 || n == 0 && !s.stretch || n > MaxNumber || e.spare <= 0 {
			return false
		}
		s.numbers[k] = n
		for _, size := range sizes {
			if !e.fits(size) {
				return false
			}
		}
		return true
	}
	for by := range nearby {
		if try(was + way*(by+1)) {
			return true
		}
	}
	s.numbers[k] = was
	first, _ := e.gap(sizes[0])
	s.numbers[k] = was + 1
	second, _ := e.gap(sizes[0])
	if slope := second - first; slope != 0 && first%slope == 0 && (first/slope < 0) == (way > 0) && try(was-int(first/slope)) {
		return true
	}
	s.numbers[k] = was
	return false
}

// spots are where the numbers of a slot stand in the text.
func (e *rowEdits) spots(s slot) []spot {
	region := s.step.at
	if n := len(s.step.Steps); n > 0 {
		inner := s.step.Steps[n-1].at
		if inner.end <= region.start || inner.end > region.end {
			return nil
		}
		region = after(e.piece.source, inner, region)
	}
	if region.end <= region.start {
		return nil
	}
	all := e.spotsIn(region)
	if found := run(all, s.numbers, s.step.Steps != nil); found != nil {
		return found
	}
	if s.step.Steps == nil || s.stretch {
		return nil
	}
	more := slices.Clone(s.numbers)
	for i := range more {
		more[i]--
	}
	return run(all, more, true)
}

// after is what of a region comes after a place in it, line and column too.
func after(source string, in, region span) span {
	out := span{start: in.end, end: region.end, line: in.line, column: in.column}
	for _, r := range source[in.start:in.end] {
		if out.column++; r == '\n' {
			out.line, out.column = out.line+1, 1
		}
	}
	return out
}
