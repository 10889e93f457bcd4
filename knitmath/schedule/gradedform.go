package schedule

import "slices"

// A GradedForm is which runs a schedule for several sizes has, and in which order.
type GradedForm int

// The forms.
const (
	// ShortFirst is one run of equal intervals, or two, the shorter interval first in
	// all sizes.
	ShortFirst GradedForm = iota
	// LongFirst is the same with the longer interval first.
	LongFirst
	// AlternatingFirst is a run of two intervals in alternation, and after it, if any
	// size needs it, a run of one of the two.
	AlternatingFirst
	// AlternatingLast has the run that alternates last.
	AlternatingLast
)

func (f GradedForm) alternates() bool { return f == AlternatingFirst || f == AlternatingLast }

// chosen is a form for all sizes.
type chosen struct {
	sum     price
	states  []state
	choices []choice
	kind    GradedForm
}

// A state is the intervals of the runs in one size: of both runs, the second 0 where
// there is one run for all; or of the run that alternates, and of the run beside it, 0
// where there is none.
type state [3]int

// graded writes it out, without runs that no size has.
func (c chosen) graded() Graded {
	g := Graded{Effort: c.sum.effort, price: c.sum, Firsts: make([]int, len(c.choices))}
	var runs [2]GradedRun
	for i, d := range c.choices {
		g.Firsts[i] = d.first
		s := c.states[i]
		for k := range runs {
			runs[k].EveryRows = append(runs[k].EveryRows, s[k])
			runs[k].Times = append(runs[k].Times, d.runs[k].times)
		}
		if c.kind.alternates() {
			turns := &runs[c.kind-AlternatingFirst]
			turns.EveryRows[i], turns.AlternateRows = s[0], append(turns.AlternateRows, s[1])
			runs[AlternatingLast-c.kind].EveryRows[i] = s[2]
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
