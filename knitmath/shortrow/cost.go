package shortrow

import (
	"math"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// Cost is the price of a wedge: twenty steps for each of its rows, and one for some
// stitches.
func (in WedgeInput) Cost() int {
	width := cost.Clamp(in.WidthStitches, 2, stitch.MaxStitches)
	rows := gauge.PriceRows(in.Gauge, in.RiseRows, in.RiseCm, MaxWedgeRows)
	if in.RiseAngleDegrees != nil || in.curved() {
		rows = 2 * MaxWedgeSpans
	}
	return cost.Sum(50, cost.Product(20, rows), width/20)
}

// Cost is the price of a circle: twenty steps for each row of its wedges, of which
// it writes two kinds or three.
func (in CircleInput) Cost() int {
	width := gauge.PriceStitches(in.Gauge, in.WidthStitches, in.OuterRadiusCm, stitch.MaxStitches)
	rows := 2 * MaxWedgeSpans
	if g := in.Gauge; g != nil && g.Stitches > 0 {
		turn := cost.Ceil(fault.Or(in.TurnDegrees, fullTurn), int(MaxTurn))
		round := cost.Ceil(2*math.Pi*float64(width)*g.Rows/g.Stitches*float64(turn)/fullTurn, cost.Most)
		rows = min(rows, 3*round/cost.Clamp(fault.Or(in.WedgeCount, fewestWedges), 1, MaxWedges))
	}
	return cost.Sum(50, cost.Product(20, rows), width/20)
}
