package knitmath

import (
	"math"
	"strconv"
)

// YokeSchedule says where the decrease rounds lie and how much each takes.
type YokeSchedule int32

// The schedules.
const (
	YokeScheduleUnspecified YokeSchedule = iota // percentage
	YokeSchedulePercentage
	YokeScheduleCone
	YokeScheduleOwn
)

// A YokeStep is one decrease round of the caller's own schedule.
type YokeStep struct {
	DepthFraction   float64
	RemovedFraction float64
}

// CircularYokeInput asks for a yoke. It mirrors PlanCircularYokeRequest.
type CircularYokeInput struct {
	Gauge              *Gauge
	BodyCount          int
	SleeveCount        *int
	UnderarmCount      *int
	NeckCount          *int
	NeckCm             *float64
	DepthCm            *float64
	RoundCount         *int
	Schedule           YokeSchedule
	DecreaseRoundCount *int
	Steps              []YokeStep
	Order              SpacingOrder
	DisplayUnit        DisplayUnit
	Bands              []YokeBand
	NeckToleranceCount *int
	BackRaise          *BackRaise
	WithOutline        bool
}

// A YokeRound is one decrease round.
type YokeRound struct {
	RoundNumber     int
	DepthCm         float64
	StartCount      int
	EndCount        int
	WantedCount     float64
	Instruction     Instruction
	Steepness       float64
	CircumferenceCm float64
}

// CircularYoke is the answer to CircularYokeInput.
type CircularYoke struct {
	BodyCount      int
	SleeveCount    int
	UnderarmCount  int
	JoinCount      int
	NeckCount      int
	RoundCount     int
	DepthCm        float64
	JoinCm         float64
	NeckCm         float64
	DecreaseRounds []YokeRound
	Steepness      float64
	Directions     []string
	Notices        []Notice
	Bands          []YokeBandPlan
	BackRaise      *BackRaisePlan
	// Outline is nil unless asked for.
	Outline *Outline

	unit DisplayUnit
}

// Ranges of a yoke.
const (
	MinBody       = 8
	MinSleeve     = 4
	MinNeck       = 4
	MaxUnderarm   = 1_000
	MaxYokeDepth  = 200.0
	coneSpacingCm = 2.5 // common practice: a decrease round about every inch
)

// PlanCircularYoke joins body and sleeves,
//
//	T = body + 2*sleeve - 4*underarm
//
// and narrows them to the neck. A schedule is a list of steps, each at a part f
// of the depth and removing a part of the stitches then on the needle. With p
// the part of T that is left after a step and q the part left after the last,
//
//	round  = f * rounds                    nearest, half-way up, at least 1
//	wanted = T - (T - neck) * (1 - p) / (1 - q)
//
// so that a schedule keeps its proportions and lands on any neck; with the neck
// it implies itself (q = neck/T) nothing is changed. Each wanted count is taken
// to the nearest stitch, half-way up, the last being the neck exactly, and
// worked with k2tog spaced evenly in the round.
//
// With bands of pattern the counts are those that divide in every band and depart
// least from the schedule: see layBands and yokeCounts. Short rows that raise the
// back neck: see settleRaise.
//
// Source: percentage system, see the constants beside; the scaling to another
// neck is an own derivation, stated above.
func PlanCircularYoke(in CircularYokeInput) (CircularYoke, error) {
	var c checks
	y := c.yoke(in)
	if c.err() == nil {
		c.yokeCounts(&y, in)
	}
	switch {
	case c.err() != nil:
	case len(in.Bands) > 0:
		c.settleBands(&y, in)
	default:
		y.settleSteps(y.scheme(in))
		c.yokeSteps(&y)
	}
	if c.err() == nil && in.BackRaise != nil {
		c.settleRaise(&y, in)
	}
	if err := c.err(); err != nil {
		return CircularYoke{}, err
	}
	return y.plan(in)
}

// yoke is a checked question.
type yoke struct {
	st, rw density
	joining
	neck                  int
	wantedNeck            int // before the bands' tolerance
	rounds                int
	neckField, depthField string
	order                 SpacingOrder
	steps                 []yokeStep
	bands                 []YokeBandPlan
	raise                 *BackRaisePlan
}

// yokeStep is one decrease round as planned.
type yokeStep struct {
	round  int
	wanted float64
	count  int
}

// yoke checks each field for itself and what excludes what.
func (c *checks) yoke(in CircularYokeInput) yoke {
	y := yoke{neckField: "neck_count", depthField: "round_count", order: in.Order}
	y.st, y.rw, _ = c.gauge("gauge", in.Gauge)
	c.requiredCount("", "body_count", in.BodyCount, MinBody, MaxStitches)
	c.optionalCount("", "sleeve_count", in.SleeveCount, MinSleeve, MaxStitches)
	c.optionalCount("", "underarm_count", in.UnderarmCount, 0, MaxUnderarm)
	c.optionalCount("", "neck_count", in.NeckCount, MinNeck, MaxStitches)
	c.optionalNumber("", "neck_cm", in.NeckCm, MinCm, MaxCm)
	if in.NeckCount != nil && in.NeckCm != nil {
		c.add("neck_count", ReasonContradictory, "excludes neck_cm; give one of them")
		c.add("neck_cm", ReasonContradictory, "excludes neck_count; give one of them")
	}
	c.optionalNumber("", "depth_cm", in.DepthCm, MinCm, MaxYokeDepth)
	c.optionalCount("", "round_count", in.RoundCount, 1, MaxYokeRounds)
	if in.DepthCm != nil && in.RoundCount != nil {
		c.add("depth_cm", ReasonContradictory, "excludes round_count; give one of them")
		c.add("round_count", ReasonContradictory, "excludes depth_cm; give one of them")
	}
	enum(c, "", "schedule", in.Schedule, YokeScheduleOwn)
	c.optionalCount("", "decrease_round_count", in.DecreaseRoundCount, 1, MaxYokeSteps)
	if in.DecreaseRoundCount != nil && in.Schedule != YokeScheduleCone {
		c.add("decrease_round_count", ReasonContradictory, "belongs to the cone schedule only")
	}
	c.ownSteps(in)
	enum(c, "", "order", in.Order, SpacingOrderMirrored)
	if in.Order == SpacingOrderUnspecified {
		y.order = SpacingOrderInterleaved // grouped would draw one side of the round in more than the other
	}
	enum(c, "", "display_unit", in.DisplayUnit, DisplayUnitIn)
	c.yokeBands(in)
	c.backRaise(in.BackRaise)
	return y
}

// ownSteps checks the caller's own schedule.
func (c *checks) ownSteps(in CircularYokeInput) {
	switch {
	case in.Schedule != YokeScheduleOwn && len(in.Steps) > 0:
		c.add("steps", ReasonContradictory, "belong to an own schedule only")
		return
	case in.Schedule == YokeScheduleOwn && len(in.Steps) == 0:
		c.add("steps", ReasonRequired, "are missing; an own schedule needs 1 to %d", MaxYokeSteps)
		return
	case !c.items("", "steps", len(in.Steps), MaxYokeSteps):
		return
	}
	for i, s := range in.Steps {
		field := index("steps", i)
		ok := c.requiredNumber(field, "depth_fraction", s.DepthFraction, 1e-6, 1)
		c.requiredNumber(field, "removed_fraction", s.RemovedFraction, 1e-6, 1-1e-6)
		if ok && i > 0 && s.DepthFraction <= in.Steps[i-1].DepthFraction {
			c.add(join(field, "depth_fraction"), ReasonContradictory, "must be more than that of the step before")
		}
	}
}

// yokeCounts settles the counts and the depth, defaults included.
func (c *checks) yokeCounts(y *yoke, in CircularYokeInput) {
	var ok bool
	if y.joining, ok = c.joined(in.BodyCount, in.SleeveCount, in.UnderarmCount); !ok {
		return
	}
	switch {
	case in.NeckCount != nil:
		y.neck = *in.NeckCount
	case in.NeckCm != nil:
		y.neckField = "neck_cm"
		y.neck = y.st.nearest(micrometres(*in.NeckCm))
	case in.Schedule == YokeScheduleOwn:
		y.neckField = "steps"
		y.neck = int(roundHalfUp(float64(y.join) * left(in.Steps)))
	default:
		y.neckField = "body_count"
		y.neck = percent(y.body, neckPercent)
	}
	if y.neck >= y.join || y.neck < 1 {
		c.infeasible("the neck has "+countOf(y.neck, "stitches")+" and the join "+strconv.Itoa(y.join)+
			"; a yoke narrows, so the neck must have from 1 to "+strconv.Itoa(y.join-1), y.neckField)
	}
	y.rounds, y.depthField = c.yokeDepth(y.st, y.rw, y.body, in.DepthCm, in.RoundCount)
}

// left is the part of the stitches left after all steps.
func left(steps []YokeStep) float64 {
	q := 1.0
	for _, s := range steps {
		q *= 1 - s.RemovedFraction
	}
	return q
}

// steepness is the circumference lost over what a flat disc would lose on the
// same depth, 2*pi*depth. A flat ring is 1; a cone of half-angle a is sin(a);
// above 1 there is more edge than any smooth surface holds, and it ruffles.
//
// Source: own derivation; the circumference of a circle.
func (y yoke) steepness(lost, rounds int) float64 {
	return y.st.sizeCm(lost) / (2 * math.Pi * y.rw.sizeCm(rounds))
}
