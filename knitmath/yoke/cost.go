package yoke

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// What a yoke takes: of the counts looked at for bands so many in a step, of the steps
// from one count to the next that are tried so many; and steps for a decrease round, a
// stitch it takes away, one that may be mixed evenly, and a short row.
const (
	choicesAStep = 300
	triesAStep   = 300
	stepsARound  = 10
	stepsALost   = 2
	stepsAMixed  = 8
	stepsARaise  = 20
	stepsARaglan = 10 // a round of a raglan, with its share of the nearest choice and of the outline
	stepsAChoice = 100
	mostChoices  = 100 // rounds

	// What may be planned for bands: easy counts for each share and layout, and those that
	// depart least for each share; and, where there are few places, again for the remedies.
	triesOfBands      = 14
	triesOfRemedies   = 24
	choicesOfBands    = 2
	choicesOfRemedies = 1
	// pricedNarrow is how many decrease rounds more a narrow neck counts with. One that has more has fewer
	// counts to look at in each.
	pricedNarrow = 3
	// pricedBetween is how many rounds between places a price counts with.
	pricedBetween = 10
)

// Cost is the price of a circular yoke,
//
//	50 + places * counts^2 / 300 + 10 * rounds + 2 * stitches + 20 * short rows
//
// where stitches are those that are joined, rounds those that may change the count, and
// counts those looked at for each place. Bands are tried in several ways, and the counts
// that depart least take places * stitches / 300 each time: beyond MaxBandChoices the
// question is refused. Where a round may be mixed evenly a stitch takes eight steps instead
// of two, up to MaxMixedChanges of them.
func (in CircularInput) Cost() int {
	stitches := in.priceStitches()
	changes := cost.Clamp(fault.Or(in.DecreaseRounds, MaxSteps), 1, MaxSteps)
	switch {
	case in.Schedule == ScheduleOwn:
		changes = cost.Clamp(len(in.Steps), 1, MaxSteps)
	case in.Schedule != ScheduleCone:
		changes = len(percentageSteps)
		if in.NeckStitches != nil || in.NeckCm != nil {
			changes += pricedNarrow
		}
	}
	changes++ // the adjusting round
	choices, ways := 0, 1
	if bands := min(len(in.Bands), MaxBands); bands > 0 {
		changes += bands + pricedBetween
		ways = triesOfBands
		times := choicesOfBands
		if changes <= mostRemedied {
			ways += triesOfRemedies
			times += choicesOfRemedies
		}
		choices = times * min(cost.Product(changes, min(2*stitches, stitch.MaxStitches)), MaxBandChoices)
	}
	percent := min(max(fault.Or(in.TolerancePercent, DefaultDeparturePercent), 0), MaxDeparturePercent)
	counts := min(2+cost.Ceil(float64(stitches)*percent/50, stitch.MaxStitches), countsFor(changes))
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
	return cost.Sum(50, choices/choicesAStep, ways*changes*counts*counts/triesAStep, cost.Product(stepsARound, changes), lost,
		cost.Product(stepsARaise, raised))
}

// priceStitches is about how many stitches body and sleeves join, those under the
// arms too.
func (in CircularInput) priceStitches() int {
	body := cost.Clamp(in.BodyStitches, 0, stitch.MaxStitches)
	sleeve := cost.Clamp(fault.Or(in.SleeveStitches, body), 0, stitch.MaxStitches)
	return min(cost.Sum(body, sleeve, sleeve), stitch.MaxStitches)
}

// Cost is the price of a raglan: ten steps for every round, and a hundred for each in
// which parts may be chosen to decrease, up to where the search is cut short.
func (in RaglanInput) Cost() int {
	rounds := MaxRounds
	if in.DepthRounds != nil || in.DepthCm != nil {
		rounds = gauge.PriceRows(in.Gauge, in.DepthRounds, in.DepthCm, MaxRounds)
	}
	return cost.Sum(50, cost.Product(stepsARaglan, rounds), cost.Product(stepsAChoice, min(rounds, mostChoices)))
}
