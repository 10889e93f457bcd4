package curve

import (
	"math"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// What a plan takes: the places near the curve, of which there are so many to a row, lead to
// so many others; the farther a plan may depart, the more of both. So many of them are looked
// at in a step. A row is written out in so many steps.
const (
	placesInAStep = 8
	stepsARow     = 3
)

// Cost is the price of a curved edge,
//
//	100 + 3 * rows + rows * (rows + stitches / 2) * (1 + tolerance) / 8
//
// where stitches are all that the edge moves, in and out, and the tolerance is in half
// stitches, up, and one at least: without any each row's nearest places are looked at all the
// same. Remedies are asked for the same again, up to three times.
func (in CurvedEdgeInput) Cost() int {
	rows, moved := 0, 0
	perCm, highCm := 0.0, 0.0
	if g := in.Gauge; g != nil {
		over := fault.Or(g.OverCm, gauge.DefaultOverCm)
		perCm, highCm = g.Stitches/over, g.Rows/over
	}
	before := 0.0
	for _, p := range in.Points[:min(len(in.Points), MaxPoints)] {
		height, inward := 0.0, before
		switch {
		case p.HeightRows != nil:
			height = float64(*p.HeightRows)
		case p.HeightCm != nil:
			height = *p.HeightCm * highCm
		}
		switch {
		case p.InwardStitches != nil:
			inward = float64(*p.InwardStitches)
		case p.InwardCm != nil:
			inward = *p.InwardCm * perCm
		}
		rows = max(rows, cost.Ceil(height, MaxRows))
		moved += cost.Ceil(math.Abs(inward-before), 2*MaxInward)
		before = inward
	}
	halves := max(1, cost.Ceil(2*fault.Or(in.ToleranceStitches, DefaultTolerance), 2*MaxTolerance))
	return cost.Sum(100, cost.Product(stepsARow, rows), cost.Product(rows, rows+moved/2, 2+halves)/(2*placesInAStep))
}
