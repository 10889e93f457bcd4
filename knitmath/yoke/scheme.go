package yoke

import (
	"math/big"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// percentageSteps is the percentage system's schedule: what is left of the join
// after each round is 3/4, then 1/2, then 3/10.
//
// Source: percentageCited, of which the later book. The earlier one removes 1/3
// three times.
var percentageSteps = []Step{{1.0 / 2, 1.0 / 4}, {3.0 / 4, 1.0 / 3}, {1, 2.0 / 5}}

// coneSpacingCm is how far apart the decrease rounds of a cone lie. See
// coneSpacingCited.
const coneSpacingCm = 2.5

// coneSpacingCited is the source of a cone's spacing: a decrease round about every
// inch.
var coneSpacingCited = report.Source{Figure: "spacing of a cone's rounds, one to 2.5 cm", Citation: "common practice",
	Status: report.SourceStatusCommonPractice}

// scalingCited is the source of schemes whose neck is not that of their schedule.
var scalingCited = report.Source{Figure: "schedule scaled to another neck", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: every step keeps its share of the stitches removed"}

// scheme is a schedule scaled to a join and a neck.
type scheme struct {
	cone       bool
	join, neck int
	steps      []schemeStep
}

// schemeStep is one decrease round of a schedule: the part of the depth at which
// it lies, in millionths (not for a cone), its round, and what it wants.
type schemeStep struct {
	millionths int64
	round      int
	wanted     float64
	said       float64 // the part that the schedule itself says it removes; 0 for a cone
}

// scheme scales the schedule asked for.
func (y *circular) scheme(in CircularInput) scheme {
	if in.Schedule == ScheduleCone {
		return y.coneScheme(in.DecreaseRounds)
	}
	steps := in.Steps
	if in.Schedule != ScheduleOwn {
		steps = y.percentageStepsTo(y.neck)
	}
	s := scheme{join: y.join, neck: y.neck, steps: make([]schemeStep, 0, len(steps))}
	removed := float64(y.join-y.neck) / (1 - left(steps)) // what removing everything would be, in stitches
	if y.neckField == "steps" {
		removed = float64(y.join) // the neck is what the steps leave: nothing to scale
	}
	p := 1.0
	for _, step := range steps {
		p *= 1 - step.RemovedFraction
		f := measure.ToMillionths(step.DepthFraction)
		round := int(max(measure.HalfUpDiv(f*int64(y.rounds), 1e6), 1))
		s.steps = append(s.steps, schemeStep{f, round, float64(s.join) - removed*(1-p), step.RemovedFraction})
	}
	return s
}

// coneScheme lays n rounds evenly, by default one to so many centimetres, and in a shallow yoke more of
// them, so that none takes more than a third.
func (y *circular) coneScheme(count *int) scheme {
	s := scheme{cone: true, join: y.join, neck: y.neck}
	n := fault.Or(count, y.coneRounds())
	for i := 1; i <= n; i++ {
		s.steps = append(s.steps, schemeStep{round: int(measure.HalfUpDiv(int64(i*y.rounds), int64(n))), wanted: s.wanted(i, n)})
	}
	return s
}

// mostlyEven is of how many rounds of a shallow cone one may decrease by default. Own choice.
const mostlyEven = 3

// coneRounds is how many decrease rounds a cone has where nobody says.
func (y *circular) coneRounds() int {
	usual := int(max(measure.RoundHalfUp(y.rw.SizeCm(y.rounds)/coneSpacingCm), 1))
	return min(max(usual, min(calmConeRounds(y.join, y.neck), y.rounds/mostlyEven)), MaxSteps)
}

// wanted is the count that the schedule has at a part of the depth, num/den: on the
// straight lines from the join through every step's depth and the count after it. Above
// the last step it stays as it is.
func (s scheme) wanted(num, den int) float64 {
	stitches, over := s.line().At(int64(num)*1e6, int64(den))
	return stitches / over
}

// line is what the schedule wants at every millionth of the depth. A cone's narrows
// straight to the neck.
func (s scheme) line() curve.Strokes[float64] {
	line := curve.Strokes[float64]{{Value: float64(s.join)}}
	if s.cone {
		return append(line, curve.Mark[float64]{Place: 1e6, Value: float64(s.neck)})
	}
	for _, step := range s.steps {
		line = append(line, curve.Mark[float64]{Place: step.millionths, Value: step.wanted})
	}
	return line
}

// leftOf is how many of the stitches the steps leave, nearest, half-way up. Fractions
// are whole millionths, so that it is rounded once and exactly.
func leftOf(stitches int, steps []Step) int {
	num, den := big.NewInt(int64(2*stitches)), big.NewInt(1)
	for _, s := range steps {
		num.Mul(num, big.NewInt(1e6-measure.ToMillionths(s.RemovedFraction)))
		den.Mul(den, big.NewInt(1e6))
	}
	num.Add(num, den) // (2n + 1)/2, downwards
	return int(num.Div(num, den.Mul(den, big.NewInt(2))).Int64())
}

// left is the part of the stitches left after all steps.
func left(steps []Step) float64 {
	q := 1.0
	for _, s := range steps {
		q *= 1 - s.RemovedFraction
	}
	return q
}
