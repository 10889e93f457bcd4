package shortrow

import (
	"math"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
)

// What a wedge takes: so many steps for a row, which comes back written out, and so
// many stitches of its profile in a step; half as many where turns of least effort are
// looked for, of which two or so are tried for every stitch, and the nearest turns
// measured beside them.
const (
	stepsARow       = 10
	stitchesAStep   = 8
	searchedInAStep = stitchesAStep / 2
)

// Cost is the price of a wedge,
//
//	50 + 10 * rows + stitches / 4
//
// where rows are its short rows, at most twice MaxWedgeSpans: as many as it rises,
// twice as many where it is tall at both sides, and for a curve all that it rises from
// point to point, with a pair for each point, since it is rounded to pairs.
func (in WedgeInput) Cost() int {
	const most = 2 * MaxWedgeSpans
	width := cost.Clamp(in.WidthStitches, 2, stitch.MaxStitches)
	rows := gauge.PriceRows(in.Gauge, in.RiseRows, in.RiseCm, MaxWedgeRows)
	if g := in.Gauge; g != nil && in.RiseAngleDegrees != nil {
		rise := math.Tan(*in.RiseAngleDegrees*math.Pi/180) * float64(width) / g.Stitches * g.Rows
		rows = max(rows, cost.Ceil(rise, MaxWedgeRows))
	}
	if in.TallEnd == TallEndSides {
		rows *= 2
	}
	perCm := 0.0
	if g := in.Gauge; g != nil {
		perCm = g.Rows / fault.Or(g.OverCm, gauge.DefaultOverCm)
	}
	rows = cost.Sum(rows, climbed(in.ProfileRows, 1), climbed(in.ProfileCm, perCm))
	return cost.Sum(50, cost.Product(stepsARow, min(rows, most)), width/searchedInAStep)
}

// climbed is the rows that a profile rises from point to point.
func climbed(points []float64, rowsEach float64) int {
	points = points[:min(len(points), MaxProfilePoints)]
	rise, below := 0.0, 0.0
	for _, p := range points {
		rise += max(p-below, 0)
		below = p
	}
	return cost.Sum(cost.Ceil(rise*rowsEach, 2*MaxWedgeSpans), 2*len(points))
}

// Cost is the price of a circle,
//
//	50 + 10 * rows + stitches / 2
//
// where rows are those of at most four kinds of wedges, together at most
// MaxCircleRows.
func (in CircleInput) Cost() int {
	width := gauge.PriceStitches(in.Gauge, in.WidthStitches, in.OuterRadiusCm, stitch.MaxStitches)
	rows := MaxCircleRows
	if g := in.Gauge; g != nil && in.WedgeCount != nil {
		over := fault.Or(g.OverCm, gauge.DefaultOverCm)
		radius := fault.Or(in.InnerRadiusCm, 0) + float64(width)/g.Stitches*over
		round := 2 * math.Pi * radius * g.Rows / over * fault.Or(in.TurnDegrees, fullTurn) / fullTurn
		each := cost.Ceil(round, cost.Most)/cost.Clamp(*in.WedgeCount, 1, MaxWedges) + 4 // rounded up to pairs
		rows = min(cost.Product(wedgeKinds, each), MaxCircleRows)
	}
	return cost.Sum(50, cost.Product(stepsARow, rows), wedgeKinds*width/stitchesAStep)
}

// wedgeKinds is the most kinds of wedges in a circle: each of two numbers of rows is
// floor or ceiling of an even share.
const wedgeKinds = 4
