package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
)

// MaxOutlinedRows is the most shaping rows of all sizes together of which edges are drawn:
// nobody could tell more of them apart.
const MaxOutlinedRows = 2_000

// outline draws the edges of every size about one centre line, as they lie in one another.
func (o GradedTaper) outline(tapers []taper, st, rw gauge.Density) *outline.Outline {
	drawn, shaping := &outline.Outline{}, 0
	for i, size := range o.Sizes {
		if shaping += size.ShapingRows; shaping > MaxOutlinedRows {
			break
		}
		name := size.Name
		if name == "" {
			name = strconv.Itoa(i + 1)
		}
		var shaped []ShapingRow
		count := size.StartStitches
		for row := range size.Intervals.From(fault.Or(size.FirstShapingRowNumber, 0)) {
			count += tapers[i].rowChange()
			shaped = append(shaped, ShapingRow{RowNumber: row, EndStitches: count})
		}
		alone := tapers[i].edgesOutline(shaped, st, rw)
		drawn.X, drawn.Y = alone.X, alone.Y
		for _, edge := range alone.Lines {
			drawn.Lines = append(drawn.Lines, outline.Line{Name: "size " + name + ", " + edge.Name, Points: edge.Points})
		}
	}
	return drawn.Framed()
}
