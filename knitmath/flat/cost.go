package flat

import (
	"math"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/shortrow"
)

// What a flat shape takes: steps for a row that changes the count, written and compared in
// many schedules, the plans that a refusal tries among them, and rows that are looked at in a step.
const (
	stepsAChange = 24
	rowsAStep    = 10
)

// Cost is the price of a flat shape,
//
//	100 + 24 * changes + rows / 10
//
// where no more than MaxChanges are written, nor more than there are rows.
func (in Input) Cost() int {
	if in.Arrangement == ArrangementShortRows {
		radius, inner := fault.Or(in.AcrossCm, 0)/2, fault.Or(in.HoleCm, 0)/2
		ask := shortrow.CircleInput{Gauge: in.Gauge, OuterRadiusCm: &radius, InnerRadiusCm: &inner, WedgeCount: in.WedgeCount}
		return cost.Sum(100, ask.Cost())
	}
	half := func(cm *float64) float64 { return fault.Or(cm, 0) / 2 }
	// From the centre of a polygon to its side it is less than twice that side.
	longest := math.Max(half(in.AcrossCm), math.Max(half(in.WidthCm), 4*half(in.SideCm)))
	longest = math.Max(longest, math.Max(fault.Or(in.HeightCm, 0), fault.Or(in.LengthCm, 0)))
	rows := gauge.PriceRows(in.Gauge, nil, &longest, MaxRows)
	return cost.Sum(100, cost.Product(stepsAChange, min(rows, MaxChanges)), rows/rowsAStep)
}
