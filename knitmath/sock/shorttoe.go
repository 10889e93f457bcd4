package sock

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// planShortRows makes a cup over the sole.
func (t toe) planShortRows(c *fault.Checks, in ToeInput) Toe {
	sole, all := t.round/2, t.round
	if t.toeUp {
		all = 2 * sole
	}
	centre := fault.Or(in.CentreStitches, max(sole/2+(sole/2+sole)%2, 1))
	if !vetToeCentre(c, sole, centre) {
		return Toe{}
	}
	cup := shortrow.Cup(all, sole, centre, t.method)
	out := t.answer()
	cupRows(cup, func(r shortrow.WedgeRow) { out.Rows = append(out.Rows, ToeRow{r.RowNumber, r.Side, r.Instruction}) })
	if last := &out.Rows[len(out.Rows)-1].Instruction; t.round%2 > 0 {
		*last = t.evened(*last, t.round-sole)
	}
	// The rounds that close the gaps go on over the instep, and lengthen both.
	out.CentreStitches, out.TipStitches, out.LengthRows = &centre, 2*sole, cupDepthRows(cup)+closingRounds
	return out
}

// evened is a round whose last stitches, the instep's, are knit, with two of them knit together
// in their middle, so that the sole can be grafted to them; or from the toe up with one made there.
func (t toe) evened(in stitch.Instruction, instep int) stitch.Instruction {
	op, takes, change := stitch.K2tog, 2, -1
	if t.toeUp {
		op, takes, change, instep = stitch.M1L, 0, 1, instep-1
	}
	steps := in.Row.Steps
	last := len(steps) - 1
	plain, before := steps[last].Count, (instep-takes)/2
	steps = append(steps[:last:last], knit(plain-instep+before), stitch.Do(op, 1), knit(instep-takes-before))
	return stitch.Instruction{Row: stitch.RowOf(steps...), StartStitches: in.StartStitches, EndStitches: in.EndStitches + change}
}
