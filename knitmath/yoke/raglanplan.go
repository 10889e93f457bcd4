package yoke

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
)

// answer puts together what the stages settled.
func (r raglan) answer(in RaglanInput) Raglan {
	d := r.decreaseRounds()
	out := Raglan{
		BodyStitches: r.body, SleeveStitches: r.sleeve, UnderarmStitches: r.underarm, LineStitches: r.line,
		JoinStitches: r.join, NeckStitches: r.total(r.ends()), DepthRounds: r.rounds, DepthCm: r.rw.SizeCm(r.rounds),
		JoinCm: r.st.SizeCm(r.join), unit: in.DisplayUnit,
		Back: r.part(d, backPart), Front: r.part(d, frontPart), Sleeve: r.part(d, sleevePart),
		GreatestDepartureStitches: d.stitches(d.Departure), LeastDepartureStitches: d.stitches(d.least),
	}
	out.NeckCm = r.st.SizeCm(out.NeckStitches)
	// Two edges each of back and front, and of both sleeves.
	out.Steepness = (2*out.Back.EdgeAngleDegrees + 2*out.Front.EdgeAngleDegrees + 4*out.Sleeve.EdgeAngleDegrees) / 360
	if out.Steepness > blockedOut {
		out.Notices = append(out.Notices, report.Notice{Reason: Ruffles, Description: "the edges lean " +
			measure.Decimal(out.Steepness, 2) + " times as much as those of a flat piece; the fabric ruffles rather than lies"})
	}
	on := worn{r.st, r.rw, r.body, r.sleeve, out.NeckStitches, out.DepthCm, r.depthField, false, in.DisplayUnit}
	out.Notices = append(out.Notices, on.notices()...)
	out.Notices = append(out.Notices, d.nearnessNotices()...)
	kinds := r.knit(d, &out)
	out.Effort = len(kinds) + schedule.Effort(d.Blocks())
	out.directions = r.directions(out, d, kinds)
	if in.WithOutline {
		out.Outline = r.outline(out.Rounds)
	}
	return out
}

// part is the figures of one part.
func (r raglan) part(d decreaseRounds, i int) RaglanPart {
	p := r.parts[i]
	rounds, first := d.of(i), 0
	if len(rounds) > 0 {
		first = rounds[0]
	}
	lost := r.st.SizeCm(p.decreases())
	return RaglanPart{
		StartStitches: p.start, EndStitches: p.end, DecreaseRounds: p.decreases(), EdgeLostCm: lost,
		EdgeAngleDegrees:         math.Atan(lost/r.rw.SizeCm(r.rounds)) * 180 / math.Pi,
		FirstDecreaseRoundNumber: first, Intervals: schedule.RunsInLongTurn(rounds),
	}
}

// counts are the stitches of back, front and each sleeve.
type counts [sleevePart + 1]int

func (r raglan) starts() counts { return counts{r.parts[0].start, r.parts[1].start, r.parts[2].start} }

func (r raglan) ends() counts { return counts{r.parts[0].end, r.parts[1].end, r.parts[2].end} }

// total is all stitches on the needle.
func (r raglan) total(n counts) int {
	return n[backPart] + n[frontPart] + 2*n[sleevePart] + 4*r.line
}
