package knitmath

import "strconv"

// CastOnInput asks for stitches, rows or both. It mirrors ComputeCastOnRequest.
type CastOnInput struct {
	Gauge       *Gauge
	WidthCm     *float64
	EaseCm      *float64
	EasePercent *float64
	StitchRule  *CountRule
	HeightCm    *float64
	RowRule     *CountRule
	DisplayUnit DisplayUnit
}

// CastOn is the answer to CastOnInput. HasStitches and HasRows say which halves
// were asked.
type CastOn struct {
	Stitches    FittedCount
	HasStitches bool
	Rows        FittedCount
	HasRows     bool
	Notices     []Notice

	unit DisplayUnit
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
	var c checks
	st, rw, okGauge := c.gauge("gauge", in.Gauge)
	okWidth := c.optionalNumber("", "width_cm", in.WidthCm, MinCm, MaxCm)
	okEase := c.optionalNumber("", "ease_cm", in.EaseCm, MinEaseCm, MaxEaseCm)
	okEase = c.optionalNumber("", "ease_percent", in.EasePercent, MinEasePercent, MaxEasePercent) && okEase
	stRule, okStRule := c.rule("stitch_rule", in.StitchRule)
	okHeight := c.optionalNumber("", "height_cm", in.HeightCm, MinCm, MaxCm)
	rwRule, okRwRule := c.rule("row_rule", in.RowRule)
	enum(&c, "", "display_unit", in.DisplayUnit, DisplayUnitIn)
	c.castOnTogether(in)

	out := CastOn{unit: in.DisplayUnit}
	if okWidth && okEase && in.WidthCm != nil {
		um, ok := c.eased(in)
		if ok && okGauge && okStRule {
			out.Stitches, out.HasStitches = c.fitted(st, um, stRule, "width_cm", "stitch_rule", "stitches")
		}
	}
	if okGauge && okHeight && okRwRule && in.HeightCm != nil {
		um := micrometres(*in.HeightCm)
		out.Rows, out.HasRows = c.fitted(rw, um, rwRule, "height_cm", "row_rule", "rows")
	}
	if err := c.err(); err != nil {
		return CastOn{}, err
	}
	out.addNotices()
	return out, nil
}

// castOnTogether checks what must or must not be given together.
func (c *checks) castOnTogether(in CastOnInput) {
	if in.WidthCm == nil && in.HeightCm == nil {
		c.add("width_cm", ReasonRequired, "is missing, and so is height_cm; give one of them or both")
		c.add("height_cm", ReasonRequired, "is missing, and so is width_cm; give one of them or both")
	}
	if in.EaseCm != nil && in.EasePercent != nil {
		c.add("ease_cm", ReasonContradictory, "excludes ease_percent; give one of them")
		c.add("ease_percent", ReasonContradictory, "excludes ease_cm; give one of them")
	}
	if in.WidthCm == nil {
		if in.EaseCm != nil {
			c.add("ease_cm", ReasonContradictory, "needs width_cm")
		}
		if in.EasePercent != nil {
			c.add("ease_percent", ReasonContradictory, "needs width_cm")
		}
		if in.StitchRule != nil {
			c.add("stitch_rule", ReasonContradictory, "needs width_cm")
		}
	}
	if in.HeightCm == nil && in.RowRule != nil {
		c.add("row_rule", ReasonContradictory, "needs height_cm")
	}
}

// eased is the width with its ease, in micrometres. Ease in percent is read to
// the nearest millionth of the width and then to the nearest micrometre.
func (c *checks) eased(in CastOnInput) (int64, bool) {
	um := micrometres(*in.WidthCm)
	switch {
	case in.EaseCm != nil:
		um += micrometres(*in.EaseCm)
	case in.EasePercent != nil:
		um += halfUpDiv(um*toMillionths(*in.EasePercent/100), 1e6)
	}
	if um < micrometres(MinCm) {
		field := "ease_cm"
		if in.EasePercent != nil {
			field = "ease_percent"
		}
		c.infeasible("the width with its ease is "+decimal(centimetres(um), 4)+" cm; it must be at least 0.1 cm",
			"width_cm", field)
		return 0, false
	}
	return um, true
}

// fitted is fit, with a violation when no count answers.
func (c *checks) fitted(d density, um int64, r rule, sizeField, ruleField, noun string) (FittedCount, bool) {
	f, ok := d.fit(um, r)
	if !ok {
		num, den := d.exact(um)
		c.misfit(mixed{num / den, num % den, den}, r, noun, sizeField, ruleField)
	}
	return f, ok
}

// misfit says why no legal count answers an exact one, in all fields involved.
func (c *checks) misfit(q mixed, r rule, noun string, fields ...string) {
	detail := "the size is " + decimal(q.float(), 2) + " " + noun + "; "
	if q.whole >= r.smallest() {
		detail += "at most " + strconv.Itoa(MaxStitches) + " are counted"
	} else {
		detail += "the smallest count the rule allows is " + strconv.FormatInt(r.smallest(), 10)
		if r.smallest() > MaxStitches {
			detail += ", and at most " + strconv.Itoa(MaxStitches) + " are counted"
		} else {
			detail += ", so rounding must be nearest or up"
		}
	}
	c.infeasible(detail, fields...)
}

// addNotices names the half-way case.
func (o *CastOn) addNotices() {
	if o.HasStitches && o.Stitches.Halfway {
		o.Notices = append(o.Notices, halfwayNotice("width_cm", o.Stitches.Count))
	}
	if o.HasRows && o.Rows.Halfway {
		o.Notices = append(o.Notices, halfwayNotice("height_cm", o.Rows.Count))
	}
}

func halfwayNotice(field string, count int) Notice {
	return Notice{"HALFWAY", field,
		"falls exactly half-way between two legal counts; " + strconv.Itoa(count) + " was taken"}
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
func (f FittedCount) sentence(verb, noun, direction string, unit DisplayUnit) string {
	return verb + " " + countOf(f.Count, noun) + ": " + unit.size(f.SizeCm) + " " + direction + ", " +
		unit.difference(f.DifferenceCm) + "."
}

// Sources says where the figures come from.
func (CastOn) Sources() []Source {
	return []Source{{"stitches and rows", "count = length × gauge count / gauge length, in whole micrometres " +
		"and millionths of a stitch; rounded as the rule says", SourceStatusOwnDerivation}}
}
