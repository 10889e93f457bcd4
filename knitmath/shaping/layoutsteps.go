package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// steps writes a layout in the way that has fewest items: every change with the gap after it,
// with the gap before it, or in repeats that have half a gap at either end, or a gap at one.
func (s spacing) steps(l layout) []stitch.Step {
	best := s.open(l)
	if s.round || !s.closes(l) {
		return best
	}
	between := l.blocks[0].last()
	for _, before := range []int{between / 2, between - between/2, between, 0} {
		after := between - before
		outside, over := l.first-before, l.last-after
		if outside < 0 || over < 0 || before > 0 && outside > 0 && (outside != s.edge || over != s.edge) {
			continue // stitches before a repeat that begins with some are told as one
		}
		if after > 0 && before > 0 && over > max(1, s.edge) {
			continue // nor is more than one told beside stitches that a repeat ends with
		}
		if steps := s.closed(l, before); stitch.RowOf(steps...).Items() < stitch.RowOf(best...).Items() {
			best = steps
		}
	}
	return best
}

// closes reports whether a flat layout is a repeat, and the same again without its last gap:
// then it is a whole number of times what lies between two such gaps, with a part of one
// at either end.
func (s spacing) closes(l layout) bool {
	if s.round || len(l.blocks) == 0 || l.blocks[0].gaps[len(l.blocks[0].gaps)-1].Times != 1 {
		return false
	}
	inner := l.blocks[0].gaps[:len(l.blocks[0].gaps)-1]
	if len(l.blocks) == 1 {
		return len(inner) == 0 && l.blocks[0].first() > 0
	}
	return len(l.blocks) == 2 && len(inner) > 0 && l.blocks[1].times == 1 && slices.Equal(l.blocks[1].gaps, inner)
}

// closed writes a layout that closes, with so many stitches before the first change of what is
// repeated.
func (s spacing) closed(l layout, before int) []stitch.Step {
	repeat := l.blocks[0]
	last := len(repeat.gaps) - 1
	once := layout{first: before, last: repeat.gaps[last].Stitches - before}
	for _, g := range repeat.gaps[:last] {
		once.blocks = append(once.blocks, equal(g.Stitches, g.Times))
	}
	var steps []stitch.Step
	if over := l.first - once.first; over > 0 {
		steps = append(steps, stitch.Do(s.plainOp(), over))
	}
	steps = append(steps, stitch.Repeat(repeat.times+1, s.open(once)...))
	if over := l.last - once.last; over > 0 {
		steps = append(steps, stitch.Do(s.plainOp(), over))
	}
	return steps
}

// open writes every change with the gap after it, or with the gap before it.
func (s spacing) open(l layout) []stitch.Step {
	before := l.blocks
	if !s.round {
		before = appendBlock(make([]block, 0, len(l.blocks)+1), equal(l.first, 1))
		for _, b := range l.blocks {
			before = appendBlock(before, b)
		}
	}
	gapFirst := s.appendLayout(s.newSteps(len(before)+1), before, gapBefore)
	if l.last > 0 {
		gapFirst = append(gapFirst, stitch.Do(s.plainOp(), l.last))
	}
	gapFirst = joined(gapFirst)
	if s.round {
		return gapFirst
	}
	var changeFirst []stitch.Step
	if l.first > 0 {
		changeFirst = append(changeFirst, stitch.Do(s.plainOp(), l.first))
	}
	changeFirst = joined(s.appendLayout(changeFirst, appendBlock(l.blocks, equal(l.last, 1)), gapAfter))
	// Of two that are as easy a row rather begins with its repeat.
	inRepeat := len(l.blocks) == 1 && l.blocks[0].single() && l.blocks[0].first() == l.first
	if more := stitch.RowOf(changeFirst...).Items() - stitch.RowOf(gapFirst...).Items(); more > 0 || more == 0 && inRepeat {
		return gapFirst
	}
	return changeFirst
}

// A side is where the gap of a change is told: before it or after.
type side int

const (
	gapBefore side = iota
	gapAfter
)

// appendLayout writes blocks as repeats.
func (s spacing) appendLayout(steps []stitch.Step, blocks []block, at side) []stitch.Step {
	for _, b := range blocks {
		if b.single() {
			steps = s.appendRepeat(steps, spread.GapRun{Stitches: b.first(), Times: b.times}, at)
			continue
		}
		once := s.once(b, at)
		if b.times > 1 {
			steps = append(steps, stitch.Repeat(b.times, once...))
		} else {
			steps = append(steps, once...)
		}
	}
	return steps
}

// once is a block worked once.
func (s spacing) once(b block, at side) []stitch.Step {
	if b.long != nil && b.long[at] != nil {
		return b.long[at]
	}
	if b.long != nil {
		s.room = nil // it is kept
	}
	once := s.newSteps(2 * len(b.gaps))
	for _, g := range b.gaps {
		once = s.appendRepeat(once, g, at)
	}
	if once = joined(once); b.long != nil {
		once = bracketed(once)
		b.long[at] = once
	}
	return once
}
