package swatch

import "example.com/knitmath/knitmath/cost"

// Cost is the price of a gauge: a step for every reading.
func (in Input) Cost() int {
	price := 20
	for _, list := range [...][]Reading{in.StitchesBefore, in.RowsBefore, in.StitchesAfter, in.RowsAfter} {
		price = cost.Sum(price, min(len(list), MaxReadings))
	}
	return price
}
