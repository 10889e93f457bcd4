package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// widths settles the stitches of the pieces, and what each edge loses, as far as nothing is wrong with what
// they come from.
func (s *settled) widths(c *fault.Checks, in Input) {
	s.bodied = c.Sound("chest_cm", "chest_ease_cm", "back_stitches", "front_stitches", "stitch_rule") &&
		c.Passes(func() { s.body(c, in) }) &&
		c.Sound(acrossFields...) &&
		c.Passes(func() { s.across(c, in) })
	s.sleeveField = "sleeve_stitches"
	s.sleeved = in.Style.straight() || c.Sound("upper_arm_cm", "sleeve_ease_cm", "sleeve_stitches", "sleeve_rule") &&
		c.Passes(func() { s.arm(c, in) })
}

// body settles the stitches of back and front.
func (s *settled) body(c *fault.Checks, in Input) {
	if s.backField = "back_stitches"; in.BackStitches != nil {
		s.back = *in.BackStitches
	} else {
		s.backField = "chest_cm"
		um := measure.Micrometres((*in.ChestCm + fault.Or(in.ChestEaseCm, DefaultEase)) / 2)
		s.back = s.counted(c, um, s.rules.body, in.StitchRule, "chest_cm", "stitch_rule", func(n int) bool {
			return !c.Sound(acrossFields...) || s.bodyFits(n)
		})
	}
	s.front = fault.Or(in.FrontStitches, s.back)
}

// arm settles the stitches of a sleeve that has a cap.
func (s *settled) arm(c *fault.Checks, in Input) {
	if in.SleeveStitches != nil {
		s.sleeve = *in.SleeveStitches
		return
	}
	s.sleeveField = "upper_arm_cm"
	s.sleeve = s.counted(c, in.armUm(), s.rules.sleeve, in.SleeveRule, "upper_arm_cm", "sleeve_rule", func(n int) bool {
		return !c.Sound(topFields...) || s.sleeveFits(n)
	})
}

// across settles what the edges of back and front lose.
func (s *settled) across(c *fault.Checks, in Input) {
	if in.Style == StyleDrop || in.Style == StyleModifiedDrop && in.AcrossBackCm == nil && in.AcrossBackStitches == nil {
		return
	}
	s.acrossField = "across_back_stitches"
	across := fault.Or(in.AcrossBackStitches, 0)
	if in.AcrossBackCm != nil {
		s.acrossField = "across_back_cm"
		across = s.acrossOf(c, in, s.back, *in.AcrossBackCm, "across_back_cm", s.backField)
	}
	backed := c.Sound(s.acrossField, "across_rule")
	if backed {
		s.backLost = s.lost(c, s.back, across, in.AcrossBackStitches != nil, s.acrossField, s.backField)
	}
	frontField := s.backField // where nobody says it the front is as wide as the back
	if in.FrontStitches != nil {
		frontField = "front_stitches"
	}
	switch {
	case in.AcrossFrontCm != nil:
		if across := s.acrossOf(c, in, s.front, *in.AcrossFrontCm, "across_front_cm", frontField); c.Sound("across_front_cm", "across_rule") {
			s.frontLost = s.lost(c, s.front, across, false, "across_front_cm", frontField)
		}
	case in.AcrossFrontStitches != nil:
		s.frontLost = s.lost(c, s.front, *in.AcrossFrontStitches, true, "across_front_stitches", frontField)
	case backed && c.Sound(s.acrossField):
		s.frontLost = s.lost(c, s.front, s.back-2*s.backLost, false, s.acrossField, frontField)
	}
}

// armUm is the arm with its ease, in micrometres.
func (in Input) armUm() int64 {
	return measure.Micrometres(*in.UpperArmCm + fault.Or(in.SleeveEaseCm, min(DefaultEase, easeShare**in.UpperArmCm)))
}

// acrossOf is the count across a piece that is nearest to a width, of those that a rule
// allows and both edges alike leave of the whole, the smaller one half-way.
func (s *settled) acrossOf(c *fault.Checks, in Input, wide int, cm float64, field, wideField string) int {
	num, den := s.st.Exact(measure.Micrometres(cm))
	if in.AcrossRule == nil {
		return wide - 2*int(measure.FloorDiv(int64(wide)*den-num+den, 2*den))
	}
	n, ok := s.rules.across.Among(num, den, 2-wide%2, wide-2, 2)
	if !ok {
		c.Infeasible(fmt.Sprintf("no count that it allows is left of the %d stitches at the chest when both edges lose alike", wide),
			"across_rule", field, wideField)
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
		c.Infeasible(fmt.Sprintf("%d less than %d are no even number, and both edges lose alike", across, wide), field)
	}
	return n
}
