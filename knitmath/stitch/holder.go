package stitch

import "slices"

// holder is stitches that wait apart from the needles.
type holder struct {
	loops needle // in the order of a right-side row, unless reversed
	back  bool   // in the order of a wrong-side row
}

// row returns the held stitches in the order of a row on the side.
func (h holder) row(side Side) needle {
	loops := slices.Clone(h.loops)
	if h.back != (side == WrongSide) {
		slices.Reverse(loops)
	}
	return loops
}

// hold leaves the next stitch on the holder that the step in hand fills. The yarn
// stays where it is.
func (w *worker) hold(Op) *RowError {
	if _, fault := w.next(Hold); fault != nil {
		return fault
	}
	if w.held >= MaxStitches {
		return w.fault(Hold, 1, ReasonTooLarge)
	}
	if !w.onto {
		w.holders, w.onto = append(w.holders, holder{back: w.side == WrongSide}), true
	}
	l := w.take()
	h := &w.holders[len(w.holders)-1]
	h.loops = append(h.loops, l)
	w.held++
	w.cutOff(l, true)
	w.strand = strandNone
	w.worked = false
	return nil
}

// Holders returns how many stitches are on each holder. They are numbered from 0 in
// the order in which they were filled, each by one step of a row (Hold) or by
// HoldWaiting; one that was taken up stays in the list, with none.
func (m *Machine) Holders() []int {
	counts := make([]int, len(m.holders))
	for i, h := range m.holders {
		counts[i] = len(h.loops)
	}
	return counts
}

// HoldWaiting leaves the stitches that wait behind a turn on a holder: "turn, leaving
// remaining stitches on hold".
func (m *Machine) HoldWaiting() error {
	switch {
	case len(m.right) == 0:
		return m.refuse(Hold, ReasonMissing)
	case m.held+len(m.right) > MaxStitches:
		return m.refuse(Hold, ReasonTooLarge)
	}
	m.holders = append(m.holders, holder{slices.Clone(m.right), m.side == WrongSide})
	m.held += len(m.right)
	m.fabric.hold(m.right)
	m.right = m.right[:0]
	m.turned, m.strand = false, strandNone
	if n := len(m.left); n > 0 { // in the round they lay between the last stitch and the first
		m.rifts = true
		first := n - 1
		if m.side == WrongSide {
			first = 0
		}
		m.left[first].ahead = riftGap
	}
	return nil
}

// TakeUp puts held stitches on empty needles for the next row, which is worked with
// the given side facing (the right side if it is not said) and with the yarn joined
// anew at its first stitch. The row works the holders in the order in which they are
// named, and joins them: two pieces become one. There is no strand yet where they
// meet. A machine in the round joins the last to the first at once; see WorkFlat.
func (m *Machine) TakeUp(facing Side, holders ...int) error {
	if facing == SideUnspecified {
		facing = RightSide
	}
	if m.StitchCount() > 0 || facing == WrongSide && m.work == InTheRound {
		return m.refuse(0, ReasonNotPossible)
	}
	row, fault := m.unhold(facing, holders)
	if fault != nil {
		return fault
	}
	m.left = m.left[:0].pass(row)
	m.begin(facing)
	return nil
}

// TakeUpAtEnd puts held stitches beyond the last of the next row, which works them
// after its others and joins them.
func (m *Machine) TakeUpAtEnd(holders ...int) error {
	if len(m.left) == 0 || m.ShortRowOpen() {
		return m.refuse(0, ReasonNotPossible)
	}
	row, fault := m.unhold(m.Side(), holders)
	if fault != nil {
		return fault
	}
	m.lay(row)
	return nil
}

// TakeUpAtStart puts held stitches before the first of the next row, with the yarn
// joined anew there; flat work only.
func (m *Machine) TakeUpAtStart(holders ...int) error {
	if len(m.left) == 0 || m.ShortRowOpen() || m.work == InTheRound {
		return m.refuse(0, ReasonNotPossible)
	}
	row, fault := m.unhold(m.Side(), holders)
	if fault != nil {
		return fault
	}
	m.seam(m.left.tip(), row[len(row)-1:])
	m.left = m.left.pass(row)
	m.begin(m.Side())
	return nil
}

// lay puts loops beyond the last of the left needle, in the order in which they are
// worked.
func (m *Machine) lay(row needle) {
	if len(m.left) > 0 {
		m.seam(&row[0], m.left[:1])
	}
	m.left = append(needle{}.pass(row), m.left...)
}

// seam notes that two stitches meet: next comes after last in the next row.
func (m *Machine) seam(next *loop, last needle) {
	m.rifts = true
	if m.side == WrongSide {
		last[0].ahead = riftSeam
		return
	}
	next.ahead = riftSeam
}

// unhold empties holders, in the order of the next row.
func (m *Machine) unhold(side Side, holders []int) (needle, error) {
	if len(holders) == 0 {
		return nil, m.refuse(0, ReasonHolder)
	}
	for i, n := range holders {
		if n < 0 || n >= len(m.holders) || len(m.holders[n].loops) == 0 || slices.Contains(holders[:i], n) {
			return nil, m.refuse(0, ReasonHolder)
		}
	}
	var all needle
	for i, n := range holders {
		row := m.holders[n].row(side)
		first := &row[0] // furthest right as the right side shows
		if side == WrongSide {
			first = row.tip()
		}
		first.ahead = noRift
		if side != WrongSide && i > 0 || side == WrongSide && i < len(holders)-1 {
			first.ahead = riftSeam
		}
		all = append(all, row...)
	}
	if m.StitchCount()+len(all) > MaxStitches {
		return nil, m.refuse(0, ReasonTooLarge)
	}
	m.rifts = true
	m.release(holders)
	m.fabric.unhold(all)
	return all, nil
}

// release leaves holders empty.
func (m *Machine) release(holders []int) {
	m.holders = slices.Clone(m.holders) // the machine before a refused row may share them
	for _, n := range holders {
		m.held -= len(m.holders[n].loops)
		m.holders[n].loops = nil
	}
}

// WorkFlat ends work in the round. With empty needles the next piece is flat. With
// the yarn at a gap, where a round began or after a turn, the stitches are worked to
// and fro from there, from one side of the gap to the other. Flat work stays as it is.
func (m *Machine) WorkFlat() error {
	w := worker{Machine: m, base: len(m.right)}
	switch {
	case m.work != InTheRound, m.StitchCount() == 0:
	case m.side == WrongSide && len(m.right) == 0 && len(m.left) > 0 && m.left[0].ahead == riftGap:
		// Turned where the rest was left on a holder: beyond the first stitch of the round is the gap.
	case len(m.left) == 0 || w.between() != riftGap:
		return m.refuse(0, ReasonNotPossible)
	case len(m.right) > 0: // beyond the beginning of the round the row goes on over those that wait
		rest := slices.Clone(m.right)
		m.seam(&rest[0], m.left[:1]) // there may be no strand yet where the round began
		slices.Reverse(rest)
		m.left, m.right = append(rest, m.left...), m.right[:0]
	}
	m.work, m.fresh, m.strand = Flat, true, strandNone
	return nil
}

// refuse is a refusal outside a row.
func (m *Machine) refuse(op Op, reason Reason) error {
	return &RowError{Row: m.rows, Op: op, Left: len(m.left), Reason: reason}
}
