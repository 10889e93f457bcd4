package shortrow

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
)

// outline draws the rows under every stitch, those that the planned rows put
// there, and the profile that was wanted above the rows that all stitches have.
// Stitches are counted from the right edge and drawn from the left.
func (w wedge) outline(out Wedge, st, rw gauge.Density) *outline.Outline {
	var steps []outline.Corner
	for x := w.width - 1; x >= 0; x-- {
		height := out.FullRows + out.heights[x]
		steps = outline.AppendCorner(steps, outline.Corner{Across: w.width - 1 - x, Up: height})
		steps = outline.AppendCorner(steps, outline.Corner{Across: w.width - x, Up: height})
	}
	pieces := len(w.profile.wanted) - 1
	wanted := make([]outline.Point, pieces+1)
	for i := range wanted {
		// Point i lies i pieces from the left, so pieces - i from the right.
		rows := float64(out.FullRows) + float64(w.profile.wanted[pieces-i].Value)/1e6
		stitches := float64(i*w.width) / float64(pieces)
		wanted[i] = outline.Point{X: stitches, Y: rows}
		if !st.IsZero() {
			wanted[i] = outline.Point{X: stitches / st.PerCm(), Y: rows / rw.PerCm()}
		}
	}
	o := &outline.Outline{
		X: outline.Axis{Measure: "from the left edge", Unit: outline.UnitStitches},
		Y: outline.Axis{Measure: "height of the rows under each stitch", Unit: outline.UnitRows},
		Lines: []outline.Line{
			{Name: "top edge", Points: outline.SizedBy(steps, st, rw, func(stitches int) int { return 2 * stitches })},
			{Name: "wanted", Points: wanted},
		},
	}
	if !st.IsZero() {
		o.X.Unit, o.Y.Unit = outline.UnitCm, outline.UnitCm
	}
	return o.Framed()
}
