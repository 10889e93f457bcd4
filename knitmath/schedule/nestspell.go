package schedule

import "sort"

// InSpells looks further than [Nest.InTurns], for choices that the trade tells as "every 6th time the
// front alone": in one [Block] or two of leastAlike to mostAlike steps in which all but one do the same
// things, or in one such block and steps all alike, and perhaps one step before them and one after. Of
// those of less effort than below in which each thing has a schedule of at most two runs, of up to
// mostAlike intervals in turn, and departs from its line by at most so many parts, it is one of least effort, and of
// equal effort the one that departs least, see Nest.Late.
//
// Intervals are one apart, about what the line of the commonest thing gives or the next shorter ones. In a block
// they are all alike but for that before the step that is another or that after it, or two in
// alternation; that step is the first, the last or the one in the middle.
//
// It stops when it has looked at mostTurned rows. Source: own derivation.
func (n Nest) InSpells(departure, below int) (best Nested, ok bool) {
	if len(n.Times) < 2 || len(n.Times) > mostThings {
		return Nested{}, false
	}
	f := spellFinder{turnFinder: newTurnFinder(n, departure, mostAlike)}
	for f.before = 0; f.before <= len(f.Times); f.before++ {
		for f.after = 0; f.after <= len(f.Times); f.after++ {
			f.pairs(f.stepsLeft())
		}
	}
	sort.SliceStable(f.spells, func(i, j int) bool { return f.spells[i].effort < f.spells[j].effort })
	for _, s := range f.spells {
		if s.effort >= below || !f.goesOn(s.effort) {
			break
		}
		f.before, f.after = s.before, s.after
		f.intervals(s.one, s.two)
	}
	return f.best, f.found
}

const (
	// leastAlike is how many steps a block has at least in which all but one are alike, and mostAlike at most: as
	// often as one counts without losing it. Own choice.
	leastAlike = 3
	mostAlike  = 10
)

// A spell is so many steps of a level, of which the odd one is of another, so many times; or one step.
type spell struct{ steps, level, odd, times int }

// perLevel is how many steps there are of each level, from 1.
type perLevel [mostThings + 1]int

// without is what is left of them when a spell is done.
func (p perLevel) without(s spell) perLevel {
	if s.steps == 1 {
		p[s.level] -= s.times
		return p
	}
	p[s.level] -= s.times * (s.steps - 1)
	p[s.odd] -= s.times
	return p
}

// spells are one of them or two, with the levels of the single steps before and after, 0 for none.
type spells struct {
	one, two              spell
	before, after, effort int
}

// spellFinder looks among them.
type spellFinder struct {
	turnFinder
	spells  []spells
	classes [mostAlike + 1][mostThings + 1][mostThings + 1][]turnClass // see turnings
}

// stepsLeft is how many steps of each level there are beside the single ones.
func (f *spellFinder) stepsLeft() perLevel {
	var left perLevel
	for t, k := range f.Times {
		left[t+1] += k
		left[t] -= k
	}
	left[f.before]--
	left[f.after]--
	left[0] = 0
	return left
}

// pairs notes all of one spell or two. What a first one leaves says what a second has to be.
func (f *spellFinder) pairs(left perLevel) {
	for level := 1; level <= len(f.Times); level++ {
		for odd := 1; odd <= len(f.Times); odd++ {
			for steps := leastAlike; steps <= mostAlike && odd != level; steps++ {
				for times := 2; times <= left[odd] && times*(steps-1) <= left[level]; times++ {
					if f.laid++; f.laid > mostTurned {
						return
					}
					one := spell{steps, level, odd, times}
					f.second(one, left.without(one))
				}
			}
		}
	}
}

// second notes what completes a spell.
func (f *spellFinder) second(one spell, left perLevel) {
	if left == (perLevel{}) {
		f.note(one, spell{})
		return
	}
	for level := 1; level <= len(f.Times); level++ {
		if left[level] < 2 {
			continue
		}
		plain := spell{1, level, level, left[level]}
		if left.without(plain) == (perLevel{}) {
			f.note(one, plain)
			f.note(plain, one)
			return
		}
		for odd := 1; odd <= len(f.Times); odd++ {
			if odd == level || left[odd] < 2 {
				continue
			}
			two := spell{1 + left[level]/left[odd], level, odd, left[odd]}
			if two.steps >= leastAlike && two.steps <= mostAlike && left.without(two) == (perLevel{}) {
				f.note(one, two)
			}
		}
	}
}

// note notes spells with the single steps.
func (f *spellFinder) note(one, two spell) {
	effort := runEffort(1) * (min(f.before, 1) + min(f.after, 1))
	for _, s := range [...]spell{one, two} {
		if s.times > 0 {
			effort += blockEffort(s.steps)
		}
	}
	f.spells = append(f.spells, spells{one, two, f.before, f.after, effort})
}

// intervals tries short intervals and long ones for two spells, and where in each the odd step lies.
func (f *spellFinder) intervals(one, two spell) {
	ideal := f.slots() / f.Times[0]
	first, second := f.turnings(one), f.turnings(two)
	for f.short = max(1, ideal-1); f.short <= ideal; f.short++ {
		for _, a := range first {
			for _, b := range second {
				if f.laid++; f.laid > mostTurned {
					return
				}
				f.orders(a, b)
			}
		}
	}
}

// turnings are the orders of a spell, by how many long intervals they have.
func (f *spellFinder) turnings(s spell) []turning {
	kind := &turnKind{steps: s.steps}
	for t := range f.Times {
		if t < s.level {
			kind.does[t] += max(s.steps-1, 1)
		}
		if s.steps > 1 && t < s.odd {
			kind.does[t]++
		}
	}
	classes := &f.classes[s.steps][s.level][s.odd]
	if *classes == nil {
		*classes = s.classes()
	}
	list := make([]turning, len(*classes))
	for i := range list {
		list[i] = turning{kind, &(*classes)[i], s.times}
	}
	return list
}

// classes are the orders of a spell, of none the one that there is.
func (s spell) classes() []turnClass {
	if s.steps == 0 {
		return []turnClass{{orders: make([]turnOrder, 1)}}
	}
	var byLongs [mostAlike + 1][]turnOrder
	for _, place := range [...]int{s.steps - 1, s.steps / 2, 0} {
		for _, order := range s.ordersOf(place) {
			longs := 0
			for i := range s.steps {
				if order[i].long {
					longs++
				}
				order[i].level = s.level
			}
			order[place].level = s.odd
			byLongs[longs] = append(byLongs[longs], order)
		}
	}
	var list []turnClass
	for longs, orders := range byLongs {
		if len(orders) > 0 {
			list = append(list, turnClass{longs, orders})
		}
	}
	return list
}

// ordersOf are the intervals that a spell may have whose odd step is the one at a place.
func (s spell) ordersOf(place int) []turnOrder {
	var list []turnOrder
	for _, long := range [...]bool{false, true} {
		var alike, alternating turnOrder
		for i := range s.steps {
			alike[i].long = long
			alternating[i].long = long == (i%2 == 0)
		}
		list = append(list, alike)
		if s.steps == 1 {
			continue
		}
		before, after := alike, alike
		before[place].long, after[(place+1)%s.steps].long = !long, !long
		both := before
		both[(place+1)%s.steps].long = !long
		list = append(list, before, after, both)
		if s.steps%2 == 0 {
			list = append(list, alternating)
		}
	}
	return list
}
