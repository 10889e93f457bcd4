package curve

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
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
	if inward := e.lastIn(); measure.Abs(inward) > MaxInward || p.InwardStitches != nil && e.left(e.start, inward) < 0 {
		return points // too far, or more than there are: refused as it is
	}
	n, ok := e.allowed(rule, e.start)
	switch {
	case !ok:
		c.Infeasible(e.noneAllowed(rule), "end_rule")
	case p.InwardCm != nil:
		inward := (e.start - n) / e.each()
		if points = endingIn(points, inward); inward == 0 && last == 0 {
			c.Infeasible("allows "+countWords(n)+" and none that is nearer, so that there is nothing to shape"+e.endings(rule, 0),
				"end_rule", fault.Join(fault.Index("points", last), "inward_cm"))
		}
	case n != e.left(e.start, e.lastIn()):
		c.Infeasible(e.offRule(rule), fault.Join(fault.Index("points", last), "inward_stitches"), "end_rule")
	}
	return points
}

// each is how many stitches go at a time.
func (e *curvedEdge) each() int {
	if e.in.Edges == EdgesBoth || e.in.Edges == EdgesUnspecified {
		return 2
	}
	return 1
}

// lastIn is how far in the last point lies as it is asked.
func (e *curvedEdge) lastIn() int {
	p := e.in.Points[len(e.in.Points)-1]
	return e.st.Counted(p.InwardStitches, p.InwardCm)
}

// left is what is left of a start where the last point lies so far in.
func (e *curvedEdge) left(start, inward int) int { return start - e.each()*inward }

// allowed is the count nearest to what is asked that a rule allows of those that can be left of a start.
func (e *curvedEdge) allowed(rule gauge.Rule, start int) (int, bool) {
	each := e.each()
	return rule.Among(int64(e.left(start, e.lastIn())), 1, e.left(start, min(MaxInward, (start-1)/each)), e.left(start, -MaxInward), each)
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

// noneAllowed says that a rule allows none of the counts that can be left, and of which starts it does.
func (e *curvedEdge) noneAllowed(rule gauge.Rule) string {
	s := fmt.Sprintf("allows none of the counts that are left of %d stitches when %d are lost or gained at a time", e.start, e.each())
	if !e.asked {
		return s
	}
	less, fewer := e.startThatDoes(e.start, -1)
	more, enough := e.startThatDoes(e.start, 1)
	switch {
	case fewer && enough:
		return s + "; a start of " + strconv.Itoa(less) + " or " + countWords(more) + " would do"
	case fewer || enough:
		return s + "; a start of " + countWords(max(less, more)) + " would do"
	}
	other := *e
	for _, side := range []int{-1, 1} {
		if other.start = e.startAllowed(e.start, side, false); other.start > 0 {
			if ways := other.endings(rule, e.lastIn()); strings.Contains(ways, "would leave") {
				e.sought = other.sought
				return s + "; of a start of " + countWords(other.start) + ", " + strings.TrimPrefix(ways, "; ")
			}
		}
	}
	e.sought = other.sought
	return s + "; of no start near it is any planned"
}

// How many starts are looked at, and how many of those that a rule allows are asked.
const mostStarts, askedStarts = 400, 8

// startAllowed is the first start beyond one, to one side, of which the rule allows what is asked, or at
// least some count, 0 if there is none.
func (e *curvedEdge) startAllowed(start, side int, asAsked bool) int {
	rule := gauge.VetRule(&fault.Checks{}, "", e.in.EndRule)
	exact := asAsked && e.in.Points[len(e.in.Points)-1].InwardStitches != nil
	for range mostStarts {
		if start += side; start < 1 || start > stitch.MaxStitches {
			return 0
		}
		if n, ok := e.allowed(rule, start); ok && (!exact || n == e.left(start, e.lastIn())) {
			return start
		}
	}
	return 0
}

// startThatDoes is the first of those that is planned.
func (e *curvedEdge) startThatDoes(start, side int) (int, bool) {
	for range askedStarts {
		start = e.startAllowed(start, side, true)
		if start == 0 {
			return 0, false
		}
		if e.does(remedy{ask: func(*CurvedEdgeInput) {}}, start) {
			return start, true
		}
	}
	return 0, false
}

// offRule says that a rule does not allow the count left, and what would do.
func (e *curvedEdge) offRule(rule gauge.Rule) string {
	return "leaves " + countWords(e.left(e.start, e.lastIn())) + ", which end_rule does not allow" + e.endings(rule, e.lastIn())
}

// endingsAsked are the last points to a side that are asked for, the nearest and then some far ones.
const endingsAsked = 8

// endings says which last points on either side of one leave a count that the rule allows, and are planned; where
// none are, what else has to be let for the nearest.
func (e *curvedEdge) endings(rule gauge.Rule, asked int) string {
	var inward []int // all that it allows
	for n := -MaxInward; n <= min(MaxInward, (e.start-1)/e.each()); n++ {
		if rule.Allows(e.left(e.start, n)) && (n != 0 || asked != 0) {
			inward = append(inward, n)
		}
	}
	if !e.asked {
		return ""
	}
	beyond, _ := slices.BinarySearch(inward, asked)
	var ways []string
	for _, way := range [2]struct{ start, side int }{{beyond, -1}, {beyond - 1, 1}} {
		if at, ok := advice.Along(way.start, way.side, endingsAsked, 0, len(inward)-1, func(at int) bool {
			return e.does(lastIn(inward[at]), e.start)
		}); ok {
			ways = append(ways, e.ending(inward[at]))
		}
	}
	if len(ways) == 0 {
		ways = e.endingsLet(inward[max(0, beyond-1):min(beyond+1, len(inward))])
	}
	if len(ways) == 0 {
		return "; none near it that it allows is planned"
	}
	return "; " + strings.Join(ways, ", or ")
}

// endingsLet are the last points that are planned where something more is let.
func (e *curvedEdge) endingsLet(inward []int) (ways []string) {
	e.settings = e.in.settings()
	for _, n := range inward {
		for _, r := range e.remedies() {
			if e.does(remedy{ask: func(in *CurvedEdgeInput) { lastIn(n).ask(in); r.ask(in) }}, e.start) {
				ways = append(ways, e.ending(n)+" with "+r.words)
			}
		}
	}
	return ways
}

// ending is "8 stitches inward would leave 82".
func (e *curvedEdge) ending(inward int) string {
	way := " inward"
	if inward < 0 {
		way = " outward"
	}
	return countWords(measure.Abs(inward)) + way + " would leave " + strconv.Itoa(e.left(e.start, inward))
}

// lastIn asks for the last point so far in.
func lastIn(inward int) remedy {
	return remedy{ask: func(in *CurvedEdgeInput) {
		in.Points = slices.Clone(in.Points)
		last := &in.Points[len(in.Points)-1]
		last.InwardCm, last.InwardStitches = nil, &inward
	}}
}
