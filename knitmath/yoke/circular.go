package yoke

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// MaxYokeSteps is the most decrease rounds in a yoke: each comes back
// written out.
const MaxYokeSteps = 200

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
	Gauge                 *gauge.Gauge
	BodyStitches          int
	SleeveStitches        *int
	UnderarmStitches      *int
	NeckStitches          *int
	NeckCm                *float64
	DepthCm               *float64
	DepthRounds           *int
	Schedule              YokeSchedule
	DecreaseRoundCount    *int
	Steps                 []YokeStep
	Spread                shaping.GapSpread
	DisplayUnit           measure.DisplayUnit
	Bands                 []YokeBand
	NeckToleranceStitches *int
	BackRaise             *BackRaise
	WithOutline           bool
}

// A YokeRound is one decrease round.
type YokeRound struct {
	RoundNumber     int
	DepthCm         float64
	StartStitches   int
	EndStitches     int
	WantedStitches  float64
	Instruction     stitch.Instruction
	Steepness       float64
	CircumferenceCm float64
}

// CircularYoke is the answer to CircularYokeInput.
type CircularYoke struct {
	BodyStitches     int
	SleeveStitches   int
	UnderarmStitches int
	JoinStitches     int
	NeckStitches     int
	DepthRounds      int
	DepthCm          float64
	JoinCm           float64
	NeckCm           float64
	DecreaseRounds   []YokeRound
	Steepness        float64
	Notices          []report.Notice
	Bands            []YokeBandPlan
	BackRaise        *BackRaisePlan
	// Outline is nil unless asked for.
	Outline *outline.Outline

	unit measure.DisplayUnit
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
	var c fault.Checks
	y := vetYoke(&c, in)
	if c.Err() == nil {
		vetYokeCounts(&c, &y, in)
	}
	switch {
	case c.Err() != nil:
	case len(in.Bands) > 0:
		vetSettleBands(&c, &y, in)
	default:
		y.settleSteps(y.scheme(in))
		vetYokeSteps(&c, &y)
	}
	if c.Err() == nil && in.BackRaise != nil {
		vetSettleRaise(&c, &y, in)
	}
	if err := c.Err(); err != nil {
		return CircularYoke{}, err
	}
	return y.plan(in)
}

// yoke is a checked question.
type yoke struct {
	st, rw gauge.Density
	joining
	neck                  int
	wantedNeck            int // before the bands' tolerance
	rounds                int
	neckField, depthField string
	order                 shaping.GapSpread
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

// vetYoke checks each field for itself and what excludes what.
func vetYoke(c *fault.Checks, in CircularYokeInput) yoke {
	y := yoke{neckField: "neck_stitches", depthField: "depth_rounds", order: in.Spread}
	y.st, y.rw = gauge.Vet(c, "gauge", in.Gauge)
	c.RequiredCount("", "body_stitches", in.BodyStitches, MinBody, stitch.MaxStitches)
	c.OptionalCount("", "sleeve_stitches", in.SleeveStitches, MinSleeve, stitch.MaxStitches)
	c.OptionalCount("", "underarm_stitches", in.UnderarmStitches, 0, MaxUnderarm)
	c.OptionalCount("", "neck_stitches", in.NeckStitches, MinNeck, stitch.MaxStitches)
	c.OptionalNumber("", "neck_cm", in.NeckCm, measure.MinCm, measure.MaxCm)
	if in.NeckStitches != nil && in.NeckCm != nil {
		c.Add("neck_stitches", fault.ReasonContradictory, "excludes neck_cm; give one of them")
		c.Add("neck_cm", fault.ReasonContradictory, "excludes neck_stitches; give one of them")
	}
	c.OptionalNumber("", "depth_cm", in.DepthCm, measure.MinCm, MaxYokeDepth)
	c.OptionalCount("", "depth_rounds", in.DepthRounds, 1, MaxYokeRounds)
	if in.DepthCm != nil && in.DepthRounds != nil {
		c.Add("depth_cm", fault.ReasonContradictory, "excludes depth_rounds; give one of them")
		c.Add("depth_rounds", fault.ReasonContradictory, "excludes depth_cm; give one of them")
	}
	fault.Enum(c, "", "schedule", in.Schedule, YokeScheduleOwn)
	c.OptionalCount("", "decrease_round_count", in.DecreaseRoundCount, 1, MaxYokeSteps)
	if in.DecreaseRoundCount != nil && in.Schedule != YokeScheduleCone {
		c.Add("decrease_round_count", fault.ReasonContradictory, "belongs to the cone schedule only")
	}
	vetOwnSteps(c, in)
	fault.Enum(c, "", "spread", in.Spread, shaping.GapSpreadMirrored)
	if in.Spread == shaping.GapSpreadUnspecified {
		y.order = shaping.GapSpreadInterleaved // grouped would draw one side of the round in more than the other
	}
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	vetYokeBands(c, in)
	vetBackRaise(c, in.BackRaise)
	return y
}

// vetOwnSteps checks the caller's own schedule.
func vetOwnSteps(c *fault.Checks, in CircularYokeInput) {
	switch {
	case in.Schedule != YokeScheduleOwn && len(in.Steps) > 0:
		c.Add("steps", fault.ReasonContradictory, "belong to an own schedule only")
		return
	case in.Schedule == YokeScheduleOwn && len(in.Steps) == 0:
		c.Add("steps", fault.ReasonRequired, "are missing; an own schedule needs 1 to %d", MaxYokeSteps)
		return
	case !c.Items("", "steps", len(in.Steps), MaxYokeSteps):
		return
	}
	for i, s := range in.Steps {
		field := fault.Index("steps", i)
		ok := c.RequiredNumber(field, "depth_fraction", s.DepthFraction, 1e-6, 1)
		c.RequiredNumber(field, "removed_fraction", s.RemovedFraction, 1e-6, 1-1e-6)
		if ok && i > 0 && s.DepthFraction <= in.Steps[i-1].DepthFraction {
			c.Add(fault.Join(field, "depth_fraction"), fault.ReasonContradictory, "must be more than that of the step before")
		}
	}
}

// vetYokeCounts settles the counts and the depth, defaults included.
func vetYokeCounts(c *fault.Checks, y *yoke, in CircularYokeInput) {
	var ok bool
	if y.joining, ok = vetJoined(c, in.BodyStitches, in.SleeveStitches, in.UnderarmStitches); !ok {
		return
	}
	switch {
	case in.NeckStitches != nil:
		y.neck = *in.NeckStitches
	case in.NeckCm != nil:
		y.neckField = "neck_cm"
		y.neck = y.st.Nearest(measure.Micrometres(*in.NeckCm))
	case in.Schedule == YokeScheduleOwn:
		y.neckField = "steps"
		y.neck = int(measure.RoundHalfUp(float64(y.join) * left(in.Steps)))
	default:
		y.neckField = "body_stitches"
		y.neck = percent(y.body, neckPercent)
	}
	if y.neck >= y.join || y.neck < 1 {
		c.Infeasible("the neck has "+report.CountOf(y.neck, "stitches")+" and the join "+strconv.Itoa(y.join)+
			"; a yoke narrows, so the neck must have from 1 to "+strconv.Itoa(y.join-1), y.neckField)
	}
	y.rounds, y.depthField = vetYokeDepth(c, y.st, y.rw, y.body, in.DepthCm, in.DepthRounds)
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
	return y.st.SizeCm(lost) / (2 * math.Pi * y.rw.SizeCm(rounds))
}
