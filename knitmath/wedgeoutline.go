package knitmath

// outline draws the rows under every stitch, those that the planned rows put
// there, and the profile that was wanted above the rows that all stitches have.
// Stitches are counted from the right edge and drawn from the left.
func (w wedge) outline(out Wedge, st, rw density) *Outline {
	var steps []corner
	for x := w.width - 1; x >= 0; x-- {
		height := out.ShortRows + out.heights[x]
		steps = appendCorner(steps, corner{w.width - 1 - x, height})
		steps = appendCorner(steps, corner{w.width - x, height})
	}
	pieces := len(w.profile.points) - 1
	wanted := make([]OutlinePoint, pieces+1)
	for i := range wanted {
		// Point i lies i pieces from the left, so pieces - i from the right.
		rows := float64(out.ShortRows) + float64(w.profile.points[pieces-i])/1e6
		stitches := float64(i*w.width) / float64(pieces)
		wanted[i] = OutlinePoint{stitches, rows}
		if st.count > 0 {
			wanted[i] = OutlinePoint{stitches / st.perCm(), rows / rw.perCm()}
		}
	}
	o := &Outline{
		X: OutlineAxis{Measure: "from the left edge", Unit: OutlineUnitStitches},
		Y: OutlineAxis{Measure: "height of the rows under each stitch", Unit: OutlineUnitRows},
		Lines: []OutlineLine{
			{"top edge", sizedBy(steps, st, rw, func(stitches int) int { return 2 * stitches })},
			{"wanted", wanted},
		},
	}
	if st.count > 0 {
		o.X.Unit, o.Y.Unit = OutlineUnitCm, OutlineUnitCm
	}
	return o.framed()
}
