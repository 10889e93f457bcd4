package schedule

import "slices"

// chosen is a form for all sizes.
type chosen struct {
	sum     price
	states  []state
	choices []choice
}

// A state is the intervals of the two runs in one size; the second is 0 where there is
// one run for all.
type state [2]int

// graded writes it out, without runs that no size has.
func (c chosen) graded() Graded {
	g := Graded{Effort: c.sum.effort, price: c.sum}
	var runs [2]GradedRun
	for i, d := range c.choices {
		g.Firsts = append(g.Firsts, d.first)
		for k := range runs {
			runs[k].EveryRows = append(runs[k].EveryRows, c.states[i][k])
			runs[k].Times = append(runs[k].Times, d.runs[k].times)
		}
	}
	for _, r := range runs {
		if slices.Max(r.Times) > 0 {
			g.Runs = append(g.Runs, r)
		}
	}
	if len(g.Runs) == 0 {
		g.Effort, g.price.effort = 0, 0
	}
	return g
}

// union are the intervals that any size tries, in order.
func union(all []sizeChoices) []int {
	var every []int
	for _, c := range all {
		for i := range c.alone {
			every = append(every, c.low+i)
		}
	}
	slices.Sort(every)
	return slices.Compact(every)
}

// ofOneRun is the cheapest form of one run.
func ofOneRun(all []sizeChoices) (chosen, bool) {
	return throughSizes(all, effortOfZero, func(c sizeChoices, show func(state, choice)) {
		for i, d := range c.alone {
			show(state{c.low + i}, d)
		}
	})
}

// ofTwoRuns is the cheapest form of two runs, those of the longer interval first in every
// size, or in none. A size has to work one of the two at least, so that one of them is
// its own.
func ofTwoRuns(all []sizeChoices, longFirst bool) (chosen, bool) {
	every := union(all)
	return throughSizes(all, 2*effortOfZero, func(c sizeChoices, show func(state, choice)) {
		for i, a := range every {
			for _, b := range every[i+1:] {
				if !c.own(a) && !c.own(b) {
					continue
				}
				if longFirst {
					show(state{b, a}, c.pair(b, a))
				} else {
					show(state{a, b}, c.pair(a, b))
				}
			}
		}
	})
}

// A way is the cheapest way to a state, from the way to the size before.
type way struct {
	state  state
	choice int // among those of the size that were shown
	sum    price
	before int
}

// throughSizes goes from size to size, by the cheapest way to each state. From the state
// before, either interval may change. The cheapest of those that keep both intervals,
// of those that keep the first or the second, and of all are enough to know what may
// come before. Sizes with a single thing go along at the price of their zeros.
func throughSizes(all []sizeChoices, zeros int, offer func(sizeChoices, func(state, choice))) (chosen, bool) {
	var sizes []int
	alone := price{}
	for i, c := range all {
		if c.none.ok {
			alone = alone.plus(price{zeros, c.none.price.off})
			continue
		}
		sizes = append(sizes, i)
	}
	ways, offered := make([][]way, len(sizes)), make([][]choice, len(sizes))
	for i, size := range sizes {
		var before cheapest
		if i > 0 {
			before = cheapestOf(ways[i-1])
		}
		offer(all[size], func(s state, d choice) {
			if !d.ok {
				return
			}
			w := way{state: s, choice: len(offered[i]), sum: d.price}
			if i > 0 {
				from, sum := before.to(ways[i-1], s)
				w.before, w.sum = from, w.sum.plus(sum)
			}
			ways[i], offered[i] = append(ways[i], w), append(offered[i], d)
		})
		if len(ways[i]) == 0 {
			return chosen{}, false
		}
	}
	c := chosen{alone, make([]state, len(all)), make([]choice, len(all))}
	if len(sizes) > 0 {
		c.back(sizes, ways, offered)
	}
	c.goAlong(all)
	return c, true
}

// cheapest are the cheapest ways to a size, by what they share with another.
type cheapest struct {
	same          map[state]int
	first, second map[int]int
	any           int
}

func cheapestOf(ways []way) cheapest {
	c := cheapest{make(map[state]int, len(ways)), map[int]int{}, map[int]int{}, 0}
	for k, w := range ways {
		c.same[w.state] = k
		for i, best := range [2]map[int]int{c.first, c.second} {
			if other, known := best[w.state[i]]; !known || w.sum.less(ways[other].sum) {
				best[w.state[i]] = k
			}
		}
		if w.sum.less(ways[c.any].sum) {
			c.any = k
		}
	}
	return c
}

// to is the cheapest way from which a state is reached, and what it has come to with
// the intervals that change.
func (c cheapest) to(ways []way, s state) (from int, sum price) {
	from = -1
	try := func(k int, known bool, changes int) {
		if !known {
			return
		}
		p := ways[k].sum
		p.effort += changes * effortOfChange
		if from < 0 || p.less(sum) {
			from, sum = k, p
		}
	}
	k, known := c.same[s]
	try(k, known, 0)
	k, known = c.first[s[0]]
	try(k, known, 1)
	k, known = c.second[s[1]]
	try(k, known, 1)
	try(c.any, true, 2)
	return from, sum
}

// back follows the cheapest way from the last size to the first.
func (c *chosen) back(sizes []int, ways [][]way, offered [][]choice) {
	last := len(sizes) - 1
	at := 0
	for k, w := range ways[last] {
		if w.sum.less(ways[last][at].sum) {
			at = k
		}
	}
	c.sum = c.sum.plus(ways[last][at].sum)
	for i := last; i >= 0; i-- {
		w := ways[i][at]
		c.states[sizes[i]], c.choices[sizes[i]] = w.state, offered[i][w.choice]
		at = w.before
	}
}

// goAlong gives sizes with a single thing the intervals of the size before, or of the
// first that has any.
func (c *chosen) goAlong(all []sizeChoices) {
	beside := state{1, 2} // where no size has any, nothing is written of it
	for i, d := range all {
		if !d.none.ok {
			beside = c.states[i]
			break
		}
	}
	for i, d := range all {
		if d.none.ok {
			c.states[i], c.choices[i] = beside, d.none
		}
		beside = c.states[i]
	}
}
