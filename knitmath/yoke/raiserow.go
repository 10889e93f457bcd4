package yoke

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// raiseRows writes the short rows over the first stitches of a round, the rest of
// that round, and the round after it, which closes the gaps of the wrong side.
func raiseRows(stitches int, list []shortrow.Span, method shortrow.TurnMethod) []shortrow.WedgeRow {
	s := shortrow.ShortRows{Width: stitches, Method: method}
	at := 0
	for _, p := range list {
		s.Row(stitch.RightSide, at, p.To)
		s.Row(stitch.WrongSide, p.To, p.From)
		at = p.From
	}
	s.Row(stitch.RightSide, at, stitches)
	gaps := s.Open[stitch.WrongSide]
	slices.Sort(gaps)
	var runs []stitch.Run
	start := 0
	for _, gap := range gaps {
		// The stitch beyond the turn lies before it on this side, and a yarn over
		// comes after that stitch.
		runs = stitch.AppendRun(runs, stitch.Knit, gap-1-start)
		runs = stitch.AppendRun(runs, closeFromRight[method], 1)
		start = gap
	}
	runs = stitch.AppendRun(runs, stitch.Knit, stitches-start)
	return append(s.Rows, shortrow.WedgeRow{
		RowNumber: len(s.Rows) + 1, Side: stitch.RightSide,
		Instruction: stitch.Instruction{Row: stitch.Compress(runs), StartStitches: stitches, EndStitches: stitches}, Resolving: true,
	})
}

// closeFromRight closes, on the right side, a gap whose turn was made on the wrong
// side. ssk puts the stitch on top of the yarn over after it, so that the yarn
// over is hidden. Common practice.
var closeFromRight = [shortrow.TurnMethodYarnOver + 1]stitch.Op{
	stitch.KnitWrapped, stitch.KnitWrapped, stitch.KnitDouble, stitch.SSK,
}

// directions writes the raise as a pattern would.
func (p *BackRaisePlan) directions() []string {
	first := strconv.Itoa(p.FirstRoundNumber)
	d := []string{"Round " + first + ", with the back raise: on the first " + strconv.Itoa(p.BackStitches) + " of " +
		report.CountOf(p.Stitches, "stitches") + " work short rows, the middle of the back rising by " + report.CountOf(p.RiseRows, "rows") + "."}
	last := len(p.Rows) - 1
	for i, r := range p.Rows[:last] {
		side := " (right side): "
		switch {
		case i == last-1:
			side = " (right side, to the end of round " + first + "): "
		case r.Side == stitch.WrongSide:
			side = " (wrong side): "
		}
		d = append(d, "Short row "+strconv.Itoa(r.RowNumber)+side+r.Instruction.Row.Text()+".")
	}
	return append(d, "Round "+strconv.Itoa(p.FirstRoundNumber+1)+": "+p.Rows[last].Instruction.Row.Text()+
		", which closes the gaps of the wrong side.")
}
