package shaping

import "example.com/knitmath/knitmath/spread"

// mostInBlock is how many gaps a repeat may have: with more one counts gaps where
// one would rather count stitches. Own choice.
const mostInBlock = 4

// mostOver is how many stitches may be left over at the end of a round: they make its
// last gap longer, which stands beside the first and is seen. Common practice.
const mostOver = 2

// easiest finds the layout with the fewest items among those that depart by at most
// so many parts, and of these one of equal gaps, or else the one that departs least: equal gaps
// with the rest at the ends, two groups of gaps, repeats of up to four gaps with a few gaps
// over, repeats of equal gaps and one other, and if none of these is easy longer repeats. The ends of a flat row are alike, or one of
// them is a stitch longer.
func (s spacing) easiest(departure int) (best layout, ok bool) {
	f := layoutFinder{spacing: s, allowed: departure}
	n := s.k // the gaps that blocks cover
	if !s.round {
		n--
	}
	if n == 0 {
		f.ends(nil, 0)
		return f.best, f.found
	}
	around := s.plain() / s.k
	for gap := max(around-1, s.least()); gap <= around+1; gap++ {
		f.blocks[0] = f.equal(0, gap, n)
		f.ends(f.blocks[:1], gap*n)
	}
	if f.equalDo(n, around) {
		return f.best, true
	}
	for gap := max(around-1, s.least()); gap <= around; gap++ {
		f.groups(n, gap, gap+1)
		f.groups(n, gap+1, gap)
		f.nests(n, gap)
		// A bracket with so many gaps has an item for each, one for each change and one
		// for how often.
		for size := 2; size <= min(mostInBlock, n) && (!f.found || 2*size+1 < f.items); size++ {
			f.repeats(n, gap, size)
		}
	}
	for gap := max(around-1, s.least()); gap <= around && (!f.found || f.items > fewItems); gap++ {
		f.longRepeats(n, gap)
	}
	return f.best, f.found
}

// leastOfTwo is the fewest items of three gaps or more of two lengths, with stitches between all changes: of
// the one length a bracket of a change and stitches and of the other a change and stitches, or all of that in a
// bracket.
const leastOfTwo = 5

// bracketOfOne is how many items [k1, k2tog] again and again are.
const bracketOfOne = 3

// equalDo reports whether equal gaps were found that no round of two lengths can have fewer items than, n gaps being
// laid of about so many stitches. Of gaps of one stitch and of none there are two of none at the most, since no more
// stitches may be left over: they come to the items of the others.
func (f *layoutFinder) equalDo(n, around int) bool {
	if !f.round || !f.found {
		return false
	}
	return n > 2 && around > 1 && f.items < leastOfTwo || n > 2+mostOver && around == 1 && f.items <= bracketOfOne
}

// layoutFinder keeps the best layout seen so far.
type layoutFinder struct {
	spacing
	allowed int

	found      bool
	best       layout
	items, off int // items with what ends that are not alike cost

	// The memory that layouts are tried in: of many few are kept.
	gaps   [mostInLong]spread.GapRun
	extra  [1]spread.GapRun
	alike  [2][1]spread.GapRun
	blocks [2]block
	nest   [2][2]spread.GapRun

	// The memory of the best.
	keptBlocks []block
	keptGaps   []spread.GapRun
}

// equal is equal in the first memory there is for it, or in the second.
func (f *layoutFinder) equal(at, gap, times int) block {
	f.alike[at][0] = spread.GapRun{Stitches: gap, Times: 1}
	return block{gaps: f.alike[at][:], times: times}
}

// endRest is about how many stitches the two ends of a row take between them.
func (f *layoutFinder) endRest() int {
	if f.round {
		return 0
	}
	return f.plain() / f.k
}

// leastOver is how many stitches more than endRest are over at the least: in a round they can be no fewer.
func (f *layoutFinder) leastOver() int {
	if f.round {
		return 0
	}
	return -mostOver
}

// groups tries so many gaps of one length and the rest of another, with about a gap
// left for the two ends.
func (f *layoutFinder) groups(n, one, other int) {
	rest := f.endRest()
	for over := f.leastOver(); over <= mostOver; over++ {
		// one*m + other*(n-m) + rest + over = plain, with other = one +- 1
		m := (f.plain() - rest - over - other*n) / (one - other)
		if m > 0 && m < n {
			f.blocks = [2]block{f.equal(0, one, m), f.equal(1, other, n-m)}
			f.ends(f.blocks[:], one*m+other*(n-m))
		}
	}
}

// repeats tries every block of two neighbouring gaps, as often as it fits or once less,
// with what is over before or after it, or with its own beginning after it.
func (f *layoutFinder) repeats(n, gap, size int) {
	for longer := 1; longer < 1<<size-1; longer++ {
		if size == 4 && longer>>2 == longer&3 {
			continue // a block of two, twice
		}
		gaps, sum := f.gaps[:size], 0
		for i := range gaps {
			gaps[i] = spread.GapRun{Stitches: gap + longer>>i&1, Times: 1}
			sum += gaps[i].Stitches
		}
		for times := n / size; times > 0 && times >= n/size-1; times-- {
			f.over(block{gaps: gaps, times: times}, sum*times, n-times*size, gap)
		}
		if n%size == size-1 {
			f.closed(block{gaps: gaps, times: n / size}, sum*(n/size+1)-gaps[size-1].Stitches)
		}
	}
}

// closed tries a repeat of a flat row that ends with the change before its last gap, which is
// divided between the two ends of what is repeated: [k2tog, k1, k2tog] 30 times.
func (f *layoutFinder) closed(repeat block, sum int) {
	if f.round || repeat.times == 0 {
		return
	}
	f.blocks = [2]block{repeat, {gaps: repeat.gaps[:len(repeat.gaps)-1], times: 1}}
	f.ends(f.blocks[:], sum)
}

// over tries what can be made of the gaps that are over beside a repeat.
func (f *layoutFinder) over(repeat block, sum, over, gap int) {
	if over == 0 {
		f.blocks[0] = repeat
		f.ends(f.blocks[:1], sum)
		return
	}
	for extra := gap; extra <= gap+1; extra++ {
		f.extra[0] = spread.GapRun{Stitches: extra, Times: 1}
		f.pair(repeat, block{gaps: f.extra[:], times: over}, sum+extra*over)
	}
}

// pair tries two blocks with so many stitches, in either order.
func (f *layoutFinder) pair(one, other block, sum int) {
	f.blocks = [2]block{one, other}
	f.ends(f.blocks[:], sum)
	f.blocks = [2]block{other, one}
	f.ends(f.blocks[:], sum)
}

// ends tries what can be left at the two ends of blocks with so many stitches: alike, or
// one of them a stitch longer. A row that is centred looks the same from both sides, and its
// halves do when it is seamed. Common practice.
func (f *layoutFinder) ends(blocks []block, sum int) {
	rest := f.plain() - sum
	if rest < 0 {
		return
	}
	if f.round {
		if rest <= mostOver {
			f.try(layout{last: rest, blocks: blocks})
		}
		return
	}
	least := 0
	if f.edge == 0 {
		least = f.leastEnd()
	}
	if rest/2 < least {
		return
	}
	firsts := []int{rest / 2, rest - rest/2}
	if rest == 1 && f.plain() >= f.k { // [k1, k2tog] rather than [k2tog, k1]
		firsts = []int{1, 0}
	}
	f.try(layout{first: f.edge + firsts[0], last: f.edge + rest - firsts[0], blocks: blocks})
	if rest%2 == 1 {
		f.try(layout{first: f.edge + firsts[1], last: f.edge + rest - firsts[1], blocks: blocks})
	}
}

// leastEnd is the fewest stitches at an end of a flat row without edge stitches: one, where
// there is one for every gap and for both ends, so that no decrease lies in a seam. Common
// practice.
func (s spacing) leastEnd() int {
	if s.plain() > s.k {
		return 1
	}
	return s.least()
}

// crowded reports whether, flat, three changes follow one another though there is a stitch for every
// second gap.
func (f *layoutFinder) crowded(l layout) bool {
	if f.round || 2*f.plain() < f.k {
		return false
	}
	none := 0
	for _, b := range l.blocks {
		for range min(b.times, 2) {
			for _, g := range b.gaps {
				if g.Stitches > 0 {
					none = 0
					continue
				}
				if none += g.Times; none > 1 {
					return true
				}
			}
		}
	}
	return false
}
