package stitch

// bindOff takes one stitch off and leaves none, as the table counts it: the
// stitch passed over the next one and the last one fastened off come to the same.
func (w *worker) bindOff(Op) *RowError {
	l, fault := w.next(BindOff)
	if fault != nil {
		return fault
	}
	if reason := w.unfit(BindOff, needle{l}); reason != "" {
		return w.fault(BindOff, 1, reason)
	}
	l = w.take()
	w.boundOff = append(w.boundOff, int(l.height))
	w.cutOff(l, false)
	w.strand = strandNone
	w.worked = false
	return nil
}

// onEdge reports whether what comes next is a row of an edge.
func (w *worker) onEdge() bool {
	return len(w.left) > 0 && w.left.tip().kind == edgeRow
}

// offEdge says why op cannot be worked here: it picks up and there is no edge,
// or there is one and it does not.
func (w *worker) offEdge(op Op) *RowError {
	switch {
	case !op.Valid():
		return w.fault(op, 0, ReasonMalformed)
	case !op.picksUp():
		return w.fault(op, op.Takes(), ReasonEdge)
	case len(w.left) == 0:
		return w.fault(op, 1, ReasonMissing)
	}
	return w.fault(op, 1, ReasonNotEdge)
}

// pickUp passes one row of the edge and draws up the stitches of op through it.
// They stand at the foot of the new fabric, like stitches cast on.
func (w *worker) pickUp(op Op) *RowError {
	w.take()
	w.strand = strandNone
	n := 0
	switch op {
	case PickUp:
		n = 1
	case PickUpTwo:
		n = 2
	}
	for range n {
		w.add(loop{}, false)
	}
	return nil
}
