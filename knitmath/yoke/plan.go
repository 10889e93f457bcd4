package yoke

import (
	"fmt"
	"math"
	"strconv"

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
	} else {
		settleSteps(c, y, s, in)
	}
	y.neck, y.wantedNeck = y.settledNeck, y.neck
}

// settleSteps settles the counts of a yoke without bands: the easiest within the
// departure that is allowed, or those that are nearest to the schedule.
func settleSteps(c *fault.Checks, y *circular, s scheme, in CircularInput) {
	places := y.stepPlaces(s)
	if vetPlaces(c, y, places); c.Err() != nil {
		return
	}
	soft := places
	if y.percent > 0 {
		soft = y.adjusted(in, places)
	}
	if counts, _, ok := easiest(y.join, soft, y.percent, in.Spread); ok {
		y.take(soft, counts)
		return
	}
	for _, p := range places {
		y.changes = append(y.changes, change{round: p.round, wanted: p.wanted, said: p.said,
			count: int(measure.HalfUpDiv(thousandths(p.wanted), 1000))})
	}
	y.changes[len(y.changes)-1].count = y.neck
	y.settledNeck = y.neck
	vetChanges(c, y)
}

// vetChanges checks that every decrease round can be worked.
func vetChanges(c *fault.Checks, y *circular) {
	before := y.join
	for i, s := range y.changes {
		switch {
		case s.count >= before:
			c.Infeasible(fmt.Sprintf("decrease round %d has no stitch to remove from %d", i+1, before), y.scheduleField, y.neckField)
			return
		case 2*s.count < before:
			c.Infeasible(fmt.Sprintf("decrease round %d goes from %d to %d stitches, and k2tog can leave no fewer than %d",
				i+1, before, s.count, (before+1)/2), y.scheduleField, y.neckField)
			return
		}
		before = s.count
	}
}

// vetMixed checks that rounds which may be mixed evenly do not change too many
// stitches. What is added or taken away so that rounds are easy does not count.
func vetMixed(c *fault.Checks, y *circular, in CircularInput) {
	n := y.join - y.wantedNeck
	if len(y.bands) > 0 {
		n = y.changed()
	}
	if n > MaxMixedChanges && mayMix(in.Spread) {
		c.Infeasible(fmt.Sprintf("the rounds change %d stitches in all; mixed evenly at most %d are placed, so use the grouped spread",
			n, MaxMixedChanges), "spread")
	}
}

// settleWorked writes the rounds and works the raise, which have nothing to do with one another: what is
// wrong with either is said at once.
func settleWorked(c *fault.Checks, y *circular, in CircularInput) {
	if vetMixed(c, y, in); c.Err() == nil {
		settleRounds(c, y, in)
	}
	var raise fault.Checks
	settleRaise(&raise, y, in)
	c.Violations = append(c.Violations, raise.Violations...)
}

// settleRounds writes the rounds in which the count changes.
func settleRounds(c *fault.Checks, y *circular, in CircularInput) {
	before, last := y.join, 0
	y.written = make([]Round, 0, len(y.changes))
	for i, s := range y.changes {
		op := stitch.K2tog
		if s.count > before {
			op = stitch.M1L
		}
		even, ok := shaping.EasyRound(before, s.count, op, in.Spread)
		if !ok {
			c.Infeasible(fmt.Sprintf("decrease round %d, from %d to %d stitches, has no arrangement that reads the same "+
				"from both ends", i+1, before, s.count)+in.otherSpreads(y), "spread")
			return
		}
		y.written = append(y.written, Round{
			RoundNumber: s.round, DepthCm: y.rw.SizeCm(s.round), StartStitches: before, EndStitches: s.count,
			WantedStitches: s.wanted, DepartureStitches: float64(s.count) - s.wanted, Instruction: even,
			Effort: even.Row.Items(), Adjusts: s.adjusts,
			Steepness: y.steepness(before-s.count, s.round-last), CircumferenceCm: y.st.SizeCm(s.count),
		})
		before, last = s.count, s.round
	}
}

// changed is how many stitches all rounds together take away or add, but for the one
// that adjusts the count.
func (y *circular) changed() int {
	n, before := 0, y.join
	for _, s := range y.changes {
		if !s.adjusts {
			n += measure.Abs(s.count - before)
		}
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
		Rounds: y.written, Steepness: y.steepness(y.join-y.neck, y.rounds),
		Bands: y.bands, BackRaise: y.raise, unit: in.DisplayUnit,
	}
	for _, r := range y.written {
		out.Effort += r.Effort + 1
		out.GreatestDeparturePercent = max(out.GreatestDeparturePercent, 100*math.Abs(r.DepartureStitches)/r.WantedStitches)
	}
	out.Notices = append(y.ruffles(), y.bandNotices()...)
	if len(in.Bands) == 0 {
		out.Notices = append(out.Notices, y.lossNotices(in)...)
	}
	out.Notices = append(out.Notices, y.countNotices()...)
	if in.Schedule == ScheduleOwn && y.percent == DefaultDeparturePercent {
		out.Notices = append(out.Notices, y.easedNotice()...)
	}
	out.Notices = append(out.Notices, raiseNotice(in.BackRaise, y.raise)...)
	on := worn{y.st, y.rw, y.body, y.sleeve, out.NeckStitches, out.DepthCm, y.depthField, y.raise != nil, in.DisplayUnit}
	out.Notices = append(out.Notices, on.notices()...)
	if in.WithOutline {
		out.Outline = y.outline(out)
	}
	return out
}

// blockedOut is how steep a round may be that still lies flat when it is blocked. The
// percentage system's own yokes come to 1.12, and are knit by the thousand. Common
// practice.
const blockedOut = 1.15

// ruffles remarks on the rounds that lose more than a flat disc would, and more than
// blocking takes up: on all of them at once.
func (y *circular) ruffles() []report.Notice {
	var rounds []string
	worst := 0.0
	for i, r := range y.written {
		lost := r.StartStitches - r.EndStitches
		if r.Adjusts || r.Steepness <= blockedOut || len(y.bands) > 0 && y.steepness(lost, y.plainAbove(i)) <= blockedOut {
			continue
		}
		rounds = append(rounds, strconv.Itoa(r.RoundNumber))
		worst = max(worst, r.Steepness)
	}
	times := measure.Decimal(worst, 2) + " times what a flat disc would since the decrease round before it"
	const ruffles = "; the fabric ruffles there rather than lies"
	switch len(rounds) {
	case 0:
		return nil
	case 1:
		return []report.Notice{{Reason: Ruffles, Description: "round " + rounds[0] + " loses " + times + ruffles}}
	default:
		return []report.Notice{{Reason: Ruffles, Description: "rounds " + report.Listed(rounds) +
			" lose up to " + times + ruffles}}
	}
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
