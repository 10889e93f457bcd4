package solid

import (
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// Opened is a closing worked the other way, from the stitches that it would leave to those of the
// tube: where a round decreases, one increases, and as many rounds are worked even between
// two. The first round after the cast-on is even.
func (q Closing) Opened(plan ClosingPlan) ClosingPlan {
	open := ClosingPlan{StartStitches: plan.EndStitches, EndStitches: plan.StartStitches, WedgeStitches: plan.WedgeStitches,
		RoundCount: plan.RoundCount + 1}
	for i := len(plan.Rounds) - 1; i >= 0; i-- {
		r := plan.Rounds[i]
		from, to := r.Instruction.EndStitches, r.Instruction.StartStitches
		open.Rounds = append(open.Rounds, ClosingRound{RoundNumber: plan.RoundCount + 2 - r.RoundNumber, Adjusts: r.Adjusts,
			Instruction: q.opens(from, to)})
	}
	open.Effort = open.effort()
	return open
}

// opens is a round that increases: in every wedge beside its edge stitches, or at the end of each
// where one is gained there, else evenly spaced.
func (q Closing) opens(from, to int) stitch.Instruction {
	each := from / q.Wedges
	switch gained := to - from; {
	case q.Paired && gained == 2*q.Wedges && from%q.Wedges == 0:
		steps := stitch.AppendStep(nil, stitch.Knit, q.EdgeStitches)
		steps = stitch.AppendStep(steps, stitch.M1L, 1)
		steps = stitch.AppendStep(steps, stitch.Knit, each-2*q.EdgeStitches)
		steps = stitch.AppendStep(steps, stitch.M1R, 1)
		steps = stitch.AppendStep(steps, stitch.Knit, q.EdgeStitches)
		return stitch.Instruction{Row: stitch.RowOf(stitch.Repeat(q.Wedges, steps...)), StartStitches: from, EndStitches: to}
	case !q.Paired && gained == q.Wedges && from%q.Wedges == 0:
		return shaping.WedgeRow(0, q.Wedges, each, 0, stitch.M1L, 0)
	}
	in, _ := shaping.EvenRound(from, to, stitch.M1L, shaping.GapSpreadLeastEffort)
	return in
}
