package stitch

import "slices"

// Fabric remembers what a machine has knit: what lies under and beside every stitch,
// and the line around the whole, with its corners, holes and held stitches, which is
// what there is to pick up along and to measure. See Machine.Record.
//
// The line around is kept as rings: every stitch that is on a needle or held has a
// neighbour to its left on the line and one to its right, and between them come the
// sides of the rows, what was bound off and the feet of what was cast on. To work a
// stitch puts the new one in the old one's place. The first stitch that a yarn works
// and the last lay a side bare; where the yarn goes on to a stitch that was no
// neighbour, what was between the two closes to a ring of its own: a hole, or nothing
// but a short row's turn. Own derivation.
type Fabric struct {
	cells  []cell  // the first is none
	below  []int32 // what lies under the stitches, one after the other
	events []event // of the row in hand
	ids    []int32 // that the events speak of
	known  int     // cells before the row in hand
	yarn   int32   // where the yarn comes from in the round, 0 if it begins anew
}

// MaxRecorded is the most stitches and steps of an edge that a Fabric remembers: a
// blanket of five hundred stitches in a thousand rows, with room.
const MaxRecorded = 1_000_000

// EdgeKind is what a part of an edge is.
type EdgeKind uint8

// The kinds.
const (
	edgeNone     EdgeKind = iota // fabric grew on it: no edge any more
	EdgeRow                      // the side of a row, or of several that a slipped stitch spans
	EdgeBoundOff                 // a stitch bound off
	EdgeCastOn                   // the foot of a stitch cast on
	EdgeLive                     // a stitch on a needle
	EdgeHeld                     // a stitch on a holder
	edgeCorner                   // of no length
)

// Hand is where in its row a part of an edge lies, as the right side shows.
type Hand uint8

// The hands.
const (
	NoHand    Hand = iota // in the midst of a row
	RightHand             // where right-side rows begin
	LeftHand              // where they end
)

// handOf is where a row on the side begins or ends.
func handOf(side Side, begins bool) Hand {
	if (side == WrongSide) == begins {
		return LeftHand
	}
	return RightHand
}

// cell is one stitch, or one part of an edge.
type cell struct {
	next, prev int32 // along the ring, as right-side rows go
	under      int32 // where in below the list of what it was made of begins
	count      int32 // how long that is
	beside     int32 // the stitch worked before it in its row, 0 if none
	row        int32
	level      int32    // rows that lie under it or are passed by where it was slipped
	skips      int32    // rows that have passed it since it was worked
	across     int32    // half stitches inward, of a part of an edge
	up         int32    // rows, of a part of an edge
	owed       [3]int32 // half stitches that the edge has moved beside it, by hand, since it was worked
	op         Op
	kind       EdgeKind
	hand       Hand
}

// event is one operation of the row in hand: the stitches that it took, in the order
// of the row, and those that it put.
type event struct {
	op                Op
	taken, put, until int32 // indices into ids
	next              int32 // the stitch at the tip of the left needle afterwards
}

// Record has the machine remember its fabric from now on, and returns it. It must
// have empty needles and holders.
func (m *Machine) Record() (*Fabric, error) {
	if m.StitchCount()+m.held > 0 {
		return nil, m.refuse(0, ReasonNotPossible)
	}
	m.fabric = &Fabric{cells: make([]cell, 1), known: 1}
	return m.fabric, nil
}

// note takes down an operation and names the stitches that it made. It returns false
// where there is no more room.
func (f *Fabric) note(op Op, left needle, before int, made needle) bool {
	if f == nil {
		return true
	}
	e := event{op: op, taken: int32(len(f.ids))}
	for i := before - 1; i >= len(left); i-- {
		f.ids = append(f.ids, left[:before][i].id)
	}
	e.put = int32(len(f.ids))
	for i := range made {
		if made[i].id == 0 {
			made[i].id = f.add(cell{op: op, kind: EdgeLive})
		}
		f.ids = append(f.ids, made[i].id)
	}
	e.until = int32(len(f.ids))
	if len(left) > 0 {
		e.next = left.tip().id
	}
	f.events = append(f.events, e)
	return len(f.cells) <= MaxRecorded
}

func (f *Fabric) add(c cell) int32 {
	f.cells = append(f.cells, c)
	return int32(len(f.cells) - 1)
}

// forget drops a row that was refused.
func (f *Fabric) forget() {
	if f != nil {
		f.cells, f.events, f.ids = f.cells[:f.known], f.events[:0], f.ids[:0]
	}
}

// recordedCastOn lays the stitches that were cast on to empty needles.
func (m *Machine) recordedCastOn() error { return m.fabric.cast(m, EdgeLive) }

// recordedEdge lays an edge of which only its rows are known.
func (m *Machine) recordedEdge() error { return m.fabric.cast(m, EdgeRow) }

// cast makes a ring of what lies on the left needle, and of its feet.
func (f *Fabric) cast(m *Machine, kind EdgeKind) error {
	n := len(m.left)
	if len(f.cells)+2*n > MaxRecorded {
		m.left = m.left[:0]
		return m.refuse(CastOn, ReasonTooLarge)
	}
	c := cell{kind: kind, row: int32(m.rows)}
	if kind == EdgeLive {
		c.op = CastOn
	} else {
		c.up = 1
	}
	first := int32(len(f.cells))
	for i := range n {
		f.add(c)
		m.left[n-1-i].id = first + int32(i)
	}
	if kind == EdgeLive {
		for range n {
			f.add(cell{kind: EdgeCastOn, row: int32(m.rows), across: -2})
		}
	}
	last := int32(len(f.cells)) - 1
	for i := first; i < last; i++ {
		f.link(i, i+1)
	}
	f.link(last, first)
	f.known, f.yarn = len(f.cells), 0
	if m.work == InTheRound && kind == EdgeLive { // joined at once
		f.yarn = first + int32(n) - 1
		f.connect(f.yarn, first)
	}
	return nil
}

func (f *Fabric) link(a, b int32) { f.cells[a].next, f.cells[b].prev = b, a }

// connect makes neighbours of a and b, b following a. What lay between closes to a
// ring; or two rings become one.
func (f *Fabric) connect(a, b int32) {
	after, before := f.cells[a].next, f.cells[b].prev
	if after == b {
		return
	}
	f.link(a, b)
	f.link(before, after)
}

// insert puts c between a and its follower.
func (f *Fabric) insert(c, a int32) {
	f.link(c, f.cells[a].next)
	f.link(a, c)
}

// hold marks stitches as held.
func (f *Fabric) hold(loops needle) { f.mark(loops, EdgeHeld) }

// unhold marks them as being on a needle again.
func (f *Fabric) unhold(loops needle) { f.mark(loops, EdgeLive) }

func (f *Fabric) mark(loops needle, kind EdgeKind) {
	if f == nil {
		return
	}
	for _, l := range loops {
		if l.id > 0 && l.kind != edgeRow {
			f.cells[l.id].kind = kind
		}
	}
	f.yarn = 0
}

// graft takes two runs of stitches out of the line around, the first of the one
// meeting the last of the other.
func (f *Fabric) graft(one, other needle) {
	if f == nil {
		return
	}
	f.apart(one, other)
	f.apart(other, one)
	before, after := f.cells[one[0].id].prev, f.cells[one.tip().id].next
	before2, after2 := f.cells[other[0].id].prev, f.cells[other.tip().id].next
	f.link(before, after2)
	f.link(before2, after)
	for _, l := range slices.Concat(one, other) {
		f.cells[l.id].kind = edgeNone
	}
	f.known = len(f.cells)
}

// apart puts a corner between runs that follow one another.
func (f *Fabric) apart(one, other needle) {
	if last := one.tip().id; f.cells[last].next == other[0].id {
		f.insert(f.add(cell{kind: edgeCorner}), last)
	}
}
