package knitmath

// GaugeInput asks for a gauge from readings. It mirrors ComputeGaugeRequest.
type GaugeInput struct {
	StitchesBefore []GaugeReading
	RowsBefore     []GaugeReading
	StitchesAfter  []GaugeReading
	RowsAfter      []GaugeReading
	OverCm         *float64
	WidthCm        *float64
	HeightCm       *float64
	NeedleMm       *float64
	DisplayUnit    DisplayUnit
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

// ComputedGauge is the answer to GaugeInput. What is absent is nil.
type ComputedGauge struct {
	Gauge               *Gauge
	OverCm              float64
	StitchesBefore      *GaugeStatistics
	RowsBefore          *GaugeStatistics
	StitchesAfter       *GaugeStatistics
	RowsAfter           *GaugeStatistics
	WidthChangePercent  *float64
	LengthChangePercent *float64
	Width               *SizeConsequence
	Height              *SizeConsequence
	YarnCategories      []YarnCategory
	Needle              *NeedleSize
	Notices             []Notice

	unit DisplayUnit
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
func ComputeGauge(in GaugeInput) (ComputedGauge, error) {
	var c checks
	stitches := direction{noun: "stitches", before: c.readings("stitches_before", in.StitchesBefore)}
	rows := direction{noun: "rows", before: c.readings("rows_before", in.RowsBefore)}
	stitches.after = c.readings("stitches_after", in.StitchesAfter)
	rows.after = c.readings("rows_after", in.RowsAfter)
	okOver := c.optionalNumber("", "over_cm", in.OverCm, MinCm, MaxOverCm)
	okWidth := c.optionalNumber("", "width_cm", in.WidthCm, MinCm, MaxCm)
	okHeight := c.optionalNumber("", "height_cm", in.HeightCm, MinCm, MaxCm)
	c.optionalNumber("", "needle_mm", in.NeedleMm, MinNeedleMm, MaxNeedleMm)
	enum(&c, "", "display_unit", in.DisplayUnit, DisplayUnitIn)
	c.gaugeTogether(in)

	out := ComputedGauge{OverCm: or(in.OverCm, DefaultOverCm), unit: in.DisplayUnit}
	if okOver {
		span := micrometres(out.OverCm)
		c.summarise(&stitches, span, in.OverCm != nil)
		c.summarise(&rows, span, in.OverCm != nil)
		out.Width = c.consequence(&stitches, in.WidthCm, okWidth, "width_cm")
		out.Height = c.consequence(&rows, in.HeightCm, okHeight, "height_cm")
	}
	if err := c.err(); err != nil {
		return ComputedGauge{}, err
	}
	out.fill(&stitches, &rows)
	out.lookUp(&stitches, in.NeedleMm)
	return out, nil
}

// gaugeTogether checks what must be given together.
func (c *checks) gaugeTogether(in GaugeInput) {
	noStitches := len(in.StitchesBefore)+len(in.StitchesAfter) == 0
	noRows := len(in.RowsBefore)+len(in.RowsAfter) == 0
	if noStitches && noRows {
		for _, field := range []string{"stitches_before", "rows_before", "stitches_after", "rows_after"} {
			c.add(field, ReasonRequired, "is empty, and so are the other readings; give one list of them or more")
		}
	}
	if in.WidthCm != nil && noStitches {
		c.add("width_cm", ReasonContradictory, "needs stitches_before or stitches_after")
	}
	if in.HeightCm != nil && noRows {
		c.add("height_cm", ReasonContradictory, "needs rows_before or rows_after")
	}
}

// fill carries the statistics into the answer.
func (o *ComputedGauge) fill(stitches, rows *direction) {
	o.StitchesBefore, o.StitchesAfter = stitches.before.statistics(), stitches.after.statistics()
	o.RowsBefore, o.RowsAfter = rows.before.statistics(), rows.after.statistics()
	o.WidthChangePercent, o.LengthChangePercent = stitches.change(), rows.change()
	if stitches.chosen != nil && rows.chosen != nil {
		over := o.OverCm
		o.Gauge = &Gauge{Stitches: stitches.chosen.stats.Mean, Rows: rows.chosen.stats.Mean, OverCm: &over}
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
func (o *ComputedGauge) mixedNotice(unwashed, washed *direction) {
	if o.Gauge != nil && !unwashed.after.read() && washed.after.read() {
		o.Notices = append(o.Notices, Notice{"MIXED_STATES", unwashed.before.field,
			unwashed.noun + " were read before washing only, " + washed.noun +
				" after it; the gauge mixes the two"})
	}
}

// lookUp names the yarn categories and the needle.
func (o *ComputedGauge) lookUp(stitches *direction, needleMm *float64) {
	if stitches.chosen != nil {
		var nominal bool
		o.YarnCategories, nominal = yarnCategories(stitches.density)
		if nominal {
			o.Notices = append(o.Notices, Notice{"FOUR_INCHES", stitches.chosen.field,
				"the trade takes 4 in for 10 cm, which are 1.6 % apart; a category listed here holds the gauge " +
					"over one of them only"})
		}
	}
	if needleMm != nil {
		o.Needle = needleSize(*needleMm)
		if o.Needle == nil {
			o.Notices = append(o.Notices, Notice{"UNLISTED_NEEDLE", "needle_mm",
				decimal(*needleMm, 3) + " mm is not a size of the table"})
		}
	}
}
