package armhole

import (
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// Ranges of a question.
const (
	MinWidth = 10 // stitches of a back, a front or a sleeve
	MaxWidth = 260
	MaxGroup = 20 // bound off at once above the underarm
	MinDepth = 8  // rows of an armhole
	MaxDepth = 140
	MinChest = 20.0
	MaxChest = 250.0
	MinArm   = 5.0
	MaxArm   = 120.0
	MinEase  = -30.0
	MaxEase  = 100.0
	MaxSpare = 3.0 // stitches of tolerance

	MinExcess = 0.0 // percent by which a cap's edge may be longer
	MaxExcess = 5.0
)

// leastCapRows is the lowest cap that is planned.
const leastCapRows = 6

// Defaults, each with its source in cited.go.
const (
	DefaultEase   = 5.0  // cm, of chest and arm
	easeShare     = 0.18 // of a thin arm: a baby's sleeve would be wider than its armhole is deep twice
	DefaultExcess = 2.5  // percent
	shapingShare  = 3    // the part of the armhole's rows that are shaped
	underarmShare = 2    // the part of the stitches lost that are bound off at once
	topInches     = 3.0
	topShare      = 4  // the part of a narrow sleeve that is left for the top
	dropShare     = 10 // the part of the width that a modified drop binds off at each edge
	neckShare     = 3  // the part of the width across that is the neck's

	dropMostInches = 3.0 // and the most that it does
)

// settled is a question in counts.
type settled struct {
	in                       Input
	asked                    bool
	style                    Style
	rules                    rules
	st, rw                   gauge.Density
	back, front, sleeve      int
	backLost, frontLost      int  // at each edge
	bodied, sleeved          bool // nothing is wrong with the stitches of back and front, or of the sleeve
	depth, shapingRows       int  // of a saddle without half of the strap
	lowered                  int  // rows by which a saddle's shoulders are
	strapRows, shoulder      int  // of a saddle; the shoulder in stitches
	underarm, top            int
	usualUnderarm            int // the first bind-off where nobody says
	largestGroup             int // bound off at once above the underarm, 0 if it is not said
	shapingGiven             bool
	tries                    int      // of caps, at most
	budget                   *int     // what may still be looked at, in rows times stitches, in all that is tried
	longer                   *float64 // percent by which an edge as knit is longer than its curve, where that is known
	way                      capWay   // what a cap may be shaped by
	capRows                  int      // 0 if the height is free, below 0 if the rule leaves no cap
	rule                     CapHeightRule
	excess, tolerance        float64
	chestCm                  float64 // of the body, 0 if only counts are known
	unit                     measure.DisplayUnit
	sleeveField, depthField  string // what they were given by
	acrossField, heightField string
	backField                string
	topGiven                 bool
	movedCm                  float64 // by how much a measure given in cm was moved, in search of what would do
}

// vet checks each field for itself, and then what the counts are together; asked is whether a
// caller asks, and not a search for what would do.
func vet(c *fault.Checks, in Input, asked bool) settled {
	s := settled{in: in, asked: asked, style: in.Style, unit: in.DisplayUnit, rule: in.CapHeightRule,
		tolerance: fault.Or(in.ToleranceStitches, curve.DefaultTolerance),
		excess:    in.excess(), chestCm: fault.Or(in.ChestCm, 0), tries: mostTries,
		budget: new(in.Cost() * unitsAStep), longer: new(0.0), largestGroup: fault.Or(in.LargestGroupStitches, 0)}
	s.st, s.rw = gauge.Vet(c, "gauge", in.Gauge)
	vetStyle(c, in)
	vetBody(c, in)
	vetSleeve(c, in)
	s.rules = rules{body: gauge.VetRule(c, "stitch_rule", in.StitchRule), sleeve: gauge.VetRule(c, "sleeve_rule", in.SleeveRule),
		across: gauge.VetRule(c, "across_rule", in.AcrossRule), underarm: gauge.VetRule(c, "underarm_rule", in.UnderarmRule),
		top: gauge.VetRule(c, "top_rule", in.TopRule)}
	vetRules(c, in)
	c.OptionalNumber("", "tolerance_stitches", in.ToleranceStitches, 0, MaxSpare)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Sound("gauge", "style") {
		s.widths(c, in)
		s.heights(c, in)
	}
	return s
}

// excess is by how much the cap's edge should be longer.
func (in Input) excess() float64 {
	if in.Style.straight() {
		return fault.Or(in.CapExcessPercent, 0)
	}
	return fault.Or(in.CapExcessPercent, DefaultExcess)
}

// rules are which counts are allowed.
type rules struct {
	body, sleeve, across, underarm, top gauge.Rule
}

func vetBody(c *fault.Checks, in Input) {
	c.OptionalNumber("", "chest_cm", in.ChestCm, MinChest, MaxChest)
	c.OptionalNumber("", "chest_ease_cm", in.ChestEaseCm, MinEase, MaxEase)
	c.OptionalCount("", "back_stitches", in.BackStitches, MinWidth, MaxWidth)
	c.OneOf(in.ChestCm != nil, in.BackStitches != nil, "chest_cm", "back_stitches")
	c.Needs(in.ChestEaseCm != nil, "chest_ease_cm", in.ChestCm != nil, "chest_cm")
	c.OptionalCount("", "front_stitches", in.FrontStitches, MinWidth, MaxWidth)
	c.OptionalNumber("", "across_back_cm", in.AcrossBackCm, MinArm, MaxArm)
	c.OptionalCount("", "across_back_stitches", in.AcrossBackStitches, 1, MaxWidth)
	if in.Style.straight() {
		c.AtMostOne(in.AcrossBackCm != nil, in.AcrossBackStitches != nil, "across_back_cm", "across_back_stitches")
	} else {
		c.OneOf(in.AcrossBackCm != nil, in.AcrossBackStitches != nil, "across_back_cm", "across_back_stitches")
	}
	c.OptionalNumber("", "across_front_cm", in.AcrossFrontCm, MinArm, MaxArm)
	c.OptionalCount("", "across_front_stitches", in.AcrossFrontStitches, 1, MaxWidth)
	c.AtMostOne(in.AcrossFrontCm != nil, in.AcrossFrontStitches != nil, "across_front_cm", "across_front_stitches")
	c.OptionalNumber("", "armhole_depth_cm", in.ArmholeDepthCm, 1, MaxArm)
	c.OptionalCount("", "armhole_depth_rows", in.ArmholeDepthRows, MinDepth, MaxDepth)
	c.OneOf(in.ArmholeDepthCm != nil, in.ArmholeDepthRows != nil, "armhole_depth_cm", "armhole_depth_rows")
	c.OptionalCount("", "underarm_stitches", in.UnderarmStitches, 1, MaxWidth)
	c.OptionalCount("", "largest_group_stitches", in.LargestGroupStitches, 1, MaxGroup)
	c.OptionalCount("", "shaping_rows", in.ShapingRows, underarmRows+2, MaxDepth)
}

func vetSleeve(c *fault.Checks, in Input) {
	c.OptionalNumber("", "upper_arm_cm", in.UpperArmCm, MinArm, MaxArm)
	c.OptionalNumber("", "sleeve_ease_cm", in.SleeveEaseCm, MinEase, MaxEase)
	c.OptionalCount("", "sleeve_stitches", in.SleeveStitches, MinWidth, MaxWidth)
	if in.Style.straight() {
		c.AtMostOne(in.UpperArmCm != nil, in.SleeveStitches != nil, "upper_arm_cm", "sleeve_stitches")
	} else {
		c.OneOf(in.UpperArmCm != nil, in.SleeveStitches != nil, "upper_arm_cm", "sleeve_stitches")
	}
	c.Needs(in.SleeveEaseCm != nil, "sleeve_ease_cm", in.UpperArmCm != nil, "upper_arm_cm")
	fault.Enum(c, "", "cap_height_rule", in.CapHeightRule, CapHeightRuleLessTop)
	c.OptionalNumber("", "cap_height_cm", in.CapHeightCm, 1, MaxArm)
	c.OptionalCount("", "cap_height_rows", in.CapHeightRows, leastCapRows, MaxDepth)
	c.AtMostOne(in.CapHeightCm != nil, in.CapHeightRows != nil, "cap_height_cm", "cap_height_rows")
	if given := in.CapHeightCm != nil || in.CapHeightRows != nil; given && in.CapHeightRule != 0 {
		c.Add("cap_height_rule", fault.ReasonContradictory, "is for a height that is not given; leave one of them out")
	}
	c.OptionalNumber("", "cap_top_cm", in.CapTopCm, measure.MinCm, MaxArm)
	c.OptionalCount("", "cap_top_stitches", in.CapTopStitches, 1, MaxWidth)
	c.AtMostOne(in.CapTopCm != nil, in.CapTopStitches != nil, "cap_top_cm", "cap_top_stitches")
	c.OptionalNumber("", "cap_excess_percent", in.CapExcessPercent, MinExcess, MaxExcess)
	c.OptionalNumber("", "neck_cm", in.NeckCm, measure.MinCm, MaxArm)
	c.OptionalCount("", "neck_stitches", in.NeckStitches, 1, MaxWidth)
	c.AtMostOne(in.NeckCm != nil, in.NeckStitches != nil, "neck_cm", "neck_stitches")
}
