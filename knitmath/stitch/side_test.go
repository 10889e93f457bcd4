package stitch

import "testing"

func TestSides(t *testing.T) {
	for _, c := range []struct {
		side, other Side
		word        string
	}{
		{RightSide, WrongSide, "RS"},
		{WrongSide, RightSide, "WS"},
		// None has no other, and is called by the side that patterns mean.
		{SideUnspecified, SideUnspecified, "RS"},
	} {
		if got := c.side.Other(); got != c.other {
			t.Errorf("side %d: the other is %d, want %d", c.side, got, c.other)
		}
		if got := c.side.String(); got != c.word {
			t.Errorf("side %d is called %q, want %q", c.side, got, c.word)
		}
	}
}

// What a machine is from the beginning: the zero one flat, with the right side
// facing and nothing on it.
func TestZeroMachine(t *testing.T) {
	m := new(Machine)
	if m.Construction() != Flat || m.Side() != RightSide || m.StitchCount() != 0 || m.ToWork() != 0 || m.RowsWorked() != 0 ||
		m.ShortRowOpen() || m.Unresolved() != 0 || len(m.Heights()) != 0 || len(m.BoundOff()) != 0 {
		t.Errorf("%+v", m)
	}
	for style, want := range map[Construction]Construction{ConstructionUnspecified: Flat, Flat: Flat, InTheRound: InTheRound} {
		if got := NewMachine(style).Construction(); got != want {
			t.Errorf("construction %d: %d, want %d", style, got, want)
		}
	}
}

// The zero machine casts on and turns as any other.
func TestZeroMachineWorks(t *testing.T) {
	m := new(Machine)
	must(t, m.CastOn(3))
	if m.ToWork() != 3 || m.StitchCount() != 3 || m.ShortRowOpen() {
		t.Errorf("%d to work of %d, short row open %v", m.ToWork(), m.StitchCount(), m.ShortRowOpen())
	}
	must(t, m.Work(RowOf(Do(Knit, 2), Do(WrapTurn, 1))))
	if m.Side() != WrongSide || m.ToWork() != 2 || m.StitchCount() != 3 || !m.ShortRowOpen() || m.Unresolved() != 1 {
		t.Errorf("after a turn: %s, %d to work, %d unresolved", m.Side(), m.ToWork(), m.Unresolved())
	}
}
