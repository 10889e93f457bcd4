package neck

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// Cost is the price of a neckline, and of as many more as wider ones and remedies are tried of a neck
// so small that a head may not go through.
func (in Input) Cost() int {
	once, size := in.priced()
	if size > 2*remedyMost {
		return once
	}
	return cost.Sum(once, cost.Product(timesRemedied, min(once, priceOfRemedied)))
}

// priced is the price of a neckline worked once: for both pieces, for each row and each stitch of the
// neck, and for each pair of them with the tolerance, which are what the edge of a round
// neck is looked for among; and how many rows and stitches those are.
func (in Input) priced() (once, size int) {
	neck := gauge.PriceStitches(in.Gauge, in.NeckStitches, in.NeckCm, MaxNeckStitches)
	if in.NeckStitches == nil && in.NeckCm == nil {
		neck = 1 + gauge.PriceStitches(in.Gauge, in.WidthStitches, in.WidthCm, 3*MaxNeckStitches)/3
	}
	front := priceDepth(in, in.FrontDepthRows, in.FrontDepthCm, frontMostCm)
	if in.Shape == ShapeV && in.FrontDepthRows == nil && in.FrontDepthCm == nil {
		front = cost.Clamp(2*neck+evenAbove, 0, MaxDepthRows)
	}
	back := priceDepth(in, in.BackDepthRows, in.BackDepthCm, backMostCm)
	tolerance := 2 + cost.Ceil(fault.Or(in.ToleranceStitches, 0), MaxTolerance)
	once = cost.Sum(200, cost.Product(3, front+back+neck), cost.Product(front+back, neck, tolerance)/38)
	return once, front + back + neck
}

// timesRemedied is how often a neck is worked out in search of a wider one and of remedies.
const timesRemedied = 22

// priceOfRemedied is more than the price of any neck so small that remedies are tried.
const priceOfRemedied = 1_900

// priceDepth is about how many rows a depth has.
func priceDepth(in Input, rows *int, cm *float64, usual float64) int {
	if rows == nil && cm == nil {
		cm = &usual
	}
	return gauge.PriceRows(in.Gauge, rows, cm, MaxDepthRows)
}
