package schedule

import (
	"slices"
	"sort"
)

// ofTurns is the cheapest form of which one run alternates: alone, or with a run of one
// of its intervals before it or after it.
func ofTurns(all []sizeChoices, kind GradedForm) (best chosen, found bool) {
	both := turnsOf(all)
	if kind == AlternatingFirst {
		best, found = throughSizes(all, effortOfZero, func(c sizeChoices, show func(state, choice)) {
			for _, s := range both {
				if s[1] != s[2] { // each pair once
					alone := state{s[0], s[1]}
					show(alone, c.turns[alone])
				}
			}
		})
	}
	two, ok := throughSizes(all, 2*effortOfZero, func(c sizeChoices, show func(state, choice)) {
		for _, s := range both {
			show(s, c.beside(s, kind))
		}
	})
	if ok && (!found || two.sum.less(best.sum)) {
		best, found = two, true
	}
	best.kind = kind
	return best, found
}

// turnsOf are the two intervals that alternate in any size with each of them in a run
// beside, in order.
func turnsOf(all []sizeChoices) []state {
	var every []state
	for _, c := range all {
		for s := range c.turns {
			every = append(every, state{s[0], s[1], s[0]}, state{s[0], s[1], s[1]})
		}
	}
	sort.Slice(every, func(i, j int) bool { return slices.Compare(every[i][:], every[j][:]) < 0 })
	return slices.Compact(every)
}

// beside is the cheapest schedule of a size where a run alternates and another does not:
// both; or one of them, and 0 times the other.
func (c sizeChoices) beside(s state, kind GradedForm) choice {
	best := c.turns[s]
	alternating, single := c.turns[state{s[0], s[1]}], c.single(s[2])
	alternating.price.effort += effortOfZero
	single.price.effort += effortOfZero
	second := &single // the one that stands after what the size does without
	if kind == AlternatingLast {
		second = &alternating
	}
	second.runs[0], second.runs[1] = turn{}, second.runs[0]
	best.take(alternating)
	best.take(single)
	return best
}
