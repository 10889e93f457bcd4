package curve

import (
	"math"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
)

// LengthCm is how long an edge is as knit, from the foot of one row to the top of
// another: bound-off and cast-on stitches lie flat, rows stand up beside them, and
// from one change of the edge to a decrease or an increase it is one stroke. A bind-off
// lies on the row before its own.
func LengthCm(steps []Step, firstRow, lastRow int, st, rw gauge.Density) float64 {
	wide, high := st.SizeCm(1), rw.SizeCm(1)
	sum, at := 0.0, firstRow-1 // the height reached, in rows
	for _, s := range steps {
		across := float64(s.Stitches) * wide
		if s.Kind.Groups() {
			sum += float64(s.RowNumber-1-at)*high + across
			at = s.RowNumber - 1
			continue
		}
		sum += math.Hypot(across, float64(s.RowNumber-at)*high)
		at = s.RowNumber
	}
	return sum + float64(lastRow-at)*high
}

// Corners draw an edge as knit: how many stitches fewer the piece has there, from the
// foot of one row to the top of another, with so many fewer at first.
func Corners(steps []Step, firstRow, lastRow, fewer int) []outline.Corner {
	line := []outline.Corner{{Across: fewer, Up: firstRow - 1}}
	for _, s := range steps {
		line = outline.AppendCorner(line, outline.Corner{Across: fewer, Up: s.RowNumber - 1})
		fewer -= s.change()
		up := s.RowNumber
		if s.Kind.Groups() {
			up--
		}
		line = outline.AppendCorner(line, outline.Corner{Across: fewer, Up: up})
	}
	return outline.AppendCorner(line, outline.Corner{Across: fewer, Up: lastRow})
}
