package stitch

// do works op once, by its own rules rather than by the table of operations.
func (w *worker) do(op Op) *RowError {
	if w.ops++; w.ops > MaxOperations {
		return w.fault(op, 0, ReasonTooLarge)
	}
	if w.onEdge() != op.picksUp() && op != PlaceMarker && op != SlipMarker {
		return w.offEdge(op)
	}
	if !op.Valid() {
		return w.fault(op, 0, ReasonMalformed)
	}
	if w.rifts || w.fabric != nil {
		return w.doMindful(op)
	}
	if !w.single(&byHand[op]) {
		if fault := w.by(op); fault != nil {
			return fault
		}
	}
	if len(w.right)-w.base > MaxStitches {
		return w.fault(op, 0, ReasonTooLarge)
	}
	return nil
}

// single works what most stitches are, one plain loop into one, and reports whether it
// was that: together says the same of any number, and takes twice as long.
func (w *worker) single(h *hand) bool {
	last := len(w.left) - 1
	if h.together != 1 || h.leaves != 1 || last < 0 || w.left[last].unresolved() {
		return false
	}
	w.right = append(w.right, loop{height: w.left[last].height + 1})
	w.left = w.left[:last]
	w.strand, w.worked = strandWhole, true
	return true
}

// by works op in its way.
func (w *worker) by(op Op) *RowError {
	if h := &byHand[op]; h.work == nil {
		return w.together(op, h.together, h.leaves)
	}
	return byHand[op].work(w, op)
}

// doMindful works op where seams, gaps or the fabric have to be minded.
func (w *worker) doMindful(op Op) *RowError {
	h := &byHand[op]
	if w.cut == cutBound && len(w.left) > 0 && (h.together > 1 || h.leaves > 1 || op == YO) {
		return w.fault(op, h.together, ReasonOnNeedle)
	}
	if w.rifts && h.together > 0 {
		if fault := w.cross(op, h.together); fault != nil {
			return fault
		}
	}
	left, right := len(w.left), len(w.right)
	if fault := w.by(op); fault != nil {
		return fault
	}
	if op != CastOn && op != PlaceMarker && op != SlipMarker {
		w.bridged, w.healed = false, false
	}
	if len(w.right)-w.base > MaxStitches || !w.fabric.note(op, w.left, left, w.right[right:]) {
		return w.fault(op, 0, ReasonTooLarge)
	}
	return nil
}

// hand is how an operation is worked: by leading the yarn to so many loops, all
// together, of which so many are made, or in a way of its own.
type hand struct {
	together, leaves int
	work             func(*worker, Op) *RowError
}

var byHand = [opEnd]hand{
	Knit: {1, 1, nil}, Purl: {1, 1, nil}, KnitTbl: {1, 1, nil}, PurlTbl: {1, 1, nil},
	K2tog: {2, 1, nil}, SSK: {2, 1, nil}, P2tog: {2, 1, nil}, SSP: {2, 1, nil}, SKP: {2, 1, nil},
	K3tog: {3, 1, nil}, SSSK: {3, 1, nil}, P3tog: {3, 1, nil}, SSSP: {3, 1, nil}, CDD: {3, 1, nil}, SK2P: {3, 1, nil},
	KFB: {1, 2, nil}, PFB: {1, 2, nil},
	Slip: {1, 0, (*worker).slip}, BindOff: {1, 0, (*worker).bindOff}, CastOn: {work: (*worker).castOn}, YO: {work: (*worker).yarnOver},
	M1: {work: (*worker).makeOne}, M1L: {work: (*worker).makeOne}, M1R: {work: (*worker).makeOne},
	M1P: {work: (*worker).makeOne}, M1LP: {work: (*worker).makeOne}, M1RP: {work: (*worker).makeOne},
	MakeDouble: {1, 0, (*worker).makeDouble}, ShortRowYO: {work: (*worker).shortRowYO},
	KnitDouble: {1, 0, (*worker).resolve}, PurlDouble: {1, 0, (*worker).resolve},
	KnitWrapped: {1, 0, (*worker).resolve}, PurlWrapped: {1, 0, (*worker).resolve},
	PickUp: {1, 0, (*worker).pickUp}, PickUpTwo: {1, 0, (*worker).pickUp}, SkipRow: {work: (*worker).pickUp},
	Hold: {work: (*worker).hold}, PlaceMarker: {work: (*worker).marker}, SlipMarker: {work: (*worker).marker},
	Turn: {work: (*worker).turnInside}, WrapTurn: {work: (*worker).turnInside},
}

// marker places or slips a marker, of which nothing is known afterwards.
func (w *worker) marker(Op) *RowError { return nil }

// turnInside is a turn that does not end its row.
func (w *worker) turnInside(op Op) *RowError { return w.fault(op, 0, ReasonTurnInside) }

func (w *worker) yarnOver(op Op) *RowError {
	if w.StitchCount() == 0 {
		return w.fault(op, 0, ReasonNoStrand)
	}
	w.add(loop{height: w.level()}, true)
	return nil
}

func (w *worker) castOn(Op) *RowError {
	w.cut = cutNone // what is cast on closes what was cut off here
	w.add(loop{}, false)
	w.strand = strandNone
	w.bridged = true
	return nil
}

// add places a loop that was made of none.
func (w *worker) add(l loop, worked bool) {
	if w.rifts {
		w.settle(&l)
	}
	w.put(l, worked)
}

// put places a loop at the tip of the right needle; worked says that yarn was
// drawn through to make it.
func (w *worker) put(l loop, worked bool) {
	w.right = append(w.right, l)
	w.worked = worked
}

// take removes the loop at the tip of the left needle. What lies between the
// tips is then the strand beyond it.
func (w *worker) take() loop {
	l := *w.left.tip()
	w.left = w.left[:len(w.left)-1]
	w.strand = strandWhole
	return l
}

// next returns the loop at the tip of the left needle, or a fault if there is none.
func (w *worker) next(op Op) (loop, *RowError) {
	if len(w.left) == 0 {
		return loop{}, w.fault(op, 1, ReasonMissing)
	}
	return *w.left.tip(), nil
}

// together works n loops as one and leaves that many, one row above the highest.
func (w *worker) together(op Op, n, leaves int) *RowError {
	if len(w.left) < n {
		return w.fault(op, n, ReasonMissing)
	}
	taken := w.left[len(w.left)-n:]
	if reason := w.unfit(op, taken); reason != "" {
		return w.fault(op, n, reason)
	}
	top := taken[0].height
	for range n {
		top = max(top, w.take().height)
	}
	from := len(w.right)
	for range leaves {
		w.put(loop{height: top + 1}, true)
	}
	if w.rifts {
		w.settleAll(from, w.taken(taken))
	}
	return nil
}

// slip moves any loop as it is.
func (w *worker) slip(Op) *RowError {
	if _, fault := w.next(Slip); fault != nil {
		return fault
	}
	w.move(w.take())
	return nil
}

// move places a loop of the left needle as it is on the right one.
func (w *worker) move(l loop) {
	w.put(l, false)
	if w.rifts {
		w.settleAll(len(w.right)-1, w.taken(needle{l}))
	}
}

// makeOne lifts the strand between the tips of the needles and works it.
func (w *worker) makeOne(op Op) *RowError {
	edge := len(w.left) == 0 || len(w.right) == 0
	switch {
	case w.StitchCount() == 0, edge && w.work != InTheRound, w.strand == strandNone, w.rifts && w.between() != noRift:
		return w.fault(op, 0, ReasonNoStrand)
	case w.strand == strandLifted:
		return w.fault(op, 0, ReasonStrandUsed)
	}
	w.add(loop{height: w.level()}, true)
	w.strand = strandLifted
	return nil
}

// level returns the height of a new loop between the needles: that of the stitch
// just worked, otherwise one row above the next, otherwise that of the last.
func (w *worker) level() int32 {
	switch {
	case w.worked:
		return w.right.tip().height
	case len(w.left) > 0:
		return w.left.tip().height + 1
	case len(w.right) > 0:
		return w.right.tip().height
	}
	return 0
}
