package shaping

import "example.com/knitmath/knitmath/stitch"

// worthAlike is how many items a flat row may have more so that not one of its ends alone is a
// change: [k2tog, k1, k2tog] 30 times rather than [[k2tog] twice, k1] 30 times. Own choice.
const worthAlike = 2

// asGood reports whether the best so far has as few items and lies as near.
func (f *layoutFinder) asGood(items, off int) bool {
	return f.found && f.items == items && off >= f.off
}

func (f *layoutFinder) try(l layout) {
	least := f.leastItems(l)
	if f.found && f.items < least || f.crowded(l) {
		return
	}
	off := f.departure(l)
	if off > f.allowed || f.asGood(least, off) {
		return // too far off, or no better were it written in the fewest items
	}
	items := least
	if !f.round || l.joins() {
		items = f.itemsOf(l)
	}
	if f.found && (items > f.items || items == f.items && (off >= f.off || !f.round && f.best.equal() && !l.equal())) {
		return
	}
	f.found, f.items, f.off = true, items, off
	f.keep(l)
}

// keep keeps a layout, which shares nothing with those that are tried after it.
func (f *layoutFinder) keep(l layout) {
	f.keptBlocks, f.keptGaps = append(f.keptBlocks[:0], l.blocks...), f.keptGaps[:0]
	for i, b := range l.blocks {
		first := len(f.keptGaps)
		f.keptGaps = append(f.keptGaps, b.gaps...)
		f.keptBlocks[i].gaps = f.keptGaps[first:len(f.keptGaps):len(f.keptGaps)]
	}
	f.best, f.best.blocks = l, f.keptBlocks
}

// itemsOf is how many items a layout has when it is written, and as many more as other forms of it
// are worth.
func (f *layoutFinder) itemsOf(l layout) int {
	room := stepRooms.Get().(*stepRoom)
	room.used = 0
	s := f.spacing
	s.room = room
	items := stitch.RowOf(s.steps(l)...).Items()
	stepRooms.Put(room)
	if f.unlike(l) {
		items += worthAlike
	}
	if len(l.blocks) > 0 && len(l.blocks[0].gaps) > mostInBlock || len(l.blocks) > 1 && len(l.blocks[1].gaps) > mostInBlock {
		items += worthFlat
	}
	return items
}

// unlike reports whether only one end of a flat row begins right after its edge, though there
// is room at both.
func (f *layoutFinder) unlike(l layout) bool {
	return !f.round && f.order != GapSpreadMirrored && l.first != l.last && min(l.first, l.last) == f.edge && 2*f.plain() >= f.k
}
