package gauge

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
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

// CastOn is the answer to CastOnInput. HasStitches and HasRows say which halves
// were asked.
type CastOn struct {
	Stitches    FittedCount
	HasStitches bool
	Rows        FittedCount
	HasRows     bool
	Notices     []report.Notice

	unit measure.DisplayUnit
}

// Ranges of ease.
const (
	MinEaseCm      = -500.0
	MaxEaseCm      = 500.0
	MinEasePercent = -90.0
	MaxEasePercent = 200.0
)

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
	st, rw, okGauge := Check(&c, "gauge", in.Gauge)
	okWidth := c.OptionalNumber("", "width_cm", in.WidthCm, measure.MinCm, measure.MaxCm)
	okEase := c.OptionalNumber("", "ease_cm", in.EaseCm, MinEaseCm, MaxEaseCm)
	okEase = c.OptionalNumber("", "ease_percent", in.EasePercent, MinEasePercent, MaxEasePercent) && okEase
	stRule, okStRule := CheckRule(&c, "stitch_rule", in.StitchRule)
	okHeight := c.OptionalNumber("", "height_cm", in.HeightCm, measure.MinCm, measure.MaxCm)
	rwRule, okRwRule := CheckRule(&c, "row_rule", in.RowRule)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	vetCastOnTogether(&c, in)

	out := CastOn{unit: in.DisplayUnit}
	if okWidth && okEase && in.WidthCm != nil {
		um, ok := vetEased(&c, in)
		if ok && okGauge && okStRule {
			out.Stitches, out.HasStitches = vetFitted(&c, st, um, stRule, "width_cm", "stitch_rule", "stitches")
		}
	}
	if okGauge && okHeight && okRwRule && in.HeightCm != nil {
		um := measure.Micrometres(*in.HeightCm)
		out.Rows, out.HasRows = vetFitted(&c, rw, um, rwRule, "height_cm", "row_rule", "rows")
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
	if in.EaseCm != nil && in.EasePercent != nil {
		c.Add("ease_cm", fault.ReasonContradictory, "excludes ease_percent; give one of them")
		c.Add("ease_percent", fault.ReasonContradictory, "excludes ease_cm; give one of them")
	}
	if in.WidthCm == nil {
		if in.EaseCm != nil {
			c.Add("ease_cm", fault.ReasonContradictory, "needs width_cm")
		}
		if in.EasePercent != nil {
			c.Add("ease_percent", fault.ReasonContradictory, "needs width_cm")
		}
		if in.StitchRule != nil {
			c.Add("stitch_rule", fault.ReasonContradictory, "needs width_cm")
		}
	}
	if in.HeightCm == nil && in.RowRule != nil {
		c.Add("row_rule", fault.ReasonContradictory, "needs height_cm")
	}
}

// vetEased is the width with its ease, in micrometres. Ease in percent is read to
// the nearest millionth of the width and then to the nearest micrometre.
func vetEased(c *fault.Checks, in CastOnInput) (int64, bool) {
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
		return 0, false
	}
	return um, true
}

// vetFitted is fit, with a violation when no count answers.
func vetFitted(c *fault.Checks, d Density, um int64, r Rule, sizeField, ruleField, noun string) (FittedCount, bool) {
	f, ok := d.Fit(um, r)
	if !ok {
		num, den := d.Exact(um)
		Misfit(c, Mixed{num / den, num % den, den}, r, noun, sizeField, ruleField)
	}
	return f, ok
}

// Misfit says why no legal count answers an exact one, in all fields involved.
func Misfit(c *fault.Checks, q Mixed, r Rule, noun string, fields ...string) {
	detail := "the size is " + measure.Decimal(q.float(), 2) + " " + noun + "; "
	if q.Whole >= r.smallest() {
		detail += "at most " + strconv.Itoa(stitch.MaxStitches) + " are counted"
	} else {
		detail += "the smallest count the rule allows is " + strconv.FormatInt(r.smallest(), 10)
		if r.smallest() > stitch.MaxStitches {
			detail += ", and at most " + strconv.Itoa(stitch.MaxStitches) + " are counted"
		} else {
			detail += ", so rounding must be nearest or up"
		}
	}
	c.Infeasible(detail, fields...)
}

// addNotices names the half-way case.
func (o *CastOn) addNotices() {
	if o.HasStitches && o.Stitches.Halfway {
		o.Notices = append(o.Notices, HalfwayNotice("width_cm", o.Stitches.Count))
	}
	if o.HasRows && o.Rows.Halfway {
		o.Notices = append(o.Notices, HalfwayNotice("height_cm", o.Rows.Count))
	}
}

func HalfwayNotice(field string, count int) report.Notice {
	return report.Notice{Reason: "HALFWAY", Field: field,
		Description: "falls exactly half-way between two legal counts; " + strconv.Itoa(count) + " was taken"}
}

// Summary says the answer in words.
func (o CastOn) Summary() string {
	s := ""
	if o.HasStitches {
		s = o.Stitches.sentence("Cast on", "stitches", "wide", o.unit)
	}
	if o.HasRows {
		if s != "" {
			s += " "
		}
		s += o.Rows.sentence("Work", "rows", "tall", o.unit)
	}
	return s
}

// sentence is "Cast on 112 stitches: 50.9 cm wide, 0.1 cm less than asked."
func (f FittedCount) sentence(verb, noun, direction string, unit measure.DisplayUnit) string {
	return verb + " " + report.CountOf(f.Count, noun) + ": " + unit.Size(f.SizeCm) + " " + direction + ", " +
		unit.Difference(f.DifferenceCm) + "."
}

// Directions are empty: there is nothing to work.
func (CastOn) Directions() []string { return nil }

// Sources says where the figures come from.
func (CastOn) Sources() []report.Source {
	return []report.Source{{Figure: "stitches and rows", Citation: "count = length × gauge count / gauge length, in whole micrometres " +
		"and millionths of a stitch; rounded as the rule says", Status: report.SourceStatusOwnDerivation}}
}
