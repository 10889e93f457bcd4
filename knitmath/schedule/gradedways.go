package schedule

// A way is the cheapest way to a state, from the way to the size before.
type way struct {
	state  state
	choice int // among those of the size that were shown
	sum    price
	before int
}

// throughSizes goes from size to size, by the cheapest way to each state. From the state
// before, any interval may change. The cheapest of those that keep the same intervals,
// for every choice of them, are enough to know what may come before. Sizes with a single thing go along at the price of their zeros.
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
	c := chosen{sum: alone, states: make([]state, len(all)), choices: make([]choice, len(all))}
	if len(sizes) > 0 {
		c.back(sizes, ways, offered)
	}
	c.goAlong(all)
	return c, true
}

// cheapest are the cheapest ways to a size, by the intervals that they share with
// another: those of a mask of its places, the rest being 0.
type cheapest [1 << len(state{})]map[state]int

// kept is a state with the intervals of a mask alone.
func (s state) kept(mask int) state {
	for i := range s {
		if mask>>i&1 == 0 {
			s[i] = 0
		}
	}
	return s
}

func cheapestOf(ways []way) cheapest {
	var c cheapest
	for mask := range c {
		c[mask] = make(map[state]int)
		for k, w := range ways {
			kept := w.state.kept(mask)
			if other, known := c[mask][kept]; !known || w.sum.less(ways[other].sum) {
				c[mask][kept] = k
			}
		}
	}
	return c
}

// to is the cheapest way from which a state is reached, and what it has come to with
// the intervals that change.
func (c cheapest) to(ways []way, s state) (from int, sum price) {
	from = -1
	for mask := range c {
		k, known := c[mask][s.kept(mask)]
		if !known {
			continue
		}
		p := ways[k].sum
		for i := range s {
			if s[i] != ways[k].state[i] {
				p.effort += effortOfChange
			}
		}
		if from < 0 || p.less(sum) {
			from, sum = k, p
		}
	}
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
	beside := state{1, 2, 1} // where no size has any, nothing is written of it
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
