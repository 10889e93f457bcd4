package gauge

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// CastOnInput asks for stitches, rows or both. It mirrors ComputeCastOnRequest.
type CastOnInput struct {
	Gauge       *Gauge
	WidthCm     *float64
	EaseCm      *float64
	EasePercent *float64
	StitchRule  *CountRule
	HeightCm    *float64
	RowRule     *CountRule
	DisplayUnit measure.DisplayUnit
}

// A CastOn is the answer to CastOnInput. What was not asked is nil.
type CastOn struct {
	Stitches *FittedCount
	Rows     *FittedCount
	Notices  []report.Notice

	unit measure.DisplayUnit
}

// Ranges of ease.
const (
	MinEaseCm      = -500.0
	MaxEaseCm      = 500.0
	MinEasePercent = -90.0
	MaxEasePercent = 200.0
)

// countCited is the source of a count for a length.
var countCited = report.Source{Figure: "stitches and rows", Status: report.SourceStatusOwnDerivation,
	Citation: "count = length × gauge count / gauge length, in whole micrometres and millionths of a stitch; rounded as the rule says"}

// ComputeCastOn turns a width into stitches and a height into rows,
//
//	stitches = (WidthCm + ease) * gauge stitches / gauge length
//
// each rounded to the nearest count its rule allows, exactly half-way up.
// WidthCm and HeightCm must be in [0.1, 1000], and the width with its ease as
// well. Exact: lengths are whole micrometres, gauges millionths of a stitch, and
// all arithmetic on them is in integers.
//
// Source: own derivation; the sum is the definition of gauge.
func ComputeCastOn(in CastOnInput) (CastOn, error) {
	var c fault.Checks
	st, rw := Vet(&c, "gauge", in.Gauge)
	c.OptionalNumber("", "width_cm", in.WidthCm, measure.MinCm, measure.MaxCm)
	c.OptionalNumber("", "ease_cm", in.EaseCm, MinEaseCm, MaxEaseCm)
	c.OptionalNumber("", "ease_percent", in.EasePercent, MinEasePercent, MaxEasePercent)
	stRule := VetRule(&c, "stitch_rule", in.StitchRule)
	c.OptionalNumber("", "height_cm", in.HeightCm, measure.MinCm, measure.MaxCm)
	rwRule := VetRule(&c, "row_rule", in.RowRule)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	vetCastOnTogether(&c, in)

	out := CastOn{unit: in.DisplayUnit}
	if in.WidthCm != nil && c.Sound("width_cm", "ease_cm", "ease_percent") {
		um := vetEased(&c, in)
		if c.Sound("gauge", "width_cm", "stitch_rule") {
			out.Stitches = st.VetFit(&c, um, stRule, "stitches", "width_cm", "stitch_rule")
		}
	}
	if in.HeightCm != nil && c.Sound("gauge", "height_cm", "row_rule") {
		out.Rows = rw.VetFit(&c, measure.Micrometres(*in.HeightCm), rwRule, "rows", "height_cm", "row_rule")
	}
	if err := c.Err(); err != nil {
		return CastOn{}, err
	}
	out.addNotices()
	return out, nil
}

// vetCastOnTogether checks what must or must not be given together.
func vetCastOnTogether(c *fault.Checks, in CastOnInput) {
	if in.WidthCm == nil && in.HeightCm == nil {
		c.Add("width_cm", fault.ReasonRequired, "is missing, and so is height_cm; give one of them or both")
		c.Add("height_cm", fault.ReasonRequired, "is missing, and so is width_cm; give one of them or both")
	}
	c.AtMostOne(in.EaseCm != nil, in.EasePercent != nil, "ease_cm", "ease_percent")
	c.Needs(in.EaseCm != nil, "ease_cm", in.WidthCm != nil, "width_cm")
	c.Needs(in.EasePercent != nil, "ease_percent", in.WidthCm != nil, "width_cm")
	c.Needs(in.StitchRule != nil, "stitch_rule", in.WidthCm != nil, "width_cm")
	c.Needs(in.RowRule != nil, "row_rule", in.HeightCm != nil, "height_cm")
}

// vetEased is the width with its ease, in micrometres. Ease in percent is read to
// the nearest millionth of the width and then to the nearest micrometre.
func vetEased(c *fault.Checks, in CastOnInput) int64 {
	um := measure.Micrometres(*in.WidthCm)
	switch {
	case in.EaseCm != nil:
		um += measure.Micrometres(*in.EaseCm)
	case in.EasePercent != nil:
		um += measure.HalfUpDiv(um*measure.ToMillionths(*in.EasePercent/100), 1e6)
	}
	if um < measure.Micrometres(measure.MinCm) {
		field := "ease_cm"
		if in.EasePercent != nil {
			field = "ease_percent"
		}
		c.Infeasible("the width with its ease is "+measure.Decimal(measure.Centimetres(um), 4)+" cm; it must be at least 0.1 cm",
			"width_cm", field)
	}
	return um
}

// addNotices names the half-way case.
func (o *CastOn) addNotices() {
	if o.Stitches != nil && o.Stitches.Halfway {
		o.Notices = append(o.Notices, HalfwayNotice("width_cm", o.Stitches.Count))
	}
	if o.Rows != nil && o.Rows.Halfway {
		o.Notices = append(o.Notices, HalfwayNotice("height_cm", o.Rows.Count))
	}
}

// Summary says the answer in words.
func (o CastOn) Summary() string {
	s := ""
	if o.Stitches != nil {
		s = o.Stitches.sentence("Work on", "stitches", "wide", o.unit)
	}
	if o.Rows != nil {
		if s != "" {
			s += " "
		}
		s += o.Rows.sentence("Work", "rows", "tall", o.unit)
	}
	return s
}

// sentence is "Work on 112 stitches: 50.9 cm wide, 0.1 cm less than asked."
func (f FittedCount) sentence(verb, noun, direction string, unit measure.DisplayUnit) string {
	return verb + " " + report.CountOf(f.Count, noun) + ": " + unit.Size(f.SizeCm) + " " + direction + ", " +
		unit.Difference(f.DifferenceCm) + "."
}

// Directions are empty: there is nothing to work.
func (CastOn) Directions() []string { return nil }

// Sources says where the figures come from.
func (CastOn) Sources() []report.Source { return []report.Source{countCited} }
