package sock

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// vetToeUp settles a heel of gussets worked from the toe up.
func (h *heel) vetToeUp(c *fault.Checks, in HeelInput) {
	h.every, h.quick = fault.Or(in.GussetEveryRounds, defaultEvery), 1
	if h.kind != HeelKindSquare {
		h.vetCentre(c, in, h.turn())
	}
	if h.kind == HeelKindHeart {
		h.grown = (h.stitches - h.centre) / 2
		return
	}
	h.vetFlapRows(c, in, usualToeUpFlap(h.stitches))
	h.grown = h.flapRows / 2
}

// footToHeel is how long the foot is, from the tip of the toe, when the heel begins: as long as the
// sock but for the gussets and the turn, which lie along the sole to the back of the heel, or for the depth
// of short rows or of a heel knit in afterwards. A heart's turn, without a flap after it, rounds the
// heel: half of it lies along the sole. Source: own derivation.
func (h heel) footToHeel(c *fault.Checks, in HeelInput, out *Heel) {
	sock := *in.FootLengthCm + fault.Or(in.LengthEaseCm, defaultLengthEase)
	rows := 0
	switch {
	case h.kind == HeelKindHeart:
		rows = h.grown
	case h.kind == HeelKindRound:
		rows = h.stitches - h.centre
	case out.GussetRounds == nil:
		rows = h.rw.Nearest(measure.Micrometres(*out.DepthCm))
	}
	long := *h.rowsCm(rows + fault.Or(out.GussetRounds, 0))
	out.Notices = append(out.Notices, h.vetToeRoom(c, in, sock, long)...)
	cm := sock - long
	out.FootToHeelCm = &cm
}

// usualToeUpFlap is a row for every stitch of the heel but 2 or 3, as gussets widen a
// published heel of 33 to 63 and its flap takes 30 rows to come back.
func usualToeUpFlap(heel int) int { return heel - 2 - heel%2 }

// oddFlap says why a flap has an even number of rows.
const oddFlap = "is odd, and a flap ends with a wrong-side row"

// planToeUp writes gussets, turn and flap. All counts are those of the round.
func (h heel) planToeUp(out *Heel) {
	rounds := h.widen(out)
	all, increases := h.round+2*h.grown, h.grown
	out.GreatestRoundStitches, out.GussetIncreaseRounds, out.GussetRounds, out.GussetCm = &all, &increases, &rounds, h.rowsCm(rounds)
	part := HeelPartFlap
	switch h.kind {
	case HeelKindHeart:
		left := h.turnRows(out, h.stitches+2*h.grown, h.instep)
		out.CentreStitches, out.TurnedStitches, out.DepthCm = &h.centre, &left, h.rowsCm(2*h.grown)
		part = HeelPartTurn
	case HeelKindSquare:
		h.takeUp(out, []stitch.Run{{Op: stitch.Knit, Count: h.grown + h.stitches - 1}})
	default:
		rows, next := shortrow.HalfCup(all, h.grown, h.stitches, h.centre, h.method)
		last := &rows[len(rows)-1].Instruction.Row
		last.Steps = h.overMarker(last.Steps)
		for _, r := range rows {
			out.Rows = append(out.Rows, HeelRow{HeelPartTurn, r.RowNumber, r.Side, r.Instruction})
		}
		out.CentreStitches = &h.centre
		h.takeUp(out, next)
	}
	if part == HeelPartFlap {
		out.FlapRows, out.DepthCm = &h.flapRows, h.rowsCm(h.flapRows)
	}
	out.add(part, stitch.RightSide, h.round, h.round, stitch.ToEnd(stitch.Knit))
}

// widen increases at both ends of the sole, a stitch inside, and gives the rounds of the
// gussets. The first places a marker between sole and instep.
func (h heel) widen(out *Heel) int {
	sole, marker := h.stitches, stitch.PlaceMarker
	for i := range h.grown {
		all := sole + h.instep
		for range min(i, 1) * (h.every - 1) {
			out.add(HeelPartGusset, stitch.RightSide, all, all, stitch.ToEnd(stitch.Knit))
		}
		out.add(HeelPartGusset, stitch.RightSide, all, all+2, knit(1), stitch.Do(stitch.M1L, 1), knit(sole-2), stitch.Do(stitch.M1R, 1),
			knit(1), stitch.Do(marker, 1), knit(h.instep))
		sole, marker = sole+2, stitch.SlipMarker
	}
	return (h.grown-1)*h.every + 1
}

// overMarker slips the marker before the instep, over which the last of the steps knits.
func (h heel) overMarker(steps []stitch.Step) []stitch.Step {
	last := len(steps) - 1
	return append(steps[:last:last], knit(steps[last].Count-h.instep), stitch.Do(stitch.SlipMarker, 1), knit(h.instep))
}

// takeUp works the flap, which takes up a stitch of the gussets with the last of every row.
// Its first row comes from the beginning of the round, as first says.
func (h heel) takeUp(out *Heel, first []stitch.Run) {
	f, now, slip := h.stitches, h.round+2*h.grown, stitch.Do(stitch.Slip, 1)
	dec, purled, turn := stitch.Do(stitch.SSK, 1), stitch.Do(stitch.P2tog, 1), stitch.Do(stitch.Turn, 1)
	steps := append(stitch.Compress(first).Steps, dec, turn)
	for range h.grown {
		out.add(HeelPartFlap, stitch.RightSide, now, now-1, steps...)
		out.add(HeelPartFlap, stitch.WrongSide, now-1, now-2, slip, stitch.Do(stitch.Purl, f-2), purled, turn)
		now -= 2
		steps = []stitch.Step{stitch.Repeat((f-1)/2, slip, knit(1)), knit((f - 1) % 2), dec, turn}
		if h.flapStitch == FlapStitchStockinette {
			steps = []stitch.Step{slip, knit(f - 2), dec, turn}
		}
	}
}
