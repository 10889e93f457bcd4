package yoke

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// What a yoke takes: of the counts looked at for bands so many in a step, and steps
// for a decrease round, a stitch it takes away, one that may be mixed evenly, and a short row.
const (
	choicesAStep = 100
	stepsARound  = 10
	stepsALost   = 2
	stepsAMixed  = 8
	stepsARaise  = 20
	stepsARaglan = 5 // a round of a raglan, with its share of the outline
)

// Cost is the price of a circular yoke,
//
//	50 + places * stitches / 100 + 10 * rounds + 2 * stitches + 20 * short rows
//
// where stitches are those that are joined, rounds those that may change the count,
// and places as many, counted only where there are bands: beyond MaxBandChoices the
// question is refused. Where a round may be mixed evenly a stitch takes eight steps instead
// of two, up to MaxMixedChanges of them.
func (in CircularInput) Cost() int {
	stitches := in.priceStitches()
	changes := cost.Clamp(fault.Or(in.DecreaseRoundCount, MaxSteps), 1, MaxSteps)
	switch {
	case in.Schedule == ScheduleOwn:
		changes = cost.Clamp(len(in.Steps), 1, MaxSteps)
	case in.Schedule != ScheduleCone:
		changes = len(percentageSteps)
	}
	choices := 0
	if bands := min(len(in.Bands), MaxBands); bands > 0 {
		changes += bands
		choices = min(cost.Product(changes, min(2*stitches, stitch.MaxStitches)), MaxBandChoices)
	}
	raised := 0
	if r := in.BackRaise; r != nil {
		if raised = DefaultRaiseRows; r.RiseRows != nil || r.RiseCm != nil {
			raised = gauge.PriceRows(in.Gauge, r.RiseRows, r.RiseCm, MaxRaiseRows)
		}
	}
	lost := cost.Product(stepsALost, stitches)
	if mayMix(in.Spread) {
		lost = cost.Product(stepsAMixed, min(stitches, MaxMixedChanges))
	}
	return cost.Sum(50, choices/choicesAStep, cost.Product(stepsARound, changes), lost, cost.Product(stepsARaise, raised))
}

// priceStitches is about how many stitches body and sleeves join, those under the
// arms too.
func (in CircularInput) priceStitches() int {
	body := cost.Clamp(in.BodyStitches, 0, stitch.MaxStitches)
	sleeve := cost.Clamp(fault.Or(in.SleeveStitches, body), 0, stitch.MaxStitches)
	return min(cost.Sum(body, sleeve, sleeve), stitch.MaxStitches)
}

// Cost is the price of a raglan: five steps for every round.
func (in RaglanInput) Cost() int {
	rounds := MaxRounds
	if in.DepthRounds != nil || in.DepthCm != nil {
		rounds = gauge.PriceRows(in.Gauge, in.DepthRounds, in.DepthCm, MaxRounds)
	}
	return cost.Sum(50, cost.Product(stepsARaglan, rounds))
}
