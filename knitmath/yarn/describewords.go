package yarn

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Description{}

// Summary says the category, the gauge and the needle that are usual, and how thick it is.
func (o Description) Summary() string {
	s := "No weight category: it " + o.noneWords() + "."
	if len(o.Categories) > 0 {
		over := " to 10 cm"
		if o.unit == measure.DisplayUnitIn {
			over = " to 4 in"
		}
		numbers := make([]int, len(o.Categories))
		for i, c := range o.Categories {
			numbers[i] = c.Category % len(yarnWeights)
		}
		s = categoryWords(numbers) + ": usually " + o.Categories[0].stitchWords() + over + " on " + o.Categories[0].needleWords()
		for _, c := range o.Categories[1:] {
			s += ", or " + c.stitchWords() + " on " + c.needleWords()
		}
		s += "."
		if numbers[0] == 0 {
			s += " Lace is mostly worked on thicker needles than that."
		}
	}
	if !o.yarn.Tex.IsZero() {
		s += " It is " + significant(o.length.tex) + " tex, " + o.length.bandWords(o.unit) + "."
	}
	if o.Twist != nil {
		lies := " Its twist lies at "
		if o.yarn.Plies > 1 {
			lies = " Its plies lie at "
		}
		s += lies + measure.Decimal(o.Twist.AngleDegrees, 0) + " degrees."
	}
	if o.LowGaugeStitches != nil && o.in.Stitches == nil {
		s += " Ordinary yarns of its length are knit at " + GaugeWords(o.unit, *o.LowGaugeStitches, *o.HighGaugeStitches) + "."
	}
	return s
}

// noneWords say why there is no category.
func (o Description) noneWords() string {
	for _, r := range o.Readings {
		if e := o.beyondChart(r.Basis); e != inChart {
			return "is " + endWords[e]
		}
	}
	return "lies in the gaps of the chart"
}

// beyondWords say what a measure is that lies beyond the chart.
func (o Description) beyondWords(b Basis) string {
	words := endWords[o.beyondChart(b)]
	if b == BasisGauge {
		return words + ", whose finest, Lace (0), ends at 40 stitches"
	}
	return words + ", and than what is knit by hand"
}

// stitchWords are the stitches of a category.
func (c Category) stitchWords() string {
	if c.LowStitches == nil {
		return "at most " + report.CountOf(c.HighStitches, "stitches")
	}
	return strconv.Itoa(*c.LowStitches) + " to " + report.CountOf(c.HighStitches, "stitches")
}

// needleWords are its needles.
func (c Category) needleWords() string {
	if c.HighNeedleMm == nil {
		return measure.Decimal(c.LowNeedleMm, 2) + " mm and thicker"
	}
	return measure.Decimal(c.LowNeedleMm, 2) + " to " + measure.Decimal(*c.HighNeedleMm, 2) + " mm"
}

// Directions say how to wrap, where that was asked with.
func (o Description) Directions() []string {
	if o.in.WrapsPerInch == nil {
		return nil
	}
	over := "2 in (5.1 cm)"
	if o.unit == measure.DisplayUnitIn {
		over = "2 in"
	}
	return []string{"Wrap the yarn round a ruler for " + over +
		", side by side without pulling or pushing, count, and halve; do it in three places."}
}

// Sources says where the figures come from.
func (o Description) Sources() []report.Source {
	sources := CategoriesCited(o.Categories)
	if o.in.WrapsPerInch != nil {
		sources = append(sources, wrapsCited)
	}
	if o.in.WrapsPerInch != nil || o.hasLength() {
		sources = append(sources, spinnersCited)
	}
	if o.hasLength() {
		sources = append(sources, countSources[o.yarn.System],
			o.in.Spinning.DiameterCited(SpinningWorsted, "most yarn that is sold is spun so"), ExpectedWrapsCited)
	}
	if o.LowGaugeStitches != nil {
		sources = append(sources, UsualGaugeCited)
	}
	if o.Twist != nil {
		sources = append(sources, TwistCited)
	}
	return sources
}
