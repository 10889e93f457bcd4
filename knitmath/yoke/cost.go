package yoke

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// Cost is the price of a circular yoke: a step for some of the stitches at every
// place where the count may change, ten for every decrease round and for every
// short row.
func (in CircularInput) Cost() int {
	sleeves := cost.Product(2, cost.Clamp(fault.Or(in.SleeveStitches, in.BodyStitches), 0, stitch.MaxStitches))
	join := min(cost.Sum(cost.Clamp(in.BodyStitches, 0, stitch.MaxStitches), sleeves), stitch.MaxStitches)
	changes := cost.Clamp(max(fault.Or(in.DecreaseRoundCount, 3), len(in.Steps)), 1, MaxSteps)
	places := cost.Sum(changes, min(len(in.Bands), MaxBands))
	raised := 0
	if r := in.BackRaise; r != nil {
		raised = gauge.PriceRows(in.Gauge, r.RiseRows, r.RiseCm, MaxRaiseRows)
	}
	return cost.Sum(50, cost.Product(places, join)/50, cost.Product(10, changes), cost.Product(20, raised))
}

// Cost is the price of a raglan: a step for every round.
func (in RaglanInput) Cost() int {
	rounds := MaxRounds
	if in.DepthRounds != nil || in.DepthCm != nil {
		rounds = gauge.PriceRows(in.Gauge, in.DepthRounds, in.DepthCm, MaxRounds)
	}
	return cost.Sum(50, rounds)
}
