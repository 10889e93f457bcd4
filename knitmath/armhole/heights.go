package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// heights settles the rows, the underarm and the top.
func (s *settled) heights(c *fault.Checks, in Input) {
	s.depthField = "armhole_depth_rows"
	if in.ArmholeDepthCm != nil {
		s.depthField = "armhole_depth_cm"
	}
	s.depth = s.rw.CountedEven(in.ArmholeDepthRows, in.ArmholeDepthCm) // so that shoulders begin on the right side
	if s.depth < MinDepth || s.depth > MaxDepth {
		c.Infeasible(fmt.Sprintf("comes to %d rows; from %d to %d are planned", s.depth, MinDepth, MaxDepth), s.depthField, "gauge")
		return
	}
	if s.style.straight() {
		s.straight(c, in)
		return
	}
	s.settleTop(c, in)
	if s.style == StyleSaddle {
		s.settleStrap(c, in)
	}
	if c.Err() != nil {
		return
	}
	s.shapingRows = fault.Or(in.ShapingRows, int(measure.RoundHalfUp(float64(s.depth)/shapingShare)))
	s.shapingGiven = in.ShapingRows != nil
	s.shapingRows = min(max(s.shapingRows, underarmRows+2), max(s.depth, s.shapingRows))
	if s.shapingRows > s.depth {
		c.Infeasible(fmt.Sprintf("the armhole has %d rows", s.depth), "shaping_rows")
	}
	s.settleUnderarm(c, in)
	s.settleCapHeight(c, in)
}

// settleTop settles the top of the cap, of the same parity as the sleeve.
func (s *settled) settleTop(c *fault.Checks, in Input) {
	top := min(s.st.Nearest(measure.Micrometres(topInches*measure.CmPerInch)), s.sleeve/topShare)
	s.topGiven = in.CapTopStitches != nil
	if s.topGiven || in.CapTopCm != nil {
		top = s.st.Counted(in.CapTopStitches, in.CapTopCm)
	}
	if in.TopRule != nil {
		s.settleRuledTop(c, in, top)
		return
	}
	if !s.topGiven {
		top += (s.sleeve - top) % 2
	}
	if s.top = top; !s.topGiven {
		s.top = max(top, 1+(s.sleeve+1)%2)
	}
}

// settleRuledTop settles a top that a rule binds.
func (s *settled) settleRuledTop(c *fault.Checks, in Input, usual int) {
	num, den := int64(usual), int64(1)
	if in.CapTopCm != nil {
		num, den = s.st.Exact(measure.Micrometres(*in.CapTopCm))
	}
	var ok bool
	if s.top, ok = s.rules.top.Among(num, den, 2-s.sleeve%2, s.sleeve-2, 2); !ok {
		c.Infeasible(fmt.Sprintf("no count that it allows is left of the %d stitches of the sleeve when both edges lose alike",
			s.sleeve), "top_rule")
	}
}

// usualTop says what top would do where the one that is given does not: the one that is taken
// if nobody says, where the planner has a cap with it.
func (in Input) usualTop() string {
	if in.CapTopStitches == nil && in.CapTopCm == nil {
		return ""
	}
	in.CapTopStitches, in.CapTopCm = nil, nil
	out, err := Plan(in)
	if err != nil {
		return ""
	}
	return fmt.Sprintf("; one of %d would do", out.set.top)
}

// settleUnderarm settles the first bind-off, which every edge must have room for.
func (s *settled) settleUnderarm(c *fault.Checks, in Input) {
	if (s.sleeve-s.top)%2 != 0 {
		c.Infeasible(fmt.Sprintf("%d less than the %d stitches of the sleeve are no even number, and both edges lose alike; "+
			"%d and %d are the next", s.top, s.sleeve, s.top-1, s.top+1), "cap_top_stitches")
		return
	}
	most := min(s.backLost, s.frontLost, s.capLost()-1)
	if most < 1 {
		field := "cap_top_cm"
		if s.topGiven {
			field = "cap_top_stitches"
		}
		detail := fmt.Sprintf("a top of %d leaves nothing of %d stitches to be shaped", s.top, s.sleeve)
		if s.asked {
			detail += in.usualTop()
		}
		c.Infeasible(detail, field)
		return
	}
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
		c.Infeasible(fmt.Sprintf("the edges lose %d at the back, %d at the front and %d at the cap, which is shaped above the underarm; "+
			"at most %d can be bound off", s.backLost, s.frontLost, s.capLost(), most), "underarm_stitches")
	}
}

// ruledUnderarm settles a first bind-off that a rule binds, nearest to a usual one.
func (s *settled) ruledUnderarm(c *fault.Checks, num, den int64, most int) {
	var ok bool
	if s.underarm, ok = s.rules.underarm.Among(num, den, 1, most, 1); !ok {
		c.Infeasible(fmt.Sprintf("allows no count from 1 to %d, the most that may be bound off at an edge", most), "underarm_rule")
		s.underarm = 1
	}
}
