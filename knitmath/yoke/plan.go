package yoke

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// settleChanges settles in which rounds the count changes, and to what.
func settleChanges(c *fault.Checks, y *circular, in CircularInput) {
	s := y.scheme(in)
	if len(in.Bands) > 0 {
		settleBands(c, y, s, in)
		return
	}
	for _, step := range s.steps {
		y.changes = append(y.changes, change{round: step.round, wanted: step.wanted, count: int(measure.RoundHalfUp(step.wanted))})
	}
	y.changes[len(y.changes)-1].count = y.neck
	vetChanges(c, y)
}

// vetChanges checks that every decrease round has its own round and can be
// worked.
func vetChanges(c *fault.Checks, y *circular) {
	before, last := y.join, 0
	for i, s := range y.changes {
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

// settleRounds writes the rounds in which the count changes.
func settleRounds(c *fault.Checks, y *circular, in CircularInput) {
	if n := y.changed(); n > MaxMixedChanges && mayMix(in.Spread) {
		c.Infeasible(fmt.Sprintf("the rounds change %d stitches in all; mixed evenly at most %d are placed, so use the grouped spread",
			n, MaxMixedChanges), "spread")
		return
	}
	before, last := y.join, 0
	for i, s := range y.changes {
		op := stitch.K2tog
		if s.count > before {
			op = stitch.M1L
		}
		even, ok := shaping.EvenRound(before, s.count, op, in.Spread)
		if !ok {
			c.Infeasible(fmt.Sprintf("decrease round %d, from %d to %d stitches, has no arrangement that reads the same "+
				"from both ends; use the grouped or interleaved spread", i+1, before, s.count), "spread")
			return
		}
		y.written = append(y.written, Round{
			RoundNumber: s.round, DepthCm: y.rw.SizeCm(s.round), StartStitches: before, EndStitches: s.count,
			WantedStitches: s.wanted, Instruction: even,
			Steepness: y.steepness(before-s.count, s.round-last), CircumferenceCm: y.st.SizeCm(s.count),
		})
		before, last = s.count, s.round
	}
}

// changed is how many stitches all rounds together take away or add.
func (y *circular) changed() int {
	n, before := 0, y.join
	for _, s := range y.changes {
		n += measure.Abs(s.count - before)
		before = s.count
	}
	return n
}

// mayMix reports whether a spread may mix the gaps of a round evenly.
func mayMix(order shaping.GapSpread) bool {
	return order != shaping.GapSpreadGrouped && order != shaping.GapSpreadMirrored
}

// answer puts together what the stages settled.
func (y *circular) answer(in CircularInput) Circular {
	out := Circular{
		BodyStitches: y.body, SleeveStitches: y.sleeve, UnderarmStitches: y.underarm, JoinStitches: y.join, NeckStitches: y.neck,
		DepthRounds: y.rounds, DepthCm: y.rw.SizeCm(y.rounds),
		JoinCm: y.st.SizeCm(y.join), NeckCm: y.st.SizeCm(y.neck),
		DecreaseRounds: y.written, Steepness: y.steepness(y.join-y.neck, y.rounds),
		Bands: y.bands, BackRaise: y.raise, unit: in.DisplayUnit,
	}
	out.Notices = append(y.ruffles(), y.bandNotices()...)
	out.Notices = append(out.Notices, raiseNotice(in.BackRaise, y.raise)...)
	if in.WithOutline {
		out.Outline = y.outline(out)
	}
	return out
}

// ruffles remarks on the rounds that lose more than a flat disc would.
func (y *circular) ruffles() []report.Notice {
	var notices []report.Notice
	for i, r := range y.written {
		lost := r.StartStitches - r.EndStitches
		if r.Steepness <= 1 || len(y.bands) > 0 && y.steepness(lost, y.plainAbove(i)) <= 1 {
			continue
		}
		notices = append(notices, report.Notice{Reason: Ruffles,
			Description: fmt.Sprintf("round %d loses %s times what a flat disc would since the decrease round before it; "+
				"the fabric ruffles there rather than lies", r.RoundNumber, measure.Decimal(r.Steepness, 2))})
	}
	return notices
}

// plainAbove is how many rounds lie between a change and the next one, or the
// neck. With bands a change comes just below its band, and what takes up its loss
// lies above it as often as below; it ruffles where neither does. Own derivation.
func (y *circular) plainAbove(i int) int {
	if i+1 < len(y.changes) {
		return y.changes[i+1].round - y.changes[i].round
	}
	return max(1, y.rounds-y.changes[i].round)
}
