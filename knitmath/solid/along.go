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
