package solid

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// follower looks for the rhythm. The rounds that step i may have are base[i] to base[i] +
// 2 * reach.
type follower struct {
	ideal []float64
	base  []int
	reach int
	best  []reached
}

// reached is the best way to a step worked on a round, with a run ending there. There are
// thousands of a deep crown, so its counts are small ones.
type reached struct {
	square float64
	slower int32 // runs that are slower than the one before
	effort int32 // of all runs
	times  int32 // intervals of the run
	run    run
	found  bool
}

// run is a rhythm: one interval from a step to the next, or two alternately.
type run struct{ every, other int32 }

// at is the interval before the step of so many, from 1.
func (r run) at(step int) int {
	if step%2 == 1 {
		return int(r.every)
	}
	return int(r.other)
}

// effort is what a run is to remember: 2, or 5 where it alternates, which is easier than three runs and harder than two. Own choice.
func (r run) effort() int32 {
	if r.every == r.other {
		return 2
	}
	return 5
}

// slower reports whether a run has longer intervals than the one before it, if there is one.
func (r run) slower(before run) bool {
	return before.every > 0 && r.every+r.other > before.every+before.other
}

// leastAlternating is how many intervals alternate at least: fewer are runs of one each.
const leastAlternating = 3

func (f *follower) slot(i, round int) *reached {
	k := round - f.base[i]
	if k < 0 || k > 2*f.reach {
		return nil
	}
	return &f.best[i*(2*f.reach+1)+k]
}

// rounds are those of the best rhythm.
func (f *follower) rounds(tolerance float64) []int {
	last := len(f.ideal) - 1
	if slots := len(f.ideal) * (2*f.reach + 1); slots > len(f.best) {
		f.best = make([]reached, slots)
	} else {
		clear(f.best[:slots])
	}
	for round := max(f.base[0], 1); round <= f.base[0]+2*f.reach; round++ {
		if d := math.Abs(float64(round) - f.ideal[0]); d <= tolerance {
			*f.slot(0, round) = reached{found: true, square: d * d}
		}
	}
	for i := range last {
		for round := f.base[i]; round <= f.base[i]+2*f.reach; round++ {
			if from := *f.slot(i, round); from.found && !f.beaten(from) { // else another way is at the end with as few runs
				f.goOn(i, round, from, tolerance)
			}
		}
	}
	best := 0
	for round := f.base[last]; round <= f.base[last]+2*f.reach; round++ {
		if to := f.slot(last, round); to.found && (best == 0 || to.before(*f.slot(last, best))) {
			best = round
		}
	}
	if best == 0 {
		return f.nearest()
	}
	return f.walk(best)
}

// goOn offers every run with which a way may go on from a step in a round.
func (f *follower) goOn(i, round int, from reached, tolerance float64) {
	for next := max(f.base[i+1], round+1); next <= f.base[i+1]+2*f.reach; next++ {
		every := int32(next - round)
		for _, r := range [...]run{{every, every}, {every, every + 1}, {every, every - 1}} {
			if r.other > 0 && r != from.run { // else it is a longer run that was offered before
				f.offer(i, round, r, from, tolerance)
			}
		}
	}
}

// beaten reports whether the last step has been reached by a way that is easier than one more run makes this one.
func (f *follower) beaten(from reached) bool {
	from.effort += run{}.effort()
	for _, to := range f.best[(len(f.ideal)-1)*(2*f.reach+1) : len(f.ideal)*(2*f.reach+1)] {
		if to.found && (to.slower < from.slower || to.slower == from.slower && to.effort < from.effort) {
			return true
		}
	}
	return false
}

// offer offers all lengths of a run.
func (f *follower) offer(i, round int, r run, from reached, tolerance float64) {
	square := from.square
	slower := from.slower
	if r.slower(from.run) {
		slower++
	}
	for k := i + 1; k < len(f.ideal); k++ {
		round += r.at(k - i)
		to := f.slot(k, round)
		if to == nil {
			return
		}
		d := math.Abs(float64(round) - f.ideal[k])
		if d > tolerance {
			return
		}
		square += d * d
		if r.every != r.other && k-i < leastAlternating {
			continue
		}
		if way := (reached{square, slower, from.effort + r.effort(), int32(k - i), r, true}); !to.found || way.before(*to) {
			*to = way
		}
	}
}

// before reports whether one way is better than another.
func (r reached) before(other reached) bool {
	if r.slower != other.slower {
		return r.slower < other.slower
	}
	if r.effort != other.effort {
		return r.effort < other.effort
	}
	return r.square < other.square
}

// walk goes back from the last step.
func (f *follower) walk(round int) []int {
	rounds := make([]int, len(f.ideal))
	for i := len(rounds) - 1; ; {
		rounds[i] = round
		to := *f.slot(i, round)
		if to.times == 0 {
			return rounds
		}
		for step := int(to.times); step > 0; step-- {
			round -= to.run.at(step)
			i--
			rounds[i] = round
		}
	}
}

// nearest gives every step the round nearest to its own after the one before it.
func (f *follower) nearest() []int {
	rounds := make([]int, len(f.ideal))
	before := 0
	for i, x := range f.ideal {
		before = max(int(measure.RoundHalfUp(x)), before+1)
		rounds[i] = before
	}
	return rounds
}
