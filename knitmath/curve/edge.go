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

// SewnCm is how long the line is that a seam takes along an edge. A seam eases stairs into
// a slope: it runs through the corners that lie farthest in, which the fabric has on both
// sides of it, from one step straight to the next, and the corners beyond are folded into
// it. What is lost at once where an edge begins lies flat, what stands upright above the
// last step counts in full. Where over is not 0 the line ends so far in on the top of the
// last row: in the middle of a cap's top.
//
// A bind-off's inner corner is its end, a cast-on's its beginning; a decrease and an
// increase slant over their row and those before it, as in [LengthCm].
// Source: own derivation.
func SewnCm(steps []Step, firstRow, lastRow int, over float64, st, rw gauge.Density) float64 {
	wide, high := st.SizeCm(1), rw.SizeCm(1)
	sum, at := 0.0, firstRow-1 // the height reached, in rows
	beyond := 0.0              // cast on at that height, which the next stroke takes along
	stroke := func(across float64, to int) {
		sum += math.Hypot(across, float64(to-at)*high)
		at = to
	}
	for _, s := range steps {
		across := float64(s.Stitches) * wide
		switch s.Kind {
		case KindBindOff:
			stroke(across+beyond, s.RowNumber-1)
			beyond = 0
		case KindCastOn:
			stroke(beyond, s.RowNumber-1)
			beyond = across
		default:
			stroke(across+beyond, s.RowNumber)
			beyond = 0
		}
	}
	stroke(beyond+over, lastRow)
	return sum
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
