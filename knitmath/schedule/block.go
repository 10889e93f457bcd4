package schedule

import "slices"

// A Step is one row of a block: how many rows it lies after the step before, how many
// of the things of a nest are done in it, and whether one of them in a way of its own.
// The very first row lies after none.
type Step struct {
	Every, Level int
	Apart        bool
}

// A Block is steps that are done one after the other, again and again: one step, or
// a few in turn, or more of which all but one do the same.
type Block struct {
	Steps []Step
	Times int
}

// mostSteps is how many steps a block has at most, unless all but one do the same: more in turn are not remembered.
const mostSteps = 4

// Blocks tells the choice as it is worked, in the blocks of least effort.
func (p Nested) Blocks() []Block {
	var b blocks
	b.set(p.Rows, p.Levels, p.Apart)
	b.leastEffort()
	return b.chosen()
}

// Effort is how much of blocks there is to remember: the steps of each and how often
// it comes, and of one of several steps which is next.
func Effort(list []Block) int {
	effort := 0
	for _, b := range list {
		effort += blockEffort(len(b.Steps))
	}
	return effort
}

// blockEffort is that of a block of so many steps. Where they are more than mostSteps all but one do the same.
func blockEffort(steps int) int {
	if steps > mostSteps {
		steps = threeInTurn
	}
	return runEffort(steps)
}

// allButOne reports whether of five steps or more from one on all but one do the same things.
func (b *blocks) allButOne(from, steps int) bool {
	like := b.steps[from].Level
	if b.steps[from+1].Level != like {
		like = b.steps[from+2].Level // the odd one is of the first two
	}
	odd := 0
	for _, s := range b.steps[from : from+steps] {
		if s.Level != like || s.Apart {
			odd++
		}
	}
	return odd == 1
}

// blocks are all steps of a choice, and how they are best told: of the first so many,
// what there is to remember and how the last block of them lies.
type blocks struct {
	steps []Step
	best  []told
}

type told struct{ effort, steps, times int }

// set takes the steps of a choice.
func (b *blocks) set(rows, levels []int, apart int) {
	b.steps = b.steps[:0]
	last := -1
	for i, row := range rows {
		every := 0
		if i > 0 {
			every = row - rows[i-1]
		}
		b.steps = append(b.steps, Step{Every: every, Level: levels[i]})
		if apart > 0 && levels[i] >= apart {
			last = i
		}
	}
	if last >= 0 {
		b.steps[last].Apart = true
	}
}

// same reports whether one step is the other again. The first of all may come after
// any number of rows.
func (b *blocks) same(i, j int) bool {
	a, c := b.steps[i], b.steps[j]
	return a.Level == c.Level && a.Apart == c.Apart && (i == 0 || a.Every == c.Every)
}

// leastEffort works out how the steps are best told, and what that takes. A block
// comes as often as it can, or less often so that the next begins with its steps.
func (b *blocks) leastEffort() int {
	n := len(b.steps)
	b.best = append(b.best[:0], told{})
	for range n {
		b.best = append(b.best, told{effort: -1})
	}
	var alike [mostAlike + 1]int // how many steps from here on come again so many steps later
	for i := range n {
		if b.best[i].effort < 0 { // within a block
			for steps := range alike {
				alike[steps] = max(alike[steps]-1, 0)
			}
			continue
		}
		for steps := 1; steps <= min(mostAlike, n-i); steps++ {
			alike[steps] = b.comeAgain(i, steps, alike[steps])
			most := 1 + alike[steps]/steps
			if steps > mostSteps && (most == 1 || !b.allButOne(i+steps, steps)) {
				continue
			}
			for times := most; times >= max(1, most-1-mostAlike/steps) && (steps == 1 || times > 1); times-- {
				to := &b.best[i+times*steps]
				if effort := b.best[i].effort + blockEffort(steps); to.effort < 0 || effort < to.effort {
					*to = told{effort, steps, times}
				}
			}
		}
	}
	return b.best[n].effort
}

// comeAgain is how many steps from one on come again so many later, of which those from the one before
// on are known.
func (b *blocks) comeAgain(from, steps, before int) int {
	if before > 0 {
		return before - 1
	}
	n := 0
	for j := from; j+steps < len(b.steps) && b.same(j, j+steps); j++ {
		n++
	}
	return n
}

// chosen are the blocks that leastEffort came to.
func (b *blocks) chosen() []Block {
	var list []Block
	for to := len(b.steps); to > 0; {
		last := b.best[to]
		to -= last.steps * last.times
		steps := slices.Clone(b.steps[to : to+last.steps])
		if to == 0 && last.times > 1 {
			steps[0].Every = b.steps[last.steps].Every // as it comes again
		}
		list = append(list, Block{steps, last.times})
	}
	slices.Reverse(list)
	return list
}
