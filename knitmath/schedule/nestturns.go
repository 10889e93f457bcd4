package schedule

// InTurns looks further than [Nest.Easiest]: among choices told in one [Block] or two of up to
// mostSteps steps each, "every 2nd, 2nd and 4th round in turn", and perhaps one step before
// them and one after. Of those in which each thing has a schedule of at most two runs, of up
// to as many intervals in turn, and departs from its line by at most so many parts, it is one
// of least effort, and of equal effort the one that departs least, see Nest.Late.
//
// Intervals are one apart, about what the line of the commonest thing gives or the next
// shorter ones. How often two blocks come follows from how often the steps of each do every
// thing: of the few pairs for which that comes out, and that may lie near the lines where
// each ends, all orders of steps are looked at.
//
// Only choices of less effort than below are looked for. It stops when it has looked at mostTurned rows.
// Source: own derivation.
func (n Nest) InTurns(departure, below int) (best Nested, ok bool) {
	if len(n.Times) > mostThings {
		return Nested{}, false
	}
	f := newTurnFinder(n, departure, mostSteps)
	f.kinds = kindsOf[len(n.Times)]()
	for effort := runEffort(1); effort < min(below, mostTurnedEffort+1) && f.goesOn(effort); effort++ {
		f.ofEffort(effort)
	}
	return f.best, f.found
}

// newTurnFinder finds choices in which a thing has up to so many intervals in turn.
func newTurnFinder(n Nest, departure, most int) turnFinder {
	return turnFinder{most: most,
		nestFinder: nestFinder{Nest: n, allowed: departure, rows: make([][]int, len(n.Times)), at: make([]int, len(n.Times))}}
}

// goesOn reports whether choices of an effort are still to be looked at.
func (f *turnFinder) goesOn(effort int) bool {
	return f.laid <= mostTurned && !(f.found && effort > f.effort)
}

const (
	// mostTurned is how many rows InTurns looks at.
	mostTurned = 150_000
	// Two blocks of mostSteps, a step before them and a step after.
	mostTurnedEffort = 2 * (mostSteps + 1 + effortOfAlternating + 2)
)

// turnFinder looks among blocks whose steps come after a short interval or one longer.
type turnFinder struct {
	nestFinder
	kinds turnKinds

	most          int // intervals in turn that a thing may have
	short         int // interval, in places
	before, after int // levels of the single steps before and after the blocks; 0 for none

	ones, twos []span // room that is used again
}

// A turning is a block of any order of its class, so many times.
type turning struct {
	*turnKind
	*turnClass
	times int
}

// ofEffort tries all blocks, with the single steps, that take this effort.
func (f *turnFinder) ofEffort(effort int) {
	for f.before = 0; f.before <= len(f.Times); f.before++ {
		for f.after = 0; f.after <= len(f.Times); f.after++ {
			left := effort - runEffort(1)*(min(f.before, 1)+min(f.after, 1))
			for first := 1; first <= mostSteps; first++ {
				for second := 0; second <= mostSteps; second++ {
					if left != effortOfBlocks(first, second) {
						continue
					}
					f.blocks(first, second)
				}
			}
		}
	}
}

// effortOfBlocks is that of a block of so many steps, and of a second if it has any.
func effortOfBlocks(first, second int) int {
	if second == 0 {
		return runEffort(first)
	}
	return runEffort(first) + runEffort(second)
}

// blocks tries how often two blocks of so many steps may come.
func (f *turnFinder) blocks(first, second int) {
	all := f.Times[0] - min(f.before, 1) - min(f.after, 1)
	for times := 1; times*first <= all; times++ {
		again, rest := 0, all-times*first
		if second > 0 {
			again = rest / second
		}
		// What comes once takes no turns.
		if again*second != rest || (second == 0) != (again == 0) || first > 1 && times == 1 || second > 1 && again == 1 {
			continue
		}
		for i := range f.kinds[first] {
			f.laid++
			one := &f.kinds[first][i]
			if does, ok := f.rest(one.does, times, again); ok {
				f.classes(one, times, f.kindOf(second, does), again)
			}
		}
	}
}

// kindOf is the kind of a block that does every thing so often, or nil.
func (f *turnFinder) kindOf(steps int, does perThing) *turnKind {
	for i := range f.kinds[steps] {
		if k := &f.kinds[steps][i]; k.does == does {
			return k
		}
	}
	return nil
}

// classes tries short intervals and long ones for two blocks.
func (f *turnFinder) classes(one *turnKind, times int, two *turnKind, again int) {
	if two == nil {
		return
	}
	ideal := f.slots() / f.Times[0]
	for f.short = max(1, ideal-1); f.short <= ideal; f.short++ {
		for i := range one.classes {
			for j := range two.classes {
				if f.laid++; f.laid > mostTurned {
					return
				}
				f.orders(turning{one, &one.classes[i], times}, turning{two, &two.classes[j], again})
			}
		}
	}
}

// rest is what a second block has to do each time so that everything comes out.
func (f *turnFinder) rest(one perThing, times, again int) (does perThing, ok bool) {
	for t, k := range f.Times {
		left := k - f.single(f.before, t) - f.single(f.after, t) - times*one[t]
		switch {
		case again == 0:
			if left != 0 {
				return does, false
			}
		case left < 0 || left%again != 0:
			return does, false
		default:
			does[t] = left / again
		}
	}
	return does, true
}

// single is whether a thing is done in a single step of a level.
func (f *turnFinder) single(level, thing int) int {
	if thing < level {
		return 1
	}
	return 0
}

// rowsOf is how many rows a block takes once.
func (f *turnFinder) rowsOf(b turning) int { return f.Every * (f.short*b.steps + b.longs) }

// gap is the interval before a step.
func (f *turnFinder) gap(s turnStep) int {
	if s.long {
		return f.Every * (f.short + 1)
	}
	return f.Every * f.short
}
