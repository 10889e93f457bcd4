package armhole

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/gauge"
)

// unitsAStep is how much of an edge is looked at for a step of the price: rows times
// stitches. When that is used up nothing more is tried, remedies least of all.
const unitsAStep = 6

// unitsOf is how much is looked at of an edge: the more, the farther it may lie off.
func (s *settled) unitsOf(rows, stitches int) int {
	return rows * stitches * (1 + int(3*max(0, s.tolerance-curve.DefaultTolerance)))
}

// Cost is the price of an armhole and its cap: for each edge that is tried what follows
// its curve, which goes over the stitches of every row. There are as many at most where no
// cap fits, and a remedy is looked for.
func (in Input) Cost() int {
	rows := cost.Clamp(gauge.PriceRows(in.Gauge, in.ArmholeDepthRows, in.ArmholeDepthCm, MaxDepth), MinDepth, MaxDepth)
	back := cost.Clamp(gauge.PriceStitches(in.Gauge, in.BackStitches, in.ChestCm, MaxWidth), MinWidth, MaxWidth)
	sleeve := cost.Clamp(gauge.PriceStitches(in.Gauge, in.SleeveStitches, in.UpperArmCm, MaxWidth), MinWidth, MaxWidth)
	return cost.Sum(3_900, cost.Product(rows, cost.Sum(back, sleeve))*5/8)
}
