package stitch

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// checkFabric: the line around is whole, the stitches on the needles and on holders lie
// on it and no others do, and on the right side each follows its neighbour to the right.
func checkFabric(t *testing.T, m *Machine, f *Fabric) {
	t.Helper()
	live, held := map[int32]bool{}, map[int32]bool{}
	for _, l := range m.inOrder() {
		if l.kind != edgeRow {
			live[l.id] = true
		}
	}
	for _, h := range m.holders {
		for _, l := range h.loops {
			held[l.id] = true
		}
	}
	for id := 1; id < len(f.cells); id++ {
		c := &f.cells[id]
		if c.kind != edgeNone && (f.cells[c.next].prev != int32(id) || f.cells[c.prev].next != int32(id) ||
			f.cells[c.next].kind == edgeNone) {
			t.Fatalf("row %d: the line is broken at %d: %+v", m.rows, id, *c)
		}
		if (c.kind == EdgeLive) != live[int32(id)] || (c.kind == EdgeHeld) != held[int32(id)] {
			t.Fatalf("row %d: %d is %+v", m.rows, id, *c)
		}
	}
	order := m.inOrder()
	for i := 1; i < len(order); i++ {
		if a, b := order[i-1], order[i]; b.ahead == noRift && !f.connected(a.id, b.id) {
			t.Fatalf("row %d: stitches %d and %d are no neighbours\n%s", m.rows, i-1, i, drawn(f))
		}
	}
	if m.known() != len(f.cells) {
		t.Fatalf("row %d: %d cells, %d known", m.rows, len(f.cells), f.known)
	}
}

func (m *Machine) known() int { return m.fabric.known }

// connected reports whether b follows a, with nothing between that is worked: the sides
// of short rows, an edge that waits, a hole that a later row closes.
func (f *Fabric) connected(a, b int32) bool {
	at := f.cells[a].next
	for n := 0; at != b; n++ {
		if k := f.cells[at].kind; k == EdgeLive || n > len(f.cells) {
			return false
		}
		at = f.cells[at].next
	}
	return true
}

// Random pieces: a machine that remembers works what one that does not works, its lines
// stay whole, and what its edges move by accounts for the stitches that it has.
func TestFabricOfRandomPieces(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	worked := 0
	for range sweep(3000, 300) {
		work := []Construction{Flat, InTheRound}[rng.IntN(2)]
		n := 1 + rng.IntN(40)
		m, f := recorded(t, work, n)
		plain := NewMachine(work)
		must(t, plain.CastOn(n))
		for range 12 {
			if randomHandling(rng, m, plain) {
				checkFabric(t, m, f)
			}
			r := randomRow(rng, m)
			err, other := m.Work(r), plain.Work(r)
			if text(err) != text(other) || !slices.Equal(m.Heights(), plain.Heights()) || !slices.Equal(m.Holders(), plain.Holders()) {
				t.Fatalf("%q: %v, without memory %v", r.Text(), err, other)
			}
			checkFabric(t, m, f)
			if err == nil {
				worked++
			}
		}
	}
	t.Logf("%d rows worked", worked)
	if worked < sweep(3000, 300) {
		t.Error("too few to prove anything")
	}
}

func randomRow(rng *rand.Rand, m *Machine) Row {
	var r Row
	for range 1 + rng.IntN(4) {
		r.Steps = append(r.Steps, randomStep(rng, m.ToWork(), 0))
		if rng.IntN(3) == 0 {
			r.Steps = append(r.Steps, Do([]Op{BindOff, Hold, CastOn, PickUp}[rng.IntN(4)], 1+rng.IntN(4)))
		}
	}
	return RowOf(append(r.Steps, []Step{Do(Turn, 1), ToEnd(Slip), ToEnd(Knit), ToEnd(Hold)}[rng.IntN(4)])...)
}

// randomHandling does to both machines what is done outside of rows.
func randomHandling(rng *rand.Rand, m, plain *Machine) bool {
	n := rng.IntN(max(1, len(m.holders)))
	side := Side(rng.IntN(3))
	for _, do := range []func(*Machine) error{
		func(m *Machine) error { return m.TakeUp(side, n) },
		func(m *Machine) error { return m.TakeUpAtEnd(n) },
		func(m *Machine) error { return m.TakeUpAtStart(n) },
		func(m *Machine) error { return m.HoldWaiting() },
		func(m *Machine) error { return m.WorkFlat() },
		func(m *Machine) error { return m.JoinInTheRound() },
		func(m *Machine) error { return m.Graft(n, len(m.holders)-1) },
		func(m *Machine) error { return m.LoadEdge(n + 1) },
	} {
		if rng.IntN(3) == 0 && do(m) == nil {
			return do(plain) == nil
		}
	}
	return false
}
