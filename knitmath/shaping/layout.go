package shaping

import "example.com/knitmath/knitmath/spread"

// A layout is one way to lay the gaps of a spacing: blocks of gaps that repeat, and
// what is left at the two ends. Flat, a change stands between any two gaps; in the
// round one stands after each gap of a block, and nothing is before the first.
type layout struct {
	first, last int // edges included
	blocks      []block
}

// A block is gaps in succession, worked so many times.
type block struct {
	gaps  []spread.GapRun
	times int
	long  *longText // of a longer repeat
}

// single reports whether a block is one gap again and again.
func (b block) single() bool { return len(b.gaps) == 1 && b.gaps[0].Times == 1 }

// equal reports whether all gaps of a layout are alike.
func (l layout) equal() bool { return len(l.blocks) == 1 && l.blocks[0].single() }

// first and last are the gaps at its ends.
func (b block) first() int { return b.gaps[0].Stitches }
func (b block) last() int  { return b.gaps[len(b.gaps)-1].Stitches }

// equal are so many gaps of one length.
func equal(gap, times int) block {
	return block{gaps: []spread.GapRun{{Stitches: gap, Times: 1}}, times: times}
}

// appendBlock adds a block, and joins equal gaps with those before.
func appendBlock(blocks []block, b block) []block {
	if last := len(blocks) - 1; last >= 0 && b.single() && blocks[last].single() && blocks[last].first() == b.first() {
		joined := append([]block(nil), blocks...)
		joined[last].times += b.times
		return joined
	}
	return append(blocks[:len(blocks):len(blocks)], b)
}

// departure is the greatest distance, in stitches, between the unchanged stitches
// before a change and what there would be if all gaps were equal, half a gap at each
// end of a flat row. A round may begin anywhere: there the distances are measured
// from the middle between the greatest and the least. It is in parts of which a
// stitch has 2k.
func (s spacing) departure(l layout) int {
	r := reach{half: s.plain(), whole: 2 * s.k}
	if !s.round {
		r.change(l.first - s.edge)
	}
	for _, b := range l.blocks {
		// From one time to the next a block drifts alike, so that its farthest is in the
		// first time or the last.
		r.block(b.gaps)
		if b.times > 1 {
			r.pass(b.gaps, b.times-2)
			r.block(b.gaps)
		}
	}
	return s.farthest(r)
}

// farthest is how far the farthest change lies from its place.
func (s spacing) farthest(r reach) int {
	if s.round {
		return (r.high - r.low + 1) / 2
	}
	return max(r.high, -r.low)
}

// reach follows the changes along a row, and how far they lie from their places.
type reach struct {
	half, whole int // parts of half an equal gap, and of a stitch
	off         int // of the last change
	low, high   int
	begun       bool
}

// change goes one gap on to the next change.
func (r *reach) change(gap int) {
	r.off += gap*r.whole - 2*r.half
	if !r.begun {
		r.off += r.half // the first lies half a gap from the edge
		r.low, r.high, r.begun = r.off, r.off, true
	}
	r.low, r.high = min(r.low, r.off), max(r.high, r.off)
}

// run goes on by equal gaps, along which a row drifts evenly.
func (r *reach) run(g spread.GapRun) {
	r.change(g.Stitches)
	if g.Times > 1 {
		r.pass([]spread.GapRun{g}, 1)
		r.off -= 2 * (g.Stitches*r.whole - 2*r.half)
		r.change(g.Stitches)
	}
}

func (r *reach) block(gaps []spread.GapRun) {
	for _, g := range gaps {
		r.run(g)
	}
}

// pass goes on by blocks that are not looked at.
func (r *reach) pass(gaps []spread.GapRun, times int) {
	for _, g := range gaps {
		r.off += times * g.Times * (g.Stitches*r.whole - 2*r.half)
	}
}

// leastDeparture is that of the most even spacing. In the round running totals are rounded by so many parts of
// a whole stitch as 2k and twice the stitches have in common, or by any multiple of that.
func (s spacing) leastDeparture() int {
	plain := s.plain()
	if s.round {
		return s.k - spread.Gcd(s.k, plain)
	}
	r := reach{half: plain, whole: 2 * s.k}
	first, last := s.ends(plain)
	r.change(first)
	n := s.k - 1
	plain -= first + last
	for i := range n {
		r.change(spread.Share(i, n, plain))
	}
	return s.farthest(r)
}

// plain is how many stitches are left as they are.
func (s spacing) plain() int { return s.start - 2*s.edge - s.k*s.op.Takes() }

// departureOf is the same of a spacing that is laid. A mirrored round, whose first
// change follows on half a gap and whose last is followed by the other, is taken from
// that change on, which changes no distance.
func (s spacing) departureOf(o EvenSpacing) int {
	r := reach{half: s.plain(), whole: 2 * s.k}
	if !s.round || o.split() {
		r.change(o.FirstGapStitches - s.edge)
	}
	r.block(o.Gaps)
	return s.farthest(r)
}

// split reports whether the beginning of a round, mirrored, splits a gap: then a
// change stands after what is before the first gap, and there is a gap less.
func (o EvenSpacing) split() bool {
	gaps := 0
	for _, g := range o.Gaps {
		gaps += g.Times
	}
	return o.round && gaps < o.ChangeCount
}

// runs are the gaps of a layout, one after the other.
func (l layout) runs() []spread.GapRun {
	var runs []spread.GapRun
	for _, b := range l.blocks {
		if b.single() {
			runs = spread.AppendGap(runs, b.first(), b.times)
			continue
		}
		for range b.times {
			for _, g := range b.gaps {
				runs = spread.AppendGap(runs, g.Stitches, g.Times)
			}
		}
	}
	return runs
}
