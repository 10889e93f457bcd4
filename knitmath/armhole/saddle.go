package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// settleStrap settles the strap of a saddle: as wide as the cap's top, as long as the
// shoulder, and half its width in the front's height and half in the back's.
func (s *settled) settleStrap(c *fault.Checks, in Input) {
	strap := s.st.SizeCm(s.top) / 2 * s.rw.PerCm() // half of its width, in rows
	whole := s.rw.Counted(in.ArmholeDepthRows, in.ArmholeDepthCm)
	rows := float64(whole)
	if in.ArmholeDepthCm != nil {
		rows = *in.ArmholeDepthCm * s.rw.PerCm()
	}
	s.depth = 2 * int(measure.RoundHalfUp((rows-strap)/2))
	if s.lowered = whole - s.depth; s.depth < MinDepth {
		c.Infeasible(fmt.Sprintf("half of the strap's width leaves %d rows of the armhole; at least %d are planned", max(s.depth, 0), MinDepth),
			s.depthField)
		return
	}
	across := s.back - 2*s.backLost
	neck, field := fault.Or(in.NeckStitches, 0), "neck_stitches"
	if in.NeckStitches == nil {
		field = "neck_cm"
		num, den := int64(across), int64(neckShare)
		if in.NeckCm != nil {
			num, den = s.st.Exact(measure.Micrometres(*in.NeckCm))
		}
		neck = across - 2*int(measure.FloorDiv(int64(across)*den-num+den, 2*den))
	}
	s.shoulder = (across - neck) / 2
	front := s.front - 2*s.frontLost
	switch {
	case neck > across-2 || neck < 1:
		c.Infeasible(fmt.Sprintf("comes to %s, and a shoulder of the %d across has at least 1: from 1 to %d can be the neck's",
			report.CountOf(neck, "stitches"), across, across-2), field, s.acrossField)
	case (across-neck)%2 != 0:
		c.Infeasible(fmt.Sprintf("%d less than %d are no even number, and both shoulders are alike", neck, across), field)
	case front-2*s.shoulder < 1:
		field := s.acrossField
		switch {
		case in.AcrossFrontCm != nil:
			field = "across_front_cm"
		case in.AcrossFrontStitches != nil:
			field = "across_front_stitches"
		}
		c.Infeasible(fmt.Sprintf("the strap lies between shoulders of %d stitches, and of the front's %d two of them leave no neck",
			s.shoulder, front), field)
	}
	s.strapRows = max(1, s.rw.Nearest(measure.Micrometres(s.st.SizeCm(max(s.shoulder, 0)))))
}
