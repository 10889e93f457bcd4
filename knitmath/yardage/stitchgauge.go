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
		"where all is garter stitch 1.82 to 2, see there"}

// rowsToStitch is the rows to a stitch of width where only stitches are known: those of
// garter stitch where the pieces without a gauge of their own are all of that, and otherwise
// those of stockinette.
func (q *question) rowsToStitch() Range {
	garter := false
	for _, p := range q.in.Pieces {
		if p.Gauge != nil {
			continue
		}
		if p.Pattern != StitchPatternGarter {
			return plainRatio
		}
		garter = true
	}
	if garter {
		return garterRatio
	}
	return plainRatio
}

// rowsDerived is the description of RowsDerived: how many rows to a stitch were taken, what
// they are used for, and which of the pieces are of a fabric that is not like that.
func (q *question) rowsDerived() string {
	r, fabric := q.rowsToStitch(), StitchPatternStockinette
	if r == garterRatio {
		fabric = StitchPatternGarter
	}
	ratio := measure.Decimal(r.Likely, 2) + " to a stitch of width"
	var unlike []string
	derived := false
	for i, p := range q.pieces {
		derived = derived || p.derived
		if pattern := max(q.in.Pieces[i].Pattern, StitchPatternStockinette); p.derived && pattern != fabric {
			unlike = append(unlike, patternNames[pattern])
		}
	}
	if !derived {
		return "has no rows; they are taken to be " + ratio + ", as in " + patternNames[fabric] +
			", in rows_to_stitch and loop_length_cm alone, since every piece has a gauge of its own"
	}
	s := "has no rows; they are taken to be " + ratio + ", from " + measure.Decimal(r.Low, 2) + " to " + measure.Decimal(r.High, 2) +
		" in the range, as in " + patternNames[fabric]
	if len(unlike) == 0 {
		return s + "; count them if you can"
	}
	slices.Sort(unlike)
	verb := " does not"
	if unlike = slices.Compact(unlike); len(unlike) > 1 {
		verb = " do not"
	}
	return s + ", which " + report.Listed(unlike) + verb + " keep to: give such a piece its own gauge"
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
// multiplied by, and rows that are derived from stitches once more.
type misgauge struct{ gauge, derived float64 }

// asGiven is a gauge that is right.
var asGiven = misgauge{1, 1}

// of is the stitches and rows to the cm of a piece whose gauge is so wrong.
func (m misgauge) of(p piece) (wales, courses float64) {
	wales, courses = p.wales*m.gauge, p.courses*m.gauge
	if p.derived {
		courses *= m.derived
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
	ratios := []float64{1}
	if q.in.StitchGauge != nil {
		r := q.rowsToStitch()
		ratios = []float64{r.Low / r.Likely, r.High / r.Likely}
	}
	var all []misgauge
	for _, g := range gauges {
		for _, r := range ratios {
			all = append(all, misgauge{g, r})
		}
	}
	return all
}
