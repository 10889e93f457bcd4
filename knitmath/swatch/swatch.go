package swatch

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// An Input asks for a gauge from readings. It mirrors ComputeGaugeRequest.
type Input struct {
	StitchesBefore []Reading
	RowsBefore     []Reading
	StitchesAfter  []Reading
	RowsAfter      []Reading
	OverCm         *float64
	WidthCm        *float64
	HeightCm       *float64
	NeedleMm       *float64
	DisplayUnit    measure.DisplayUnit
}

// A SizeConsequence is what the uncertainty of a gauge does to a size.
// SmallestCm and LargestCm are the size of Count at the two ends of the 95 %
// interval.
type SizeConsequence struct {
	AskedCm    float64
	Count      int
	SizeCm     float64
	SmallestCm *float64
	LargestCm  *float64
}

// A Result is the answer to Input. What is absent is nil.
type Result struct {
	Gauge               *gauge.Gauge
	OverCm              float64
	StitchesBefore      *Statistics
	RowsBefore          *Statistics
	StitchesAfter       *Statistics
	RowsAfter           *Statistics
	WidthChangePercent  *float64
	LengthChangePercent *float64
	Width               *SizeConsequence
	Height              *SizeConsequence
	YarnCategories      []yarn.Category
	Needle              *NeedleSize
	Notices             []report.Notice

	unit measure.DisplayUnit
}

// ComputeGauge makes a gauge out of swatch readings: mean, standard deviation
// and 95 % half-width of each list, the change on washing, and what the
// uncertainty does to a size. The gauge to knit by is the washed one where it
// was read. Each reading counts alike. The count for a size is the one
// ComputeCastOn gives for the mean gauge: nearest, exactly half-way up, the mean
// read to the nearest millionth of a stitch.
//
// Source: W. S. Gosset ("Student"), The probable error of a mean, Biometrika 6
// (1908); ISO 5077:2007 for the sign of the change; Grubbs (1969) for outliers.
func ComputeGauge(in Input) (Result, error) {
	var c fault.Checks
	stitches := direction{noun: "stitches", before: vetReadings(&c, "stitches_before", in.StitchesBefore)}
	rows := direction{noun: "rows", before: vetReadings(&c, "rows_before", in.RowsBefore)}
	stitches.after = vetReadings(&c, "stitches_after", in.StitchesAfter)
	rows.after = vetReadings(&c, "rows_after", in.RowsAfter)
	c.OptionalNumber("", "over_cm", in.OverCm, measure.MinCm, gauge.MaxOverCm)
	c.OptionalNumber("", "width_cm", in.WidthCm, measure.MinCm, measure.MaxCm)
	c.OptionalNumber("", "height_cm", in.HeightCm, measure.MinCm, measure.MaxCm)
	c.OptionalNumber("", "needle_mm", in.NeedleMm, MinNeedleMm, MaxNeedleMm)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	vetTogether(&c, in)

	out := Result{OverCm: fault.Or(in.OverCm, gauge.DefaultOverCm), unit: in.DisplayUnit}
	if c.Sound("over_cm") {
		vetMeans(&c, &stitches, out.OverCm, in.OverCm != nil)
		vetMeans(&c, &rows, out.OverCm, in.OverCm != nil)
		out.Width = vetConsequence(&c, &stitches, in.WidthCm, "width_cm")
		out.Height = vetConsequence(&c, &rows, in.HeightCm, "height_cm")
	}
	if err := c.Err(); err != nil {
		return Result{}, err
	}
	out.fill(&stitches, &rows)
	out.lookUp(&stitches, in.NeedleMm)
	return out, nil
}

// vetTogether checks what must be given together.
func vetTogether(c *fault.Checks, in Input) {
	noStitches := len(in.StitchesBefore)+len(in.StitchesAfter) == 0
	noRows := len(in.RowsBefore)+len(in.RowsAfter) == 0
	if noStitches && noRows {
		for _, field := range []string{"stitches_before", "rows_before", "stitches_after", "rows_after"} {
			c.Add(field, fault.ReasonRequired, "is empty, and so are the other readings; give one list of them or more")
		}
	}
	c.Needs(in.WidthCm != nil, "width_cm", !noStitches, "stitches_before or stitches_after")
	c.Needs(in.HeightCm != nil, "height_cm", !noRows, "rows_before or rows_after")
}

// fill carries the statistics into the answer.
func (o *Result) fill(stitches, rows *direction) {
	o.StitchesBefore, o.StitchesAfter = stitches.before.statistics(), stitches.after.statistics()
	o.RowsBefore, o.RowsAfter = rows.before.statistics(), rows.after.statistics()
	o.WidthChangePercent, o.LengthChangePercent = stitches.change(), rows.change()
	if stitches.chosen != nil && rows.chosen != nil {
		over := o.OverCm
		o.Gauge = &gauge.Gauge{Stitches: stitches.chosen.stats.Mean, Rows: rows.chosen.stats.Mean, OverCm: &over}
	}
	for _, l := range []struct {
		list *readingList
		noun string
	}{{&stitches.before, "stitches"}, {&rows.before, "rows"}, {&stitches.after, "stitches"}, {&rows.after, "rows"}} {
		if l.list.read() {
			o.Notices = append(o.Notices, l.list.notices(l.noun)...)
		}
	}
	o.mixedNotice(stitches, rows)
	o.mixedNotice(rows, stitches)
}

// mixedNotice remarks on a gauge that is washed one way and unwashed the other.
func (o *Result) mixedNotice(unwashed, washed *direction) {
	if o.Gauge != nil && !unwashed.after.read() && washed.after.read() {
		o.Notices = append(o.Notices, report.Notice{Reason: MixedStates, Field: unwashed.before.field,
			Description: unwashed.noun + " were read before washing only, " + washed.noun +
				" after it; the gauge mixes the two"})
	}
}

// lookUp names the yarn categories and the needle.
func (o *Result) lookUp(stitches *direction, needleMm *float64) {
	if stitches.chosen != nil {
		var nominal bool
		o.YarnCategories, nominal = yarn.Categories(gauge.MeanPerCm(stitches.chosen.readings...))
		if nominal {
			o.Notices = append(o.Notices, report.Notice{Reason: FourInches, Field: stitches.chosen.field,
				Description: "the trade takes 4 in for 10 cm, which are 1.6 % apart; a category listed here holds the gauge " +
					"over one of them only"})
		}
	}
	if needleMm != nil {
		o.Needle = needleSize(*needleMm)
		if o.Needle == nil {
			o.Notices = append(o.Notices, report.Notice{Reason: UnlistedNeedle, Field: "needle_mm",
				Description: measure.Decimal(*needleMm, 3) + " mm is not a size of the table"})
		}
	}
}
