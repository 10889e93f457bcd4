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
// It stops when it has looked at mostTurned rows. Source: own derivation.
func (n Nest) InTurns(departure int) (best Nested, ok bool) {
	if len(n.Times) > mostThings {
		return Nested{}, false
	}
	f := turnFinder{
		nestFinder: nestFinder{Nest: n, allowed: departure, rows: make([][]int, len(n.Times)), at: make([]int, len(n.Times))},
		kinds:      kindsOf[len(n.Times)](),
	}
	for effort := runEffort(1); effort <= mostTurnedEffort && f.laid <= mostTurned && !(f.found && effort > f.effort); effort++ {
		f.ofEffort(effort)
	}
	return f.best, f.found
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

// anywhere is where the row may lie from which the others are counted: the one that a
// first interval ends in the first step, or the single step before the blocks.
func (f *turnFinder) anywhere() span {
	w := span{f.First - f.Every*(f.short+1), f.Rows}
	if f.before > 0 {
		w.from = f.First
	}
	for t := range f.before {
		w = f.narrowedAt(t, 0, 0, w)
	}
	return w
}

// orders tries all orders of steps of two blocks, where the rows may be counted from for
// either of them, and where for both.
func (f *turnFinder) orders(one, two turning) {
	if !f.mayEnd(one, two) {
		return
	}
	var done perThing
	for t := range done {
		done[t] = f.single(f.before, t)
	}
	f.ones = f.windows(f.ones[:0], one, done, 0)
	for t := range done {
		done[t] += one.times * one.does[t]
	}
	f.twos = f.windows(f.twos[:0], two, done, one.times*f.rowsOf(one))
	for i, a := range f.ones {
		for j, b := range f.twos {
			both := span{max(a.from, b.from), min(a.to, b.to)}
			if f.laid++; both.from <= both.to && f.laid <= mostTurned {
				f.layBoth(one.orders[i][:one.steps], one.times, two.orders[j][:two.steps], two.times, both)
			}
		}
	}
}

// mayEnd reports whether everything may lie near its line after each block, a time more or
// less, and whether there are rows enough.
func (f *turnFinder) mayEnd(one, two turning) bool {
	from := f.anywhere()
	row := 0
	var done perThing
	for _, block := range [...]turning{one, two} {
		row += block.times * f.rowsOf(block)
		for t, k := range f.Times {
			if done[t] += block.times * block.does[t]; k > 0 {
				so := (done[t] + f.single(f.before, t)) * f.Rows
				from.from = max(from.from, ceilDiv(so-f.allowed-f.Rows, k)-row)
				from.to = min(from.to, (so+f.allowed+f.Rows)/k-row)
			}
		}
	}
	from.to = min(from.to, f.Rows-row)
	return from.from <= from.to
}

// windows are, for all orders of a block, where the rows may be counted from, when so much
// was done before it. Along a block things run away from their lines evenly, so that its
// first turn and its last are enough.
func (f *turnFinder) windows(to []span, block turning, done perThing, row int) []span {
	anywhere := f.anywhere()
	for i := range block.orders {
		w := anywhere
		for turn := 0; turn < block.times; turn += max(1, block.times-1) {
			at, so := row+turn*f.rowsOf(block), done
			for t := range so {
				so[t] += turn * block.does[t]
			}
			for _, s := range block.orders[i][:block.steps] {
				at += f.gap(s)
				for t := range s.level {
					w = f.narrowedAt(t, so[t], at, w)
					so[t]++
				}
			}
			f.laid += block.steps
		}
		to = append(to, w)
	}
	return to
}

// layBoth lays two blocks out, with the single steps, and keeps them where everything then
// has two runs.
func (f *turnFinder) layBoth(one []turnStep, times int, two []turnStep, again int, from span) {
	for t := range f.rows {
		f.rows[t] = f.rows[t][:0]
	}
	row, start := 0, f.gap(one[0])
	if f.before > 0 {
		start = 0
		f.put(0, f.before)
	}
	for range times {
		row = f.putAll(one, row, start)
	}
	for range again {
		row = f.putAll(two, row, start)
	}
	if f.after == 0 {
		f.keepTurns(row, start, from)
		return
	}
	for _, gap := range [...]int{f.short, f.short + 1} {
		last := row + f.Every*gap
		f.put(last-start, f.after)
		narrowed := from
		for t := range f.after {
			narrowed = f.narrowedAt(t, f.Times[t]-1, last, narrowed)
		}
		f.keepTurns(last, start, narrowed)
		for t := range f.after {
			f.rows[t] = f.rows[t][:f.Times[t]-1]
		}
	}
}

// putAll puts the steps of a block after a row.
func (f *turnFinder) putAll(steps []turnStep, row, start int) int {
	for _, s := range steps {
		row += f.gap(s)
		f.put(row-start, s.level)
	}
	return row
}

// put does things in a row.
func (f *turnFinder) put(row, level int) {
	for t := range level {
		f.rows[t] = append(f.rows[t], row)
	}
}

// keepTurns keeps what has been laid out, from the row that is counted from to the last.
func (f *turnFinder) keepTurns(last, start int, from span) {
	f.laid += len(f.rows[0])
	first := span{max(from.from+start, f.First), min(from.to, f.Rows-last) + start}
	if first.from > first.to {
		return
	}
	for _, rows := range f.rows {
		if !twoTurns(rows) {
			return
		}
	}
	f.keep(first)
}
