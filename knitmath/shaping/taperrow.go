package shaping

import (
	"example.com/knitmath/knitmath/stitch"
)

// The operations of a shaping row. As seen from the right side a decrease leans
// away from its edge and an increase away from the middle: ssk and M1L where
// right-side rows begin, k2tog and M1R where they end; on the wrong side the
// purled stitch of the same lean.
//
// Source: common practice; the leans are those of the trade's published list.
type edgeOps struct{ increase, decrease, double stitch.Op }

var (
	rightSideBegin = edgeOps{stitch.M1L, stitch.SSK, stitch.SSSK}
	rightSideEnd   = edgeOps{stitch.M1R, stitch.K2tog, stitch.K3tog}
	wrongSideBegin = edgeOps{stitch.M1RP, stitch.P2tog, stitch.P3tog} // the edge where right-side rows end
	wrongSideEnd   = edgeOps{stitch.M1LP, stitch.SSP, stitch.SSSP}
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
	plain, begin, end := stitch.Knit, rightSideBegin, rightSideEnd
	atBegin, atEnd := t.edges != ShapedEdgesEnd, t.edges != ShapedEdgesBeginning
	if side == stitch.WrongSide {
		plain, begin, end = stitch.Purl, wrongSideBegin, wrongSideEnd
		atBegin, atEnd = atEnd, atBegin // a wrong-side row begins where right-side rows end
	}
	var steps []stitch.Step
	if atBegin {
		steps = append(steps, stitch.Do(plain, t.edge))
		steps = append(steps, t.change(begin, plain)...)
	}
	if !atEnd {
		return stitch.RowOf(append(steps, stitch.ToEnd(plain))...)
	}
	change := t.change(end, plain)
	left := t.edge
	for _, s := range change {
		left += s.Count * s.Op.Takes()
	}
	steps = append(steps, stitch.ToLast(plain, left))
	steps = append(steps, change...)
	return stitch.RowOf(append(steps, stitch.Do(plain, t.edge))...)
}

// change is what one edge works: one increase or decrease; or a double
// decrease; or two increases with a stitch between them.
func (t taper) change(ops edgeOps, plain stitch.Op) []stitch.Step {
	switch {
	case t.start > t.end && t.perEdge == 1:
		return []stitch.Step{stitch.Do(ops.decrease, 1)}
	case t.start > t.end:
		return []stitch.Step{stitch.Do(ops.double, 1)}
	case t.perEdge == 1:
		return []stitch.Step{stitch.Do(ops.increase, 1)}
	}
	return []stitch.Step{stitch.Do(ops.increase, 1), stitch.Do(plain, 1), stitch.Do(ops.increase, 1)}
}
