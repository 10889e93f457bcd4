package shaping

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// mostInBlock is how many gaps a repeat may have: with more one counts gaps where
// one would rather count stitches. Own choice.
const mostInBlock = 4

// mostOver is how many stitches may be left over at the end of a round: they make its
// last gap longer, which stands beside the first and is seen. Common practice.
const mostOver = 2

// easiest finds the layout with the fewest items among those that depart by at most
// so many parts, and of these the one that departs least: equal gaps with the rest at
// the ends, two groups of gaps, repeats of up to four gaps with a few gaps over, and
// repeats of equal gaps and one other.
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
		f.ends([]block{equal(gap, n)}, gap*n)
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
	return f.best, f.found
}

// layoutFinder keeps the best layout seen so far.
type layoutFinder struct {
	spacing
	allowed int

	found      bool
	best       layout
	items, off int

	// The memory that layouts are tried in: of many few are kept.
	gaps   [mostInBlock]spread.GapRun
	extra  [1]spread.GapRun
	blocks [2]block
	nest   [2][2]spread.GapRun
}

// endRest is about how many stitches the two ends of a row take between them.
func (f *layoutFinder) endRest() int {
	if f.round {
		return 0
	}
	return f.plain() / f.k
}

// groups tries so many gaps of one length and the rest of another, with about a gap
// left for the two ends.
func (f *layoutFinder) groups(n, one, other int) {
	rest := f.endRest()
	for over := -2; over <= 2; over++ {
		// one*m + other*(n-m) + rest + over = plain, with other = one +- 1
		m := (f.plain() - rest - over - other*n) / (one - other)
		if m > 0 && m < n {
			f.ends([]block{equal(one, m), equal(other, n-m)}, one*m+other*(n-m))
		}
	}
}

// repeats tries every block of two neighbouring gaps, as often as it fits or once less,
// with what is over before or after it.
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
			f.over(block{gaps, times}, sum*times, n-times*size, gap)
		}
	}
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
		f.pair(repeat, block{f.extra[:], over}, sum+extra*over)
	}
}

// pair tries two blocks with so many stitches, in either order.
func (f *layoutFinder) pair(one, other block, sum int) {
	f.blocks = [2]block{one, other}
	f.ends(f.blocks[:], sum)
	f.blocks = [2]block{other, one}
	f.ends(f.blocks[:], sum)
}

// ends tries what can be left at the two ends of blocks with so many stitches: alike,
// or one of them like the gap beside it.
func (f *layoutFinder) ends(blocks []block, sum int) {
	rest := f.plain() - sum
	if rest < 0 {
		return
	}
	if f.round {
		if rest <= mostOver {
			f.try(layout{0, rest, blocks})
		}
		return
	}
	firsts := []int{rest / 2}
	if len(blocks) > 0 {
		firsts = append(firsts, blocks[0].first(), rest-blocks[len(blocks)-1].last())
	}
	outer := 0
	if f.edge == 0 {
		outer = f.least()
	}
	for _, first := range firsts {
		if last := rest - first; first >= outer && last >= outer {
			f.try(layout{f.edge + first, f.edge + last, blocks})
		}
	}
}

// centres reports whether the two ends must be alike: of increases that are worked into a
// stitch, flat, each leaves a mark that is seen, so that a row is centred though it has
// an item more. Decreases and increases in a strand are not. Common practice.
func (s spacing) centres() bool { return !s.round && s.op.Net() > 0 && s.op.Takes() > 0 }

func (f *layoutFinder) try(l layout) {
	if f.found && f.items < l.leastItems() || f.centres() && measure.Abs(l.first-l.last) > 1 {
		return
	}
	off := f.departure(l)
	if off > f.allowed {
		return
	}
	items := stitch.RowOf(f.steps(l)...).Items()
	if f.found && (items > f.items || items == f.items && off >= f.off) {
		return
	}
	f.found, f.best, f.items, f.off = true, l.kept(), items, off
}
