package shortrow

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Summary says the answer in words.
func (o Circle) Summary() string {
	return o.shape() + o.unit.Size(o.OuterRadiusCm) + " radius from " + report.CountOf(o.WedgeCount, "wedges") + " of " +
		report.CountOf(o.WidthStitches, "stitches") + ": " + report.CountOf(o.OuterRows, "rows") + " round the outer edge, " +
		o.closure() + "."
}

// shape is what the wedges make, up to its radius: only a whole turn is a disc
// or a ring that closes flat.
func (o Circle) shape() string {
	shape := "disc"
	if o.WantedInnerRows > 0 {
		shape = "ring"
	}
	degrees := report.AmountOf(measure.Decimal(o.degrees, 2), "degrees")
	switch {
	case o.degrees < fullTurn:
		return "A part of a " + shape + ", " + degrees + " of it, of "
	case o.degrees > fullTurn:
		return "A " + shape + " that ruffles, of " + degrees + " and "
	}
	return "A " + shape + " of "
}

// closure says by how much the outer edge misses the turn it should fill, and
// which way.
func (o Circle) closure() string {
	rows := measure.Decimal(math.Abs(o.ClosureRows), 2)
	turn := "close flat"
	if o.degrees != fullTurn {
		turn = "fill " + report.AmountOf(measure.Decimal(o.degrees, 2), "degrees")
	}
	way := "too long"
	if o.ClosureRows < 0 {
		way = "too short"
	}
	if rows == "0" {
		return "which " + turn
	}
	return report.AmountOf(rows, "rows") + " " + way + " to " + turn + " (" +
		report.AmountOf(measure.Decimal(math.Abs(o.ClosureDegrees), 2), "degrees") + ")"
}
