package shaping

import (
	"example.com/knitmath/knitmath/stitch"
)

// leastWidth is the fewest stitches a shaping row can be worked on: its edges,
// what its decreases take, and for increases a stitch between the inner
// strands.
func (t taper) leastWidth() int {
	edges := t.edgeCount()
	if t.start > t.end {
		return edges * (t.edge + t.perEdge + 1)
	}
	return edges*(t.edge+t.perEdge-1) + 1
}

// shapingRow writes the shaping row as worked on one side.
func (t taper) shapingRow(side stitch.Side) stitch.Row {
	plain, change := side.Plain(), t.perEdge
	if t.start > t.end {
		change = -change
	}
	atBegin, atEnd := t.edges != ShapedEdgesEnd, t.edges != ShapedEdgesBeginning
	if side == stitch.WrongSide {
		atBegin, atEnd = atEnd, atBegin // a wrong-side row begins where right-side rows end
	}
	var steps []stitch.Step
	if atBegin {
		steps = append(steps, stitch.Do(plain, t.edge))
		steps = append(steps, stitch.Shaped(side, false, change)...)
	}
	if !atEnd {
		return stitch.RowOf(append(steps, stitch.ToEnd(plain))...)
	}
	shaped := stitch.Shaped(side, true, change)
	left := t.edge
	for _, s := range shaped {
		left += s.Count * s.Op.Takes()
	}
	steps = append(steps, stitch.ToLast(plain, left))
	steps = append(steps, shaped...)
	return stitch.RowOf(append(steps, stitch.Do(plain, t.edge))...)
}
