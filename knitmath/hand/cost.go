package hand

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// Cost is the price of a top: its rounds, and the tops that a refusal tries.
func (in MittenTopInput) Cost() int {
	stitches := in.size().price()
	return cost.Sum(50, cost.Product(12, stitches))
}

// Cost is the price of a thumb: its increase rounds, for both hands, and what closes it.
func (in ThumbInput) Cost() int {
	stitches := in.size().price()
	gusset := cost.Clamp(fault.Or(in.GussetStitches, stitches), 0, MaxHandStitches)
	if in.heightField() != "" && in.EveryRounds != nil { // its width follows
		gusset = 2 * mostGussetChanges
	}
	return cost.Sum(50, cost.Product(3, stitches), cost.Product(6, gusset))
}

// price is about how many stitches a mitten has; a hand of the list is none of the widest.
func (in size) price() int {
	cm := in.handCm
	if in.handStitches == nil && cm == nil {
		cm = new(mostListedCm)
	}
	return min(2*gauge.PriceStitches(in.gauge, in.handStitches, cm, MaxHandStitches), MaxHandStitches)
}

// mostListedCm is above every hand of the list.
const mostListedCm = 30.0
