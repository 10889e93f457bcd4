package stitch

import (
	"reflect"
	"testing"
)

// edge starts a flat machine before an edge of some rows.
func edge(t *testing.T, rows int) *Machine {
	t.Helper()
	m := NewMachine(Flat)
	if err := m.LoadEdge(rows); err != nil {
		t.Fatal(err)
	}
	return m
}

// Seven rows give 3 + 2*2 = 7 stitches less the row that is skipped: three
// single ones, one row passed, two rows that take two each, one single.
func TestPickUpIsWorked(t *testing.T) {
	m := edge(t, 7)
	row := RowOf(Do(PickUp, 3), Do(SkipRow, 1), Do(PickUpTwo, 2), ToEnd(PickUp))
	if takes, leaves, err := row.Count(7); takes != 7 || leaves != 8 || err != nil {
		t.Errorf("%d to %d, %v", takes, leaves, err)
	}
	if err := m.Work(row); err != nil {
		t.Fatal(err)
	}
	if m.StitchCount() != 8 || m.Side() != WrongSide || !reflect.DeepEqual(m.Heights(), make([]int, 8)) {
		t.Errorf("%d stitches of heights %v, %s", m.StitchCount(), m.Heights(), m.Side())
	}
	if err := m.Work(RowOf(ToEnd(Purl))); err != nil {
		t.Error(err)
	}
	want := "pick up and knit 3, skip 1, [pick up and knit 2 in one row] twice, pick up and knit to end"
	if got := row.Text(); got != want {
		t.Errorf("%q", got)
	}
	runs := []Run{{PickUp, 3}, {SkipRow, 1}, {PickUp, 3}, {SkipRow, 1}, {PickUp, 2}}
	if got := Compress(runs).Text(); got != "[pick up and knit 3, skip 1] twice, pick up and knit 2" {
		t.Errorf("%q", got)
	}
}

func TestPickUpRefusals(t *testing.T) {
	for _, c := range []struct {
		name string
		row  Row
		want Reason
	}{
		{"knit", RowOf(ToEnd(Knit)), ReasonEdge},
		{"slip", RowOf(Do(Slip, 1), ToEnd(PickUp)), ReasonEdge},
		{"cast on", RowOf(Do(CastOn, 1), ToEnd(PickUp)), ReasonEdge},
		{"yarn over", RowOf(Do(PickUp, 2), Do(YO, 1), ToEnd(PickUp)), ReasonEdge},
		{"turn", RowOf(Do(PickUp, 2), Do(Turn, 1)), ReasonEdge},
		{"wrap and turn", RowOf(Do(PickUp, 2), Do(WrapTurn, 1)), ReasonEdge},
		{"past the end", RowOf(Do(PickUp, 3), Do(PickUpTwo, 2)), ReasonMissing},
		{"rows left", RowOf(Do(PickUp, 3)), ReasonUnworked},
		{"unknown", RowOf(Do(opEnd, 1)), ReasonMalformed},
	} {
		m := edge(t, 4)
		before := state(m)
		if got := reasonOf(m.Work(c.row)); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
		if !reflect.DeepEqual(state(m), before) {
			t.Errorf("%s: the refused row changed the machine", c.name)
		}
	}
	if _, err := knit(t, Flat, 4, RowOf(Do(Knit, 1), ToEnd(PickUp))); reasonOf(err) != ReasonNotEdge {
		t.Errorf("picked up from stitches: %v", err)
	}
	m := edge(t, 4)
	if err := m.Work(RowOf(Do(PlaceMarker, 1), ToEnd(PickUp), Do(SlipMarker, 1))); err != nil {
		t.Errorf("markers: %v", err)
	}
	// Beside a stitch just picked up there is no strand to lift, in the round either.
	for _, style := range []Construction{Flat, InTheRound} {
		m := NewMachine(style)
		if err := m.LoadEdge(4); err != nil {
			t.Fatal(err)
		}
		if got := reasonOf(m.Work(RowOf(ToEnd(PickUp), Do(M1L, 1)))); got != ReasonNoStrand {
			t.Errorf("make one after picking up: %s", got)
		}
	}
}

func TestLoadEdgeRefusals(t *testing.T) {
	for rows, want := range map[int]Reason{0: ReasonMalformed, -1: ReasonMalformed, MaxStitches + 1: ReasonTooLarge, 1: "", MaxStitches: ""} {
		if got := reasonOf(NewMachine(Flat).LoadEdge(rows)); got != want {
			t.Errorf("%d rows: %q, want %q", rows, got, want)
		}
	}
	m := edge(t, 4)
	if got := reasonOf(m.LoadEdge(4)); got != ReasonNotPossible {
		t.Errorf("an edge before an edge: %q", got)
	}
	if got := reasonOf(m.CastOn(4)); got != ReasonNotPossible {
		t.Errorf("cast on before an edge: %q", got)
	}
	if got := reasonOf(m.JoinInTheRound()); got != ReasonNotPossible {
		t.Errorf("an edge joined: %q", got)
	}
	// Picked up and joined: the round goes on as any other.
	if err := m.Work(RowOf(ToEnd(PickUp))); err != nil {
		t.Fatal(err)
	}
	round := NewMachine(InTheRound)
	if err := round.LoadEdge(4); err != nil {
		t.Fatal(err)
	}
	for _, r := range []Row{RowOf(ToEnd(PickUp)), RowOf(ToEnd(Knit))} {
		if err := round.Work(r); err != nil {
			t.Errorf("in the round, %q: %v", r.Text(), err)
		}
	}
}
