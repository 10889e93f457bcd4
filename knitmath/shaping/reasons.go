package shaping

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// The reasons of notices.
const (
	// JoinKeptEven: on a shaped side, shaping rows would be neighbours across a
	// point, and a row beside each point is kept even. Sent where any row may shape
	// and the rows of two stretches would meet. Field is "points".
	JoinKeptEven report.Reason = "JOIN_KEPT_EVEN"
	// ManyRuns: the shaping rows are no one or two runs of intervals, since every
	// schedule that is would depart too far from the straight line. Field is
	// "tolerance_stitches".
	ManyRuns report.Reason = "MANY_RUNS"
	// BeyondTolerance: in a size of several no schedule of two runs lies near enough to the
	// straight line, and the nearest of two runs is taken. Field is "tolerance_stitches".
	BeyondTolerance report.Reason = "BEYOND_TOLERANCE"
	// ManyItems: no row with few items lies near enough to equal gaps, and the most
	// even one is written. Field is "tolerance_stitches".
	ManyItems report.Reason = "MANY_ITEMS"
	// EqualGapsNear: with a few changes more or fewer all gaps are equal; the text
	// names the nearest counts on both sides. Field is "end_stitches".
	EqualGapsNear report.Reason = "EQUAL_GAPS_NEAR"
	// BarsUnlike: with these counts the bars of kfb or pfb cannot lie alike from both ends of
	// a mirrored row, only the row as written. Field is "operation".
	BarsUnlike report.Reason = "BARS_UNLIKE"
	// DecreasedEveryRow: more than manyInSuccession rows one after another decrease at
	// both edges. Field is that of the height; on a shaped side "points".
	DecreasedEveryRow report.Reason = "DECREASED_EVERY_ROW"
	// ShapedAtAnEnd: the first row of the piece or the last one shapes, which is hard to
	// work next to a cast-on or a bind-off. Field is "even_before_rows" or
	// "even_after_rows"; on a shaped side "points".
	ShapedAtAnEnd report.Reason = "SHAPED_AT_AN_END"
)

// barsUnlike says what is alike, and what is not.
func barsUnlike(op stitch.Op) report.Notice {
	return report.Notice{Reason: BarsUnlike, Field: "operation", Description: "the bar of " + op.Abbr() +
		" is its second stitch: with these counts the bars lie a stitch nearer to the end than to the beginning"}
}

var manyItemsNotice = report.Notice{Reason: ManyItems, Field: "tolerance_stitches",
	Description: "no row with fewer items lies that near to equal gaps; the most even row is given"}

// manyRunsNotice says how much further an easy schedule departs.
func manyRunsNotice(stitches float64) report.Notice {
	return report.Notice{Reason: ManyRuns, Field: "tolerance_stitches",
		Description: "no schedule of one or two runs lies that near to the straight line; the nearest rows are given; a tolerance of " +
			report.AmountOf(measure.Decimal(stitches, 2), "stitches") + " at each edge allows an easy one"}
}
