package shortrow

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// ShortRows writes a wedge row by row. Places are counted from the right edge;
// right-side rows work upward, wrong-side rows downward. It keeps the turns
// whose gaps are still open, by their place and the side they were made on: a gap
// is closed by the next row of that side that works past it.
type ShortRows struct {
	Width  int
	Method TurnMethod
	Rows   []WedgeRow
	turns  []turn
	Open   [stitch.WrongSide + 1][]int
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
func (s *ShortRows) work(list []Span) {
	at := 0
	for _, p := range list {
		s.Row(stitch.RightSide, at, p.To)
		s.Row(stitch.WrongSide, p.To, p.From)
		at = p.From
	}
	s.Row(stitch.RightSide, at, s.Width)
	if len(s.Open[stitch.WrongSide]) > 0 {
		s.Row(stitch.WrongSide, s.Width, 0)
	}
}

// workFromLeft knits spans that all end at the left edge, beginning there with a
// wrong-side row: one row fewer than work would need.
func (s *ShortRows) workFromLeft(list []Span) {
	for _, p := range list {
		s.Row(stitch.WrongSide, s.Width, p.From)
		s.Row(stitch.RightSide, p.From, s.Width)
	}
	s.Row(stitch.WrongSide, s.Width, 0)
}

// Row works the stitches between two places: up on the right side, down on the
// wrong side. It turns unless it ends at an edge.
func (s *ShortRows) Row(side stitch.Side, start, end int) {
	k := kit(side)
	border := s.Width
	if side == stitch.WrongSide {
		border = 0
	}
	var runs []stitch.Run
	if s.turned {
		switch s.Method {
		case TurnMethodGerman:
			// The stitch beyond the turn was worked too; it is now made double.
			runs = stitch.AppendRun(runs, stitch.MakeDouble, 1)
		case TurnMethodYarnOver:
			runs = stitch.AppendRun(runs, stitch.ShortRowYO, 1)
		}
	}
	turns, last := end != border, end
	if turns && s.Method == TurnMethodGerman {
		last += k.step
	}
	gaps := s.takeGaps(side, start, last)
	for _, gap := range gaps {
		runs = stitch.AppendRun(runs, k.plain, k.step*(gap-start))
		runs = stitch.AppendRun(runs, k.resolve[s.Method], 1)
		start = gap + k.step
	}
	runs = stitch.AppendRun(runs, k.plain, k.step*(last-start))
	if turns {
		runs = stitch.AppendRun(runs, turnOp(s.Method), 1)
		s.Open[side] = append(s.Open[side], end)
		s.turns = append(s.turns, turn{side, end})
	}
	s.turned = turns
	s.Rows = append(s.Rows, WedgeRow{
		RowNumber:        len(s.Rows) + 1,
		Side:             side,
		Instruction:      stitch.Instruction{Row: stitch.Compress(runs), StartStitches: s.Width, EndStitches: s.Width},
		UnworkedStitches: k.step * (border - last),
		Resolving:        len(gaps) > 0,
	})
}

// takeGaps takes the open gaps of a side that a row meets between two places, in
// the order it meets them. The stitch that closes a gap is the next one in the
// direction of work, and must lie within the row.
func (s *ShortRows) takeGaps(side stitch.Side, start, last int) []int {
	var met, left []int
	for _, gap := range s.Open[side] {
		if side == stitch.RightSide && gap >= start && gap < last || side == stitch.WrongSide && gap <= start && gap > last {
			met = append(met, gap)
		} else {
			left = append(left, gap)
		}
	}
	s.Open[side] = left
	slices.Sort(met)
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
