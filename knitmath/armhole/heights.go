package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// heights settles the rows, the underarm and the top, as far as nothing is wrong with what they come from.
func (s *settled) heights(c *fault.Checks, in Input) {
	deep := s.settleDepth(c, in)
	if !s.style.straight() {
		s.capped(c, in, deep)
	} else if s.bodied && deep && c.Sound("underarm_stitches", "underarm_rule", "sleeve_stitches", "sleeve_rule", "cap_excess_percent") {
		s.straight(c, in)
	}
}

// capped settles the rows, the underarm and the top where the sleeve has a cap; deep is whether nothing is wrong
// with the depth.
func (s *settled) capped(c *fault.Checks, in Input, deep bool) {
	topped := s.sleeved && c.Sound(topFields...) && c.Passes(func() { s.settleTop(c, in) })
	if s.style == StyleSaddle {
		deep = s.bodied && deep && topped && c.Sound("neck_cm", "neck_stitches") && c.Passes(func() { s.settleStrap(c, in) })
	}
	if deep {
		s.settleShaping(c, in)
	}
	if s.bodied && topped {
		s.settleUnderarm(c, in)
	}
	if deep && topped || s.rule <= CapHeightRuleFree {
		s.settleCapHeight(c, in)
	}
}

// settleDepth settles how many rows the armhole has, and reports whether nothing is wrong with them.
func (s *settled) settleDepth(c *fault.Checks, in Input) bool {
	s.depthField = "armhole_depth_rows"
	if in.ArmholeDepthCm != nil {
		s.depthField = "armhole_depth_cm"
	}
	if !c.Sound("armhole_depth_rows", "armhole_depth_cm") {
		return false
	}
	s.depth = s.rw.CountedEven(in.ArmholeDepthRows, in.ArmholeDepthCm) // so that shoulders begin on the right side
	if s.depth < MinDepth || s.depth > MaxDepth {
		c.Infeasible(fmt.Sprintf("comes to %d rows; from %d to %d are planned", s.depth, MinDepth, MaxDepth), s.depthField, "gauge")
		return false
	}
	return true
}

// settleShaping settles over how many of its rows an armhole is shaped.
func (s *settled) settleShaping(c *fault.Checks, in Input) {
	if !c.Sound("shaping_rows") {
		return
	}
	s.shapingRows = fault.Or(in.ShapingRows, int(measure.RoundHalfUp(float64(s.depth)/shapingShare)))
	s.shapingGiven = in.ShapingRows != nil
	s.shapingRows = min(max(s.shapingRows, underarmRows+2), max(s.depth, s.shapingRows))
	if s.shapingRows > s.depth {
		c.Infeasible(fmt.Sprintf("the armhole has %d rows", s.depth), "shaping_rows")
	}
}

// settleTop settles the top of the cap, of the same parity as the sleeve, and such that something is left to shape.
func (s *settled) settleTop(c *fault.Checks, in Input) {
	top := s.usualTop(s.sleeve)
	s.topGiven = in.CapTopStitches != nil
	if s.topGiven || in.CapTopCm != nil {
		top = s.st.Counted(in.CapTopStitches, in.CapTopCm)
	}
	if in.TopRule != nil {
		s.settleRuledTop(c)
		return
	}
	if !s.topGiven {
		top += (s.sleeve - top) % 2
	}
	if s.top = top; !s.topGiven {
		s.top = max(top, 1+(s.sleeve+1)%2)
	}
	field := "cap_top_cm"
	if s.topGiven {
		field = "cap_top_stitches"
	}
	switch {
	case (s.sleeve-s.top)%2 != 0:
		c.Infeasible(fmt.Sprintf("%d less than the %d stitches of the sleeve are no even number, and both edges lose alike", s.top, s.sleeve),
			field)
	case s.capLost() < 2:
		c.Infeasible(fmt.Sprintf("a top of %d leaves nothing of %d stitches to be shaped", s.top, s.sleeve), field)
	}
}

// usualTop is how many stitches the top has where nobody says.
func (s *settled) usualTop(sleeve int) int {
	return min(s.st.Nearest(measure.Micrometres(topInches*measure.CmPerInch)), sleeve/topShare)
}

// ruledTop is the top that a rule allows a sleeve.
func (s *settled) ruledTop(sleeve int) (top int, ok bool) {
	num, den := int64(s.usualTop(sleeve)), int64(1)
	if s.in.CapTopCm != nil {
		num, den = s.st.Exact(measure.Micrometres(*s.in.CapTopCm))
	}
	return s.rules.top.Among(num, den, 2-sleeve%2, sleeve-4, 2)
}

// settleRuledTop settles a top that a rule binds.
func (s *settled) settleRuledTop(c *fault.Checks) {
	var ok bool
	if s.top, ok = s.ruledTop(s.sleeve); !ok {
		c.Infeasible(fmt.Sprintf("no count that it allows is left of the %d stitches of the sleeve when both edges lose alike",
			s.sleeve), "top_rule", s.sleeveField)
	}
}

// settleUnderarm settles the first bind-off, which every edge must have room for.
func (s *settled) settleUnderarm(c *fault.Checks, in Input) {
	if !c.Sound("underarm_stitches", "underarm_rule") {
		return
	}
	most := min(s.backLost, s.frontLost, s.capLost()-1)
	least := min(s.backLost, s.frontLost)
	usual := max((least+1)/underarmShare, 1)
	if s.grown() {
		usual = max(usual, min(s.inch(), 2*least/3)) // a third is left for the curve
	}
	usual = min(usual, most)
	s.usualUnderarm = usual
	s.underarm = fault.Or(in.UnderarmStitches, usual)
	if in.UnderarmRule != nil {
		s.ruledUnderarm(c, int64(usual), 1, most)
	}
	if s.underarm > most {
		c.Infeasible(fmt.Sprintf("the edges lose %d at the back, %d at the front and %d at the cap, which is shaped above the underarm",
			s.backLost, s.frontLost, s.capLost()), "underarm_stitches")
	}
}

// ruledUnderarm settles a first bind-off that a rule binds, nearest to a usual one.
func (s *settled) ruledUnderarm(c *fault.Checks, num, den int64, most int) {
	var ok bool
	if s.underarm, ok = s.rules.underarm.Among(num, den, 1, most, 1); !ok {
		c.Infeasible(fmt.Sprintf("allows no count up to %d, the most that may be bound off at an edge", most), "underarm_rule")
		s.underarm = 1
	}
}
