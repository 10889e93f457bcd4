package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// vetSpacing checks everything and settles the changes. Whether they fit is judged
// although another field is wrong. remedies says whether they are wanted.
func vetSpacing(c *fault.Checks, in EvenSpacingInput, remedies bool) spacing {
	round := in.Construction == stitch.InTheRound
	c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	c.RequiredCount("", "end_stitches", in.EndStitches, 1, stitch.MaxStitches)
	vetShapingOp(c, "operation", in.Operation)
	fault.Enum(c, "", "construction", in.Construction, stitch.InTheRound)
	c.OptionalCount("", "edge_stitches", in.EdgeStitches, 0, gauge.MaxEdges)
	fault.Enum(c, "", "spread", in.Spread, GapSpreadLeastEffort)
	vetTolerance(c, in.ToleranceStitches, in.Spread == GapSpreadUnspecified || in.Spread == GapSpreadLeastEffort)
	s := spacing{start: in.StartStitches, end: in.EndStitches, edge: fault.Or(in.EdgeStitches, 0),
		op: in.Operation, round: round, order: in.Spread, excess: fault.Or(in.ToleranceStitches, defaultGapTolerance),
		widens: in.ToleranceStitches == nil, long: true}
	if round && s.edge > 0 {
		c.Add("edge_stitches", fault.ReasonContradictory, "must be 0 in the round, which has no edges")
	}
	if c.Sound("start_stitches", "end_stitches", "operation", "edge_stitches") {
		s.vetChanges(c, in, remedies && c.Err() == nil)
	}
	return s
}

// vetShapingOp checks that an operation, if named, is an increase or a decrease
// that can be worked inside a row.
func vetShapingOp(c *fault.Checks, field string, op stitch.Op) {
	switch {
	case op == 0:
	case !op.Valid():
		c.Add(field, fault.ReasonUnknownValue, "is %d, which is no operation", int(op))
	case op.Net() == 0 || op == stitch.CastOn || op == stitch.BindOff || op == stitch.ShortRowYO ||
		op == stitch.PickUpTwo || op == stitch.SkipRow || op == stitch.Hold:
		c.Add(field, fault.ReasonUnknownValue, "is %s; an increase or a decrease worked inside a row is needed", op.Abbr())
	}
}

// vetChanges settles the operation and how many of them a spacing needs, and
// checks that they fit.
func (s *spacing) vetChanges(c *fault.Checks, in EvenSpacingInput, remedies bool) {
	diff := s.end - s.start
	if diff == 0 {
		c.Infeasible("start_stitches and end_stitches are equal: there is nothing to space", "start_stitches", "end_stitches")
		return
	}
	if s.op == 0 {
		s.op = stitch.K2tog
		if diff > 0 {
			s.op = stitch.M1L
		}
	}
	net := s.op.Net()
	if diff*net < 0 {
		verb := "adds"
		if net < 0 {
			verb = "removes"
		}
		c.Add("operation", fault.ReasonContradictory, "is %s, which %s stitches; end_stitches goes the other way", s.op.Abbr(), verb)
		return
	}
	if diff%net != 0 {
		detail := s.op.Abbr() + " changes the count by " + strconv.Itoa(measure.Abs(net)) + " each, and " +
			strconv.Itoa(measure.Abs(diff)) + " is not a multiple of that"
		if remedies {
			if ends := in.nearest(); ends != "" {
				detail += "; end with " + ends
			}
		}
		c.Infeasible(detail, "end_stitches", "operation")
		return
	}
	s.k = diff / net
	if 2*s.edge >= s.start {
		detail := "the two edges leave no stitches between them"
		if remedies {
			if narrower := in.narrower(); narrower != "" {
				detail += "; " + narrower
			}
		}
		c.Infeasible(detail, "start_stitches", "edge_stitches")
		return
	}
	if s.k > s.most() {
		c.Infeasible(s.tooMany(in, remedies), "start_stitches", "end_stitches")
	}
}
