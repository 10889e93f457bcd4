package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
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
	RowChoice          RowChoice
	FirstSide          stitch.Side
	EvenBeforeRows     *int
	EvenAfterRows      *int
	Spread             IntervalSpread
	ToleranceStitches  *float64
	DisplayUnit        measure.DisplayUnit
	WithOutline        bool
}

// A ShapingRow is one row that shapes.
type ShapingRow struct {
	RowNumber   int
	Side        stitch.Side
	EndStitches int
}

// Taper is the answer to TaperInput.
type Taper struct {
	ShapingRows               int
	RowChangeStitches         int
	HeightRows                int
	FirstShapingRowNumber     int
	Intervals                 schedule.Schedule
	EvenAfterRows             int
	Rows                      []ShapingRow
	RightSideRow              *stitch.Instruction
	WrongSideRow              *stitch.Instruction
	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	Effort                    int
	HeightCm                  *float64
	StartWidthCm              *float64
	EndWidthCm                *float64
	Notices                   []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	t    taper
	unit measure.DisplayUnit
}

// PlanTaper spaces k shaping rows over the rows of a piece, from the end of row
// from to the end of row from + n. Nearest to the straight line lie the legal rows
// nearest to
//
//	from + 1/2 + (2i + 1) * n / 2k,  i = 0 .. k-1
//
// Interleaved, these are the shaping rows. Slow first and fast first keep the first
// and the last of them and sort the intervals between. Left to itself, the plan is
// the schedule of least effort ([schedule.Line.Easiest]) that departs by no more than
// ToleranceStitches at each edge, 1 if it is nil, beyond what the nearest rows do. Where
// there is no such schedule the nearest rows are the plan, and a notice says so.
//
// EvenBeforeRows and EvenAfterRows, if they are nil, are 1 where a row can be spared
// and an easy schedule can spare it, for which it may depart by half of ToleranceStitches
// more: nobody likes to shape in the row after a cast-on or before a bind-off. Common
// practice.
//
// StartStitches and EndStitches must be in [1, 10000], rows in [1, 10000],
// ToleranceStitches in [0, 100], a height in [0.1, 1000] cm is taken to the nearest row,
// half-way up. Too few rows are refused with how many it would take, and with what
// else would do: every remedy is asked of the planner before it is offered.
//
// Source: own derivation.
func PlanTaper(in TaperInput) (Taper, error) {
	var c fault.Checks
	t, st, rw := vetTaper(&c, in, func(ch change) bool { return in.with(ch).accepts() })
	if err := c.Err(); err != nil {
		return Taper{}, err
	}
	return t.plan(in, st, rw), nil
}

// vetTaper checks everything and settles the shaping rows. would says of a change
// whether it would be planned; nil when no remedies are wanted.
func vetTaper(c *fault.Checks, in TaperInput, would func(change) bool) (t taper, st, rw gauge.Density) {
	c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	c.RequiredCount("", "end_stitches", in.EndStitches, 1, stitch.MaxStitches)
	c.OptionalCount("", "height_rows", in.HeightRows, 1, stitch.MaxRows)
	c.OptionalNumber("", "height_cm", in.HeightCm, measure.MinCm, measure.MaxCm)
	if in.Gauge != nil {
		st, rw = gauge.Vet(c, "gauge", in.Gauge)
	}
	c.OneOf(in.HeightRows != nil, in.HeightCm != nil, "height_rows", "height_cm")
	if in.HeightCm != nil && in.HeightRows == nil && in.Gauge == nil {
		c.Add("gauge", fault.ReasonRequired, "is missing; height_cm needs it")
	}
	vetEdges(c, in)
	c.OptionalCount("", "even_before_rows", in.EvenBeforeRows, 0, stitch.MaxRows)
	c.OptionalCount("", "even_after_rows", in.EvenAfterRows, 0, stitch.MaxRows)
	vetSpread(c, in.Spread, in.ToleranceStitches)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Err() != nil {
		return t, st, rw
	}
	return in.settle(c, "", rw, would), st, rw
}

// settle settles the shaping rows of a question whose fields are in order, its counts
// and height being those of a path.
func (in TaperInput) settle(c *fault.Checks, path string, rw gauge.Density, would func(change) bool) taper {
	t := in.edges()
	t.start, t.end, t.from, t.to = in.StartStitches, in.EndStitches, fault.Join(path, "start_stitches"), fault.Join(path, "end_stitches")
	t.would, t.evenFirst, t.evenLast = would, in.EvenBeforeRows == nil, in.EvenAfterRows == nil
	t.before, t.after = fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0)
	t.rows, t.rowField = vetHeight(c, path, in.HeightRows, in.HeightCm, rw)
	switch {
	case t.rows == 0:
	case t.straight():
		c.Infeasible("start_stitches and end_stitches are equal: there is nothing to shape", t.from, t.to)
	default:
		t.placeSlots()
		t.vetFits(c, "")
	}
	return t
}

// plan works the taper out and writes the answer.
func (t taper) plan(in TaperInput, st, rw gauge.Density) Taper {
	w := t.work()
	first, last := w.rows[0].RowNumber, w.rows[len(w.rows)-1].RowNumber
	out := Taper{
		ShapingRows: t.k, RowChangeStitches: w.change, HeightRows: t.rows,
		FirstShapingRowNumber: first, Intervals: w.intervals, EvenAfterRows: t.rows - last, Rows: w.rows,
		RightSideRow: w.rightSide, WrongSideRow: w.wrongSide,
		GreatestDepartureStitches: t.departure(w), LeastDepartureStitches: w.least, Effort: w.effort(),
		t: t, unit: in.DisplayUnit,
	}
	if w.wanting != nil {
		out.Notices = append(out.Notices, manyRunsNotice(*w.wanting))
	}
	out.Notices = append(out.Notices, t.senseNotices(out.Rows, out.HeightRows, t.rowField, "even_before_rows", "even_after_rows")...)
	if in.Gauge != nil {
		h, a, b := rw.SizeCm(t.rows), st.SizeCm(t.start), st.SizeCm(t.end)
		out.HeightCm, out.StartWidthCm, out.EndWidthCm = &h, &a, &b
	}
	if in.WithOutline {
		out.Outline = t.edgesOutline(out.Rows, st, rw)
	}
	return out
}

// Summary says the answer in words.
func (o Taper) Summary() string {
	rows := noun(o.t.round) + "s"
	s := "From " + strconv.Itoa(o.t.start) + " to " + report.CountOf(o.t.end, "stitches") + " over " + report.CountOf(o.HeightRows, rows)
	if o.HeightCm != nil {
		s += " (" + o.unit.Size(*o.HeightCm) + ")"
	}
	s += ": " + report.CountOf(o.ShapingRows, "shaping "+rows)
	change := report.CountOf(measure.Abs(o.RowChangeStitches), "stitches")
	if o.ShapingRows == 1 {
		s += " of " + change
	} else {
		s += ", " + change + " each"
	}
	return s + ", " + departureWords(o.GreatestDepartureStitches, "a straight line") + "."
}

// departureWords is "no edge more than 1 stitch from a straight line".
func departureWords(stitches float64, line string) string {
	number := measure.Decimal(stitches, 2)
	if number == "0" {
		return "exactly on " + line
	}
	return "no edge more than " + report.AmountOf(number, "stitches") + " from " + line
}

// Directions write the taper as a pattern would.
func (o Taper) Directions() []string {
	w := shapedRows{change: o.RowChangeStitches, rows: o.Rows, intervals: o.Intervals,
		rightSide: o.RightSideRow, wrongSide: o.WrongSideRow}
	d := append(o.t.firstRowDirection(o.Rows),
		shapedDirections([]shapedRows{w}, o.HeightRows, o.t.round, o.t.tellsSides(o.Rows))...)
	if !o.t.round && (o.HeightRows%2 == 1) == (o.t.firstSide != stitch.WrongSide) {
		// Caps, armholes and shoulders are begun on the right side.
		d = append(d, endsOnRightSide(""))
	}
	return d
}

// endsOnRightSide says that the last row is a right-side row, in which sizes if it is not so in all.
func endsOnRightSide(inSizes string) string {
	return "Note: " + inSizes + "the last row is a right-side row; what comes next begins with a wrong-side row."
}
