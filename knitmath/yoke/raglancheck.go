package yoke

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// vetRaglan checks each field for itself and what excludes what.
func vetRaglan(c *fault.Checks, r *raglan, in RaglanInput) {
	r.line, r.everySecond = fault.Or(in.LineStitches, DefaultLine), in.RoundChoice == RoundChoiceEverySecond
	r.st, r.rw = gauge.Vet(c, "gauge", in.Gauge)
	vetJoined(c, in.BodyStitches, in.SleeveStitches, in.UnderarmStitches)
	c.OptionalCount("", "line_stitches", in.LineStitches, 0, MaxLine)
	fault.Enum(c, "", "line_from", in.LineFrom, RaglanLineFromSleeves)
	c.OptionalCount("", "front_neck_stitches", in.FrontNeckStitches, MinRaglanNeck, stitch.MaxStitches)
	c.OptionalCount("", "back_neck_stitches", in.BackNeckStitches, MinRaglanNeck, stitch.MaxStitches)
	c.OptionalCount("", "sleeve_top_stitches", in.SleeveTopStitches, 0, stitch.MaxStitches)
	vetDepth(c, in.DepthCm, in.DepthRounds)
	fault.Enum(c, "", "round_choice", in.RoundChoice, RoundChoiceEverySecond)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	c.OptionalNumber("", "tolerance_stitches", in.ToleranceStitches, 0, shaping.MaxTolerance)
	r.excess = in.ToleranceStitches
}

// settleParts divides the stitches joined into parts and lines, and settles the
// depth.
func settleParts(c *fault.Checks, r *raglan, in RaglanInput) {
	fromBody := (r.line + 1) / 2
	switch in.LineFrom {
	case RaglanLineFromBody:
		fromBody = r.line
	case RaglanLineFromSleeves:
		fromBody = 0
	}
	in = withParities(in)
	r.joining = settleJoin(c, in.BodyStitches, in.SleeveStitches, in.UnderarmStitches)
	if c.Err() != nil {
		return
	}
	body := r.body - 2*r.underarm
	r.parts = [...]raglanPart{
		{start: body - body/2 - 2*fromBody, name: "back", field: "back_neck_stitches"},
		{start: body/2 - 2*fromBody, name: "front", field: "front_neck_stitches"},
		{start: r.sleeve - r.underarm - 2*(r.line-fromBody), name: "sleeve", field: "sleeve_top_stitches"},
	}
	if r.parts[frontPart].start < MinRaglanNeck || r.parts[sleevePart].start < 1 {
		c.Infeasible(fmt.Sprintf("underarms and lines leave %s of the back, %d of the front and %d of each sleeve; "+
			"it takes at least %d of back and front and 1 of a sleeve", report.CountOf(max(0, r.parts[backPart].start), "stitches"),
			max(0, r.parts[frontPart].start), max(0, r.parts[sleevePart].start), MinRaglanNeck),
			"body_stitches", "sleeve_stitches", "underarm_stitches", "line_stitches")
	}
	r.rounds, r.depthField = settleDepth(c, r.st, r.rw, r.body, in.DepthCm, in.DepthRounds)
}

// settleNeck settles what is left of every part at the neck.
func settleNeck(c *fault.Checks, r *raglan, in RaglanInput) {
	sleeve := &r.parts[sleevePart]
	sleeve.end = fault.Or(in.SleeveTopStitches, r.fewestOf(sleevePart))
	round := min(neckPercent*r.body, 100*r.st.Nearest(measure.Micrometres(widestNeckCm)))
	others := 4*r.line + 2*sleeve.end
	both := round - 100*others // front and back together, in hundredths of a stitch
	back, front := &r.parts[backPart], &r.parts[frontPart]
	if in.BackNeckStitches == nil && in.FrontNeckStitches == nil {
		k := neckDecreases(back.start+front.start, both, front.start)
		least, most := neckRange(r.st, r.body)
		neck := func() int { return back.start + front.start - 4*k + others }
		for neck() > most && 2*k+MinRaglanNeck < front.start {
			k++
		}
		for k > 0 && neck() < least {
			k--
		}
		back.end, front.end = back.start-2*k, front.start-2*k
	} else {
		back.end = fault.Or(in.BackNeckStitches, back.start-2*neckDecreases(2*back.start, both, back.start))
		front.end = fault.Or(in.FrontNeckStitches, front.start-2*neckDecreases(2*front.start, both, front.start))
	}
	for _, i := range fieldOrder {
		vetNeckFits(c, r.parts[i], r.fewestOf(i))
	}
	if c.Err() == nil && r.parts[backPart].decreases()+r.parts[frontPart].decreases()+r.parts[sleevePart].decreases() == 0 {
		c.Infeasible("no part has a stitch to lose",
			"front_neck_stitches", "back_neck_stitches", "sleeve_top_stitches")
	}
}

// vetNeckFits checks that a part can come down to its neck two stitches at a time.
func vetNeckFits(c *fault.Checks, p raglanPart, fewest int) {
	lost := p.start - p.end
	switch {
	case lost < 0:
		c.Infeasible(fmt.Sprintf("the %s has %s at the join, and does not grow to %d",
			p.name, report.CountOf(p.start, "stitches"), p.end), p.field)
	case p.end < fewest:
		c.Infeasible(fmt.Sprintf("the %s has %s at the join, of which two go in every decrease round; "+
			"it can come down to %d at the fewest", p.name, report.CountOf(p.start, "stitches"), fewest), p.field)
	case lost%2 != 0: // so that it is not the fewest, from which an even number is lost
		c.Infeasible(fmt.Sprintf("the %s goes from %d to %s, and two go in every decrease round: what it loses must be even",
			p.name, p.start, report.CountOf(p.end, "stitches")), p.field)
	}
}

// fewestOf is the count to which a part can come down. Back and front keep two
// stitches or three. A sleeve of an odd number runs out to 1, by a last double
// decrease; one of an even number to 0, by working its last two stitches together
// with the lines, or to 2 where there are no lines.
func (r raglan) fewestOf(part int) int {
	odd := r.parts[part].start % 2
	if part == sleevePart && r.line > 0 || odd == 1 && part == sleevePart {
		return odd
	}
	return min(MinRaglanNeck+odd, r.parts[part].start)
}

// neckDecreases is how often front and back, of so many stitches together, decrease by
// two each so that they come nearest to both, which is in hundredths of a stitch:
// half-way, once less. So often at most that of least stitches there remain enough.
func neckDecreases(together, both, least int) int {
	k := int(measure.CeilDiv(int64(100*together-both-200), 400))
	return min(max(k, 0), (least-MinRaglanNeck)/2)
}

// vetRounds checks that every part has as many rounds as it needs.
func vetRounds(c *fault.Checks, r *raglan, _ RaglanInput) {
	slots, most := r.slots(), 0
	for _, i := range fieldOrder {
		p := r.parts[i]
		k := p.decreases()
		most = max(most, k)
		if k > slots {
			may := "none of so few rounds may decrease"
			if slots > 0 {
				may = fmt.Sprintf("only %s may decrease; with these it goes to %d", report.CountOf(slots, "rounds"), p.start-2*slots)
			}
			c.Infeasible(fmt.Sprintf("the %s goes from %d to %s in %s, and %s", p.name, p.start, report.CountOf(p.end, "stitches"),
				report.CountOf(k, "decrease rounds"), may), p.field)
		}
	}
	if most <= slots {
		return
	}
	need := most
	if r.everySecond {
		need = 2 * most
	}
	detail := strconv.Itoa(most) + " decrease rounds take " + report.CountOf(need, "rounds")
	if r.everySecond {
		detail += " when every second one decreases"
		if most <= r.rounds {
			detail += "; decreases on any round would fit"
		}
	}
	c.Infeasible(detail+"; the depth has "+strconv.Itoa(r.rounds), r.depthField)
	if r.everySecond {
		c.Infeasible(detail, "round_choice")
	}
}

// slots is how many rounds may decrease.
func (r raglan) slots() int {
	if r.everySecond {
		return r.rounds / 2
	}
	return r.rounds
}
