package yardage

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A StitchGauge is a gauge of which only the stitches are known.
type StitchGauge struct {
	Stitches float64
	OverCm   *float64
}

// plainRatio is the rows to a stitch of width of plain knitting: kc/kw = 5.5/4.2 fully
// relaxed, as in loopConstants; from 1.2, the least of the literature (from memory), to
// 1.4, the most of printed gauges (20/28 and 22/30 to 10 cm are read often).
var plainRatio = Range{1.2, 5.5 / 4.2, 1.4}

var derivedCited = report.Source{Figure: "rows, where only stitches are known", Status: report.SourceStatusOwnDerivation,
	Citation: "rows = stitches * kc / kw = stitches * 5.5 / 4.2, stockinette fully relaxed; 1.2 (from memory) to 1.4 (printed gauges); " +
		"of garter stitch 1.82 to 2, see there"}

// rowsOf is the rows to a stitch of width of a fabric of which only stitches are known.
func rowsOf(p StitchPattern) Range {
	if p == StitchPatternGarter {
		return garterRatio
	}
	return plainRatio
}

// rowsToStitch is the rows to a stitch of width of the question where only stitches are known:
// those of garter stitch where the pieces without a gauge of their own are all of that, and
// otherwise those of stockinette.
func (q *question) rowsToStitch() Range {
	fabric := StitchPatternUnspecified
	for _, p := range q.in.Pieces {
		if p.Gauge == nil && p.Pattern != StitchPatternGarter {
			return plainRatio
		}
		if p.Gauge == nil {
			fabric = p.Pattern
		}
	}
	return rowsOf(fabric)
}

// rowsDerived is the description of RowsDerived: how many rows to a stitch were taken, what
// they are used for, and which of the pieces are of a fabric that is not like that.
func (q *question) rowsDerived() string {
	has := map[StitchPattern]bool{}
	for i, p := range q.pieces {
		if p.derived {
			has[max(q.in.Pieces[i].Pattern, StitchPatternStockinette)] = true
		}
	}
	if len(has) == 0 {
		return "has no rows; they are taken to be " + measure.Decimal(plainRatio.Likely, 2) + " to a stitch of width, as in stockinette, in " +
			"rows_to_stitch and loop_length_cm alone, since every piece has a gauge of its own"
	}
	var taken, unlike []string
	for p := range has {
		if p != StitchPatternStockinette && p != StitchPatternGarter {
			unlike = append(unlike, patternNames[p])
		}
	}
	for _, p := range []StitchPattern{StitchPatternStockinette, StitchPatternGarter} {
		if r := rowsOf(p); has[p] || p == StitchPatternStockinette && len(unlike) > 0 {
			taken = append(taken, measure.Decimal(r.Likely, 2)+" to a stitch of width as in "+patternNames[p]+", from "+
				measure.Decimal(r.Low, 2)+" to "+measure.Decimal(r.High, 2)+" in the range")
		}
	}
	s := "has no rows; they are taken to be " + report.Listed(taken) + "; count them if you can"
	if len(unlike) == 0 {
		return s
	}
	slices.Sort(unlike)
	verb := " keeps"
	if len(unlike) > 1 {
		verb = " keep"
	}
	return s + ": " + report.Listed(unlike) + verb + " to other rows, so give such a piece its own gauge"
}

// vetGauges checks the gauge, or the stitches that stand in its place.
func (q *question) vetGauges(c *fault.Checks) {
	s := q.in.StitchGauge
	if s == nil && q.in.Gauge == nil {
		c.OneOf(false, false, "gauge", "stitch_gauge")
		return
	}
	c.AtMostOne(s != nil, q.in.Gauge != nil, "gauge", "stitch_gauge")
	if q.in.Gauge != nil {
		q.st, q.rw = gauge.Vet(c, "gauge", q.in.Gauge)
	}
	if s == nil {
		return
	}
	c.RequiredNumber("stitch_gauge", "stitches", s.Stitches, gauge.MinCount, gauge.MaxCount)
	c.OptionalNumber("stitch_gauge", "over_cm", s.OverCm, measure.MinCm, gauge.MaxOverCm)
	if c.Sound("stitch_gauge") {
		q.st = gauge.NewDensity(s.Stitches, fault.Or(s.OverCm, gauge.DefaultOverCm))
	}
}

// rowsPerCm is the rows to the cm, derived where they are not known.
func (q *question) rowsPerCm() float64 {
	if q.in.StitchGauge != nil {
		return q.st.PerCm() * q.rowsToStitch().Likely
	}
	return q.rw.PerCm()
}

// A misgauge is a way in which gauges may be wrong: what their stitches and rows are to be
// multiplied by, and which figure of the range rows have that are derived from stitches.
type misgauge struct {
	gauge   float64
	derived int
}

// asGiven is a gauge that is right.
var asGiven = misgauge{1, likely}

// of is the stitches and rows to the cm of a piece whose gauge is so wrong.
func (m misgauge) of(p piece) (wales, courses float64) {
	wales, courses = p.wales*m.gauge, p.courses*m.gauge
	if p.derived {
		courses = wales * p.ratio.at(m.derived)
	}
	return wales, courses
}

// corners are the ways in which the gauge may be wrong at once.
func (q *question) corners() []misgauge {
	off := q.in.GaugeOffPercent / 100
	gauges := []float64{1}
	if off > 0 {
		gauges = []float64{1 - off, 1 + off}
	}
	rows := []int{likely}
	if q.in.StitchGauge != nil {
		rows = []int{low, high}
	}
	var all []misgauge
	for _, g := range gauges {
		for _, r := range rows {
			all = append(all, misgauge{g, r})
		}
	}
	return all
}
