package schedule

// near is how far beyond the two intervals that a line lies between others are tried:
// a run of one further off drifts from the line so fast that it comes a few times at
// most.
const near = 1

// intervals are the least and the greatest interval tried for a line, in places.
func (l Line) intervals() (low, high int) {
	low = l.Step / l.Unit
	return max(low-near, 1), low + 1 + near
}

// try shows schedules of a form on the places, with their first place and how far they
// depart: of each interval alone, and of each pair those that come once, and of the
// others the nearest.
func (l Line) try(kind GradedForm, show func(runs form, first, off int)) {
	n := l.Times - 1
	lay := func(f form) (off int, ok bool) {
		first, off, ok := l.lay(f)
		if ok {
			show(f, first, off)
		}
		return off, ok
	}
	if n == 0 {
		lay(form{})
		return
	}
	low, high := l.intervals()
	for a := low; a <= high; a++ {
		lay(form{{a, 0, n}})
		for b := low; b <= high && n > 1 && !kind.alternates(); b++ {
			if a != b && a < b == (kind == ShortFirst) {
				l.split(a, b, lay)
			}
		}
	}
	if kind.alternates() {
		l.tryTurns(kind, lay)
	}
}

// A price is what a schedule costs and, of equal ones, how far it departs.
type price struct {
	effort int
	off    int // in millionths of a thing, which all sizes have alike
}

func (p price) less(q price) bool {
	return p.effort < q.effort || p.effort == q.effort && p.off < q.off
}
func (p price) plus(q price) price {
	return price{p.effort + q.effort, p.off + q.off}
}

// A choice is a schedule of a size.
type choice struct {
	ok    bool
	runs  [2]turn
	first int
	price price
}

// take keeps the better one.
func (c *choice) take(d choice) {
	if d.ok && (!c.ok || d.price.less(c.price)) {
		*c = d
	}
}

// sizeChoices are the best schedules of a size: of each interval alone, and of each pair.
type sizeChoices struct {
	low   int // the first interval tried
	alone []choice
	pairs [][]choice
	none  choice // for a thing that has none after it
	// turns are those of which a run alternates, by its two intervals and the interval
	// beside it, 0 where there is none; nil where none may.
	turns map[state]choice
}

// choices finds them.
func (s Size) choices(kind GradedForm) sizeChoices {
	low, high := s.Line.intervals()
	c := sizeChoices{low: low, alone: make([]choice, high-low+1), pairs: make([][]choice, high-low+1)}
	for i := range c.pairs {
		c.pairs[i] = make([]choice, high-low+1)
	}
	if kind.alternates() {
		c.turns = map[state]choice{}
	}
	s.Line.try(kind, func(runs form, first, off int) {
		if off <= s.Departure {
			c.take(choice{true, runs, first, price{effortOf(runs), s.Line.millionths(runs, off)}})
		}
	})
	return c
}

// take keeps a schedule if it is the best of its kind.
func (c *sizeChoices) take(d choice) {
	a, b := d.runs[0], d.runs[1]
	if b.second > 0 {
		a, b = b, a
	}
	switch {
	case a.times == 0:
		c.none.take(d)
	case a.second > 0:
		s := state{a.every, a.second, b.every}
		best := c.turns[s]
		best.take(d)
		c.turns[s] = best
	case b.times == 0:
		c.alone[a.every-c.low].take(d)
	default:
		c.pairs[a.every-c.low][b.every-c.low].take(d)
	}
}

// millionths is how far runs depart, in millionths of a thing, with a quarter of a thing
// more for odd intervals where even ones are liked better.
func (l Line) millionths(runs [2]turn, off int) int {
	n := int(int64(off) * 1_000_000 / int64(l.Step))
	if l.Even && form(runs).odd() {
		n += 250_000
	}
	return n
}

// effortOf is the effort of the runs that are worked, and of those that come once.
func effortOf(runs [2]turn) int {
	effort := form(runs).effort()
	for _, t := range runs {
		if t.times == 1 {
			effort += effortOfOnce
		}
	}
	return effort
}

// own reports whether the size tries an interval.
func (c sizeChoices) own(every int) bool { return every >= c.low && every < c.low+len(c.alone) }

// single is the schedule of one interval.
func (c sizeChoices) single(every int) choice {
	if !c.own(every) {
		return choice{}
	}
	return c.alone[every-c.low]
}

// pair is the cheapest schedule of a size where the runs have these intervals: both,
// or one of them and 0 times the other.
func (c sizeChoices) pair(a, b int) choice {
	var best choice
	if c.own(a) && c.own(b) {
		best = c.pairs[a-c.low][b-c.low]
	}
	first, second := c.single(a), c.single(b)
	first.price.effort += effortOfZero
	second.price.effort += effortOfZero
	second.runs[0], second.runs[1] = turn{every: a}, second.runs[0]
	best.take(first)
	best.take(second)
	return best
}
