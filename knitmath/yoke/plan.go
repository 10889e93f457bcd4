package yoke

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// percentageSteps is the percentage system's schedule: what is left of the join
// after each round is 3/4, then 1/2, then 3/10.
//
// Source: Zimmermann, Knitting Around (1989), by way of a digest. The earlier
// book removes 1/3 three times.
var percentageSteps = []YokeStep{{1.0 / 2, 1.0 / 4}, {3.0 / 4, 1.0 / 3}, {1, 2.0 / 5}}

// scheme is a schedule scaled to a join and a neck.
type scheme struct {
	cone       bool
	join, neck int
	removed    float64 // what removing everything would be, in stitches
	steps      []schemeStep
}

// schemeStep is one decrease round of a schedule: the part of the depth at which
// it lies, in millionths (not for a cone), its round, and what it wants.
type schemeStep struct {
	millionths int64
	left       float64 // of the join, before scaling
	round      int
	wanted     float64
}

// scheme scales the schedule asked for.
func (y *yoke) scheme(in CircularYokeInput) scheme {
	s := scheme{cone: in.Schedule == YokeScheduleCone, join: y.join, neck: y.neck}
	if s.cone {
		n := fault.Or(in.DecreaseRoundCount, int(min(max(measure.RoundHalfUp(y.rw.SizeCm(y.rounds)/coneSpacingCm), 1), MaxYokeSteps)))
		for i := 1; i <= n; i++ {
			s.steps = append(s.steps, schemeStep{round: int(measure.HalfUpDiv(int64(i*y.rounds), int64(n))), wanted: s.wanted(i, n)})
		}
		return s
	}
	steps := in.Steps
	if in.Schedule != YokeScheduleOwn {
		steps = percentageSteps
	}
	s.removed = float64(y.join-y.neck) / (1 - left(steps))
	if y.neckField == "steps" {
		s.removed = float64(y.join) // the neck is what the steps leave: nothing to scale
	}
	p := 1.0
	for _, step := range steps {
		p *= 1 - step.RemovedFraction
		f := measure.ToMillionths(step.DepthFraction)
		round := int(max(measure.HalfUpDiv(f*int64(y.rounds), 1e6), 1))
		s.steps = append(s.steps, schemeStep{f, p, round, float64(s.join) - s.removed*(1-p)})
	}
	return s
}

// wanted is the count that the schedule has at a part of the depth, num/den: for
// a cone the straight line from join to neck, otherwise what the steps up to
// there leave.
func (s scheme) wanted(num, den int) float64 {
	if s.cone {
		return float64(s.join) - float64((s.join-s.neck)*num)/float64(den)
	}
	p := 1.0
	for _, step := range s.steps {
		if step.millionths*int64(den) <= int64(num)*1e6 {
			p = step.left
		}
	}
	return float64(s.join) - s.removed*(1-p)
}

// settleSteps turns the schedule into rounds and counts.
func (y *yoke) settleSteps(s scheme) {
	for _, step := range s.steps {
		y.steps = append(y.steps, yokeStep{round: step.round, wanted: step.wanted, count: int(measure.RoundHalfUp(step.wanted))})
	}
	y.steps[len(y.steps)-1].count = y.neck
}

// vetYokeSteps checks that every decrease round has its own round and can be
// worked.
func vetYokeSteps(c *fault.Checks, y *yoke) {
	before, last := y.join, 0
	for i, s := range y.steps {
		switch {
		case s.round <= last:
			c.Infeasible(fmt.Sprintf("decrease rounds %d and %d both fall on round %d; the depth needs more rounds, "+
				"or the schedule fewer decrease rounds", i, i+1, s.round), "schedule", y.depthField)
			return
		case s.count >= before:
			c.Infeasible(fmt.Sprintf("decrease round %d has no stitch to remove from %d; use fewer decrease rounds",
				i+1, before), "schedule", y.neckField)
			return
		case 2*s.count < before:
			c.Infeasible(fmt.Sprintf("decrease round %d goes from %d to %d stitches, and k2tog can leave no fewer than %d; "+
				"use more decrease rounds or a wider neck", i+1, before, s.count, (before+1)/2), "schedule", y.neckField)
			return
		}
		before, last = s.count, s.round
	}
}

// plan writes the answer.
func (y yoke) plan(in CircularYokeInput) (CircularYoke, error) {
	out := CircularYoke{
		BodyStitches: y.body, SleeveStitches: y.sleeve, UnderarmStitches: y.underarm, JoinStitches: y.join, NeckStitches: y.neck,
		DepthRounds: y.rounds, DepthCm: y.rw.SizeCm(y.rounds),
		JoinCm: y.st.SizeCm(y.join), NeckCm: y.st.SizeCm(y.neck),
		Steepness: y.steepness(y.join-y.neck, y.rounds), unit: in.DisplayUnit,
	}
	before, last := y.join, 0
	for i, s := range y.steps {
		op := stitch.K2tog
		if s.count > before {
			op = stitch.M1L
		}
		even, ok := shaping.EvenRound(before, s.count, op, y.order)
		if !ok {
			var c fault.Checks
			c.Infeasible(fmt.Sprintf("decrease round %d, from %d to %d stitches, has no arrangement that reads the same "+
				"from both ends; use the grouped or interleaved spread", i+1, before, s.count), "spread")
			return CircularYoke{}, c.Err()
		}
		r := YokeRound{
			RoundNumber: s.round, DepthCm: y.rw.SizeCm(s.round), StartStitches: before, EndStitches: s.count,
			WantedStitches: s.wanted, Instruction: even,
			Steepness: y.steepness(before-s.count, s.round-last), CircumferenceCm: y.st.SizeCm(s.count),
		}
		if r.Steepness > 1 && (len(y.bands) == 0 || y.steepness(before-s.count, y.plainAbove(i)) > 1) {
			out.Notices = append(out.Notices, report.Notice{Reason: "RUFFLES", Field: fault.Index("decrease_rounds", i),
				Description: "loses " + measure.Decimal(r.Steepness, 2) + " times what a flat disc would since the decrease round before it; " +
					"the fabric ruffles there rather than lies"})
		}
		out.DecreaseRounds = append(out.DecreaseRounds, r)
		before, last = s.count, s.round
	}
	if len(y.bands) > 0 {
		out.Bands = y.bands
		out.Notices = append(out.Notices, y.bandNotices()...)
	}
	if y.raise != nil {
		out.BackRaise = y.raise
		out.Notices = append(out.Notices, raiseNotice(in.BackRaise, y.raise)...)
	}
	if in.WithOutline {
		out.Outline = y.outline(out)
	}
	return out, nil
}

// plainAbove is how many rounds lie between a change and the next one, or the
// neck. With bands a change comes just below its band, and what takes up its loss
// lies above it as often as below; it ruffles where neither does. Own derivation.
func (y yoke) plainAbove(i int) int {
	if i+1 < len(y.steps) {
		return y.steps[i+1].round - y.steps[i].round
	}
	return max(1, y.rounds-y.steps[i].round)
}
