package pattern

// rowsTold are another count of rows in place of one that is told, and another number of times that
// rows are repeated, with which it would be right.
func (c *corrector) rowsTold(f *Finding, i int) []candidate {
	for k := range c.piece.rows {
		if q := &c.piece.rows[k]; q.at.start == f.at.start {
			return append(c.rowsMeant(f, q), c.timesMeant(f, q, i)...)
		}
	}
	return nil
}

// expectedNumbers are the numbers that a label should have, after the row before it, in place of its
// own.
func (c *corrector) expectedNumbers(i int, spots []spot) []candidate {
	l := &c.piece.Lines[i]
	if !l.numbered() || len(spots) == 0 || len(l.info.ranges) != 1 {
		return nil
	}
	want := []int32{l.info.ranges[0].first, l.info.ranges[0].last} // as it was taken for
	if first := int32(1); want[0] == int32(spots[0].value) {
		if i > 0 && c.piece.Lines[i-1].numbered() {
			ranges := c.piece.Lines[i-1].info.ranges
			first = ranges[len(ranges)-1].last + 1
		}
		want[0] = first
	}
	var e renumbering
	for k := range spots[:min(len(spots), len(want))] {
		if !e.set(&spots[k], int(want[k])) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

// sizesOf are the sizes that a finding is about, from 1.
func (c *corrector) sizesOf(f *Finding) []int {
	if len(f.SizeNumbers) > 0 {
		return f.SizeNumbers
	}
	all := make([]int, c.piece.SizeCount)
	for size := range all {
		all[size] = size + 1
	}
	return all
}

// rowsMeant is the count that is likeliest in each size.
func (c *corrector) rowsMeant(f *Finding, q *rowsClaim) []candidate {
	spots := run(c.spotsIn(q.at), q.rows, false)
	if spots == nil {
		return nil
	}
	e, from := renumbering{list: spots}, c.countedFrom(q)
	for _, number := range c.sizesOf(f) {
		s := &spots[0]
		if len(spots) > 1 {
			s = &spots[number-1]
		}
		if counts := c.rowCounts(q, number-1); from >= len(counts) || !e.set(s, counts[from]) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

func (c *corrector) rowCounts(q *rowsClaim, size int) []int {
	return c.worked.rowsMeant[rowsSaid{q.at.start, size}]
}

// countedFrom is the beginning, among those that rows may be counted from, from which the text
// counts: the one that is right in most sizes, and of several the one that is least off.
func (c *corrector) countedFrom(q *rowsClaim) int {
	best, most, least := 0, -1, 0
	for from := range c.rowCounts(q, 0) {
		right, off := 0, 0
		for size := range c.piece.SizeCount {
			counts := c.rowCounts(q, size)
			if from >= len(counts) {
				continue
			}
			d := counts[from] - at(q.rows, size)
			if off += max(d, -d); d == 0 {
				right++
			}
		}
		if right > most || right == most && off < least {
			best, most, least = from, right, off
		}
	}
	return best
}

// timesMeant is how often the rows of a repeat would have to be worked.
func (c *corrector) timesMeant(f *Finding, q *rowsClaim, i int) []candidate {
	info := &c.piece.Lines[i].info
	spots := c.spotsIn(c.before(i))
	times := c.timesOf(&c.piece.Lines[i], spots)
	if len(info.counts) == 1 {
		times = run(spots, info.counts, true)
	}
	if info.kind != lineRepeat || times == nil {
		return nil
	}
	sizes, from := *f, c.countedFrom(q)
	sizes.SizeNumbers = c.sizesOf(f)
	sizes.DifferenceStitches = make([]int, len(sizes.SizeNumbers))
	return c.offBy(&sizes, times, func(size, _ int) (int, bool) {
		pass := repeatedRows(info, size)
		n := at(info.counts, size)
		if n < 1 || pass < n {
			return 0, false
		}
		pass /= n
		counts := c.rowCounts(q, size)
		if from >= len(counts) {
			return 0, false
		}
		return quotient(at(q.rows, size)-counts[from], pass)
	})
}
