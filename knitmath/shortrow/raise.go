package shortrow

import (
	"example.com/knitmath/knitmath/stitch"
)

// A Raise is short rows over the first stitches of a round that is worked in the
// round otherwise.
type Raise struct {
	// Rows are the short rows, the rest of the round that they interrupt, and the
	// round after it, which closes the gaps of the wrong side.
	Rows                  []WedgeRow
	TurnCount             int
	GreatestDepartureRows float64
}

// RaiseRound raises the first stitches of a round, so many of all, by a wedge
// that is tall in their middle (see PlanWedge). The right side works on to the end
// of the round and closes the gaps that it passes. The gaps of the wrong side lie
// before the first of its stitches; the round after closes them, from the right
// side.
//
// The turns lie in steps of least effort that depart from the fall to both sides by no
// more than a row beyond what they must, or as near to it as they can where there are
// none: the raise stands alone, so that no departure adds up, as those of a circle of
// wedges would.
//
// rise must be even, from 2 to the raised stitches less one, which are at most
// all.
func RaiseRound(stitches, raised, rise int, order Order, method TurnMethod) Raise {
	p := straight(raised, rise, TallEndCentre)
	shortest := order == OrderShortestFirst
	// The stitch beyond any turn is one of the round, so that it may be a double.
	f := flank{width: raised, tall: TallEndCentre, turns: rise / 2, most: (raised - 1) / 2, double: method == TurnMethodGerman}
	places, _ := f.easy(defaultTolerance, shortest)
	list := spans(f.pairs(places), shortest)
	return Raise{
		Rows:                  raiseRows(stitches, list, method),
		TurnCount:             2 * len(list),
		GreatestDepartureRows: p.departure(shortRowHeights(raised, list, method)),
	}
}

// raiseRows writes the rows of a raise.
func raiseRows(stitches int, list []span, method TurnMethod) []WedgeRow {
	s := shortRows{width: stitches, method: method}
	s.workUp(list)
	return s.closed(stitches)
}

// closed are the rows, and the round after them, which closes the gaps of the wrong side
// from the right.
func (s *shortRows) closed(stitches int) []WedgeRow {
	return append(s.rows, WedgeRow{
		RowNumber: len(s.rows) + 1, Side: stitch.RightSide,
		Instruction: stitch.Instruction{Row: stitch.Compress(s.closing(stitches)), StartStitches: stitches, EndStitches: stitches},
		Resolving:   true,
	})
}

// closing knits the first stitches of that round.
func (s *shortRows) closing(stitches int) []stitch.Run {
	var runs []stitch.Run
	start := 0
	for _, gap := range s.open[stitch.WrongSide] {
		// The stitch beyond the turn lies before it on this side, and a yarn over
		// comes after that stitch.
		runs = stitch.AppendRun(runs, stitch.Knit, gap-1-start)
		runs = stitch.AppendRun(runs, closeFromRight[s.method], 1)
		start = gap
	}
	return stitch.AppendRun(runs, stitch.Knit, stitches-start)
}

// closeFromRight closes, on the right side, a gap whose turn was made on the wrong
// side. ssk puts the stitch on top of the yarn over after it, so that the yarn
// over is hidden. Common practice.
var closeFromRight = [TurnMethodYarnOver + 1]stitch.Op{
	stitch.KnitWrapped, stitch.KnitWrapped, stitch.KnitDouble, stitch.SSK,
}
