package pattern

import "slices"

// Where nothing that is known of a line mends a mistake, some number at it or before it is another than
// was meant: on each of the needles, of a cast-on within a row, of an earlier row that claims nothing.

const (
	anyBack  = 12 // so many lines are looked back
	anyTried = 60 // so many numbers are tried at most
)

// anyNumber are other numbers in the lines up to a mistake, those nearest first: by as many stitches as
// it is off, by half of them, which both edges have, and by one, as of passes.
func (c *corrector) anyNumber(f *Finding, i int) []candidate {
	var out []candidate
	told := c.told(f)
	for k := i; k >= 0 && k > i-anyBack && len(out) < anyTried && (k == i || !c.rightAfter(k, told)); k-- {
		region := c.whole(k)
		if length := int(region.end - region.start); length > longestTwinned || !c.pay(1+length/20) {
			break
		}
		for _, list := range c.lists(c.spotsIn(region)) {
			if len(list) == 1 && len(told.SizeNumbers) < c.sizesFor(&c.piece.Lines[i]) {
				continue // it would be wrong in the other sizes
			}
			for _, each := range [...]func(size, difference int) (int, bool){entire(1), entire(-1), half(1), half(-1), by(1), by(-1)} {
				out = append(out, c.offBy(told, list, each)...)
			}
		}
	}
	return out[:min(len(out), anyTried)]
}

// rightAfter reports whether a line claims the count that it comes to, in all sizes of a finding: what
// is wrong after it is not wrong before.
func (c *corrector) rightAfter(k int, f *Finding) bool {
	claimed := c.piece.Lines[k].ClaimedStitches
	return len(claimed) > 0 && !slices.ContainsFunc(f.SizeNumbers, func(size int) bool {
		return at(claimed, size-1) != c.worked.Lines[k].EndStitches[size-1]
	})
}

func by(n int) func(size, difference int) (int, bool) {
	return func(_, _ int) (int, bool) { return n, true }
}

// whole is a line up to the next.
func (c *corrector) whole(i int) span {
	region := c.piece.Lines[i].info.at
	region.end = int32(len(c.piece.source))
	if i+1 < len(c.piece.Lines) {
		region.end = max(region.start, c.piece.Lines[i+1].info.at.start)
	}
	return region
}

// told is a finding of which it is said in which sizes it is, and by how many stitches it is off: by
// none where that is not known.
func (c *corrector) told(f *Finding) *Finding {
	q := *f
	if q.SizeNumbers = c.sizesOf(f); len(q.DifferenceStitches) != len(q.SizeNumbers) {
		q.DifferenceStitches = make([]int, len(q.SizeNumbers))
	}
	return &q
}
