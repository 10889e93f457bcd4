package shortrow

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// shortRows writes a wedge row by row. Places are counted from the right edge;
// right-side rows work upward, wrong-side rows downward. It keeps the turns
// whose gaps are still open, by their place and the side they were made on: a gap
// is closed by the next row of that side that works past it.
type shortRows struct {
	width  int
	method TurnMethod
	rows   []WedgeRow
	turns  []turn
	open   [stitch.WrongSide + 1][]int
	turned bool // the row before turned before its end
}

// turn is a turn before the end of a row.
type turn struct {
	side  stitch.Side
	place int
}

// work knits the spans in order and then closes all gaps. Between two spans the
// row goes on where it is, so that all the right-side stretches outside the spans
// together are one row over the whole width. One more row on the wrong side
// closes the gaps of that side, if there are any.
func (s *shortRows) work(list []span) {
	s.workUp(list)
	if len(s.open[stitch.WrongSide]) > 0 {
		s.row(stitch.WrongSide, s.width, 0)
	}
}

// workUp knits the spans in order, and on to the end of the row.
func (s *shortRows) workUp(list []span) {
	at := 0
	for _, p := range list {
		s.row(stitch.RightSide, at, p.to)
		s.row(stitch.WrongSide, p.to, p.from)
		at = p.from
	}
	s.row(stitch.RightSide, at, s.width)
}

// workFromLeft knits spans that all end at the left edge, beginning there with a
// wrong-side row: one row fewer than work would need.
func (s *shortRows) workFromLeft(list []span) {
	for _, p := range list {
		s.row(stitch.WrongSide, s.width, p.from)
		s.row(stitch.RightSide, p.from, s.width)
	}
	s.row(stitch.WrongSide, s.width, 0)
}

// row works the stitches between two places: up on the right side, down on the
// wrong side. It turns unless it ends at an edge.
func (s *shortRows) row(side stitch.Side, start, end int) {
	k := kit(side)
	border := s.width
	if side == stitch.WrongSide {
		border = 0
	}
	var few [8]stitch.Run // of most rows: they are not kept
	runs := few[:0]
	if s.turned {
		// Of a German turn the stitch beyond it was worked too; it is now made double.
		if op, ok := AfterTurn(s.method); ok {
			runs = stitch.AppendRun(runs, op, 1)
		}
	}
	turns, last := end != border, end
	if turns && s.method == TurnMethodGerman {
		last += k.step
	}
	gaps := s.takeGaps(side, start, last)
	for _, gap := range gaps {
		runs = stitch.AppendRun(runs, k.plain, k.step*(gap-start))
		runs = stitch.AppendRun(runs, k.resolve[s.method], 1)
		start = gap + k.step
	}
	runs = stitch.AppendRun(runs, k.plain, k.step*(last-start))
	if turns {
		runs = stitch.AppendRun(runs, turnOp(s.method), 1)
		s.leaveGap(side, end)
		s.turns = append(s.turns, turn{side, end})
	}
	s.turned = turns
	s.rows = append(s.rows, WedgeRow{
		RowNumber:        len(s.rows) + 1,
		Side:             side,
		Instruction:      stitch.Instruction{Row: stitch.Compress(runs), StartStitches: s.width, EndStitches: s.width},
		UnworkedStitches: k.step * (border - last),
		Resolving:        len(gaps) > 0,
	})
}

// leaveGap opens a gap of a side, whose gaps are kept in order of their places. A stitch
// that is wrapped twice has one.
func (s *shortRows) leaveGap(side stitch.Side, place int) {
	if at, is := slices.BinarySearch(s.open[side], place); !is {
		s.open[side] = slices.Insert(s.open[side], at, place)
	}
}

// takeGaps takes the open gaps of a side that a row meets between two places, in
// the order it meets them. The stitch that closes a gap is the next one in the
// direction of work, and must lie within the row. What is met lies together, so
// that a row takes no longer for the gaps that it leaves.
func (s *shortRows) takeGaps(side stitch.Side, start, last int) []int {
	low, high := start, last // from start up to the stitch before last
	if side == stitch.WrongSide {
		low, high = last+1, start+1
	}
	open := s.open[side]
	from, _ := slices.BinarySearch(open, low)
	to, _ := slices.BinarySearch(open, high)
	if from >= to {
		return nil
	}
	met := slices.Clone(open[from:to])
	s.open[side] = slices.Delete(open, from, to)
	if side == stitch.WrongSide {
		slices.Reverse(met)
	}
	return met
}

// sideKit is what differs between the two sides.
type sideKit struct {
	plain   stitch.Op
	resolve [TurnMethodYarnOver + 1]stitch.Op
	step    int
}

func kit(side stitch.Side) sideKit {
	if side == stitch.WrongSide {
		return sideKit{stitch.Purl,
			[...]stitch.Op{stitch.PurlWrapped, stitch.PurlWrapped, stitch.PurlDouble, stitch.SSP}, -1}
	}
	return sideKit{stitch.Knit,
		[...]stitch.Op{stitch.KnitWrapped, stitch.KnitWrapped, stitch.KnitDouble, stitch.K2tog}, 1}
}

func turnOp(m TurnMethod) stitch.Op {
	if m == TurnMethodGerman || m == TurnMethodYarnOver {
		return stitch.Turn
	}
	return stitch.WrapTurn
}
