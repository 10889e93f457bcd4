package curve

// least is the departure of the nearest plan. It is looked for within half a stitch,
// and where there is none within twice as much, and so on.
func (p *planner) least() (int64, bool) {
	for within := int64(5e5); within <= MaxDeparture*1e6; within *= 2 {
		p.allow(within)
		if off, ok := p.leastWithin(); ok {
			return off, true
		}
	}
	return 0, false
}

// unreached is the departure of a place that no plan leads to.
const unreached = -1

// leastWithin is the least greatest departure of a plan, if it is no more than what is
// allowed: row by row, for every number of stitches that may be lost after it.
func (p *planner) leastWithin() (int64, bool) {
	// A group takes two rows where both edges have it, so that three rows are open.
	open := &p.space.open
	for i := range open {
		open[i] = ofLength(open[i], p.Stitches+1)
		for n := range open[i] {
			open[i][n] = unreached
		}
	}
	before, after, last := open[0], open[1], open[2]
	before[0] = 0
	low, reached := 0, 0 // with fewer than low it has waited too long, with more than reached it lies too far in
	for row := 1; row <= p.Rows; row++ {
		later, from := after, low
		if p.edges == EdgesBoth {
			later = last
		}
		for low < p.Stitches && p.behind(low, row-1) {
			low++
		}
		for reached < p.Stitches && !p.ahead(reached+1, row-1) {
			reached++
		}
		for n := from; n <= reached; n++ {
			off := before[n]
			if off == unreached {
				continue
			}
			before[n] = unreached
			if n < low {
				continue
			}
			reach(after, n, off)
			foot := p.off(n, row-1)
			if foot > p.allowed {
				continue // ahead: later, perhaps
			}
			if p.singles[row] {
				p.tryLeast(row, n, 1, p.most, false, foot, off, after)
			}
			if p.groups[row] {
				p.tryLeast(row, n, max(p.smallest, low-n), p.widest, true, foot, off, later)
			}
		}
		before, after, last = after, last, before
	}
	off := before[p.Stitches]
	return off, off != unreached
}

// tryLeast takes steps of all sizes in a row.
func (p *planner) tryLeast(row, before, smallest, largest int, group bool, foot, off int64, to []int64) {
	for n := smallest; n <= min(largest, p.Stitches-before); n++ {
		top := p.off(before+n, row)
		if top > p.allowed && p.over(before+n, row) {
			return
		}
		if step, _ := p.corners(row, before, n, group, foot, top); step <= p.allowed {
			reach(to, before+n, max(off, step))
		}
	}
}

// reach keeps the lesser departure.
func reach(to []int64, n int, off int64) {
	if to[n] == unreached || off < to[n] {
		to[n] = off
	}
}
