package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// RowChoice says which rows may carry shaping, or bind off buttonholes.
type RowChoice int32

// The choices.
const (
	RowChoiceUnspecified RowChoice = iota // right side when flat, any in the round
	RowChoiceRightSide
	RowChoiceAny
)

// IntervalSpread is the order of two unequal intervals along an edge.
type IntervalSpread int32

// The orders.
const (
	IntervalSpreadUnspecified IntervalSpread = iota // least effort
	IntervalSpreadInterleaved
	IntervalSpreadSlowFirst
	IntervalSpreadFastFirst
	IntervalSpreadLeastEffort
)

// ShapedEdges says where a shaping row shapes.
type ShapedEdges int32

// The choices.
const (
	ShapedEdgesUnspecified ShapedEdges = iota // both
	ShapedEdgesBoth
	ShapedEdgesBeginning
	ShapedEdgesEnd
)

// Ranges of shaping at an edge.
const (
	// MaxChangePerEdge: beyond a double decrease an edge puckers.
	MaxChangePerEdge = 2
	// MaxTolerance is the most stitches that a plan of least effort may be allowed to
	// depart beyond the nearest.
	MaxTolerance = 100
	// defaultTolerance, if it is not said: one stitch at an edge is not seen. Common
	// practice.
	defaultTolerance = 1
	// endsWorth is how much more than the excess a plan may depart if the first row and
	// the last are kept even by it and would not be otherwise. Own choice: half a stitch
	// at the default, which is less seen than an increase in a cast-on.
	endsWorth = 1.5
	// MaxTaperEdge is the most plain stitches outside the shaping.
	MaxTaperEdge = 100
)

// vetEdges asks what a taper and a shaped side ask alike of their shaping rows.
func vetEdges(c *fault.Checks, in TaperInput) {
	fault.Enum(c, "", "construction", in.Construction, stitch.InTheRound)
	fault.Enum(c, "", "edges", in.Edges, ShapedEdgesEnd)
	c.OptionalCount("", "edge_change_stitches", in.EdgeChangeStitches, 1, MaxChangePerEdge)
	c.OptionalCount("", "edge_stitches", in.EdgeStitches, 1, MaxTaperEdge)
	fault.Enum(c, "", "row_choice", in.RowChoice, RowChoiceAny)
	fault.Enum(c, "", "first_side", in.FirstSide, stitch.WrongSide)
	if in.Construction == stitch.InTheRound && in.FirstSide == stitch.WrongSide {
		c.Add("first_side", fault.ReasonContradictory, "must be the right side in the round, which has no other")
	}
}

// vetSpread asks how unequal intervals are spread, and how freely.
func vetSpread(c *fault.Checks, spread IntervalSpread, excess *float64) {
	fault.Enum(c, "", "spread", spread, IntervalSpreadLeastEffort)
	vetTolerance(c, excess, spread == IntervalSpreadUnspecified || spread == IntervalSpreadLeastEffort)
}

// vetTolerance asks how freely a plan of least effort may be chosen.
func vetTolerance(c *fault.Checks, excess *float64, easy bool) {
	c.OptionalNumber("", "tolerance_stitches", excess, 0, MaxTolerance)
	if excess != nil && !easy {
		c.Add("tolerance_stitches", fault.ReasonContradictory, "is heeded only where the spread is that of least effort")
	}
}

// edges is what those answers settle, its counts and rows still open.
func (in TaperInput) edges() taper {
	round := in.Construction == stitch.InTheRound
	return taper{
		round: round, edges: in.Edges, firstSide: in.FirstSide, order: in.Spread, excess: fault.Or(in.ToleranceStitches, defaultTolerance),
		perEdge: fault.Or(in.EdgeChangeStitches, 1), edge: fault.Or(in.EdgeStitches, 1),
		anyRow: in.RowChoice == RowChoiceAny || in.RowChoice == RowChoiceUnspecified && round,
	}
}

// vetHeight turns a height that is given in one of two ways into rows, and says
// which field it came from. It is 0 where the gauge makes no such rows of it.
func vetHeight(c *fault.Checks, path string, rows *int, cm *float64, rw gauge.Density) (height int, field string) {
	field = fault.Join(path, "height_rows")
	if rows == nil {
		field = fault.Join(path, "height_cm")
	}
	height = rw.Counted(rows, cm)
	if height < 1 || height > stitch.MaxRows {
		c.Infeasible("the height is "+report.CountOf(height, "rows")+" at this gauge; it must be from 1 to "+
			strconv.Itoa(stitch.MaxRows), field, "gauge")
		return 0, field
	}
	return height, field
}

// noun is what a piece is worked in.
func noun(round bool) string {
	if round {
		return "round"
	}
	return "row"
}
