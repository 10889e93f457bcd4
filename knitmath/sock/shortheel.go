package sock

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// planShortRows writes a heel of short rows. Its depth is half of what is worked at its
// centre, since it folds there.
func (h heel) planShortRows(out *Heel) {
	cup := shortrow.Cup(h.round, h.stitches, h.centre, h.method)
	cupRows(cup, func(r shortrow.WedgeRow) {
		out.Rows = append(out.Rows, HeelRow{HeelPartShortRows, r.RowNumber, r.Side, r.Instruction})
	})
	out.CentreStitches, out.DepthCm = &h.centre, h.rowsCm(cupDepthRows(cup))
}

// cupRows hands over every row of a cup.
func cupRows(cup shortrow.Raise, each func(shortrow.WedgeRow)) {
	for _, r := range cup.Rows {
		each(r)
	}
}

// cupDepthRows is how many rows deep a cup is that folds at its middle, but for the
// rounds that close it.
func cupDepthRows(cup shortrow.Raise) int { return (len(cup.Rows) - closingRounds) / 2 }

// closingRounds close the gaps of a cup: its last row, which goes on to the end of the round,
// and the round after it.
const closingRounds = 2

// defaultCornerStitches is picked up at each corner of a heel knit in afterwards. Common
// practice: 1 or 2.
const defaultCornerStitches = 1

// vetWasteYarn settles a heel that is knit in afterwards.
func (h *heel) vetWasteYarn(c *fault.Checks, in HeelInput) {
	if !h.sized || !c.Sound("corner_stitches", "end_stitches") {
		return
	}
	h.corner = fault.Or(in.CornerStitches, defaultCornerStitches)
	all := h.aroundOpening()
	h.end = fault.Or(in.EndStitches, wedgeEnd(all))
	plan, refused := h.closing().Plan()
	if refused != "" {
		fields := []string{h.sizedBy(in)}
		if in.EndStitches != nil {
			fields = append(fields, "end_stitches")
		}
		c.Infeasible("the opening "+refused, fields...)
		return
	}
	if plan.EndStitches != h.end {
		c.Infeasible(fmt.Sprintf("is met by no decreases of four at a time from %d stitches", all), "end_stitches")
	}
}

// aroundOpening is the round that a heel on waste yarn is closed from.
func (h heel) aroundOpening() int { return 2 * (h.stitches + h.corner) }

func (h heel) closing() solid.Closing {
	return solid.Closing{StartStitches: h.aroundOpening(), Wedges: 2, Paired: true, EdgeStitches: 1, EndStitches: h.end, Pace: solid.ToHalf()}
}

// planWasteYarn writes the round with the waste yarn, and the closing of the opening.
func (h heel) planWasteYarn(out *Heel) {
	k := knit(h.stitches)
	out.add(HeelPartWasteYarn, stitch.RightSide, h.round, h.round, k, knit(h.instep))
	plan, _ := h.closing().Plan()
	closingRows(plan, func(number int, in stitch.Instruction) {
		out.Rows = append(out.Rows, HeelRow{HeelPartClosing, number, stitch.RightSide, in})
	})
	all := h.aroundOpening()
	out.ClosingStitches, out.EndStitches, out.DepthCm = &all, &h.end, h.rowsCm(plan.RoundCount)
	out.closing = append(plan.Directions(1), solid.Graft(h.end/2))
}

// closingRows hands over every round of a closing, those worked even too.
func closingRows(plan solid.ClosingPlan, each func(number int, in stitch.Instruction)) {
	number, now := 1, plan.StartStitches
	even := func(until int) {
		for ; number < until; number++ {
			each(number, stitch.Instruction{Row: stitch.RowOf(stitch.ToEnd(stitch.Knit)), StartStitches: now, EndStitches: now})
		}
	}
	for _, r := range plan.Rounds {
		even(r.RoundNumber)
		each(number, r.Instruction)
		number, now = number+1, r.Instruction.EndStitches
	}
	even(plan.RoundCount + 1)
}

// wedgeEnd is what a wedge is left with: about a quarter, an even number at each side fewer
// than the whole, and at least four there, as a stitch outside each decrease wants. Common
// practice.
func wedgeEnd(all int) int {
	end := max(all/4, 2*fewestAside)
	return end + (all-end)%4
}

const fewestAside = 4
