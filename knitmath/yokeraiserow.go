package knitmath

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// raiseRows writes the short rows over the first stitches of a round, the rest of
// that round, and the round after it, which closes the gaps of the wrong side.
func raiseRows(stitches int, list []span, method TurnMethod) []WedgeRow {
	s := shortRows{width: stitches, method: method}
	at := 0
	for _, p := range list {
		s.row(SideRight, at, p.to)
		s.row(SideWrong, p.to, p.from)
		at = p.from
	}
	s.row(SideRight, at, stitches)
	gaps := s.open[SideWrong]
	slices.Sort(gaps)
	var runs []stitch.Run
	start := 0
	for _, gap := range gaps {
		// The stitch beyond the turn lies before it on this side, and a yarn over
		// comes after that stitch.
		runs = appendRun(runs, stitch.Knit, gap-1-start)
		runs = appendRun(runs, closeFromRight[method], 1)
		start = gap
	}
	runs = appendRun(runs, stitch.Knit, stitches-start)
	return append(s.rows, WedgeRow{
		RowNumber: len(s.rows) + 1, Side: SideRight,
		Instruction: Instruction{Row: stitch.Compress(runs), StartCount: stitches, EndCount: stitches}, Resolving: true,
	})
}

// closeFromRight closes, on the right side, a gap whose turn was made on the wrong
// side. ssk puts the stitch on top of the yarn over after it, so that the yarn
// over is hidden. Common practice.
var closeFromRight = [TurnMethodYarnOver + 1]stitch.Op{
	stitch.KnitWrapped, stitch.KnitWrapped, stitch.KnitDouble, stitch.SSK,
}

// directions writes the raise as a pattern would.
func (p *BackRaisePlan) directions() []string {
	first := strconv.Itoa(p.FirstRoundNumber)
	d := []string{"Round " + first + ", with the back raise: on the first " + strconv.Itoa(p.BackCount) + " of " +
		countOf(p.StitchCount, "stitches") + " work short rows, the middle of the back rising by " + countOf(p.RiseRows, "rows") + "."}
	last := len(p.Rows) - 1
	for i, r := range p.Rows[:last] {
		side := " (right side): "
		switch {
		case i == last-1:
			side = " (right side, to the end of round " + first + "): "
		case r.Side == SideWrong:
			side = " (wrong side): "
		}
		d = append(d, "Short row "+strconv.Itoa(r.RowNumber)+side+r.Instruction.Row.Text()+".")
	}
	return append(d, "Round "+strconv.Itoa(p.FirstRoundNumber+1)+": "+p.Rows[last].Instruction.Row.Text()+
		", which closes the gaps of the wrong side.")
}
