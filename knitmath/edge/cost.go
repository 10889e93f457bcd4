package edge

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// Cost is the price of a pick-up: four steps for each row of the edge, nearly all of them
// for the rows that are compared where an edge is long.
func (in PickUpInput) Cost() int {
	return cost.Sum(20, cost.Product(4, gauge.PriceRows(in.Gauge, in.LengthRows, in.LengthCm, stitch.MaxRows)))
}

// Cost is the price of buttonholes: five steps for each, and what it takes to look
// for a band on which they fit.
func (in ButtonholesInput) Cost() int {
	return cost.Sum(200, cost.Product(5, cost.Clamp(in.HoleCount, 1, MaxButtonholes)))
}
