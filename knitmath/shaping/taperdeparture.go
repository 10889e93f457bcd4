package shaping

import (
	"iter"
	"math"

	"example.com/knitmath/knitmath/curve"
)

// partSlack is how much of a part the last bits of a product may take away.
const partSlack = 1e-9

// allowed is how far an easy schedule may depart, in parts of the line, of which a
// row has 2k whatever the slots: as far as the nearest choice of rows, and so many
// stitches at each edge beyond. An excess of just a whole number of parts is that
// number, whatever the last bits of the product say.
func (t taper) allowed() int {
	from, to := t.line()
	line := t.slotLine()
	return line.Departure(line.Nearest()) + int(t.excess*float64(2*(to-from))/float64(t.perEdge)+partSlack)
}

// atEdge is so many parts of the line in stitches at each edge.
func (t taper) atEdge(parts int) float64 {
	from, to := t.line()
	return float64(parts*t.perEdge) / float64(2*(to-from))
}

// departure is the greatest distance of a shaped edge from the straight line between
// its ends, in stitches: that of the stitches after a row from the straight line from
// start to end, shared by the edges. The line runs from the end of one row to the end
// of another. The distance is reached either after a shaping row or just before one,
// or at an end.
func (t taper) departure(w shapedRows) float64 {
	return t.departs(func(yield func(int) bool) {
		for _, r := range w.rows {
			if !yield(r.RowNumber - t.below) {
				return
			}
		}
	})
}

// departs is that of shaping rows by their numbers, counted from the taper's first.
func (t taper) departs(rows iter.Seq[int]) float64 {
	wanted := t.wanted()
	off := func(count, row int) float64 {
		stitches, over := wanted.At(int64(t.below+row), 1)
		return math.Abs(float64(int64(count)*over-stitches) / float64(over))
	}
	worst, count := 0.0, t.start
	for row := range rows {
		worst = max(worst, off(count, row-1))
		count += t.rowChange()
		worst = max(worst, off(count, row))
	}
	return worst / float64(t.edgeCount())
}

// wanted is how many stitches the straight lines want after every row of the piece.
func (t taper) wanted() curve.Strokes[int64] {
	if t.through != nil {
		return t.through
	}
	from, to := t.line()
	return curve.Strokes[int64]{{Place: int64(t.below + from), Value: int64(t.start)}, {Place: int64(t.below + to), Value: int64(t.end)}}
}
