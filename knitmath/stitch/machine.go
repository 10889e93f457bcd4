package stitch

import "slices"

// Machine knits rows stitch by stitch. It knows which loops are on which needle
// and what each of them is, and refuses whatever hands could not do; it works
// out nothing in advance and shares no code with what plans or counts rows.
//
// The zero Machine is a flat one with empty needles. A call that returns an
// error leaves the machine as it was before the call.
//
// In flat work a row takes every stitch of the left needle, and the work is
// turned; or the row ends with a turn, and the stitches it did not reach stay on
// what is now the right needle until a later row works past the turn. "To end",
// "to last n" and the check for unworked stitches always mean the left needle.
//
// In the round a round takes every stitch, the side does not change, and the
// next round begins where this one did. A round may be left by a turn; the rows
// that follow go to and fro between the beginning of the round and that turn.
// Every row on the wrong side must then end with a turn, at the latest at the
// beginning of the round: working on backwards across the beginning of the round
// is refused. The next row on the right side that reaches the end closes the round.
//
// Heights, in rows under a stitch: knitting and purling add one; slipping,
// wrapping and making a double stitch add none; a decrease stands one row above
// the highest stitch in it; kfb leaves two stitches one row higher; a make one
// or yarn over stands level with the stitch just worked, or, where none was
// (the first place of a row, or after a slipped or cast-on stitch), one row
// above the next; a short-row yarn over has the height of the stitch the turn
// left unworked, so that working the two together adds one row to it; a stitch
// cast on or picked up has none.
//
// Stitches are picked up along the edge of a finished piece, which LoadEdge lays
// before the right needle: until its last row is picked up or passed, nothing
// else can be worked, and the row cannot be turned.
//
// What is bound off or held in the middle of a row leaves a gap. In that row the yarn
// comes along with what is bound off, and not with what is held; in later rows no
// stitch is worked across the gap, but for stitches cast on over it at once before.
// The stitch that the last one bound off was passed over is on the right needle, worked:
// straight after a bind-off nothing is shaped and the work is not turned.
// Held stitches wait on holders, apart from the needles, and are taken up again, on
// empty needles or at an end of those that are worked; so two shoulders are worked one
// after the other, and two pieces are joined. See TakeUp.
//
// Record has the machine remember the fabric: what lies under and beside every
// stitch, and the edges, which can be picked up along and measured. See Fabric.
//
// Not followed: markers.
type Machine struct {
	work        Construction
	left, right needle
	boundOff    []int
	side        Side
	rows        int
	turned      bool // the last row ended with Turn
	strand      strand
	fresh       bool // the yarn comes from the next stitch: nothing has been worked since a turn or a new beginning
	rifts       bool // there may be seams and gaps: what follows is looked at only then
	cut         cut
	bridged     bool // the last stitches were cast on, over whatever gap lies here
	healed      bool // the stitch in hand joins that before it
	holders     []holder
	held        int // stitches on all holders
	fabric      *Fabric
}

// strand is what lies between the tips of the two needles.
type strand uint8

const (
	strandWhole  strand = iota
	strandLifted        // already used by a make one
	strandNone          // bound off, cast on, or not yet joined here
)

// NewMachine returns a machine with empty needles.
func NewMachine(work Construction) *Machine { return &Machine{work: work} }

// Empty takes everything off the needles, which another piece is to be knit on.
func (m *Machine) Empty(work Construction) {
	*m = Machine{work: work, left: m.left[:0], right: m.right[:0]}
}

// CastOn casts n stitches on to empty needles; the first row is a right-side
// row. In the round the stitches are joined at once. n must be in
// [1, MaxStitches].
func (m *Machine) CastOn(n int) error {
	fault := RowError{Row: m.rows, Op: CastOn, Left: len(m.left)}
	switch {
	case n < 1:
		fault.Reason = ReasonMalformed
	case n > MaxStitches:
		fault.Reason = ReasonTooLarge
	case m.StitchCount() > 0:
		fault.Reason = ReasonNotPossible
	default:
		m.left = append(m.left[:0], make([]loop, n)...)
		m.begin(RightSide)
		if m.fabric != nil {
			return m.recordedCastOn()
		}
		return nil
	}
	return &fault
}

// LoadEdge lays an edge of the given number of rows before empty needles, for
// the next row, a right-side row, to pick up stitches along: each row of the
// edge waits where a stitch would, and counts as one until it is passed. rows
// must be in [1, MaxStitches].
func (m *Machine) LoadEdge(rows int) error {
	fault := RowError{Row: m.rows, Op: PickUp, Left: len(m.left)}
	switch {
	case rows < 1:
		fault.Reason = ReasonMalformed
	case rows > MaxStitches:
		fault.Reason = ReasonTooLarge
	case m.StitchCount() > 0:
		fault.Reason = ReasonNotPossible
	default:
		m.left = append(m.left[:0], make([]loop, rows)...)
		for i := range m.left {
			m.left[i].kind = edgeRow
		}
		m.begin(RightSide)
		if m.fabric != nil {
			return m.recordedEdge()
		}
		return nil
	}
	return &fault
}

// JoinInTheRound joins flat work into a round, with the right side facing, all
// stitches on one needle and no short row open. Work in the round stays as it is.
func (m *Machine) JoinInTheRound() error {
	if m.work == InTheRound {
		return nil
	}
	fault := RowError{Row: m.rows, Left: len(m.left)}
	switch {
	case m.ShortRowOpen():
		fault.Reason = ReasonShortRow
	case len(m.left) == 0 || m.side == WrongSide || m.left.tip().kind == edgeRow:
		fault.Reason = ReasonNotPossible
	default:
		m.work, m.strand, m.turned, m.fresh = InTheRound, strandNone, false, true
		m.left.tip().ahead = noRift
		return nil
	}
	return &fault
}

// Work works one row or round. Its error is a *RowError.
func (m *Machine) Work(r Row) error {
	before := *m
	w := worker{Machine: m, base: len(m.right)}
	var tip loop
	if w.base > 0 {
		tip = *m.right.tip()
	}
	fault := w.row(r)
	if fault != nil {
		// Loops are only taken off the left needle and put on the right, and
		// the one that is wrapped is wrapped last: the old ends of the slices
		// give back the old needles. What lies beside the tip may have changed.
		*m = before
		if w.base > 0 {
			*m.right.tip() = tip
		}
		m.fabric.forget()
		return fault
	}
	m.rows++
	m.fabric.keep(m, before.Side(), tip.id)
	return nil
}

// begin has the next row begin anew, with a yarn of its own.
func (m *Machine) begin(side Side) {
	m.side, m.turned, m.strand = side, false, strandNone
	m.fresh, m.cut, m.bridged = true, cutNone, false
}

// StitchCount returns how many stitches are on both needles.
func (m *Machine) StitchCount() int { return len(m.left) + len(m.right) }

// ToWork returns how many stitches are on the left needle: those that the next
// row can work.
func (m *Machine) ToWork() int { return len(m.left) }

// ShortRowOpen reports whether stitches wait on the right needle for a later row.
func (m *Machine) ShortRowOpen() bool { return len(m.right) > 0 }

// Side returns the side that faces in the next row.
func (m *Machine) Side() Side {
	if m.side == WrongSide {
		return WrongSide
	}
	return RightSide
}

// Construction returns whether the work is flat or in the round.
func (m *Machine) Construction() Construction {
	if m.work == InTheRound {
		return InTheRound
	}
	return Flat
}

// RowsWorked returns how many rows have been worked, short rows included.
func (m *Machine) RowsWorked() int { return m.rows }

// Heights returns the rows under each stitch in right-side order: index 0 is the
// first stitch of a right-side row, the right-hand edge seen from the right
// side. While a short row is open it covers the stitches of both needles.
func (m *Machine) Heights() []int {
	all := make([]int, 0, m.StitchCount())
	for _, l := range m.inOrder() {
		all = append(all, int(l.height))
	}
	return all
}

// inOrder returns the loops of both needles in right-side order.
func (m *Machine) inOrder() needle {
	all := append(make(needle, 0, m.StitchCount()), m.right...).pass(m.left)
	if m.side == WrongSide {
		slices.Reverse(all)
	}
	return all
}

// Unresolved returns how many loops on the needles are wrapped stitches, double
// stitches or short-row yarn overs.
func (m *Machine) Unresolved() int { return m.UnresolvedAhead() + m.right.unresolved() }

// UnresolvedAhead returns how many of them are on the left needle, and are reached first.
func (m *Machine) UnresolvedAhead() int { return m.left.unresolved() }

// unresolved is how many of the loops are wrapped, double, or yarn overs of short rows.
func (n needle) unresolved() int {
	k := 0
	for _, l := range n {
		if l.unresolved() {
			k++
		}
	}
	return k
}

// BoundOff returns the rows under each stitch bound off so far, in the order of
// binding off; the edge itself is not counted as a row.
func (m *Machine) BoundOff() []int { return slices.Clone(m.boundOff) }
