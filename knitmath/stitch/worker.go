package stitch

import "slices"

// worker is the machine in the course of one row.
type worker struct {
	*Machine
	base   int     // loops on the right needle before the row
	ops    int     // operations begun
	worked bool    // the loop at the tip of the right needle was worked in this row
	onto   bool    // the step in hand has begun a holder
	path   []Place // the way to the step in hand
}

// row works all steps, then ends the row: turned short, turned at its end, or,
// in the round, brought back to the beginning.
func (w *worker) row(r Row) *RowError {
	short := false
	for i, s := range r.Steps {
		w.path = append(w.path[:0], Place{Step: i})
		if s.Op.EndsRow() && s.ToLast == nil && i == len(r.Steps)-1 {
			switch {
			case s.Count < 1 || s.Group != nil || s.Times != 0:
				return w.fault(s.Op, 0, ReasonMalformed)
			case s.Count > 1:
				return w.fault(s.Op, 0, ReasonTurnInside)
			}
			short = true
			break
		}
		if fault := w.step(s); fault != nil {
			return fault
		}
	}
	if short {
		return w.turnShort(r.Steps[len(r.Steps)-1].Op)
	}
	w.path = nil
	switch {
	case w.StitchCount() > MaxStitches:
		return w.fault(0, 0, ReasonTooLarge)
	case len(w.left) > 0:
		return w.fault(0, 0, ReasonUnworked)
	}
	w.turned = false
	if w.work != InTheRound {
		w.turn()
		return nil
	}
	if w.Side() == WrongSide {
		return w.fault(0, 0, ReasonNotPossible)
	}
	w.left = w.left[:0].pass(w.right)
	w.right = w.right[:0]
	w.fresh = false
	w.endCut()
	return nil
}

// turnShort turns the work where it stands, after wrapping the next stitch if
// op is WrapTurn.
func (w *worker) turnShort(op Op) *RowError {
	if w.ops++; w.ops > MaxOperations || w.StitchCount() > MaxStitches {
		return w.fault(op, 0, ReasonTooLarge)
	}
	if w.onEdge() {
		return w.fault(op, 0, ReasonEdge)
	}
	if w.cut == cutBound && len(w.left) > 0 {
		return w.fault(op, 0, ReasonOnNeedle)
	}
	if op == WrapTurn {
		switch {
		case len(w.left) == 0, w.cut == cutAway, w.yarnBehind() && w.between() == riftGap:
			return w.fault(op, 1, ReasonNoNext)
		case w.left.tip().kind == doubleLoop:
			return w.fault(op, 1, ReasonDouble)
		case w.left.tip().kind == shortYOLoop:
			return w.fault(op, 1, ReasonYarnOver)
		}
		w.left.tip().wrapped = true
	}
	w.turned = op == Turn
	w.endCut()
	w.turn()
	return nil
}

func (w *worker) turn() {
	w.left, w.right = w.right, w.left
	w.side = w.Side().Other()
	w.fresh, w.cut, w.bridged = true, cutNone, false
}

// step works one step of the list at the end of w.path.
func (w *worker) step(s Step) *RowError {
	if s.Group != nil || s.Times != 0 {
		return w.group(s)
	}
	if !s.Op.Valid() {
		return w.fault(s.Op, 0, ReasonMalformed)
	}
	if s.ToLast != nil {
		if s.Count != 0 || *s.ToLast < 0 {
			return w.fault(s.Op, 0, ReasonMalformed)
		}
		return w.toLast(s.Op, *s.ToLast)
	}
	if s.Count < 1 {
		return w.fault(s.Op, 0, ReasonMalformed)
	}
	here := len(w.path) - 1
	w.onto = false
	for time := range s.Count {
		w.path[here].Time = time + 1
		if fault := w.do(s.Op); fault != nil {
			return fault
		}
	}
	return nil
}

// group works the steps of a group, time after time.
func (w *worker) group(s Step) *RowError {
	if s.Op != 0 || s.Count != 0 || s.ToLast != nil || len(s.Group) == 0 || s.Times < 1 {
		return w.fault(s.Op, 0, ReasonMalformed)
	}
	here := len(w.path) - 1
	if here >= MaxDepth {
		return w.fault(0, 0, ReasonTooDeep)
	}
	for time := range s.Times {
		w.path[here].Time = time + 1
		for i, inner := range s.Group {
			w.path = append(w.path[:here+1], Place{Step: i})
			if fault := w.step(inner); fault != nil {
				return fault
			}
		}
	}
	w.path = w.path[:here+1]
	return nil
}

// toLast works op until last loops are left.
func (w *worker) toLast(op Op, last int) *RowError {
	switch {
	case op.Takes() == 0:
		return w.fault(op, 0, ReasonMalformed) // it would never get there
	case len(w.path) > 1:
		return w.fault(op, last, ReasonToLast)
	case len(w.left) < last:
		return w.fault(op, last, ReasonMissing)
	}
	w.onto = false
	for time := 1; len(w.left) > last; time++ {
		w.path[0].Time = time
		if len(w.left)-last < op.Takes() {
			return w.fault(op, op.Takes(), ReasonUneven)
		}
		if fault := w.do(op); fault != nil {
			return fault
		}
	}
	return nil
}

// fault says what is wrong at the step in hand.
func (w *worker) fault(op Op, needed int, reason Reason) *RowError {
	return &RowError{
		Row: w.rows + 1, Path: slices.Clone(w.path), Op: op,
		Needed: needed, Left: len(w.left), Reason: reason,
	}
}
