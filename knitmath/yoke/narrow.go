package yoke

import "math"

const (
	// narrowPercent is by how little, in percent of it and a stitch at least, a neck may be narrower
	// than the percentage system's so that scaling is enough: its last round then takes two fifths
	// and hardly more. Own choice.
	narrowPercent = 2
	// fallingShares is how much less of its stitches a round leaves than the one below it, where
	// rounds could leave the same: gaps that shrink by so much shrink in whole stitches too. Own choice.
	fallingShares = 0.97
	// narrowApart is how many rounds of a narrow yoke lie from one decrease round to the next at the
	// least: one is worked even. Own choice.
	narrowApart = 2
)

// percentageStepsTo are the percentage system's, for a neck that is not narrower than theirs by more
// than scaling takes up. A narrower one would make the last round take half of the stitches. Then
// the first round stays as it is, and those after it take about equal shares, of at most a third, each
// hardly more than the one below it, so that no gap is wider than those below it. They lie
// where the straight lines through the system's first two rounds and the neck have what they
// leave, so that none ruffles more than those would. Where that leaves no even round between them
// nothing is changed. Own derivation.
func (y *circular) percentageStepsTo(neck int) []Step {
	join := float64(y.join)
	own := join * left(percentageSteps)
	if own-float64(neck) <= max(1, own*narrowPercent/100) {
		return percentageSteps
	}
	n := y.narrowRounds(neck)
	steps := []Step{percentageSteps[0]}
	count := join * left(steps)
	each := math.Pow(float64(neck)/count, 1/float64(n)) // what a round leaves
	middle := float64(n-1) / 2
	less := max(fallingShares, math.Pow(third.kept()/each, 1/middle)) // but no more than a third goes in the last
	for i := range n {
		leaves := each * math.Pow(less, float64(i)-middle)
		count *= leaves
		at, below := y.narrowDepthOf(count, neck), steps[i].DepthFraction
		if i == n-1 {
			at = 1
		}
		if (at-below)*float64(y.rounds) < narrowApart {
			return percentageSteps
		}
		steps = append(steps, Step{at, 1 - leaves})
	}
	return steps
}

// narrowDepthOf is the part of the depth at which the lines to a narrow neck have a count above that of
// the system's first round.
func (y *circular) narrowDepthOf(count float64, neck int) float64 {
	low, high := percentageSteps[0].DepthFraction, percentageSteps[1].DepthFraction
	from, to := float64(y.join)*left(percentageSteps[:1]), float64(y.join)*left(percentageSteps[:2])
	if count < to {
		low, high, from, to = high, 1, to, float64(neck)
	}
	return low + (high-low)*(from-count)/(from-to)
}

// narrowRounds is how many rounds after the first come down to a narrow neck, each taking at most a
// third.
func (y *circular) narrowRounds(neck int) int {
	return max(3, roundsBetween(float64(y.join)*left(percentageSteps[:1]), float64(neck), third.kept()))
}

// mostDeepened is how many times as deep a yoke is looked at for more decrease rounds.
const mostDeepened = 8

// narrowDepth is a depth that holds them: the least of those tried, each half as deep again.
func (y *circular) narrowDepth(neck int) int {
	other := *y
	for other.rounds < mostDeepened*y.rounds && len(other.percentageStepsTo(neck)) == len(percentageSteps) {
		other.rounds += (other.rounds + 1) / 2
	}
	return other.rounds
}
