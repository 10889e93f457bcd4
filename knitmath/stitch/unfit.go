package stitch

// unfit says why the loops, the first to be worked last in the slice, cannot be
// worked together by op. A wrapped or double stitch must be worked on its own
// first, with its wrap or both its legs: no decrease swallows one. A short-row
// yarn over must be worked together with the stitch that its turn left unworked,
// in such a way that this stitch hides it from the right side.
func (w *worker) unfit(op Op, taken needle) Reason {
	overs := 0
	for _, l := range taken {
		switch {
		case l.kind == doubleLoop:
			return ReasonDouble
		case l.wrapped:
			return ReasonWrapped
		case l.kind == shortYOLoop:
			overs++
		}
	}
	if overs == 0 {
		return ""
	}
	if overs == 1 && len(taken) == 2 && w.hidden(op, taken[1], taken[0]) {
		return ""
	}
	return ReasonYarnOver
}

// hiding says on which side an op hides the yarn over of a short row behind its
// neighbour: one that comes first in hand, or one that comes second.
var hiding = map[Op]struct {
	side      Side
	overFirst bool
}{
	K2tog: {RightSide, true},
	SSP:   {WrongSide, true},
	SSK:   {RightSide, false},
	P2tog: {WrongSide, false},
}

// hidden reports whether op works a short-row yarn over, one of two loops, so that
// the stitch which its turn left unworked hides it. That stitch lies beyond the
// yarn over as seen from the rows that are turned there: it comes after the yarn
// over on the other side, and before it on the side that the yarn over was made on.
func (w *worker) hidden(op Op, first, second loop) bool {
	way, ok := hiding[op]
	if !ok || way.side != w.Side() {
		return false
	}
	if way.overFirst {
		return first.kind == shortYOLoop && first.onWrong != (w.Side() == WrongSide)
	}
	return second.kind == shortYOLoop && second.onWrong == (w.Side() == WrongSide)
}
