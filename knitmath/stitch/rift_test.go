package stitch

import (
	"reflect"
	"slices"
	"testing"
)

// What is bound off or held in the middle of a row is crossed in no later row, but by
// stitches cast on over it. Ten stitches; the last of the rows is refused, or not.
func TestGaps(t *testing.T) {
	kAll, pAll := RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl))
	hole := RowOf(Do(Knit, 3), Do(BindOff, 2), ToEnd(Knit))
	for _, c := range []struct {
		name string
		work Construction
		rows []Row
		want Reason
	}{
		{"bound off and knit on", Flat, []Row{hole}, ""},
		{"crossed", Flat, []Row{hole, pAll}, ReasonGap},
		{"crossed by slipping", Flat, []Row{hole, RowOf(ToEnd(Slip))}, ReasonGap},
		{"crossed by a decrease", Flat, []Row{hole, RowOf(Do(Purl, 4), Do(P2tog, 1), ToEnd(Purl))}, ReasonGap},
		{"crossed by binding off", Flat, []Row{hole, RowOf(ToEnd(BindOff))}, ReasonGap},
		{"crossed on the right side", Flat, []Row{kAll, RowOf(Do(Purl, 3), Do(BindOff, 2), ToEnd(Purl)), kAll}, ReasonGap},
		{"a decrease over it on the right side", Flat,
			[]Row{kAll, RowOf(Do(Purl, 3), Do(BindOff, 2), ToEnd(Purl)), RowOf(Do(Knit, 4), Do(K2tog, 1), ToEnd(Knit))}, ReasonGap},
		{"cast on over it", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(CastOn, 2), ToEnd(Purl)), kAll}, ""},
		{"cast on over it too early", Flat, []Row{hole, RowOf(Do(Purl, 4), Do(CastOn, 2), ToEnd(Purl))}, ReasonGap},
		{"cast on and a yarn over", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(CastOn, 1), Do(YO, 1), ToEnd(Purl))}, ReasonGap},
		{"a yarn over is no bridge", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(YO, 1), ToEnd(Purl))}, ReasonGap},
		{"a marker beside the bridge", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(CastOn, 2), Do(PlaceMarker, 1), ToEnd(Purl)), kAll}, ""},
		{"closed in its own row", Flat, []Row{RowOf(Do(Knit, 3), Do(BindOff, 2), Do(CastOn, 2), ToEnd(Knit)), pAll, kAll}, ""},
		{"a yarn over in its own row", Flat, []Row{RowOf(Do(Knit, 3), Do(BindOff, 2), Do(YO, 1), ToEnd(Knit))}, ReasonOnNeedle},
		{"no make one over it", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(M1P, 1), ToEnd(Purl))}, ReasonNoStrand},
		{"turned before it", Flat,
			[]Row{hole, RowOf(Do(Purl, 5), Do(Turn, 1)), RowOf(Do(BindOff, 1), ToEnd(Knit)), RowOf(Do(Purl, 4), Do(Turn, 1))}, ""},
		{"turned before it, crossed after", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(Turn, 1)), RowOf(ToEnd(Knit)), pAll}, ReasonGap},
		{"no wrap across it", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(WrapTurn, 1))}, ReasonNoNext},
		{"no short-row yarn over beside it", Flat,
			[]Row{hole, RowOf(Do(Purl, 5), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), ToEnd(Knit))}, ReasonNoStrand},
		{"bound off up to it and beyond", Flat, []Row{hole, RowOf(Do(Purl, 4), Do(BindOff, 1), ToEnd(Purl))}, ReasonGap},
		{"the same on the right side", Flat,
			[]Row{kAll, RowOf(Do(Purl, 3), Do(BindOff, 2), ToEnd(Purl)), RowOf(Do(Knit, 4), Do(BindOff, 1), ToEnd(Knit))}, ReasonGap},
		{"bound off at the edge", Flat, []Row{RowOf(Do(BindOff, 3), ToEnd(Knit)), RowOf(Do(BindOff, 3), ToEnd(Purl)), kAll}, ""},
		{"bound off at the end", Flat, []Row{RowOf(Do(Knit, 7), ToEnd(BindOff)), pAll, kAll}, ""},
		{"in the round", InTheRound, []Row{hole, kAll}, ReasonGap},
		{"in the round as it begins", InTheRound, []Row{RowOf(Do(BindOff, 2), ToEnd(Knit)), kAll}, ReasonGap},
		{"in the round as it ends", InTheRound, []Row{RowOf(Do(Knit, 8), ToEnd(BindOff)), kAll}, ReasonGap},
		{"in the round, bridged as it ends", InTheRound, []Row{RowOf(Do(BindOff, 2), ToEnd(Knit), Do(CastOn, 2)), kAll, kAll}, ""},
		{"in the round, cast on where it began", InTheRound,
			[]Row{RowOf(Do(BindOff, 2), ToEnd(Knit)), RowOf(Do(CastOn, 2), ToEnd(Knit)), kAll}, ""},
		{"held and knit on", Flat, []Row{RowOf(Do(Knit, 3), Do(Hold, 2), ToEnd(Knit))}, ReasonGap},
		{"held and cast on", InTheRound, []Row{RowOf(Do(Knit, 3), Do(Hold, 2), Do(CastOn, 2), ToEnd(Knit)), kAll}, ""},
		{"held as a row begins", Flat, []Row{RowOf(Do(Hold, 2), ToEnd(Knit))}, ReasonGap},
		{"held to its end", Flat, []Row{RowOf(Do(Knit, 3), ToEnd(Hold)), pAll, kAll}, ""},
		{"held across a gap", Flat, []Row{hole, RowOf(Do(Purl, 5), Do(Hold, 3)), kAll, pAll}, ""},
	} {
		before, err := knit(t, c.work, 10, c.rows[:len(c.rows)-1]...)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		m, err := knit(t, c.work, 10, c.rows...)
		if got := reasonOf(err); got != c.want {
			t.Errorf("%s: %v, want %q", c.name, err, c.want)
		}
		if err != nil && !reflect.DeepEqual(state(m), state(before)) {
			t.Errorf("%s: the refused row changed the machine:\n%+v\n%+v", c.name, state(m), state(before))
		}
	}
}

// Two shoulders, one after the other: the first with the yarn that the row ends with,
// the second taken up with the right side facing.
func TestShouldersOneAfterTheOther(t *testing.T) {
	m, err := knit(t, Flat, 20,
		RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl)),
		RowOf(Do(Knit, 6), Do(BindOff, 8), ToEnd(Knit)),
		RowOf(Do(Purl, 6), ToEnd(Hold)),
		RowOf(Do(BindOff, 2), ToEnd(Knit)), RowOf(ToEnd(BindOff)))
	if err != nil || m.StitchCount() != 0 || !slices.Equal(m.Holders(), []int{6}) {
		t.Fatal(err, m.Holders())
	}
	if got := reasonOf(m.TakeUp(WrongSide, 1)); got != ReasonHolder {
		t.Errorf("another holder: %q", got)
	}
	must(t, m.TakeUp(WrongSide, 0))
	if m.Side() != WrongSide || m.ToWork() != 6 || !slices.Equal(m.Holders(), []int{0}) {
		t.Errorf("%s, %d", m.Side(), m.ToWork())
	}
	must(t, m.Work(RowOf(Do(BindOff, 2), ToEnd(Purl))))
	must(t, m.Work(RowOf(ToEnd(BindOff))))
	if got, want := m.BoundOff(), []int{2, 2, 2, 2, 2, 2, 2, 2, 4, 4, 5, 5, 5, 5, 3, 3, 4, 4, 4, 4}; !slices.Equal(got, want) {
		t.Errorf("bound off %v, want %v", got, want)
	}
	if got := reasonOf(m.TakeUp(RightSide, 0)); got != ReasonHolder {
		t.Errorf("taken up twice: %q", got)
	}
}

// A body of 20 and two sleeves of 6 are joined in one round. No strand lies yet where
// they meet; in the next round one does.
func TestPiecesJoined(t *testing.T) {
	m := NewMachine(Flat)
	for i := range 2 {
		must(t, m.CastOn(6))
		for range 2 * (i + 1) {
			must(t, m.Work(RowOf(ToEnd(Knit))))
		}
		must(t, m.Work(RowOf(ToEnd(Hold))))
	}
	must(t, m.CastOn(20))
	must(t, m.Work(RowOf(Do(Hold, 10), Do(Hold, 10))))
	if !slices.Equal(m.Holders(), []int{6, 6, 10, 10}) {
		t.Fatal(m.Holders())
	}
	must(t, m.TakeUp(SideUnspecified, 0, 2, 1, 3))
	must(t, m.JoinInTheRound())
	if got, want := m.Heights()[:7], []int{2, 2, 2, 2, 2, 2, 0}; !slices.Equal(got, want) {
		t.Errorf("heights %v", got)
	}
	if got := reasonOf(m.Work(RowOf(Do(Knit, 6), Do(M1L, 1), ToEnd(Knit)))); got != ReasonNoStrand {
		t.Errorf("made one where pieces meet: %q", got)
	}
	must(t, m.Work(RowOf(Do(Knit, 5), Do(K2tog, 1), ToEnd(Knit)))) // one of the sleeve with one of the body
	must(t, m.Work(RowOf(Do(Knit, 6), Do(M1L, 1), ToEnd(Knit))))
	if m.StitchCount() != 32 {
		t.Errorf("%d stitches", m.StitchCount())
	}
}

func TestTakenUpAtEitherEnd(t *testing.T) {
	for _, turns := range []int{0, 1} {
		m, err := knit(t, Flat, 9, RowOf(Do(Knit, 3), Do(Hold, 3), Do(Hold, 3)))
		if err != nil {
			t.Fatal(err)
		}
		for range turns + 1 {
			must(t, m.Work(RowOf(ToEnd(Knit))))
		}
		if turns == 0 {
			must(t, m.TakeUpAtStart(0)) // on the right side they lie left of the others: as worked they come last
		} else {
			must(t, m.TakeUpAtEnd(1))
		}
		if m.ToWork() != 6 || m.ShortRowOpen() {
			t.Fatalf("%d to work", m.ToWork())
		}
		must(t, m.Work(RowOf(ToEnd(Knit))))
		must(t, m.Work(RowOf(Do(Knit, 3), Do(M1, 1), ToEnd(Knit))))
	}
	m, _ := knit(t, Flat, 9, RowOf(Do(Knit, 3), ToEnd(Hold)), RowOf(Do(Purl, 2), Do(Turn, 1)))
	for what, err := range map[string]error{
		"at the end of a short row": m.TakeUpAtEnd(0), "at its start": m.TakeUpAtStart(0), "on full needles": m.TakeUp(RightSide, 0),
		"flat work made flat and grafted to itself": m.Graft(0, 0),
	} {
		if err == nil {
			t.Error(what)
		}
	}
	must(t, m.HoldWaiting())
	if m.StitchCount() != 2 || !slices.Equal(m.Holders(), []int{6, 1}) || m.HoldWaiting() == nil {
		t.Error(m.StitchCount(), m.Holders())
	}
}

// In the round up to a gap, and to and fro from there.
func TestWorkFlat(t *testing.T) {
	m, err := knit(t, InTheRound, 10, RowOf(Do(Knit, 4), Do(BindOff, 3), ToEnd(Knit)), RowOf(Do(Knit, 4), Do(Turn, 1)))
	if err != nil {
		t.Fatal(err)
	}
	must(t, m.WorkFlat())
	if m.ToWork() != 7 || m.Construction() != Flat || m.Side() != WrongSide {
		t.Fatalf("%d, %s", m.ToWork(), m.Side())
	}
	must(t, m.Work(RowOf(ToEnd(Purl))))
	must(t, m.Work(RowOf(ToEnd(Knit))))
	if got, want := m.Heights(), []int{3, 3, 3, 4, 4, 4, 4}; !slices.Equal(got, want) {
		t.Errorf("heights %v, want %v", got, want)
	}
	// A heel: the first stitches of the round are turned on, and the rest is left on a holder.
	m, _ = knit(t, InTheRound, 10, RowOf(ToEnd(Knit)), RowOf(Do(Knit, 4), Do(Turn, 1)))
	must(t, m.HoldWaiting())
	must(t, m.WorkFlat())
	must(t, m.Work(RowOf(ToEnd(Purl))))
	must(t, m.Work(RowOf(ToEnd(Knit))))
	if m.StitchCount() != 4 || m.Side() != WrongSide {
		t.Errorf("%d stitches, %s", m.StitchCount(), m.Side())
	}
	m, _ = knit(t, InTheRound, 10, RowOf(ToEnd(Knit)))
	if reasonOf(m.WorkFlat()) != ReasonNotPossible {
		t.Error("opened where nothing is open")
	}
}

func TestGraftedAndBoundOffTogether(t *testing.T) {
	m, err := knit(t, Flat, 12, RowOf(Do(Knit, 4), Do(Hold, 4), Do(Hold, 4)))
	if err != nil {
		t.Fatal(err)
	}
	must(t, m.Work(RowOf(Do(Purl, 1), Do(Hold, 3))))
	for _, c := range []struct {
		a, b int
		want Reason
	}{{0, 2, ReasonCounts}, {0, 0, ReasonHolder}, {0, 3, ReasonHolder}, {-1, 0, ReasonHolder}, {0, 1, ""}, {0, 1, ReasonHolder}} {
		if got := reasonOf(m.BindOffTogether(c.a, c.b)); got != c.want {
			t.Errorf("%d and %d: %q, want %q", c.a, c.b, got, c.want)
		}
	}
	if !slices.Equal(m.BoundOff(), []int{0, 0, 0, 0}) || m.held != 3 {
		t.Error(m.BoundOff(), m.held)
	}
}
