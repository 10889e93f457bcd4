package armhole

import (
	"fmt"

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
	DefaultEase   = 5.0 // cm, of chest and arm
	DefaultExcess = 2.5 // percent
	shapingShare  = 3   // the part of the armhole's rows that are shaped
	underarmShare = 2   // the part of the stitches lost that are bound off at once
	topInches     = 3.0
	topShare      = 4 // the part of a narrow sleeve that is left for the top
)

// settled is a question in counts.
type settled struct {
	in                       Input
	st, rw                   gauge.Density
	back, front, sleeve      int
	backLost, frontLost      int // at each edge
	depth, shapingRows       int
	underarm, top            int
	largestGroup             int // bound off at once above the underarm, 0 if it is not said
	shapingGiven             bool
	tries                    int  // of caps, at most
	budget                   *int // what may still be looked at, in rows times stitches, in all that is tried
	everyRow                 bool // a cap may decrease on every row
	capRows                  int  // 0 if the height is free
	rule                     CapHeightRule
	excess, tolerance        float64
	chestCm                  float64 // of the body, 0 if only counts are known
	unit                     measure.DisplayUnit
	sleeveField, depthField  string // what they were given by
	acrossField, heightField string
	topGiven, armGiven       bool
}

// vet checks each field for itself, and then what the counts are together.
func vet(c *fault.Checks, in Input) settled {
	s := settled{in: in, unit: in.DisplayUnit, rule: in.CapHeightRule, tolerance: fault.Or(in.ToleranceStitches, curve.DefaultTolerance),
		excess: fault.Or(in.CapExcessPercent, DefaultExcess), chestCm: fault.Or(in.ChestCm, 0), tries: mostTries,
		budget: new(in.Cost() * unitsAStep), largestGroup: fault.Or(in.LargestGroupStitches, 0)}
	s.st, s.rw = gauge.Vet(c, "gauge", in.Gauge)
	vetBody(c, in)
	vetSleeve(c, in)
	body, arm := gauge.VetRule(c, "stitch_rule", in.StitchRule), gauge.VetRule(c, "sleeve_rule", in.SleeveRule)
	if in.StitchRule != nil && in.BackStitches != nil {
		c.Add("stitch_rule", fault.ReasonContradictory, "is for stitches that are worked out; back_stitches are given")
	}
	if in.SleeveRule != nil && in.SleeveStitches != nil {
		c.Add("sleeve_rule", fault.ReasonContradictory, "is for stitches that are worked out; sleeve_stitches are given")
	}
	c.OptionalNumber("", "tolerance_stitches", in.ToleranceStitches, 0, MaxSpare)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Err() == nil {
		s.widths(c, in, body, arm)
	}
	if c.Err() == nil {
		s.heights(c, in)
	}
	return s
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
	c.OneOf(in.AcrossBackCm != nil, in.AcrossBackStitches != nil, "across_back_cm", "across_back_stitches")
	c.OptionalCount("", "across_front_stitches", in.AcrossFrontStitches, 1, MaxWidth)
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
	c.OneOf(in.UpperArmCm != nil, in.SleeveStitches != nil, "upper_arm_cm", "sleeve_stitches")
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
}

// widths settles the stitches of the pieces, and what each edge loses.
func (s *settled) widths(c *fault.Checks, in Input, body, arm gauge.Rule) {
	backField := "back_stitches"
	if in.BackStitches != nil {
		s.back = *in.BackStitches
	} else {
		backField = "chest_cm"
		um := measure.Micrometres((*in.ChestCm + fault.Or(in.ChestEaseCm, DefaultEase)) / 2)
		s.back = s.counted(c, um, body, in.StitchRule != nil, "chest_cm", "stitch_rule")
	}
	s.sleeveField = "sleeve_stitches"
	if in.SleeveStitches != nil {
		s.sleeve = *in.SleeveStitches
	} else {
		s.sleeveField, s.armGiven = "upper_arm_cm", true
		um := measure.Micrometres(*in.UpperArmCm + fault.Or(in.SleeveEaseCm, DefaultEase))
		s.sleeve = s.counted(c, um, arm, in.SleeveRule != nil, "upper_arm_cm", "sleeve_rule")
	}
	if c.Err() != nil {
		return
	}
	s.front = fault.Or(in.FrontStitches, s.back)
	s.acrossField = "across_back_stitches"
	if in.AcrossBackCm != nil {
		s.acrossField = "across_back_cm"
	}
	across := fault.Or(in.AcrossBackStitches, 0)
	if in.AcrossBackCm != nil {
		across = s.nearestAcross(measure.Micrometres(*in.AcrossBackCm))
	}
	s.backLost = s.lost(c, s.back, across, in.AcrossBackStitches != nil, s.acrossField, backField)
	switch {
	case c.Err() != nil:
	case in.AcrossFrontStitches != nil:
		s.frontLost = s.lost(c, s.front, *in.AcrossFrontStitches, true, "across_front_stitches", "front_stitches")
	default:
		s.frontLost = s.lost(c, s.front, s.back-2*s.backLost, false, s.acrossField, "front_stitches")
	}
}

// counted is a width in stitches.
func (s *settled) counted(c *fault.Checks, um int64, r gauge.Rule, ruled bool, field, rule string) int {
	fields := []string{field, "gauge"}
	if ruled {
		fields = append(fields, rule)
	}
	f := s.st.VetFit(c, um, r, "stitches", fields...)
	if f == nil {
		return 0
	}
	if f.Count < MinWidth || f.Count > MaxWidth {
		c.Infeasible(fmt.Sprintf("comes to %d stitches; from %d to %d are planned", f.Count, MinWidth, MaxWidth), fields...)
	}
	return f.Count
}

// nearestAcross is the count across the back that is nearest to a width, of those that both
// edges alike leave of the whole, the smaller one half-way.
func (s *settled) nearestAcross(um int64) int {
	num, den := s.st.Exact(um)
	return s.back - 2*int(measure.FloorDiv(int64(s.back)*den-num+den, 2*den))
}

// lost is what each edge loses from the width at the chest to that across the back.
func (s *settled) lost(c *fault.Checks, wide, across int, exact bool, field, wideField string) int {
	n := int(measure.FloorDiv(int64(wide-across)+1, 2))
	switch {
	case n < 1:
		c.Infeasible(fmt.Sprintf("an armhole loses at least 1 stitch at each edge: of %d stitches at the chest at most %d are left across",
			wide, wide-2), field, wideField)
	case exact && (wide-across)%2 != 0:
		c.Infeasible(fmt.Sprintf("%d less than %d are no even number, and both edges lose alike; %d or %d would do", across, wide, across-1,
			across+1), field)
	}
	return n
}

// heights settles the rows, the underarm and the top.
func (s *settled) heights(c *fault.Checks, in Input) {
	s.depthField = "armhole_depth_rows"
	if in.ArmholeDepthCm != nil {
		s.depthField = "armhole_depth_cm"
	}
	s.depth = s.rw.Counted(in.ArmholeDepthRows, in.ArmholeDepthCm)
	if s.depth < MinDepth || s.depth > MaxDepth {
		c.Infeasible(fmt.Sprintf("comes to %d rows; from %d to %d are planned", s.depth, MinDepth, MaxDepth), s.depthField, "gauge")
		return
	}
	s.shapingRows = fault.Or(in.ShapingRows, int(measure.RoundHalfUp(float64(s.depth)/shapingShare)))
	s.shapingGiven = in.ShapingRows != nil
	s.shapingRows = min(max(s.shapingRows, underarmRows+2), max(s.depth, s.shapingRows))
	if s.shapingRows > s.depth {
		c.Infeasible(fmt.Sprintf("the armhole has %d rows", s.depth), "shaping_rows")
	}
	s.settleTop(in)
	s.settleUnderarm(c, in)
	s.settleCapHeight(c, in)
}

// settleTop settles the top of the cap, of the same parity as the sleeve.
func (s *settled) settleTop(in Input) {
	top := min(s.st.Nearest(measure.Micrometres(topInches*measure.CmPerInch)), s.sleeve/topShare)
	s.topGiven = in.CapTopStitches != nil
	if s.topGiven || in.CapTopCm != nil {
		top = s.st.Counted(in.CapTopStitches, in.CapTopCm)
	}
	if !s.topGiven {
		top += (s.sleeve - top) % 2
	}
	if s.top = top; !s.topGiven {
		s.top = max(top, 1+(s.sleeve+1)%2)
	}
}

// settleUnderarm settles the first bind-off, which every edge must have room for.
func (s *settled) settleUnderarm(c *fault.Checks, in Input) {
	if (s.sleeve-s.top)%2 != 0 {
		c.Infeasible(fmt.Sprintf("%d less than the %d stitches of the sleeve are no even number, and both edges lose alike; %d or %d would do",
			s.top, s.sleeve, s.top-1, s.top+1), "cap_top_stitches")
		return
	}
	most := min(s.backLost, s.frontLost, s.capLost()-1)
	if most < 1 {
		field := "cap_top_cm"
		if s.topGiven {
			field = "cap_top_stitches"
		}
		c.Infeasible(fmt.Sprintf("a top of %d leaves nothing of %d stitches to be shaped; at most %d would do",
			s.top, s.sleeve, s.sleeve-4), field)
		return
	}
	least := min(s.backLost, s.frontLost)
	s.underarm = fault.Or(in.UnderarmStitches, min(max((least+1)/underarmShare, 1), most))
	if s.underarm > most {
		c.Infeasible(fmt.Sprintf("the edges lose %d at the back, %d at the front and %d at the cap, which is shaped above the underarm; "+
			"at most %d would do", s.backLost, s.frontLost, s.capLost(), most), "underarm_stitches")
	}
}
