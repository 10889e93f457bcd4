package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// ShapingRows says which rows may carry shaping.
type ShapingRows int32

// The choices.
const (
	ShapingRowsUnspecified ShapingRows = iota // right side when flat, any in the round
	ShapingRowsRightSide
	ShapingRowsAny
)

// IntervalSpread is the order of two unequal intervals along an edge.
type IntervalSpread int32

// The orders.
const (
	IntervalSpreadUnspecified IntervalSpread = iota // interleaved
	IntervalSpreadInterleaved
	IntervalSpreadSlowFirst
	IntervalSpreadFastFirst
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

// Ranges of a taper.
const (
	// MaxChangePerEdge: beyond a double decrease an edge puckers.
	MaxChangePerEdge = 2
	// MaxTaperEdge is the most plain stitches outside the shaping.
	MaxTaperEdge = 100
)

// TaperInput asks for a straight taper. It mirrors PlanTaperRequest.
type TaperInput struct {
	StartStitches      int
	EndStitches        int
	HeightRows         *int
	HeightCm           *float64
	Gauge              *gauge.Gauge
	Construction       stitch.Construction
	Edges              ShapedEdges
	EdgeChangeStitches *int
	EdgeStitches       *int
	ShapingRows        ShapingRows
	FirstSide          stitch.Side
	PlainBeforeRows    *int
	PlainAfterRows     *int
	Spread             IntervalSpread
	DisplayUnit        measure.DisplayUnit
	WithOutline        bool
}

// An IntervalRun is a number of equal intervals between shaping rows.
type IntervalRun struct {
	EveryRows int
	Times     int
}

// A ShapingRow is one row that shapes.
type ShapingRow struct {
	RowNumber   int
	Side        stitch.Side
	EndStitches int
}

// Taper is the answer to TaperInput.
type Taper struct {
	ShapingRowCount           int
	RowChangeStitches         int
	HeightRows                int
	FirstShapingRowNumber     int
	Intervals                 []IntervalRun
	PlainAfterRows            int
	ShapingRows               []ShapingRow
	RightSideRow              *stitch.Instruction
	WrongSideRow              *stitch.Instruction
	GreatestDepartureStitches float64
	HeightCm                  *float64
	StartWidthCm              *float64
	EndWidthCm                *float64
	Notices                   []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	t    taper
	unit measure.DisplayUnit
}

// PlanTaper spaces k shaping rows over the rows of a piece. The rows that may
// shape are numbered as slots; slot i of the k used out of m is
//
//	floor((2i + 1) * m / 2k),  i = 0 .. k-1
//
// so that the step line stays as close to the straight line as integers allow,
// and intervals take at most two neighbouring legal values. Slow first and fast
// first keep the first and last shaping row and sort the intervals between.
//
// StartStitches and EndStitches must be in [1, 10000], rows in [1, 10000], a height in
// [0.1, 1000] cm is taken to the nearest row, half-way up. Too few rows are
// refused with how many it would take.
//
// Source: own derivation on the Euclidean spread (see [spread.Place]).
func PlanTaper(in TaperInput) (Taper, error) {
	var c fault.Checks
	t, st, rw := vetTaper(&c, in)
	if err := c.Err(); err != nil {
		return Taper{}, err
	}
	return t.plan(in, st, rw), nil
}

// taper is a checked question.
type taper struct {
	start, end    int
	rows          int
	before, after int
	round         bool
	edges         ShapedEdges
	perEdge       int // stitches changed at each shaped edge
	edge          int // plain stitches outside the shaping
	step          int // rows from one slot to the next
	first         int // row of the first slot
	slots         int
	k             int // shaping rows
	firstSide     stitch.Side
	order         IntervalSpread
}

// vetTaper checks everything and settles the slots.
func vetTaper(c *fault.Checks, in TaperInput) (t taper, st, rw gauge.Density) {
	okCounts := c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	okCounts = c.RequiredCount("", "end_stitches", in.EndStitches, 1, stitch.MaxStitches) && okCounts
	rowField := "height_rows"
	okRows := c.OptionalCount("", "height_rows", in.HeightRows, 1, stitch.MaxRows)
	okRows = c.OptionalNumber("", "height_cm", in.HeightCm, measure.MinCm, measure.MaxCm) && okRows
	if in.Gauge != nil {
		st, rw = gauge.Vet(c, "gauge", in.Gauge)
	}
	okGauge := c.Sound("gauge")
	okRows = vetOneOfRows(c, in) && okRows
	ok := fault.Enum(c, "", "construction", in.Construction, stitch.InTheRound)
	ok = fault.Enum(c, "", "edges", in.Edges, ShapedEdgesEnd) && ok
	ok = c.OptionalCount("", "edge_change_stitches", in.EdgeChangeStitches, 1, MaxChangePerEdge) && ok
	ok = c.OptionalCount("", "edge_stitches", in.EdgeStitches, 1, MaxTaperEdge) && ok
	ok = fault.Enum(c, "", "shaping_rows", in.ShapingRows, ShapingRowsAny) && ok
	ok = fault.Enum(c, "", "first_side", in.FirstSide, stitch.WrongSide) && ok
	if in.Construction == stitch.InTheRound && in.FirstSide == stitch.WrongSide {
		c.Add("first_side", fault.ReasonContradictory, "must be the right side in the round, which has no other")
		ok = false
	}
	ok = c.OptionalCount("", "plain_before_rows", in.PlainBeforeRows, 0, stitch.MaxRows) && ok
	ok = c.OptionalCount("", "plain_after_rows", in.PlainAfterRows, 0, stitch.MaxRows) && ok
	ok = fault.Enum(c, "", "spread", in.Spread, IntervalSpreadFastFirst) && ok
	ok = fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn) && ok
	if !ok || !okCounts || !okRows || !okGauge {
		return t, st, rw
	}
	t = taper{start: in.StartStitches, end: in.EndStitches,
		before: fault.Or(in.PlainBeforeRows, 0), after: fault.Or(in.PlainAfterRows, 0),
		round: in.Construction == stitch.InTheRound, edges: in.Edges,
		perEdge: fault.Or(in.EdgeChangeStitches, 1), edge: fault.Or(in.EdgeStitches, 1),
		firstSide: in.FirstSide, order: in.Spread}
	if in.HeightRows != nil {
		t.rows = *in.HeightRows
	} else {
		rowField = "height_cm"
		t.rows = rw.Nearest(measure.Micrometres(*in.HeightCm))
		if t.rows < 1 || t.rows > stitch.MaxRows {
			c.Infeasible("the height is "+report.CountOf(t.rows, "rows")+" at this gauge; it must be from 1 to "+
				strconv.Itoa(stitch.MaxRows), "height_cm", "gauge")
			return t, st, rw
		}
	}
	t.placeSlots(in.ShapingRows)
	vetTaperFits(c, &t, rowField)
	return t, st, rw
}

// vetOneOfRows checks that the height is given once, and can be turned into rows.
func vetOneOfRows(c *fault.Checks, in TaperInput) bool {
	switch {
	case in.HeightRows == nil && in.HeightCm == nil:
		c.Add("height_rows", fault.ReasonRequired, "is missing, and so is height_cm; give one of them")
		c.Add("height_cm", fault.ReasonRequired, "is missing, and so is height_rows; give one of them")
	case in.HeightRows != nil && in.HeightCm != nil:
		c.Add("height_rows", fault.ReasonContradictory, "excludes height_cm; give one of them")
		c.Add("height_cm", fault.ReasonContradictory, "excludes height_rows; give one of them")
	case in.HeightCm != nil && in.Gauge == nil:
		c.Add("gauge", fault.ReasonRequired, "is missing; height_cm needs it")
	default:
		return true
	}
	return false
}

// placeSlots finds the rows that may shape: first, first+step, ... slots of
// them.
func (t *taper) placeSlots(rows ShapingRows) {
	t.step, t.first = 1, t.before+1
	anyRow := rows == ShapingRowsAny || rows == ShapingRowsUnspecified && t.round
	if !anyRow {
		t.step = 2
		if t.side(t.first) == stitch.WrongSide {
			t.first++
		}
	}
	if last := t.rows - t.after; last >= t.first {
		t.slots = (last-t.first)/t.step + 1
	}
}

// side is the side of a row. In the round it serves to tell every second round,
// counted from the first.
func (t taper) side(row int) stitch.Side {
	odd := row%2 == 1
	if odd == (t.firstSide != stitch.WrongSide) {
		return stitch.RightSide
	}
	return stitch.WrongSide
}

// perRow is how many stitches one shaping row changes.
func (t taper) perRow() int {
	if t.edges == ShapedEdgesBeginning || t.edges == ShapedEdgesEnd {
		return t.perEdge
	}
	return 2 * t.perEdge
}

// vetTaperFits checks that the shaping rows exist, fit, and can be worked.
func vetTaperFits(c *fault.Checks, t *taper, rowField string) {
	change, per := measure.Abs(t.end-t.start), t.perRow()
	if change == 0 {
		c.Infeasible("start_stitches and end_stitches are equal: there is nothing to shape", "start_stitches", "end_stitches")
		return
	}
	if change%per != 0 {
		c.Infeasible(t.notWhole(), "start_stitches", "end_stitches")
		return
	}
	t.k = change / per
	if t.k > t.slots {
		c.Infeasible(t.tooFewRows(), "end_stitches", rowField)
	}
	if detail := t.tooNarrow(); detail != "" {
		c.Infeasible(detail, "start_stitches", "end_stitches", "edge_stitches")
	}
}

// notWhole says that no whole number of shaping rows makes the change.
func (t taper) notWhole() string {
	per := t.perRow()
	return "each shaping row changes " + report.CountOf(per, "stitches") + ", and " + strconv.Itoa(measure.Abs(t.end-t.start)) +
		" is not a multiple of that; the nearest end counts that are: " + t.nearestEnds(per)
}

// tooNarrow says that the shaping rows have too few stitches to be worked on;
// it is empty when they have enough.
func (t taper) tooNarrow() string {
	least, before := t.leastWidth(), t.start
	if t.start > t.end {
		before = t.end + t.perRow()
	}
	if before >= least {
		return ""
	}
	return "a shaping row needs at least " + report.CountOf(least, "stitches") + " with this edge, and the narrowest has " +
		strconv.Itoa(before)
}

// nearestEnds names the end counts on either side that whole shaping rows reach.
func (t taper) nearestEnds(per int) string {
	change := measure.Abs(t.end-t.start) / per * per
	near, far := t.start+change, t.start+change+per
	if t.end < t.start {
		near, far = t.start-change, t.start-change-per
	}
	if far < 1 || far > stitch.MaxStitches {
		return strconv.Itoa(near)
	}
	if change == 0 {
		return strconv.Itoa(far)
	}
	return strconv.Itoa(near) + " and " + strconv.Itoa(far)
}

// tooFewRows says how many rows it would take, and what else would do.
func (t taper) tooFewRows() string {
	s := report.CountOf(t.k, "shaping rows") + " are needed and " + strconv.Itoa(t.slots) + " may shape; it takes at least " +
		report.CountOf(t.first+(t.k-1)*t.step+t.after, "rows")
	if t.step == 2 {
		s += ", or shaping on any row"
	}
	if t.perEdge < MaxChangePerEdge && t.k%2 == 0 {
		s += ", or 2 stitches at each edge"
	}
	if t.before+t.after > 0 {
		s += ", or fewer rows kept plain"
	}
	return s
}
