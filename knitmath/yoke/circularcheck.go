package yoke

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// vetCircular checks each field for itself and what excludes what.
func vetCircular(c *fault.Checks, y *circular, in CircularInput) {
	y.st, y.rw = gauge.Vet(c, "gauge", in.Gauge)
	vetJoined(c, in.BodyStitches, in.SleeveStitches, in.UnderarmStitches)
	c.OptionalCount("", "neck_stitches", in.NeckStitches, MinNeck, stitch.MaxStitches)
	c.OptionalNumber("", "neck_cm", in.NeckCm, measure.MinCm, measure.MaxCm)
	c.AtMostOne(in.NeckStitches != nil, in.NeckCm != nil, "neck_stitches", "neck_cm")
	vetDepth(c, in.DepthCm, in.DepthRounds)
	fault.Enum(c, "", "schedule", in.Schedule, ScheduleOwn)
	c.OptionalCount("", "decrease_rounds", in.DecreaseRounds, 1, MaxSteps)
	if in.DecreaseRounds != nil && in.Schedule != ScheduleCone {
		c.Add("decrease_rounds", fault.ReasonContradictory, "belongs to the cone schedule only")
	}
	vetSteps(c, in)
	fault.Enum(c, "", "spread", in.Spread, shaping.GapSpreadLeastEffort)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	vetBands(c, in)
	c.OptionalNumber("", "tolerance_percent", in.TolerancePercent, 0, MaxDeparturePercent)
	vetBackRaise(c, in.BackRaise)
}

// vetSteps checks the caller's own schedule.
func vetSteps(c *fault.Checks, in CircularInput) {
	own := in.Schedule == ScheduleOwn
	switch {
	case !own && len(in.Steps) > 0:
		c.Add("steps", fault.ReasonContradictory, "belong to an own schedule only")
	case own && len(in.Steps) == 0:
		c.Add("steps", fault.ReasonRequired, "are missing; an own schedule needs 1 to %d", MaxSteps)
	default:
		c.Items("", "steps", len(in.Steps), MaxSteps)
	}
	if !c.Sound("steps") {
		return
	}
	for i, s := range in.Steps {
		field := fault.Index("steps", i)
		depth := fault.Join(field, "depth_fraction")
		c.RequiredNumber(field, "depth_fraction", s.DepthFraction, 1e-6, 1)
		c.RequiredNumber(field, "removed_fraction", s.RemovedFraction, 1e-6, 1-1e-6)
		if c.Sound(depth) && i > 0 && s.DepthFraction <= in.Steps[i-1].DepthFraction {
			c.Add(depth, fault.ReasonContradictory, "must be more than that of the step before")
		}
	}
}

// settleCounts settles the stitches joined, the neck and the depth, defaults
// included.
func settleCounts(c *fault.Checks, y *circular, in CircularInput) {
	y.joining = settleJoin(c, in.BodyStitches, in.SleeveStitches, in.UnderarmStitches)
	if c.Err() != nil {
		return
	}
	switch y.scheduleField = "schedule"; {
	case in.Schedule == ScheduleOwn:
		y.scheduleField = "steps"
	case in.DecreaseRounds != nil:
		y.scheduleField = "decrease_rounds"
	}
	switch {
	case in.NeckStitches != nil:
		y.neckField, y.neck = "neck_stitches", *in.NeckStitches
	case in.NeckCm != nil:
		y.neckField, y.neck = "neck_cm", y.st.Nearest(measure.Micrometres(*in.NeckCm))
	case in.Schedule == ScheduleOwn:
		y.neckField, y.neck = "steps", leftOf(y.join, in.Steps)
	default:
		y.neckField, y.neck = "body_stitches", min(percent(y.body, neckPercent), y.st.Nearest(measure.Micrometres(widestNeckCm)))
		least, most := neckRange(y.st, y.body) // also where it moves within its tolerance
		y.neck = min(max(y.neck, least+DefaultNeckTolerance), most-DefaultNeckTolerance, y.join-1)
	}
	if y.neck >= y.join || y.neck < MinNeck {
		c.Infeasible("the neck has "+report.CountOf(y.neck, "stitches")+" and the join "+strconv.Itoa(y.join)+
			"; a yoke narrows, so the neck must have from "+strconv.Itoa(MinNeck)+" to "+strconv.Itoa(y.join-1), y.neckField)
	}
	y.percent = fault.Or(in.TolerancePercent, DefaultDeparturePercent)
	if y.tolerance = fault.Or(in.NeckToleranceStitches, 0); in.NeckToleranceStitches == nil && in.NeckStitches == nil && y.percent > 0 {
		y.tolerance = DefaultNeckTolerance
	}
	y.rounds, y.depthField = settleDepth(c, y.st, y.rw, y.body, in.DepthCm, in.DepthRounds)
}
