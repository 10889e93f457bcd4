package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// widths settles the stitches of the pieces, and what each edge loses.
func (s *settled) widths(c *fault.Checks, in Input) {
	backField := "back_stitches"
	if in.BackStitches != nil {
		s.back = *in.BackStitches
	} else {
		backField = "chest_cm"
		um := measure.Micrometres((*in.ChestCm + fault.Or(in.ChestEaseCm, DefaultEase)) / 2)
		s.back = s.counted(c, um, s.rules.body, in.StitchRule != nil, "chest_cm", "stitch_rule")
	}
	s.sleeveField = "sleeve_stitches"
	switch {
	case in.Style.straight():
	case in.SleeveStitches != nil:
		s.sleeve = *in.SleeveStitches
	default:
		s.sleeveField, s.armGiven = "upper_arm_cm", true
		s.sleeve = s.counted(c, in.armUm(), s.rules.sleeve, in.SleeveRule != nil, "upper_arm_cm", "sleeve_rule")
	}
	if c.Err() != nil {
		return
	}
	s.front = fault.Or(in.FrontStitches, s.back)
	if in.Style == StyleDrop || in.Style == StyleModifiedDrop && in.AcrossBackCm == nil && in.AcrossBackStitches == nil {
		return
	}
	s.acrossField = "across_back_stitches"
	if in.AcrossBackCm != nil {
		s.acrossField = "across_back_cm"
	}
	across := fault.Or(in.AcrossBackStitches, 0)
	if in.AcrossBackCm != nil {
		across = s.acrossOf(c, in, s.back, *in.AcrossBackCm, "across_back_cm")
	}
	if c.Err() != nil {
		return
	}
	s.backLost = s.lost(c, s.back, across, in.AcrossBackStitches != nil, s.acrossField, backField)
	switch {
	case c.Err() != nil:
	case in.AcrossFrontCm != nil:
		across := s.acrossOf(c, in, s.front, *in.AcrossFrontCm, "across_front_cm")
		s.frontLost = s.lost(c, s.front, across, false, "across_front_cm", "front_stitches")
	case in.AcrossFrontStitches != nil:
		s.frontLost = s.lost(c, s.front, *in.AcrossFrontStitches, true, "across_front_stitches", "front_stitches")
	default:
		s.frontLost = s.lost(c, s.front, s.back-2*s.backLost, false, s.acrossField, "front_stitches")
	}
}

// armUm is the arm with its ease, in micrometres.
func (in Input) armUm() int64 {
	return measure.Micrometres(*in.UpperArmCm + fault.Or(in.SleeveEaseCm, min(DefaultEase, easeShare**in.UpperArmCm)))
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

// acrossOf is the count across a piece that is nearest to a width, of those that a rule
// allows and both edges alike leave of the whole, the smaller one half-way.
func (s *settled) acrossOf(c *fault.Checks, in Input, wide int, cm float64, field string) int {
	num, den := s.st.Exact(measure.Micrometres(cm))
	if in.AcrossRule == nil {
		return wide - 2*int(measure.FloorDiv(int64(wide)*den-num+den, 2*den))
	}
	n, ok := s.rules.across.Among(num, den, 2-wide%2, wide-2, 2)
	if !ok {
		c.Infeasible(fmt.Sprintf("no count that it allows is left of the %d stitches at the chest when both edges lose alike", wide),
			"across_rule", field)
	}
	return n
}

// lost is what each edge loses from the width at the chest to that across the back.
func (s *settled) lost(c *fault.Checks, wide, across int, exact bool, field, wideField string) int {
	n := int(measure.FloorDiv(int64(wide-across)+1, 2))
	switch {
	case n < 1:
		c.Infeasible(fmt.Sprintf("an armhole loses at least 1 stitch at each edge: of %d stitches at the chest at most %d are left across",
			wide, wide-2), field, wideField)
	case exact && (wide-across)%2 != 0:
		c.Infeasible(fmt.Sprintf("%d less than %d are no even number, and both edges lose alike; %d and %d are the next", across, wide, across-1,
			across+1), field)
	}
	return n
}
