package curve

import (
	"fmt"
	"slices"
	"strconv"

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
	end := e.start - each*inward
	if measure.Abs(inward) > MaxInward || p.InwardStitches != nil && end < 1 {
		return points // too far, or more than there are: refused as it is
	}
	least := e.start - each*min(MaxInward, (e.start-1)/each)
	n, ok := rule.Among(int64(end), 1, least, e.start+each*MaxInward, each)
	switch {
	case !ok:
		c.Infeasible(fmt.Sprintf("allows none of the counts that are left of %d stitches when %d are lost or gained at a time", e.start, each),
			"end_rule")
	case p.InwardCm != nil:
		return endingIn(points, (e.start-n)/each)
	case n != end:
		c.Infeasible(e.offRule(end, n, (e.start-n)/each), fault.Join(fault.Index("points", last), "inward_stitches"), "end_rule")
	}
	return points
}

// endingIn are points of which the last, and those before it that lie as far in, lie so many stitches in.
func endingIn(points []CurvePoint, inward int) []CurvePoint {
	moved := append([]CurvePoint(nil), points...)
	cm := *points[len(points)-1].InwardCm
	for i := len(points) - 1; i >= 0 && points[i].InwardStitches == nil && points[i].InwardCm != nil && *points[i].InwardCm == cm; i-- {
		moved[i].InwardCm, moved[i].InwardStitches = nil, &inward
	}
	return moved
}

// offRule says that a rule does not allow the count left, and how far in another leaves one that it allows, where the planner
// plans that.
func (e *curvedEdge) offRule(end, allowed, inward int) string {
	s := "leaves " + countWords(end) + ", which end_rule does not allow"
	way := " inward"
	if inward < 0 {
		way = " outward"
	}
	if e.asked && e.does(remedy{ask: func(in *CurvedEdgeInput) {
		in.Points = slices.Clone(in.Points)
		in.Points[len(in.Points)-1].InwardStitches = &inward
	}}, e.start) {
		s += "; " + countWords(measure.Abs(inward)) + way + " would leave " + strconv.Itoa(allowed)
	}
	return s
}
