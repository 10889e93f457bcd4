package flat

import (
	"math"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// What a flat shape takes: steps for a row that changes the count, written and compared in
// many schedules, and rows that are looked at in a step.
const (
	stepsAChange = 40
	rowsAStep    = 10
)

// Cost is the price of a flat shape,
//
//	100 + 40 * changes + rows / 10
//
// where no more than MaxChanges are written, nor more than there are rows.
func (in Input) Cost() int {
	longest := 0.0
	for _, cm := range []*float64{in.AcrossCm, in.SideCm, in.WidthCm, in.HeightCm, in.LengthCm} {
		longest = math.Max(longest, fault.Or(cm, 0))
	}
	longest *= 4 // an apothem is at most so many sides
	rows := gauge.PriceRows(in.Gauge, nil, &longest, MaxRows)
	return cost.Sum(100, cost.Product(stepsAChange, min(rows, MaxChanges)), rows/rowsAStep)
}
