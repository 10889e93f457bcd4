package hand

import (
	"example.com/knitmath/knitmath/outline"
)

// outline draws the gusset as it widens in the palm, and the thumb as it lies flat: half its
// circumference wide. Each stands on its first round.
func (t *thumb) outline(out Thumb) *outline.Outline {
	o := &outline.Outline{
		X: outline.Axis{Measure: "from the middle", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "height", Unit: outline.UnitCm},
	}
	if !t.none {
		line := outline.AppendCorner(nil, outline.Corner{Across: t.start})
		for i := range out.HandRounds[:len(out.HandRounds)-1] {
			up, width := out.HandRounds[i].RoundNumber, t.start+2*i
			line = outline.AppendCorner(line, outline.Corner{Across: width, Up: up - 1})
			line = outline.AppendCorner(line, outline.Corner{Across: width + 2, Up: up})
		}
		line = outline.AppendCorner(line, outline.Corner{Across: t.gusset, Up: out.GussetRounds})
		o.Lines = append(o.Lines, t.bothEdges("gusset", line, 1)...)
	}
	line := outline.AppendCorner(nil, outline.Corner{Across: t.hold + t.picked})
	for _, r := range out.ThumbRounds {
		line = outline.AppendCorner(line, outline.Corner{Across: r.Instruction.StartStitches, Up: r.RoundNumber - 1})
		line = outline.AppendCorner(line, outline.Corner{Across: r.Instruction.EndStitches, Up: r.RoundNumber - 1})
	}
	line = outline.AppendCorner(line, outline.Corner{Across: out.EndStitches, Up: out.LengthRounds})
	o.Lines = append(o.Lines, t.bothEdges("thumb", line, 2)...)
	return o.Framed()
}

// bothEdges are the edges of a part about its middle, of so many layers.
func (t *thumb) bothEdges(part string, line []outline.Corner, layers float64) []outline.Line {
	right := outline.SizedBy(line, t.st, t.rw, func(stitches int) int { return stitches })
	left := make([]outline.Point, len(right))
	for i := range right {
		right[i].X /= layers
		left[i] = outline.Point{X: -right[i].X, Y: right[i].Y}
	}
	return []outline.Line{{Name: part + ", right edge", Points: right}, {Name: part + ", left edge", Points: left}}
}
