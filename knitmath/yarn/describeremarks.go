package yarn

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of the notices on what a yarn is.
const (
	// BeyondChart: a measure lies beyond an end of the chart, or of what is knit by hand.
	// Field is that measure.
	BeyondChart report.Reason = "BEYOND_CHART"
	// UsualGaugeDiffers: by the gauge that is usual for a length it has another category than
	// by the chart of lengths. Field is count or put_up.
	UsualGaugeDiffers report.Reason = "USUAL_GAUGE_DIFFERS"
	// NoCategory: a measure lies in a gap of the chart. Field is that measure.
	NoCategory report.Reason = "NO_CATEGORY"
	// SeveralCategories: all that was given leaves more than one. Field is empty.
	SeveralCategories report.Reason = "SEVERAL_CATEGORIES"
	// Disagrees: a measure has no category in common with the one that the answer goes by.
	// Field is that measure.
	Disagrees report.Reason = "DISAGREES"
	// WrapsUnexpected: the wraps are not those that yarn of the count has. Field is
	// wraps_per_inch.
	WrapsUnexpected report.Reason = "WRAPS_UNEXPECTED"
	// NeedleUnusual: the needle is outside the range of the category. Field is needle_mm.
	NeedleUnusual report.Reason = "NEEDLE_UNUSUAL"
	// NominalGauge: the category holds only because 4 in are taken for 10 cm. Field is
	// stitches.
	NominalGauge report.Reason = "NOMINAL_GAUGE"
	// MuchTwist: an angle beyond MostRoundAngle. Field is twist_per_cm.
	MuchTwist report.Reason = "MUCH_TWIST"
	// DirectionAssumed: a twist is given without its direction. Field is twist_direction.
	DirectionAssumed report.Reason = "DIRECTION_ASSUMED"
)

// field is where a measure stands in the question.
func (o *Description) field(b Basis) string {
	switch b {
	case BasisGauge:
		return "stitches"
	case BasisSpinnersWraps, BasisStandardWraps:
		return "wraps_per_inch"
	}
	if o.in.PutUp != nil {
		return "put_up"
	}
	return "count"
}

// basisWords name the measures.
var basisWords = [...]string{BasisUnspecified: "", BasisGauge: "gauge", BasisLength: "length to the pound",
	BasisSpinnersWraps: "wraps on the spinners' chart", BasisStandardWraps: "wraps on the standard chart",
	BasisUsualGauge: "the gauge that is usual for its length"}

// remark says what is in a gap, what is open, and what disagrees with what.
func (o *Description) remark(nominal bool) {
	add := func(reason report.Reason, field, text string) {
		o.Notices = append(o.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	chosen := make([]int, len(o.Categories))
	for i, c := range o.Categories {
		chosen[i] = c.Category
	}
	o.remarkReadings(chosen, add)
	if n, ok := o.remarkLength(chosen); ok {
		o.Notices = append(o.Notices, n)
	} else if len(chosen) > 1 {
		add(SeveralCategories, "", "the ranges overlap: it is "+categoryWords(chosen)+" as far as can be said")
	}
	if nominal && !o.laceByLength() {
		add(NominalGauge, "stitches", "is in a range only because the trade takes 4 in for 10 cm, which are 1.6 % apart")
	}
	o.remarkWraps(add)
	if mm := o.in.NeedleMm; mm != nil && len(chosen) > 0 && !o.usualNeedle(*mm) {
		add(NeedleUnusual, "needle_mm", "is not usual for "+categoryWords(chosen)+
			": thicker makes the fabric open, as in lace, thinner makes it dense")
	}
	o.remarkTwist(add)
	if o.in.Count != nil {
		o.Notices = append(o.Notices, o.yarn.remarks("count")...)
	}
}

// remarkReadings says of each reading whether it lies in a gap, or disagrees with what was
// chosen.
func (o *Description) remarkReadings(chosen []int, add func(reason report.Reason, field, text string)) {
	for _, r := range o.Readings {
		switch {
		case r.Basis == BasisUsualGauge, r.Basis == BasisLength && len(common(chosen, o.byLength())) > 0:
			// A length is right by either of its readings; remarkLength compares them.
		case o.beyondChart(r.Basis) != inChart:
			if r.Basis != BasisStandardWraps { // which are the same wraps
				add(BeyondChart, o.field(r.Basis), "is "+o.beyondWords(r.Basis))
			}
		case len(r.Categories) == 0:
			add(NoCategory, o.field(r.Basis), "by "+basisWords[r.Basis]+" it lies in a gap of the chart, which is no partition")
		case r.Basis == BasisGauge && o.laceByLength():
			add(Disagrees, o.field(r.Basis), "by gauge it is "+categoryWords(r.Categories)+
				"; lace is worked on larger needles than its weight, so the length decides")
		case len(common(chosen, r.Categories)) == 0:
			add(Disagrees, o.field(r.Basis), "by "+basisWords[r.Basis]+" it is "+categoryWords(r.Categories)+
				", which is not what the answer goes by: measure again, or trust a swatch")
		}
	}
}

// remarkWraps compares wraps with the two charts and with the count.
func (o *Description) remarkWraps(add func(report.Reason, string, string)) {
	w := o.in.WrapsPerInch
	if w == nil {
		return
	}
	spinners, standard := o.reading(BasisSpinnersWraps), o.reading(BasisStandardWraps)
	if o.beyondChart(BasisSpinnersWraps) == inChart && len(common(spinners, standard)) == 0 {
		add(ChartsDiffer, "wraps_per_inch", "the two charts of wraps have no category in common here: "+
			"they differ by up to a factor of two, so go by a swatch")
	}
	if o.LowWrapsPerInch != nil && (*w < *o.LowWrapsPerInch*0.8 || *w > *o.HighWrapsPerInch*1.25) {
		add(WrapsUnexpected, "wraps_per_inch", "yarn of this count is wrapped about "+measure.Decimal(*o.LowWrapsPerInch, 0)+" to "+
			measure.Decimal(*o.HighWrapsPerInch, 0)+" times to the inch; it may have been pulled or pushed, or be very lofty or very dense")
	}
}

// remarkTwist says what was taken for granted of a twist, and where its angle is none.
func (o *Description) remarkTwist(add func(report.Reason, string, string)) {
	t := o.Twist
	if t == nil {
		return
	}
	if t.AngleDegrees > MostRoundAngle {
		field := "twist_per_cm"
		if o.in.TwistPerCm == nil {
			field = "count.notation"
		}
		add(MuchTwist, field, "gives an angle of "+measure.Decimal(t.AngleDegrees, 0)+" degrees"+BeyondRound(t.AngleDegrees))
	}
	if o.in.TwistDirection == TwistDirectionUnspecified && o.yarn.read.twist == nil {
		usual := "Z, as singles mostly are; a plied yarn mostly turns S: "
		if o.yarn.Plies > 1 {
			usual = "S, as plies turn against their singles, which are mostly Z: "
		}
		add(DirectionAssumed, "twist_direction", "is not given and taken for "+usual+"hold the yarn upright and see how it slopes")
	}
}

// usualNeedle reports whether a needle is within the range of one of the categories.
func (o *Description) usualNeedle(mm float64) bool {
	for _, c := range o.Categories {
		if mm >= c.LowNeedleMm && (c.HighNeedleMm == nil || mm <= *c.HighNeedleMm) {
			return true
		}
	}
	return false
}

// categoryWords are categories by name and number: "Fine (2) or Light (3)".
func categoryWords(numbers []int) string {
	s := ""
	for i, n := range numbers {
		switch {
		case i == 0:
		case i == len(numbers)-1:
			s += " or "
		default:
			s += ", "
		}
		s += yarnWeights[n].name + " (" + strconv.Itoa(n) + ")"
	}
	return s
}
