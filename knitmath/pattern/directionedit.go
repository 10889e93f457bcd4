package pattern

import (
	"slices"
)

// directionEdits are other numbers in a direction, by what they are of: how often something is
// worked, on how many rows, how many stitches at each of them, up to how many.
func (c *corrector) directionEdits(f *Finding, i int) []candidate {
	info := &c.piece.Lines[i].info
	spots := c.spotsIn(c.before(i))
	var out []candidate
	if len(f.DifferenceStitches) != len(f.SizeNumbers) || len(f.SizeNumbers) == 0 {
		return c.untilEdits(f, info, spots)
	}
	for k := range info.parts {
		s := &info.parts[k]
		for _, numbers := range [][]int{s.times, s.more} {
			out = append(out, c.partTimes(f, i, numbers, spots, k)...)
		}
	}
	if info.kind == lineOff {
		out = c.graftedAlike(f, spots)
	}
	for k := range info.edges {
		q := &info.edges[k]
		rows := func(size, d int) (int, bool) { return quotient(c.sign(i)*d, at(q.rows, size)) }
		each := func(size, d int) (int, bool) { return quotient(c.sign(i)*d, at(q.stitches, size)) }
		if list := run(spots, q.stitches, false); list != nil {
			out = append(out, c.offBy(f, list, rows)...)
		}
		if list := run(spots, q.rows, true); list != nil {
			out = append(out, c.offBy(f, list, each)...)
		}
	}
	return out
}

// graftedAlike are other numbers of two sets that are grafted and have as many stitches each: so they stay.
func (c *corrector) graftedAlike(f *Finding, spots []spot) []candidate {
	if len(spots) != 2 || c.piece.SizeCount != 1 || spots[0].value != spots[1].value {
		return nil
	}
	var out []candidate
	for _, sign := range [...]int{-1, 1} {
		more, ok := half(sign)(0, f.DifferenceStitches[0])
		if n := spots[0].value + more; ok && n > 0 {
			e := renumbering{list: spots[:1], spots: []*spot{&spots[0], &spots[1]}, numbers: []int{n, n}}
			out = append(out, e.candidate(c.piece.source, -1, "")...)
		}
	}
	return out
}

// before is a line up to its claim.
func (c *corrector) before(i int) span {
	info := &c.piece.Lines[i].info
	region := info.at
	if info.claimAt.start > region.start && info.claimAt.start < region.end {
		region.end = info.claimAt.start
	}
	return region
}

// sign is 1 where more of a direction makes more stitches, -1 where it makes fewer.
func (c *corrector) sign(i int) int {
	w := &c.worked.Lines[i]
	for size := range w.StartStitches {
		if w.StartStitches[size] >= 0 && w.EndStitches[size] >= 0 && w.EndStitches[size] < w.StartStitches[size] {
			return -1
		}
	}
	return 1
}

func quotient(a, b int) (int, bool) {
	if b == 0 || a == 0 || a%b != 0 {
		return 0, false
	}
	return a / b, true
}

// partTimes are other numbers of how often rows are shaped, by what the shaping changes each
// time. Where a direction has one schedule that is what it changed in all.
func (c *corrector) partTimes(f *Finding, i int, numbers []int, spots []spot, part int) []candidate {
	info, w := &c.piece.Lines[i].info, &c.worked.Lines[i]
	list := run(spots, numbers, false)
	if len(numbers) == 0 || list == nil {
		return nil
	}
	return c.offBy(f, list, func(size, d int) (int, bool) {
		from, to := w.StartStitches[size], w.EndStitches[size]
		if from < 0 || to < 0 {
			return 0, false
		}
		times := 0
		for k := range info.parts {
			times += shapedTimes(&info.parts[k], size)
		}
		each, ok := quotient(to-from, times)
		if !ok {
			each = 2 * c.sign(i)
		}
		return quotient(d, each)
	})
}

// shapedTimes is how many rows a schedule shapes, as far as it says.
func shapedTimes(s *shapings, size int) int {
	n := 0
	if s.times != nil {
		n += at(s.times, size)
	}
	if s.more != nil {
		n += at(s.more, size)
	}
	return n
}

// untilEdits are counts near the one up to which rows are worked, where they never come to it.
func (c *corrector) untilEdits(f *Finding, info *lineInfo, spots []spot) []candidate {
	lists := [][]int{info.until}
	for k := range info.parts {
		lists = append(lists, info.parts[k].until)
	}
	var out []candidate
	for _, until := range lists {
		list := run(spots, until, true)
		if len(until) == 0 || list == nil {
			continue
		}
		for _, by := range [...]int{-1, 1, -2, 2, -3, 3} {
			e := renumbering{list: list}
			ok := true
			for k := range list {
				if len(list) == 1 || len(f.SizeNumbers) == 0 || slices.Contains(f.SizeNumbers, k+1) {
					ok = ok && list[k].value+by > 0 && e.set(&list[k], list[k].value+by)
				}
			}
			if ok {
				out = append(out, e.candidate(c.piece.source, -1, "")...)
			}
		}
	}
	return out
}

// workedBefore is the line whose work a claim is about: the one that has it, or the one before
// where its own works nothing.
func (c *corrector) workedBefore(i int) int {
	for k := i; k >= 0 && k > i-4; k-- {
		switch c.piece.Lines[k].info.kind {
		case lineJoin, linePassed:
		default:
			return k
		}
	}
	return i
}

// saidAgain tells which of two counts of a size a later line claims: 1 for the claimed one, -1
// for the other, 0 where none does soon.
func (c *corrector) saidAgain(i, size, claimed, worked int) int {
	for k := i + 1; k < len(c.piece.Lines) && k < i+10; k++ {
		l := &c.piece.Lines[k]
		if len(l.ClaimedStitches) == 0 || c.worked.Lines[k].StartStitches[size] >= 0 && l.info.kind != lineUnread {
			continue // what is worked has been compared
		}
		switch at(l.ClaimedStitches, size) {
		case claimed:
			return 1
		case worked:
			return -1
		}
		return 0
	}
	return 0
}
