package gauge

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
)

// Cost is the price of a cast-on: two sums and what stands beside them.
func (in CastOnInput) Cost() int { return 10 }

// Cost is the price of a conversion: four steps for each count and each size.
func (in ConversionInput) Cost() int {
	return cost.Sum(10, cost.Product(4, min(len(in.Items), MaxItems)), cost.Product(4, min(len(in.Sizes), MaxPrintedSizes)))
}

// PriceStitches is about how many stitches a length has, at most so many, for a
// price: nothing is refused, and a length or gauge that is missing has none.
func PriceStitches(g *Gauge, count *int, cm *float64, most int) int {
	if g == nil {
		return priceCount(0, g, count, cm, most)
	}
	return priceCount(g.Stitches, g, count, cm, most)
}

// PriceRows is the same of rows.
func PriceRows(g *Gauge, count *int, cm *float64, most int) int {
	if g == nil {
		return priceCount(0, g, count, cm, most)
	}
	return priceCount(g.Rows, g, count, cm, most)
}

// priceCount is a count as given, or cm at a gauge of so many, rounded up.
func priceCount(perSpan float64, g *Gauge, count *int, cm *float64, most int) int {
	switch {
	case count != nil:
		return cost.Clamp(*count, 0, most)
	case g == nil || cm == nil:
		return 0
	}
	return cost.Ceil(*cm*perSpan/fault.Or(g.OverCm, DefaultOverCm), most)
}
