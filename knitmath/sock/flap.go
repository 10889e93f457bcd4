package sock

import (
	"example.com/knitmath/knitmath/stitch"
)

// Defaults of flap and gusset.
const (
	// defaultCorner is picked up at the corner beyond half the rows of the flap. Published
	// heels pick up half the rows and 1 to 4 more (Ryder 1896: 17 of 30 rows).
	defaultCorner = 1
	mostCorner    = 4
	// defaultEvery is every 2nd round: common practice.
	defaultEvery = 2
)

// planFlap writes a heel of flap, turn and gusset.
func (h heel) planFlap(out *Heel) {
	h.flap(out)
	left := h.turnRows(out, h.stitches, 0)
	sole := left + 2*h.pickUp
	decreases := (sole - h.stitches) / 2
	h.pickUps(out, left)
	rounds := h.gusset(out, left, decreases)
	all := sole + h.instep
	out.FlapRows, out.CentreStitches, out.TurnedStitches, out.PickUpStitches = &h.flapRows, &h.centre, &left, &h.pickUp
	out.GreatestRoundStitches, out.GussetDecreaseRounds, out.GussetRounds = &all, &decreases, &rounds
	out.DepthCm, out.GussetCm = h.rowsCm(h.flapRows), h.rowsCm(rounds)
}

// flap writes the flap, of which every row slips its first stitch. The last stitch of a
// right-side row is knit, so that the edge is a chain.
func (h heel) flap(out *Heel) {
	f := h.stitches
	slip, turn := stitch.Do(stitch.Slip, 1), stitch.Do(stitch.Turn, 1)
	for range h.flapRows / 2 {
		if h.flapStitch == FlapStitchStockinette {
			out.add(HeelPartFlap, stitch.RightSide, f, f, slip, knit(f-1), turn)
		} else {
			out.add(HeelPartFlap, stitch.RightSide, f, f, stitch.Repeat(f/2, slip, knit(1)), knit(f%2), turn)
		}
		out.add(HeelPartFlap, stitch.WrongSide, f, f, slip, stitch.Do(stitch.Purl, f-1), turn)
	}
}

// pickUps join the heel and the instep again in one round, which begins with the turned
// heel: along the first edge of the flap, over the instep, and along the other edge.
func (h heel) pickUps(out *Heel, left int) {
	p, marker := stitch.Do(stitch.PickUp, h.pickUp), stitch.Do(stitch.PlaceMarker, 1)
	out.add(HeelPartPickUp, stitch.RightSide, left+h.instep, left+h.instep+2*h.pickUp, knit(left), p, marker, knit(h.instep), marker, p)
}

// gusset decreases until the sole is as wide as the heel was, and gives its rounds. Of the
// gussets the first lies after the turned heel, the second ends the round.
func (h heel) gusset(out *Heel, left, decreases int) int {
	round := 0
	marker := stitch.Do(stitch.SlipMarker, 1)
	first, second := left+h.pickUp, h.pickUp
	for d := range decreases {
		even := h.every - 1
		if d < h.quick {
			even = 0
		}
		all := first + h.instep + second
		for range even {
			round++
			out.add(HeelPartGusset, stitch.RightSide, all, all, stitch.ToEnd(stitch.Knit))
		}
		round++
		out.add(HeelPartGusset, stitch.RightSide, all, all-2, knit(first-3), stitch.Do(stitch.K2tog, 1), knit(1), marker, knit(h.instep),
			marker, knit(1), stitch.Do(stitch.SSK, 1), knit(second-3))
		first--
		second--
	}
	return round
}
