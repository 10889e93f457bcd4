package edge

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// Cost is the price of a pick-up: two steps for each row of the edge.
func (in PickUpInput) Cost() int {
	rows := gauge.PriceRows(in.Gauge, in.LengthRows, in.LengthCm, stitch.MaxRows)
	return cost.Sum(20, cost.Product(2, rows))
}

// Cost is the price of buttonholes: five steps for each.
func (in ButtonholesInput) Cost() int {
	return cost.Sum(20, cost.Product(5, cost.Clamp(in.HoleCount, 1, MaxButtonholes)))
}
