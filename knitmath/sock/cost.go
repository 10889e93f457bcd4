package sock

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// stepsARow is what a row takes that comes back written out, most of them alone.
const stepsARow = 4

// Cost is the price of a heel: so many steps for each row of flap, turn and gusset. Where
// nothing is said there are three rows for each stitch of the heel, and of short rows two.
func (in HeelInput) Cost() int {
	round := gauge.PriceStitches(in.Gauge, in.RoundStitches, in.FootCircumferenceCm, MaxRound) * 3 / 2
	round = min(round, MaxRound)
	heel := cost.Clamp(fault.Or(in.HeelStitches, round), 0, MaxRound)
	flap := cost.Clamp(fault.Or(in.FlapRows, heel), 0, MaxFlapRows)
	gusset := cost.Product(cost.Clamp(fault.Or(in.PickUpStitches, flap), 0, flap), cost.Clamp(fault.Or(in.GussetEveryRounds, defaultEvery), 1, MaxEveryRounds))
	return cost.Sum(50, cost.Product(stepsARow, cost.Sum(2*heel, flap, gusset)))
}

// Cost is the price of a toe: a step for each stitch of a round in each of its rounds that
// decreases, of which there are fewer than half as many, and for those worked even.
func (in ToeInput) Cost() int {
	round := gauge.PriceStitches(in.Gauge, in.RoundStitches, in.FootCircumferenceCm, MaxRound) * 3 / 2
	round = min(round, MaxRound)
	rounds := cost.Sum(2*round, cost.Product(round/2, 4))
	for _, r := range in.Rates[:min(len(in.Rates), MaxRates)] {
		rounds = cost.Sum(rounds, cost.Clamp(r.EveryRounds, 1, MaxRateRounds)*round/4)
	}
	return cost.Sum(50, cost.Product(stepsARow, rounds))
}
