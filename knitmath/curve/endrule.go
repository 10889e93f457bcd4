package curve

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// ruledPoints are the points with the last where a rule wants it: so far in that the count
// left is the nearest that is allowed, the smaller one half-way. Points before it that lie
// as far in move along, so that what goes straight up still does. A last point in stitches
// stays, and must fit.
func (e *curvedEdge) ruledPoints(c *fault.Checks, points []CurvePoint, rule gauge.Rule) []CurvePoint {
	last := len(points) - 1
	p := points[last]
	if (p.InwardStitches == nil) == (p.InwardCm == nil) || e.st.IsZero() {
		return points // neither or both are given: refused as it is
	}
	inward, each := e.st.Counted(p.InwardStitches, p.InwardCm), 1
	if e.in.Edges == EdgesBoth || e.in.Edges == EdgesUnspecified {
		each = 2
	}
	if measure.Abs(inward) > MaxInward {
		return points // refused as it is
	}
	end := e.start - each*inward
	least := e.start - each*min(MaxInward, (e.start-1)/each)
	n, ok := rule.Among(int64(end), 1, least, e.start+each*MaxInward, each)
	at := fault.Index("points", last)
	switch {
	case !ok:
		c.Infeasible(fmt.Sprintf("allows none of the counts that are left of %d stitches when %d are lost or gained at a time", e.start, each),
			"end_rule")
	case p.InwardStitches != nil && n != end:
		c.Infeasible(fmt.Sprintf("leaves %d stitches, which end_rule does not allow; %d in leave %d", end, (e.start-n)/each, n),
			fault.Join(at, "inward_stitches"), "end_rule")
	}
	if !ok || p.InwardStitches != nil {
		return points
	}
	moved := append([]CurvePoint(nil), points...)
	for i := last; i >= 0 && points[i].InwardStitches == nil && points[i].InwardCm != nil && *points[i].InwardCm == *p.InwardCm; i-- {
		moved[i].InwardCm, moved[i].InwardStitches = nil, new((e.start-n)/each)
	}
	return moved
}
