package stitch

// BindOffTogether binds off the stitches of two holders together, one of each at a
// time: the three-needle bind-off. There must be as many on the one as on the other.
func (m *Machine) BindOffTogether(a, b int) error { return m.together(BindOff, a, b) }

// Graft joins the stitches of two holders by a row sewn as it would be knit. There
// must be as many on the one as on the other.
func (m *Machine) Graft(a, b int) error { return m.together(0, a, b) }

// together joins two holders, the first stitch of the one to the last of the other:
// so they lie when the pieces face each other.
func (m *Machine) together(op Op, a, b int) error {
	for _, n := range []int{a, b} {
		if n < 0 || n >= len(m.holders) || len(m.holders[n].loops) == 0 || a == b {
			return m.refuse(op, ReasonHolder)
		}
	}
	one, other := m.holders[a].row(RightSide), m.holders[b].row(RightSide)
	if len(one) != len(other) {
		return &RowError{Row: m.rows, Op: op, Needed: len(one), Left: len(other), Reason: ReasonCounts}
	}
	w := worker{Machine: m}
	for _, row := range []needle{one, other} {
		for i, l := range row {
			if reason := w.unfit(BindOff, needle{l}); reason != "" {
				return m.refuse(op, reason)
			}
			if i > 0 && l.ahead == riftGap {
				return m.refuse(op, ReasonGap)
			}
		}
	}
	m.fabric.graft(one, other)
	m.release([]int{a, b})
	if op == BindOff {
		for _, l := range one {
			m.boundOff = append(m.boundOff, int(l.height))
		}
	}
	return nil
}
