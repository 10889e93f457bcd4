package armhole

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// bellsAsked are the heights beside a given one that are asked for a bell.
const bellsAsked = 6

// uprightNotices tell of a cap that its height leaves no bell of, and which height would.
func (s settled) uprightNotices(out Armhole) []report.Notice {
	apart, upright := out.sew.top.upright()
	if s.capRows == 0 || !upright {
		return nil
	}
	return []report.Notice{{Reason: CapUpright, Field: s.heightField, Description: "a cap " + report.CountOf(out.Cap.HeightRows, "rows") +
		" high is no bell here: up to " + report.CountOf(apart, "rows") + " lie from one step of its edge to the next, where " +
		strconv.Itoa(slowest) + " are usual" + s.belled(out.Cap.HeightRows)}}
}

// upright is how many rows lie from one step of a cap's edge to the next at the most, and whether its sides stand upright or
// have a kink.
func (p shaped) upright() (apart int, is bool) {
	steps := p.steps()
	for i := 1; i < len(steps); i++ {
		apart = max(apart, steps[i].RowNumber-steps[i-1].RowNumber)
	}
	return apart, apart > slowest || p.plan.Kinked
}

// belled is the height nearest to a given one, on the way to the free one, with which a cap is a bell, asked as whoever reads of
// it asks; else nothing, where that of the free height is none either.
func (s settled) belled(rows int) string {
	free := s
	free.in.CapHeightRule, free.rule, free.capRows = 0, CapHeightRuleFree, 0
	found, ok := free.solve()
	if !ok {
		return ""
	}
	step := rowStep
	if found.top.rows < rows {
		step = -rowStep
	}
	for range bellsAsked {
		if rows += step; (found.top.rows-rows)*step < 0 {
			return ""
		}
		if words := s.bellOf(rows); words != "" {
			return "; with " + words + " it would be one"
		}
	}
	if words := s.bellOf(found.top.rows); words != "" {
		return "; with " + words + " it would be one"
	}
	return ""
}

// bellOf is "40 rows (1.4 cm higher)" where a cap of so many is a bell.
func (s settled) bellOf(rows int) string {
	in := s.in
	in.CapHeightRule, in.CapHeightCm, in.CapHeightRows = 0, nil, &rows
	var c fault.Checks
	t := vet(&c, in, true)
	t.budget = s.budget
	found, ok := t.solve()
	if _, upright := found.top.upright(); !ok || c.Err() != nil || upright {
		return ""
	}
	if s.rule > CapHeightRuleFree {
		return report.CountOf(rows, "rows") + ", not by the rule,"
	}
	for _, m := range s.moves() {
		if m.field == s.heightField && !s.measured(m, &t) {
			return ""
		}
	}
	return report.CountOf(rows, "rows") + s.higher(t)
}
