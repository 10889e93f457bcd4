package stitch

import (
	"slices"
	"testing"
)

// knit casts on and works the rows, all but the last of which must go well.
func knit(t *testing.T, style Construction, stitches int, rows ...Row) (*Machine, error) {
	t.Helper()
	m := NewMachine(style)
	if err := m.CastOn(stitches); err != nil {
		t.Fatal(err)
	}
	for i, r := range rows {
		if err := m.Work(r); err != nil {
			if i < len(rows)-1 {
				t.Fatalf("%q: %v", r.Text(), err)
			}
			return m, err
		}
	}
	return m, nil
}

func TestHeightsByHand(t *testing.T) {
	kAll, pAll := RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl))
	cases := []struct {
		name     string
		style    Construction
		stitches int
		rows     []Row
		want     []int
	}{
		{"stocking stitch", Flat, 3, []Row{kAll, pAll, kAll}, []int{3, 3, 3}},
		{"rounds", InTheRound, 3, []Row{kAll, kAll}, []int{2, 2, 2}},
		// The slipped stitch begins the right-side row: it is the right-hand edge.
		{"slip", Flat, 3, []Row{RowOf(Do(Slip, 1), ToEnd(Knit))}, []int{0, 1, 1}},
		// On the wrong side the row begins at the left-hand edge.
		{"slip on the wrong side", Flat, 3, []Row{kAll, RowOf(Do(Slip, 1), ToEnd(Purl))}, []int{2, 2, 1}},
		// 0 and 1 rows lie under the two: the higher plus one.
		{"decrease", Flat, 3, []Row{RowOf(Do(Slip, 1), ToEnd(Knit)), pAll, RowOf(Do(SSK, 1), Do(Knit, 1))}, []int{3, 3}},
		{"decrease of a slipped and a worked one", Flat, 3,
			[]Row{RowOf(Do(Slip, 2), Do(Knit, 1)), RowOf(Do(P2tog, 1), Do(Purl, 1))}, []int{1, 2}},
		{"double decrease", Flat, 5, []Row{kAll, RowOf(Do(Purl, 1), Do(P3tog, 1), Do(Purl, 1))}, []int{2, 2, 2}},
		{"kfb", Flat, 2, []Row{RowOf(Do(KFB, 1), Do(Knit, 1))}, []int{1, 1, 1}},
		{"m1 after a knit stitch", Flat, 2, []Row{RowOf(Do(Knit, 1), Do(M1L, 1), Do(Knit, 1))}, []int{1, 1, 1}},
		{"m1 after a slipped stitch", Flat, 2, []Row{RowOf(Do(Slip, 1), Do(M1L, 1), Do(Knit, 1))}, []int{0, 1, 1}},
		{"yo at the edge", Flat, 2, []Row{kAll, RowOf(Do(YO, 1), Do(Purl, 2))}, []int{2, 2, 2}},
		{"yo twice", Flat, 2, []Row{RowOf(Do(Knit, 1), Do(YO, 2), Do(Knit, 1))}, []int{1, 1, 1, 1}},
		{"buttonhole", Flat, 5, []Row{
			RowOf(Do(Knit, 2), Do(BindOff, 2), Do(Knit, 1)),
			RowOf(Do(Purl, 1), Do(CastOn, 2), Do(Purl, 2)),
		}, []int{2, 2, 0, 0, 2}},
		// The first stitch has two rows more; what follows the gap goes by the stitch there.
		{"yo after a bound-off gap", Flat, 4, []Row{RowOf(Do(Knit, 1), Do(Turn, 1)), pAll,
			RowOf(Do(Knit, 1), Do(BindOff, 1), Do(Knit, 1), Do(YO, 1), ToEnd(Knit))}, []int{3, 1, 1, 1}},
		{"m1 as a round begins", InTheRound, 2, []Row{kAll, RowOf(Do(M1R, 1), ToEnd(Knit))}, []int{2, 2, 2}},
		{"m1 as a round ends", InTheRound, 2, []Row{RowOf(ToEnd(Knit), Do(M1L, 1))}, []int{1, 1, 1}},
		// Shoulder steps: 2 and 2 of 6 stitches bound off as rows begin.
		{"bind off", Flat, 6, []Row{RowOf(Do(BindOff, 2), ToEnd(Knit)), RowOf(Do(BindOff, 2), ToEnd(Purl))}, []int{2, 2}},

		// The three ways of turning, on either side. Six stitches.
		{"wrap, right side", Flat, 6, []Row{
			RowOf(Do(Knit, 4), Do(WrapTurn, 1)), // the fifth is wrapped
			RowOf(Do(Purl, 4)),
			RowOf(Do(Knit, 4), Do(KnitWrapped, 1), Do(Knit, 1)),
		}, []int{3, 3, 3, 3, 1, 1}},
		{"wrap, wrong side", Flat, 6, []Row{
			kAll,
			RowOf(Do(Purl, 4), Do(WrapTurn, 1)), // from the left edge 6, 5, 4, 3; the second is wrapped
			RowOf(Do(Knit, 4)),
			RowOf(Do(Purl, 4), Do(PurlWrapped, 1), Do(Purl, 1)),
		}, []int{2, 2, 4, 4, 4, 4}},
		{"double stitch, right side", Flat, 6, []Row{
			RowOf(Do(Knit, 5), Do(Turn, 1)),
			RowOf(Do(MakeDouble, 1), Do(Purl, 4)),
			RowOf(Do(Knit, 4), Do(KnitDouble, 1), Do(Knit, 1)),
		}, []int{3, 3, 3, 3, 2, 1}},
		{"double stitch, wrong side", Flat, 6, []Row{
			kAll,
			RowOf(Do(Purl, 5), Do(Turn, 1)),
			RowOf(Do(MakeDouble, 1), Do(Knit, 4)),
			RowOf(Do(Purl, 4), Do(PurlDouble, 1), Do(Purl, 1)),
		}, []int{2, 3, 4, 4, 4, 4}},
		{"yarn over, right side", Flat, 6, []Row{
			RowOf(Do(Knit, 4), Do(Turn, 1)),
			RowOf(Do(ShortRowYO, 1), Do(Purl, 4)),
			RowOf(Do(Knit, 4), Do(K2tog, 1), Do(Knit, 1)),
		}, []int{3, 3, 3, 3, 1, 1}},
		{"yarn over, wrong side", Flat, 6, []Row{
			kAll,
			RowOf(Do(Purl, 4), Do(Turn, 1)),
			RowOf(Do(ShortRowYO, 1), Do(Knit, 4)),
			RowOf(Do(Purl, 4), Do(SSP, 1), Do(Purl, 1)),
		}, []int{2, 2, 4, 4, 4, 4}},
		// To and fro over 3..6 of ten in the round. The second yarn over lies
		// between 2 and 3 and is met from its unworked side: ssk with 2.
		{"yarn overs in the round", InTheRound, 10, []Row{
			RowOf(Do(Knit, 6), Do(Turn, 1)),
			RowOf(Do(ShortRowYO, 1), Do(Purl, 4), Do(Turn, 1)),
			RowOf(Do(ShortRowYO, 1), Do(Knit, 4), Do(K2tog, 1), ToEnd(Knit)),
			RowOf(Do(Knit, 1), Do(SSK, 1), ToEnd(Knit)),
		}, []int{2, 2, 4, 4, 4, 4, 2, 2, 2, 2}},
		// As far back as the beginning of the round, and round again.
		{"turn at the beginning of the round", InTheRound, 4, []Row{
			RowOf(Do(Knit, 2), Do(WrapTurn, 1)),
			RowOf(Do(Purl, 2), Do(Turn, 1)),
			RowOf(Do(Knit, 2), Do(KnitWrapped, 1), Do(Knit, 1)),
		}, []int{3, 3, 1, 1}},
	}
	for _, c := range cases {
		m, err := knit(t, c.style, c.stitches, c.rows...)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		if got := m.Heights(); !slices.Equal(got, c.want) {
			t.Errorf("%s: heights %v, want %v", c.name, got, c.want)
		}
		if m.Unresolved() != 0 || m.ShortRowOpen() || m.RowsWorked() != len(c.rows) || m.StitchCount() != len(c.want) {
			t.Errorf("%s: %d unresolved, short row open %v, %d rows, %d stitches", c.name,
				m.Unresolved(), m.ShortRowOpen(), m.RowsWorked(), m.StitchCount())
		}
	}
}

func TestBindOff(t *testing.T) {
	m, err := knit(t, Flat, 6,
		RowOf(Do(BindOff, 2), ToEnd(Knit)),
		RowOf(Do(BindOff, 2), ToEnd(Purl)),
		RowOf(ToEnd(BindOff)))
	if err != nil || m.StitchCount() != 0 || len(m.Heights()) != 0 {
		t.Fatal(err, m.StitchCount())
	}
	// Right edge 0 rows, left edge 1 row, then the middle 2 rows.
	if got, want := m.BoundOff(), []int{0, 0, 1, 1, 2, 2}; !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
	if err := m.CastOn(3); err != nil || m.StitchCount() != 3 {
		t.Error("casting on again:", err)
	}
}

func TestJoin(t *testing.T) {
	m := NewMachine(Flat)
	if reasonOf(m.JoinInTheRound()) != ReasonNotPossible {
		t.Error("joined nothing")
	}
	for _, n := range []int{-1, 0, MaxStitches + 1} {
		if m.CastOn(n) == nil {
			t.Error("cast on", n)
		}
	}
	must(t, m.CastOn(4))
	if reasonOf(m.CastOn(4)) != ReasonNotPossible {
		t.Error("cast on twice")
	}
	must(t, m.Work(RowOf(ToEnd(Knit))))
	if reasonOf(m.JoinInTheRound()) != ReasonNotPossible {
		t.Error("joined on the wrong side")
	}
	must(t, m.Work(RowOf(Do(Purl, 1), Do(Turn, 1))))
	if reasonOf(m.JoinInTheRound()) != ReasonShortRow {
		t.Error("joined with a short row open")
	}
	must(t, m.Work(RowOf(ToEnd(Knit))))
	must(t, m.Work(RowOf(ToEnd(Purl))))
	if err := m.JoinInTheRound(); err != nil || m.Construction() != InTheRound || m.JoinInTheRound() != nil {
		t.Error(err)
	}
	if err := m.Work(RowOf(ToEnd(Knit))); err != nil || m.Side() != RightSide {
		t.Error(err, m.Side())
	}
}

// must ends a test at a call that has to succeed.
func must(tb testing.TB, err error) {
	tb.Helper()
	if err != nil {
		tb.Fatal(err)
	}
}

// A machine whose needles were emptied, in the middle of a short row, is a new one.
func TestEmpty(t *testing.T) {
	m, err := knit(t, Flat, 9, RowOf(ToEnd(Knit)), RowOf(Do(Purl, 3), Do(BindOff, 2), Do(Knit, 1), Do(WrapTurn, 1)))
	if err != nil || m.Unresolved() != 1 {
		t.Fatal(err, m)
	}
	m.Empty(InTheRound)
	if m.StitchCount() != 0 || m.RowsWorked() != 0 || m.Construction() != InTheRound || len(m.BoundOff()) != 0 {
		t.Fatal(m)
	}
	fresh := NewMachine(InTheRound)
	for _, m := range []*Machine{m, fresh} {
		if err := m.CastOn(7); err != nil {
			t.Fatal(err)
		}
		if err := m.Work(RowOf(Do(Knit, 3), Do(YO, 1), ToEnd(Purl))); err != nil {
			t.Fatal(err)
		}
	}
	if got, want := m.Heights(), fresh.Heights(); !slices.Equal(got, want) || m.Unresolved() != 0 || m.Side() != fresh.Side() {
		t.Errorf("%v, a new one %v", got, want)
	}
}
