package shaping

import "example.com/knitmath/knitmath/spread"

// leastItems is how many items the layout is written in, or fewer, known without writing it:
// it is exact where the layout neither joins nor closes. Most layouts that are tried have too many and are never written.
func (s spacing) leastItems(l layout) int {
	if s.closes(l) {
		return 1 + l.blocks[0].leastClosed() // one bracket may hold all of it
	}
	items := 0
	for _, b := range l.blocks {
		items += b.leastItems()
	}
	if s.round {
		return items + plainItems(l.last)
	}
	if len(l.blocks) == 0 {
		return items + plainItems(l.first) + 1 + plainItems(l.last)
	}
	// The one end is told with the gaps, the other beside them.
	before := plainItems(l.last) + items + asOneMore(l.first, l.blocks[0].first(), l.blocks[0])
	end := l.blocks[len(l.blocks)-1]
	after := plainItems(l.first) + items + asOneMore(l.last, end.last(), end)
	return min(before, after)
}

// plainItems is how many items stitches beside one another are that are all alike.
func plainItems(stitches int) int { return min(stitches, 1) }

// asOneMore is how many items a change with one more gap is beside a gap at the end of a block: a gap
// like all those of the block only makes them more.
func asOneMore(gap, beside int, b block) int {
	switch {
	case gap == 0 && beside == 0:
		return 0 // the two changes may be joined
	case gap == 0:
		return 1
	case b.single() && beside == gap && b.times > 1:
		return 0
	case b.single() && beside == gap:
		return 1 // how often
	}
	return 2
}

// joins reports whether steps may be told as one, or in brackets of their own: somewhere no stitch lies between
// two changes, or a repeat is a longer one.
func (l layout) joins() bool {
	for _, b := range l.blocks {
		if len(b.gaps) > mostInBlock || b.touch() {
			return true
		}
	}
	return false
}

// touch reports whether somewhere in a block no stitch lies between two changes.
func (b block) touch() bool {
	for _, g := range b.gaps {
		if g.Stitches == 0 {
			return true
		}
	}
	return false
}

// leastItems is the same of a block.
func (b block) leastItems() int {
	if b.single() {
		return b.leastOnce() + plainItems(b.first()*(b.times-1))
	}
	return b.leastOnce() + plainItems(b.times-1)
}

// leastOnce is the same of a block worked once.
func (b block) leastOnce() int {
	joins := b.touch()
	switch {
	case len(b.gaps) > mostInBlock && joins:
		return 2 // stitches, and changes in succession
	case len(b.gaps) > mostInBlock:
		return leastInLong
	}
	items := 0
	for _, g := range b.gaps {
		items += gapItems(g)
	}
	if joins {
		items-- // a change beside the block may be joined with it
	}
	return items
}

// leastClosed is the same of a block whose last gap is divided between its two ends. There equal gaps in
// succession are told as one run.
func (b block) leastClosed() int {
	var inner []spread.GapRun
	for _, g := range b.gaps[:len(b.gaps)-1] {
		inner = spread.AppendGap(inner, g.Stitches, g.Times)
	}
	if len(inner) == 0 {
		return gapItems(b.gaps[0])
	}
	return block{gaps: inner}.leastOnce()
}

// gapItems is how many items equal gaps are, each with its change. A change without stitches may be
// joined with that before it.
func gapItems(g spread.GapRun) int {
	return 1 + plainItems(g.Stitches) + plainItems(g.Stitches*(g.Times-1))
}
