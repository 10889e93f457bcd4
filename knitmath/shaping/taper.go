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

// vetTaper checks everything and settles the shaping rows.
func vetTaper(c *fault.Checks, in TaperInput) (t taper, st, rw gauge.Density) {
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
	c.OptionalCount("", "plain_before_rows", in.PlainBeforeRows, 0, stitch.MaxRows)
	c.OptionalCount("", "plain_after_rows", in.PlainAfterRows, 0, stitch.MaxRows)
	fault.Enum(c, "", "spread", in.Spread, IntervalSpreadFastFirst)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Err() != nil {
		return t, st, rw
	}
	t = in.edges()
	t.start, t.end, t.from, t.to = in.StartStitches, in.EndStitches, "start_stitches", "end_stitches"
	t.before, t.after = fault.Or(in.PlainBeforeRows, 0), fault.Or(in.PlainAfterRows, 0)
	t.rows, t.rowField = vetHeight(c, "", in.HeightRows, in.HeightCm, rw)
	if c.Err() != nil {
		return t, st, rw
	}
	if t.straight() {
		c.Infeasible("start_stitches and end_stitches are equal: there is nothing to shape", t.from, t.to)
		return t, st, rw
	}
	t.placeSlots()
	t.vetFits(c, "")
	return t, st, rw
}

// plan works the taper out and writes the answer.
func (t taper) plan(in TaperInput, st, rw gauge.Density) Taper {
	w := t.work()
	first, last := w.rows[0].RowNumber, w.rows[len(w.rows)-1].RowNumber
	out := Taper{
		ShapingRowCount: t.k, RowChangeStitches: w.change, HeightRows: t.rows,
		FirstShapingRowNumber: first, Intervals: w.intervals, PlainAfterRows: t.rows - last, ShapingRows: w.rows,
		RightSideRow: w.rightSide, WrongSideRow: w.wrongSide,
		GreatestDepartureStitches: t.departure(w, t.before, t.rows-t.after),
		t:                         t, unit: in.DisplayUnit,
	}
	if in.Gauge != nil {
		h, a, b := rw.SizeCm(t.rows), st.SizeCm(t.start), st.SizeCm(t.end)
		out.HeightCm, out.StartWidthCm, out.EndWidthCm = &h, &a, &b
	}
	if in.WithOutline {
		out.Outline = t.edgesOutline(out.ShapingRows, st, rw)
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
	s += ": " + report.CountOf(o.ShapingRowCount, "shaping "+rows)
	change := report.CountOf(measure.Abs(o.RowChangeStitches), "stitches")
	if o.ShapingRowCount == 1 {
		s += " of " + change
	} else {
		s += ", " + change + " each"
	}
	return s + ", " + departureWords(o.GreatestDepartureStitches, "a straight line") + "."
}

// departureWords is "never more than 1 stitch from a straight line".
func departureWords(stitches float64, line string) string {
	number := measure.Decimal(stitches, 2)
	if number == "0" {
		return "exactly on " + line
	}
	return "never more than " + report.AmountOf(number, "stitches") + " from " + line
}

// Directions write the taper as a pattern would.
func (o Taper) Directions() []string {
	rows := noun(o.t.round) + "s"
	d := o.t.firstRowDirection(o.ShapingRows)
	if plain := o.FirstShapingRowNumber - 1; plain > 0 {
		d = append(d, "Work "+report.CountOf(plain, rows)+" plain.")
	}
	w := shapedRows{o.RowChangeStitches, o.ShapingRows, o.Intervals, o.RightSideRow, o.WrongSideRow}
	instructions, when := w.directions(o.t.round, o.t.tellsSides(o.ShapingRows))
	d = append(append(d, instructions...), when+".")
	if o.PlainAfterRows > 0 {
		d = append(d, "Work "+report.CountOf(o.PlainAfterRows, rows)+" plain.")
	}
	return d
}
