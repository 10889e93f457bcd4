package solid

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// follow places decrease rounds along a curve.
//
// The round in which a step is worked by the curve is the one that begins where the curve
// has the mean of its two counts. Each round lies within the tolerance of that, and no run
// of equal or of alternating intervals is slower than the one before it, as the trade has it,
// where that can be; then with the fewest runs, an alternating one for two and a half, and then
// with a small sum of squares. Where no such rhythm is, each round is the nearest that is free.
//
// Method: dynamic programming over the steps and the few rounds that each may have. A run
// begins at a round that is reached and goes on as far as it stays within the tolerance.
// Source: own derivation.
func (p Pace) follow(steps []step) placed {
	successive := min(max(p.successive, 1), len(steps))
	parts := make([]float64, len(steps)-successive+1) // the steps that keep to the curve
	for i := range parts {
		parts[i] = p.fall(float64(steps[i].from+steps[i].to) / 2)
	}
	f := follower{ideal: make([]float64, len(parts)), base: make([]int, len(parts))}
	best := f.along(parts, float64(p.depth), len(steps), p.tolerance)
	if !p.drawnOut {
		return best
	}
	best = f.drawOut(parts, p.depth, len(steps), p.tolerance, best)
	// Few runs may have no rhythm of the depth that was asked for; the depth comes first.
	for _, tight := range tightTolerances {
		if best.span() != p.depth && tight < p.tolerance {
			best = f.drawOut(parts, p.depth, len(steps), tight, best)
		}
	}
	return best
}

// drawOut is the best of a few curves of other depths: the one whose rounds from the first step
// to the last are nearest to so many.
func (f *follower) drawOut(parts []float64, rounds, steps int, tolerance float64, best placed) placed {
	share := parts[len(parts)-1] - parts[0] // of the depth that lies between the first step and the last along the curve
	if share <= 0 {
		return best
	}
	depth := float64(rounds)
	last := f.along(parts, depth, steps, tolerance)
	low, high := 0.0, math.Inf(1) // depths that came out too shallow and too deep
	for range drawnOutTries {
		missing := rounds - last.span()
		if missing == 0 {
			break
		}
		if missing > 0 {
			low = depth
		} else {
			high = depth
		}
		if depth += float64(missing) / share; depth <= low || depth >= high {
			depth = (low + high) / 2
		}
		if last = f.along(parts, depth, steps, tolerance); measure.Abs(rounds-last.span()) <= measure.Abs(rounds-best.span()) {
			best = last
		}
	}
	return best
}

// A curve is drawn out drawnOutTries times at most, each time by what is missing between its
// first step and its last, or half-way between what was too shallow and what was too deep; where
// that does not come out, as often within each of the tightTolerances, in rounds.
const drawnOutTries = 8

var tightTolerances = [...]float64{1, 0.5, 0.25}

// span is the rounds from the first step to the last, both counted.
func (at placed) span() int { return at.total - at.rounds[0] + 1 }

// along places all steps along a curve so many rounds deep.
func (f *follower) along(parts []float64, depth float64, steps int, tolerance float64) placed {
	f.reach = int(measure.RoundHalfUp(tolerance))
	for i, part := range parts {
		f.ideal[i] = max(part*depth+1, 1)
		f.base[i] = int(measure.RoundHalfUp(f.ideal[i])) - f.reach
	}
	at := placed{rounds: f.rounds(tolerance)}
	for i, round := range at.rounds {
		at.departure = max(at.departure, math.Abs(float64(round)-f.ideal[i]))
	}
	for len(at.rounds) < steps {
		at.rounds = append(at.rounds, at.rounds[len(at.rounds)-1]+1)
	}
	at.total = at.rounds[len(at.rounds)-1]
	return at
}

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
