package shaping

import (
	"iter"
	"math"
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
	from, to := t.line()
	span := float64(to - from)
	line := func(row int) float64 {
		part := float64(row-from) / span
		return float64(t.start) + float64(t.end-t.start)*min(max(part, 0), 1)
	}
	worst, count := 0.0, t.start
	for row := range rows {
		worst = max(worst, math.Abs(float64(count)-line(row-1)))
		count += t.rowChange()
		worst = max(worst, math.Abs(float64(count)-line(row)))
	}
	return worst / float64(t.edgeCount())
}
