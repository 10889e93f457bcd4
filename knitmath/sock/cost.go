package sock

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/solid"
)

// What a row takes that comes back written out, and what it takes beyond that to fold one
// that decreases into repeats.
const (
	stepsARow  = 7
	stepsAFold = 40
)

// Cost is the price of a heel,
//
//	50 + 7 * rows
//
// where rows are those of flap and turn, of short rows two for each stitch of the heel, and of
// the gusset one for every stitch picked up along an edge, times its interval.
func (in HeelInput) Cost() int {
	heel := cost.Clamp(fault.Or(in.HeelStitches, priceRound(in.Gauge, in.RoundStitches, in.FootCircumferenceCm)), 0, MaxRound)
	flap := cost.Clamp(fault.Or(in.FlapRows, heel), 0, MaxFlapRows)
	picked := cost.Clamp(fault.Or(in.PickUpStitches, flap), 0, flap)
	gusset := cost.Product(picked, cost.Clamp(fault.Or(in.GussetEveryRounds, defaultEvery), 1, MaxEveryRounds))
	return cost.Sum(50, cost.Product(stepsARow, cost.Sum(2*heel, flap, gusset)))
}

// Cost is the price of a toe,
//
//	50 + 7 * rounds + 40 * decrease rounds
//
// where a third of the stitches is the most decrease rounds that there can be, and its rounds
// are as many as the slowest rate or the sections make, at most MaxToeRounds.
func (in ToeInput) Cost() int {
	round := priceRound(in.Gauge, in.RoundStitches, in.FootCircumferenceCm)
	decreases, every := round/MinWedges, 2
	for _, r := range in.Rates[:min(len(in.Rates), solid.MaxRates)] {
		every = max(every, cost.Clamp(r.EveryRounds, 1, solid.MaxRateRounds))
	}
	if in.Kind == ToeKindRound {
		if in.WedgeCount == nil {
			decreases = mostSection
		} else {
			decreases = round / cost.Clamp(*in.WedgeCount, MinWedges, MaxWedges)
		}
		every = decreases/2 + 1 + cost.Clamp(fault.Or(in.MoreEvenRounds, 0), 0, MaxMoreEven)
	}
	return cost.Sum(50, cost.Product(stepsARow, min(decreases*every+round, MaxToeRounds)), cost.Product(stepsAFold, decreases))
}

// priceRound is about how many stitches a round has, with the most ease there is.
func priceRound(g *gauge.Gauge, stitches *int, footCm *float64) int {
	round := gauge.PriceStitches(g, stitches, footCm, MaxRound)
	if stitches == nil {
		round = round * (100 + maxEase) / 100
	}
	return min(round, MaxRound)
}
