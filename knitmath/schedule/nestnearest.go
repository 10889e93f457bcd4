package schedule

import "slices"

// Nearest is the choice of rows whose greatest departure is least, and of those that
// depart as little the one whose departures have the least sum of squares.
//
// From row to row it keeps, for all numbers of times that lie near enough to the
// lines, the least departure there has been. If that turns out to be more than the
// nearness looked at, it looks further off: what lies beyond could be no better.
//
// Source: own derivation, by dynamic programming.
func (n Nest) Nearest() Nested {
	for reach := 1; ; reach *= 2 {
		w := walk{Nest: n, reach: reach, most: reach * n.Rows}
		least, ok := w.least(func(so, off int) int { return max(so, off) })
		if !ok {
			continue
		}
		w.most = least
		w.least(func(so, off int) int { return so + off*off })
		rows, levels := w.back()
		return Nested{rows, levels, n.Apart, least}
	}
}

// walk goes through the rows with every count of things that lies within reach of
// the lines. A state is those counts less what the lines give, cut down to whole
// times, each from -reach to reach.
type walk struct {
	Nest
	reach, most int     // in times, and the greatest departure in parts
	states      int     // how many there are
	levels      []uint8 // what was done in a row on the way to a state after it
}

// unseen is the cost of a state that no choice leads to.
const unseen = -1

// least is the least cost of a choice that departs by no more than most.
func (w *walk) least(add func(so, off int) int) (cost int, ok bool) {
	w.states = 1
	for range w.Times {
		w.states *= 2*w.reach + 1
	}
	w.levels = make([]uint8, w.slots()*w.states)
	now, next := make([]int, w.states), make([]int, w.states)
	for s := range now {
		now[s] = unseen
	}
	counts := make([]int, len(w.Times))
	now[w.state(0, counts)] = 0
	before := 0
	for slot := range w.slots() {
		row := w.First + slot*w.Every
		for s := range next {
			next[s] = unseen
		}
		for s, so := range now {
			if so != unseen {
				w.counts(before, s, counts)
				w.step(slot, so, counts, next, add)
			}
		}
		now, next, before = next, now, row
	}
	cost = now[w.state(w.Rows, w.Times)]
	return cost, cost != unseen
}

// step does nothing in a row, or the commonest thing, or it and the next, and so on.
func (w *walk) step(slot, so int, counts, next []int, add func(so, off int) int) {
	row := w.First + slot*w.Every
	for level := 0; ; level++ {
		if to := w.state(row, counts); to != unseen && (next[to] == unseen || so < next[to]) {
			next[to], w.levels[slot*w.states+to] = so, uint8(level)
		}
		if level == len(counts) || counts[level] == w.Times[level] {
			return
		}
		off := w.off(level, counts[level], row)
		if off > w.most {
			return
		}
		so = add(so, off)
		counts[level]++
	}
}

// back is the choice of least cost, from its end.
func (w *walk) back() (rows, levels []int) {
	counts := slices.Clone(w.Times)
	for slot := w.slots() - 1; slot >= 0; slot-- {
		row := w.First + slot*w.Every
		level := int(w.levels[slot*w.states+w.state(row, counts)])
		if level > 0 {
			rows, levels = append(rows, row), append(levels, level)
		}
		for t := range level {
			counts[t]--
		}
	}
	slices.Reverse(rows)
	slices.Reverse(levels)
	return rows, levels
}

// state is the number of a state after a row, or unseen if it is out of reach.
func (w *walk) state(row int, counts []int) int {
	s := 0
	for t, c := range counts {
		away := c - w.Times[t]*row/w.Rows + w.reach
		if away < 0 || away > 2*w.reach {
			return unseen
		}
		s = s*(2*w.reach+1) + away
	}
	return s
}

// counts are the times that a state after a row stands for.
func (w *walk) counts(row, s int, counts []int) {
	for t := len(counts) - 1; t >= 0; t-- {
		counts[t] = w.Times[t]*row/w.Rows + s%(2*w.reach+1) - w.reach
		s /= 2*w.reach + 1
	}
}
