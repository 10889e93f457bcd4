package yarn

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
)

// A DescribeInput asks what a yarn is, from what is known of it. It mirrors
// DescribeYarnRequest.
type DescribeInput struct {
	Count          *Count
	PutUp          *PutUp
	WrapsPerInch   *float64
	Stitches       *float64
	OverCm         *float64
	NeedleMm       *float64
	Spinning       Spinning
	TwistPerCm     *float64
	TwistDirection TwistDirection
	WithOutline    bool
	DisplayUnit    measure.DisplayUnit
}

// Ranges of what is known of a yarn.
const (
	MinWraps      = 0.5
	MaxWraps      = 300.0
	MinStitches   = 0.1
	MaxStitches   = 1_000.0
	DefaultOverCm = 10.0
	MaxOverCm     = 100.0
	MinNeedleMm   = 0.5
	MaxNeedleMm   = 50.0
	MinTwistPerCm = 0.01
	MaxTwistPerCm = 100.0
)

// A Description is the answer to DescribeInput. Figures that need a count are nil without
// one.
type Description struct {
	Categories       []Category
	Readings         []CategoryReading
	Tex              *float64
	MetresPer100G    *float64
	DiametersPerInch *float64
	DiameterMm       *float64
	LowWrapsPerInch  *float64
	HighWrapsPerInch *float64
	// LowGaugeStitches and HighGaugeStitches are the stitches to 10 cm that are usual for
	// the length, nil where that is not known.
	LowGaugeStitches  *float64
	HighGaugeStitches *float64
	Twist             *Twist
	Outline           *outline.Outline
	Notices           []report.Notice

	in     DescribeInput
	yarn   Thickness
	length length
	unit   measure.DisplayUnit
}

// DescribeYarn says which weight categories a yarn has by each measure that is given, which
// they have in common, and how thick it is:
//
//	diameters per inch = k sqrt(yd/lb), compact yarn
//	wraps per inch     = 0.35 to 0.39 sqrt(yd/lb), as knitting yarn is wrapped
//
// Those are two different things, and neither is made of the other. Where measures have no
// category in common the answer goes by the one that is trusted most, gauge before length
// before wraps, and says which disagree; what is lace by its length is lace at any gauge.
// A length has two readings, that of the spinners' chart and the gauge that is usual for it:
// where they differ, and nothing else decides, the answer has both and says so.
func DescribeYarn(in DescribeInput) (Description, error) {
	var c fault.Checks
	yarn := vetDescription(&c, in)
	if err := c.Err(); err != nil {
		return Description{}, err
	}
	out := Description{in: in, unit: in.DisplayUnit, yarn: yarn, length: yarn.Tex.length()}
	nominal := out.read()
	out.choose()
	if out.hasLength() {
		out.measure()
	}
	out.remark(nominal)
	return out, nil
}

func vetDescription(c *fault.Checks, in DescribeInput) (yarn Thickness) {
	if in.Count == nil && in.PutUp == nil && in.WrapsPerInch == nil && in.Stitches == nil {
		for _, field := range []string{"count", "put_up", "wraps_per_inch", "stitches"} {
			c.Add(field, fault.ReasonRequired, "is missing, and so are the others; give put_up, count, wraps_per_inch or stitches")
		}
	}
	c.AtMostOne(in.PutUp != nil, in.Count != nil, "put_up", "count")
	VetPutUp(c, "put_up", in.PutUp)
	switch {
	case in.Count != nil:
		yarn, _ = VetCount(c, "count", in.Count)
	case in.PutUp != nil && c.Sound("put_up"):
		tex := in.PutUp.tex()
		yarn = Thickness{Tex: tex, Single: tex, Plies: 1, System: CountSystemMetresPer100G}
	}
	c.OptionalNumber("", "wraps_per_inch", in.WrapsPerInch, MinWraps, MaxWraps)
	c.OptionalNumber("", "stitches", in.Stitches, MinStitches, MaxStitches)
	c.OptionalNumber("", "over_cm", in.OverCm, measure.MinCm, MaxOverCm)
	c.OptionalNumber("", "needle_mm", in.NeedleMm, MinNeedleMm, MaxNeedleMm)
	fault.Enum(c, "", "spinning", in.Spinning, SpinningSilk)
	c.OptionalNumber("", "twist_per_cm", in.TwistPerCm, MinTwistPerCm, MaxTwistPerCm)
	c.Needs(in.TwistPerCm != nil, "twist_per_cm", in.Count != nil || in.PutUp != nil, "put_up or count")
	fault.Enum(c, "", "twist_direction", in.TwistDirection, TwistDirectionZ)
	c.Needs(in.TwistDirection != TwistDirectionUnspecified, "twist_direction", in.TwistPerCm != nil, "twist_per_cm")
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if t := yarn.read.twist; t != nil {
		c.AtMostOne(in.TwistPerCm != nil, true, "twist_per_cm", "count.notation")
		if c.Sound("count", "spinning", "twist_per_cm") {
			VetTurns(c, "count.notation", t.perCm(), in.Spinning.Or(SpinningWorsted).DiameterCm(yarn.Tex.Float()))
		}
	}
	if in.TwistPerCm != nil && !yarn.Tex.IsZero() && c.Sound("twist_per_cm", "spinning") {
		VetTurns(c, "twist_per_cm", *in.TwistPerCm, in.Spinning.Or(SpinningWorsted).DiameterCm(yarn.Tex.Float()))
	}
	return yarn
}

// hasLength reports whether the length to the mass is known, by count or put-up.
func (o *Description) hasLength() bool { return !o.yarn.Tex.IsZero() }

// measure fills in how thick the yarn is.
func (o *Description) measure() {
	tex, band := o.length.tex, o.length.metresPer100G
	root := math.Sqrt(o.length.yardsPerPound) // diameters and wraps are parts of it
	diameterCm := o.in.Spinning.Or(SpinningWorsted).DiameterCm(tex)
	diameters, diameter, low, high := measure.CmPerInch/diameterCm, 10*diameterCm, LowWraps*root, HighWraps*root
	o.Tex, o.MetresPer100G, o.DiametersPerInch, o.DiameterMm = &tex, &band, &diameters, &diameter
	o.LowWrapsPerInch, o.HighWrapsPerInch = &low, &high
	if loose, tight, ok := o.usual(); ok {
		o.LowGaugeStitches, o.HighGaugeStitches = &loose, &tight
	}
	perCm, direction := fault.Or(o.in.TwistPerCm, 0), o.in.TwistDirection
	switch said := o.yarn.read.twist; {
	case said != nil:
		perCm, direction = said.perCm(), said.direction
	case o.in.TwistPerCm == nil:
		return
	case direction == TwistDirectionUnspecified:
		direction = o.yarn.usualDirection()
	}
	twist := TwistOf(perCm, tex, diameterCm, direction)
	o.Twist = &twist
	if o.in.WithOutline {
		o.Outline = Helix(diameterCm, twist)
	}
}

// Cost is the price of a description.
func (DescribeInput) Cost() int { return 30 }
