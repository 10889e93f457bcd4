package solid

import "example.com/knitmath/knitmath/outline"

// outlinePoints is how many strokes a curve is drawn in.
const outlinePoints = 24

// outline draws the hat as it lies flat, along the fabric: half its circumference wide,
// and the shape that the crown follows.
func (h *hat) outline(out Crown, k curve, follows bool) *outline.Outline {
	var worked []outline.Corner
	worked = outline.AppendCorner(worked, outline.Corner{Across: out.HatStitches})
	for _, r := range out.Rounds {
		worked = outline.AppendCorner(worked, outline.Corner{Across: r.Instruction.StartStitches, Up: r.RoundNumber - 1})
		worked = outline.AppendCorner(worked, outline.Corner{Across: r.Instruction.EndStitches, Up: r.RoundNumber - 1})
	}
	worked = outline.AppendCorner(worked, outline.Corner{Across: out.EndStitches, Up: out.TotalRounds})
	right := outline.SizedBy(worked, h.st, h.rw, func(stitches int) int { return stitches })
	for i := range right { // a quarter of the round on each side of the middle
		right[i].X /= 2
	}
	left := mirrored(right)
	lines := []outline.Line{{Name: "right edge", Points: right}, {Name: "left edge", Points: left}}
	if follows {
		wanted := make([]outline.Point, 0, outlinePoints+1)
		deep := h.rw.SizeCm(h.plan.RoundCount)
		for i := range outlinePoints + 1 {
			at := float64(i) / outlinePoints
			wanted = append(wanted, outline.Point{X: k.left(at) * out.HatCm / 4, Y: out.TotalCm + (at-1)*deep})
		}
		lines = append(lines, outline.Line{Name: "shape, right", Points: wanted}, outline.Line{Name: "shape, left", Points: mirrored(wanted)})
	}
	o := &outline.Outline{
		X:     outline.Axis{Measure: "half the circumference, lying flat", Unit: outline.UnitCm},
		Y:     outline.Axis{Measure: "height along the fabric", Unit: outline.UnitCm},
		Lines: lines,
	}
	return o.Framed()
}

func mirrored(line []outline.Point) []outline.Point {
	other := make([]outline.Point, len(line))
	for i, p := range line {
		other[i] = outline.Point{X: -p.X, Y: p.Y}
	}
	return other
}
