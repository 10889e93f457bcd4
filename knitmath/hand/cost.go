package hand

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// Cost is the price of a top: its rounds.
func (in MittenTopInput) Cost() int {
	stitches := min(2*gauge.PriceStitches(in.Gauge, in.HandStitches, in.HandCm, MaxHandStitches), MaxHandStitches)
	return cost.Sum(50, cost.Product(3, stitches))
}

// Cost is the price of a thumb: its increase rounds, for both hands, and what closes it.
func (in ThumbInput) Cost() int {
	stitches := min(2*gauge.PriceStitches(in.Gauge, in.HandStitches, in.HandCm, MaxHandStitches), MaxHandStitches)
	gusset := cost.Clamp(fault.Or(in.GussetStitches, stitches), 0, MaxHandStitches)
	return cost.Sum(50, cost.Product(3, stitches), cost.Product(6, gusset))
}
