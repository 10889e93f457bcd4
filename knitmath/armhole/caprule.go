package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The rules of cap height, in inches as they are published.
const (
	smallChest, largeChest           = 30.0, 48.0
	smallLess, commonLess, largeLess = 2.0, 3.0, 4.0
	twoThirds                        = 2.0 / 3
	lessTopInches                    = 1.5
)

// LessByChestCm is by how much a cap is lower than its armhole is deep, by the chest:
// 2 inches up to 30, 3 up to 48, 4 above.
func LessByChestCm(chestCm float64) float64 {
	switch chest := chestCm / measure.CmPerInch; {
	case chest <= smallChest:
		return smallLess * measure.CmPerInch
	case chest <= largeChest:
		return commonLess * measure.CmPerInch
	}
	return largeLess * measure.CmPerInch
}

// ruleCm is the height of a cap by a rule.
func (s *settled) ruleCm(rule CapHeightRule) float64 {
	depth := s.rw.SizeCm(s.depth)
	switch rule {
	case CapHeightRuleTwoThirds:
		return depth * twoThirds
	case CapHeightRuleLessTop:
		return depth - lessTopInches*measure.CmPerInch - s.st.SizeCm(s.top)/2
	}
	chest := s.chestCm
	if chest == 0 {
		chest = s.st.SizeCm(s.back + s.front)
	}
	return depth - LessByChestCm(chest)
}

// noCap are the rows of a cap that a rule leaves none of.
const noCap = -1

// ruleRows is the height by the rule that was asked for, in an even number of rows, so that
// both edges have as many.
func (s settled) ruleRows() int {
	return s.rw.CountedEven(nil, new(max(0, s.ruleCm(s.rule))))
}

// settleCapHeight settles the rows of the cap where they are given, or a rule gives them.
func (s *settled) settleCapHeight(c *fault.Checks, in Input) {
	if !c.Sound("cap_height_cm", "cap_height_rows", "cap_height_rule") {
		return
	}
	switch {
	case in.CapHeightRows != nil:
		s.heightField, s.capRows = "cap_height_rows", *in.CapHeightRows
	case in.CapHeightCm != nil:
		s.heightField, s.capRows = "cap_height_cm", s.rw.Counted(nil, in.CapHeightCm)
	case s.rule > CapHeightRuleFree:
		s.heightField, s.capRows = "cap_height_rule", noCap
		if rows := s.ruleRows(); rows >= leastCapRows {
			s.capRows = rows
		}
		return // a rule that leaves no cap is refused with what would leave one
	default:
		return
	}
	if s.capRows < leastCapRows || s.capRows > MaxDepth {
		c.Infeasible(fmt.Sprintf("comes to %s; from %d to %d are planned", report.CountOf(s.capRows, "rows"), leastCapRows, MaxDepth),
			s.heightField)
	}
}
