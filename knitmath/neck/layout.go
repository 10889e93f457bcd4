package neck

import (
	"fmt"
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// A layout is a piece row by row. Its rows are counted from the one that divides it, row
// 0, a right-side row: right-side rows are even.
//
// Shoulders that are bound off in steps lose theirs where a row begins: the first side's
// in right-side rows, the last in row depth, the second's a row later. With short rows the
// second side turns first, and the same stitches end as many rows high: a row that would
// have led to a bind-off turns before those stitches, or closes the gaps.
type layout struct {
	setting
	piece string
	foot
	centre   int
	centred  bool // the stitches in the middle are given
	held     bool // the centre is held
	edges    edge
	outer    [2][]event // what goes at the armholes, as at the neck
	beside   int        // stitches that each armhole loses in these rows
	lacking  int        // the first row that has too few stitches, by its number; 0 if none has
	turned   [2]bool    // the last row turned before its end, on the first side and the second
	live     [2]int     // stitches of the side
	worked   [2]int     // short rows that have turned, or steps that are bound off
	gaps     [2][]int   // the open gaps by the stitches left beyond them, outermost first
	rows     []Row
	firstRow int
}

const (
	first = iota
	second
)

// isFront reports whether the piece is the front, and not the back.
func (l *layout) isFront() bool { return l.piece == "front" }

// lastBindOff is the row in which a side's last shoulder stitches are bound off, or would
// be.
func (l *layout) lastBindOff(side int) int {
	switch {
	case side == first:
		return l.depth
	case l.shortRows:
		return l.depth - 1
	}
	return l.depth + 1
}

// slopeRow is the row in which step i of a shoulder is bound off, or in which a short row
// turns before it; after all turns, the one that closes their gaps.
func (l *layout) slopeRow(side, i int) int {
	row := l.lastBindOff(side) - 2*(len(l.steps)-1-i)
	if l.shortRows {
		row--
	}
	return row
}

// lastRow is the last row of a side.
func (l *layout) lastRow(side int) int { return l.slopeRow(side, len(l.steps)-1) }

// sideOf is the side of the work that faces in a row.
func sideOf(row int) stitch.Side {
	if row%2 == 0 {
		return stitch.RightSide
	}
	return stitch.WrongSide
}

// write works all rows and keeps those that do more than work even.
func (l *layout) write(c *fault.Checks) {
	l.writeRows()
	if l.lacking > 0 {
		c.Infeasible(fmt.Sprintf("row %d of the %s has too few stitches for what goes at the armhole and at the neck", l.lacking, l.piece),
			l.stepsField())
	}
}

func (l *layout) writeRows() {
	l.besideArmhole()
	apart := (l.width-l.centre)/2 + l.beside
	l.live = [2]int{apart, apart}
	l.firstRow = min(0, l.slopeRow(first, 0), l.slopeRow(second, 0))
	l.rows = make([]Row, 0, 2*len(l.edges.first)+2*len(l.steps)+4)
	for row := l.firstRow; row < 0; row++ {
		l.wholeRow(row)
	}
	if l.lastRow(first) == 0 {
		l.endRows()
		return
	}
	for side := range 2 {
		for row := 0; row <= l.lastRow(side); row++ {
			l.sideRow(side, row)
		}
	}
}

// number is a row's number in the answer.
func (l *layout) number(row int) int { return row - l.firstRow + 1 }

// keep adds a row to the answer unless it is worked even.
func (l *layout) keep(row int, part Part, before, after int, steps []stitch.Step, even bool) {
	if !even {
		l.rows = append(l.rows, Row{RowNumber: l.number(row), Part: part, Side: sideOf(row),
			Instruction: stitch.Instruction{Row: stitch.RowOf(steps...), StartStitches: before, EndStitches: after}})
	}
}

// wholeRow works a row above which the neck divides.
func (l *layout) wholeRow(row int) {
	begins, ends := first, second
	if sideOf(row) == stitch.WrongSide {
		begins, ends = second, first
	}
	w := l.rowOf(row)
	before := l.live[first] + l.live[second] + l.centre
	w.beginAtShoulder(begins)
	w.plain(l.live[begins] - w.begun + l.centre)
	w.endAtShoulder(ends, l.live[ends])
	l.keep(row, PartWhole, before, l.live[first]+l.live[second]+l.centre, w.written(), w.even)
}

// sideRow works a row of one side.
func (l *layout) sideRow(side, row int) {
	w := l.rowOf(row)
	before, part := l.live[side], PartFirstSide+Part(side)
	divides := row == 0
	if divides && side == second && !l.held {
		w.bindOff(l.centre)
		before += l.centre
	}
	// The first side begins at its shoulder on the right side, the second at the neck.
	if (side == first) == (sideOf(row) == stitch.RightSide) {
		w.beginAtShoulder(side)
		w.toNeck(side, l.live[side]-w.begun)
	} else {
		taken := w.fromNeck(side)
		w.endAtShoulder(side, l.live[side]-taken)
	}
	after := l.live[side]
	if divides && side == first {
		before += l.centre + l.live[second]
		w.holdOthers()
	}
	l.keep(row, part, before, after, w.written(), w.even && !(divides && side == second))
}

// endRows works the rows that end a piece without a depth: the first side's shoulder, the
// centre and the second side in one row, and the second side's last stitches.
func (l *layout) endRows() {
	w := l.rowOf(0)
	before := l.live[first] + l.live[second] + l.centre
	w.beginAtShoulder(first)
	middle := l.centre
	if l.held {
		w.plain(l.centre)
		middle = 0
	}
	w.bindOff(middle)
	w.endAtShoulder(second, l.live[second])
	l.keep(0, PartWhole, before, l.live[second]+l.centre-middle, w.written(), w.even)
	w = l.rowOf(1)
	before = l.live[second] + l.centre - middle
	w.beginAtShoulder(second)
	if l.held {
		w.add(stitch.Hold, l.centre)
	}
	l.keep(1, PartSecondSide, before, 0, w.written(), w.even)
}

// at is the event of a side in a row, at its neck.
func (l *layout) at(side, row int) (event, bool) {
	if side == second {
		return eventIn(l.edges.second, row)
	}
	return eventIn(l.edges.first, row)
}

func eventIn(list []event, row int) (event, bool) {
	i, ok := slices.BinarySearchFunc(list, row, func(e event, row int) int { return e.row - row })
	if !ok {
		return event{}, false
	}
	return list[i], true
}

// slopes is the step of a side's shoulder that falls to a row.
func (l *layout) slopes(side, row int) (step int, ok bool) {
	step = l.worked[side]
	return step, step < len(l.steps) && l.slopeRow(side, step) == row
}

func (l *layout) method() shortrow.TurnMethod { return l.in.TurnMethod }
