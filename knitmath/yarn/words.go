package yarn

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Yards and ounces are exact. Source: international yard and pound agreement of
// 1959, 1 yd = 0.9144 m, 1 lb = 453.59237 g; an ounce is a sixteenth of it.
const (
	metresPerYard = 0.9144
	gramsPerOunce = 28.349523125
)

// lengthWords writes metres or yards, whole from 10 up and to a tenth below.
func lengthWords(u measure.DisplayUnit, m float64) string {
	if u == measure.DisplayUnitIn {
		return amount(m/metresPerYard) + " yd"
	}
	return amount(m) + " m"
}

// massWords writes grams or ounces in the same way.
func massWords(u measure.DisplayUnit, g float64) string {
	if u == measure.DisplayUnitIn {
		return amount(g/gramsPerOunce) + " oz"
	}
	return amount(g) + " g"
}

func amount(x float64) string {
	if x < 10 {
		return measure.Decimal(x, 1)
	}
	return measure.Decimal(x, 0)
}

// Summary says the answer in words.
func (o Estimate) Summary() string {
	s := "Have " + lengthWords(o.unit, o.LengthM.Likely) + " of yarn (" + lengthWords(o.unit, o.LengthM.Low) + " to " +
		lengthWords(o.unit, o.LengthM.High) + ")"
	if o.MassG != nil {
		s += ", " + massWords(o.unit, o.MassG.Likely)
	}
	s += ", reserve included."
	if o.BallCount == nil {
		return s
	}
	figure := "high"
	if o.lot == DyeLotMoreLater {
		figure = "likely"
	}
	s += " Buy " + report.CountOf(*o.BallCount, "balls")
	for i, c := range o.Colours {
		sep := ", "
		if i == 0 {
			sep = ": "
		}
		name := c.Name
		if name == "" {
			name = "the " + report.Ordinal(i+1) + " colour"
		}
		s += sep + report.CountOf(*c.BallCount, "balls") + " of " + name
	}
	return s + ", for the " + figure + " figure."
}

// loopCovers says what the range by loop covers.
func (o Estimate) loopCovers() string {
	ks := loopConstants[o.state]
	s := "loop constants from " + measure.Decimal(ks.Low, 2) + " to " + measure.Decimal(ks.High, 2) + " (" + o.state.String() + ")"
	if o.factors {
		s += ", pattern factors from their low to their high"
	}
	return s + "; not the knitter's own gauge, nor floats that are not drawn straight"
}

// remark adds the notices.
func (q *question) remark(out *Estimate) {
	add := func(reason report.Reason, field, text string) {
		out.Notices = append(out.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	plain, mixed := true, false
	for _, p := range q.pieces {
		plain = plain && p.factor == Range{1, 1, 1}
		mixed = mixed || p.factor != q.pieces[0].factor
	}
	ratio := q.rw.PerCm() / q.st.PerCm()
	if plain && (ratio < minPlainRatio || ratio > maxPlainRatio) {
		add("UNUSUAL_RATIO", "gauge", "has "+measure.Decimal(ratio, 2)+" rows to a stitch of width; plain knitting has about 1.2 to 1.45, "+
			"so the answer by loop holds less well")
	}
	if q.in.State == FabricStateUnspecified {
		add("STATE_UNKNOWN", "state", "is not given; the range by loop covers all states")
	}
	s := out.BySwatch
	if s == nil {
		return
	}
	if mixed {
		add("SWATCH_FABRIC", "swatch", "is one fabric, and the pieces are several; by swatch all are taken to be its fabric")
	}
	if step := fault.Or(q.in.Swatch.ScaleStepG, DefaultScaleStepG); step/2 > coarseScale*q.in.Swatch.MassG {
		add("COARSE_SCALE", "swatch.scale_step_g", "half a step of the scale is more than 5 % of the swatch; weigh several "+
			"swatches together, or on a finer scale")
	}
	switch {
	case q.in.PutUp == nil:
		add("NOT_COMPARED", "put_up", "is not given, so that grams by swatch and metres by loop cannot be compared")
	case s.LengthM.apart(*out.ByLoop.LengthM):
		add("METHODS_DISAGREE", "swatch", "by swatch it is "+lengthWords(q.in.DisplayUnit, s.LengthM.Likely)+", by loop "+
			lengthWords(q.in.DisplayUnit, out.ByLoop.LengthM.Likely)+", and the ranges do not meet; the answer goes by the swatch: "+
			"check its mass and size, the gauge and put_up")
	}
}

// coarseScale is the part of a swatch's mass beyond which half a step of the
// scale is worth a remark: it is then half of the usual reserve.
const coarseScale = 0.05

// Directions are empty: there is nothing to work.
func (Estimate) Directions() []string { return nil }

// Sources says where the figures come from.
func (o Estimate) Sources() []report.Source {
	sources := []report.Source{{Figure: "loop length", Citation: "l = sqrt(ks / stitches to the cm2): D. L. Munden, J. Text. Inst. 50 (1959) T448",
		Status: report.SourceStatusFromMemory}}
	sources = append(sources, o.state.sources()...)
	if o.factors {
		sources = append(sources, report.Source{Figure: "pattern factors", Citation: "yarn of a stitch beside a plain one: garter 1.00 to 1.10, rib 1.00 " +
			"to 1.20, cables 1.10 to 1.30", Status: report.SourceStatusCommonPractice})
	}
	if len(o.Colours) > 0 {
		sources = append(sources, report.Source{Figure: "floats", Citation: "a colour not in use lies behind its neighbour, one stitch width a stitch; " +
			"colour = share * stitches * l + (1 - share) * stitches * width", Status: report.SourceStatusOwnDerivation})
	}
	if o.BySwatch != nil {
		sources = append(sources, report.Source{Figure: "by swatch", Citation: "grams = area * swatch mass / swatch area", Status: report.SourceStatusOwnDerivation})
	}
	return append(sources, report.Source{Figure: "reserve", Citation: "10 % for tails, seams and swatching, unless the question says otherwise",
		Status: report.SourceStatusCommonPractice})
}

// sources are those of the loop constant.
func (s FabricState) sources() []report.Source {
	munden := report.Source{Figure: "loop constant ks 19.0 dry relaxed, 21.6 wet relaxed", Citation: "D. L. Munden, J. Text. Inst. 50 (1959) T448; " +
		"taken as good to 3 %", Status: report.SourceStatusFromMemory}
	relaxed := []report.Source{
		{Figure: "loop constant ks 23.1 fully relaxed", Citation: "kc 5.5, kw 4.2: GATE Textile Engineering 2015, question 54", Status: report.SourceStatusPublished},
		{Figure: "range of ks fully relaxed, 21.2 to 25.52", Citation: "kc 5.3 to 5.8 and kw 4.0 to 4.4 over the later literature",
			Status: report.SourceStatusFromMemory},
	}
	switch s {
	case FabricStateDryRelaxed, FabricStateWetRelaxed:
		return []report.Source{munden}
	case FabricStateFullyRelaxed:
		return relaxed
	}
	return append([]report.Source{munden}, relaxed...)
}
