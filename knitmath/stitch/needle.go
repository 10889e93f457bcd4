package stitch

// loop is one live stitch on a needle.
type loop struct {
	height  int32 // rows that lie under it, itself included
	id      int32 // its place in the fabric that is remembered, 0 if none is
	kind    loopKind
	wrapped bool // wrapped since it was last worked
	ahead   rift // what lies between it and its neighbour on the right, as the right side shows
	onWrong bool // for a shortYO: it was made on the wrong side
}

type loopKind uint8

const (
	plainLoop loopKind = iota
	doubleLoop
	shortYOLoop // the yarn over of a short-row turn
	edgeRow     // no stitch: a row of an edge that waits to be picked up
)

// unresolved reports whether a later row still has to deal with the loop.
func (l loop) unresolved() bool { return l.wrapped || l.kind != plainLoop }

// needle holds loops with the tip at the end of the slice, so that a stitch is
// worked from the tip of the left needle to the tip of the right one in constant
// time, and turning the work merely exchanges the needles.
type needle []loop

func (n needle) tip() *loop { return &n[len(n)-1] }

// pass appends to n the loops of from, the one at the tip of from first: what
// brings a finished round back to its beginning.
func (n needle) pass(from needle) needle {
	for i := len(from) - 1; i >= 0; i-- {
		n = append(n, from[i])
	}
	return n
}
