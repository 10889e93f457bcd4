package stitch

// resolve works a double stitch, or a wrapped one with all its wraps.
func (w *worker) resolve(op Op) *RowError {
	l, fault := w.next(op)
	if fault != nil {
		return fault
	}
	double := op == KnitDouble || op == PurlDouble
	switch {
	case double && l.kind != doubleLoop:
		return w.fault(op, 1, ReasonNotDouble)
	case !double && !l.wrapped:
		return w.fault(op, 1, ReasonNotWrapped)
	}
	w.take()
	w.put(loop{height: l.height + 1}, true)
	if w.rifts {
		w.settleAll(len(w.right)-1, w.taken(needle{l}))
	}
	return nil
}

// atTurn reports whether nothing has been worked since a Turn.
func (w *worker) atTurn() bool { return w.turned && w.ops == 1 }

// makeDouble pulls the first stitch after a turn up into a double stitch.
func (w *worker) makeDouble(Op) *RowError {
	l, fault := w.next(MakeDouble)
	if fault != nil {
		return fault
	}
	if !w.atTurn() {
		return w.fault(MakeDouble, 1, ReasonNotAtTurn)
	}
	if reason := w.unfit(MakeDouble, needle{l}); reason != "" {
		return w.fault(MakeDouble, 1, reason)
	}
	l = w.take()
	l.kind = doubleLoop
	w.move(l)
	return nil
}

// shortRowYO lays the yarn over the right needle at once after a turn.
func (w *worker) shortRowYO(Op) *RowError {
	switch {
	case !w.atTurn() || len(w.left) == 0:
		return w.fault(ShortRowYO, 0, ReasonNotAtTurn)
	case len(w.right) == 0, w.between() != noRift:
		return w.fault(ShortRowYO, 0, ReasonNoStrand) // no stitch to work it together with
	}
	w.add(loop{height: w.right.tip().height, kind: shortYOLoop, onWrong: w.Side() == WrongSide}, false)
	return nil
}
