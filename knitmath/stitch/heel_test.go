package stitch

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// TestShortRowHeel works a wrapped heel over 12 stitches, 4 of them never
// wrapped: an hourglass, as in many socks (common practice). The rows and, below
// them, the stitches they work (1 is the right-hand edge):
//
//	1: 1-11   3: 2-10   5: 3-9   7: 4-8   9: 5-9   11: 4-10  13: 3-11  15: 2-12
//	2: 11-2   4: 10-3   6: 9-4   8: 8-5  10: 9-4   12: 10-3  14: 11-2  16: 12-1
//
// so that stitch 1 is worked in rows 1 and 16, stitch 2 in 1 to 3 and 14 to 16,
// and so on up to all 16 rows on stitches 5 to 8.
func TestShortRowHeel(t *testing.T) {
	rows := heelRows()
	m, err := knit(t, Flat, 12, rows[:8]...)
	if err != nil || m.Unresolved() != 8 || !m.ShortRowOpen() || m.ToWork() != 8 {
		t.Fatalf("half the heel: %v, %d unresolved, %d to work", err, m.Unresolved(), m.ToWork())
	}
	if got, want := m.Heights(), []int{1, 3, 5, 7, 8, 8, 8, 8, 6, 4, 2, 0}; !slices.Equal(got, want) {
		t.Errorf("half the heel: %v, want %v", got, want)
	}
	for _, r := range rows[8:] {
		if err := m.Work(r); err != nil {
			t.Fatalf("%q: %v", r.Text(), err)
		}
	}
	if got, want := m.Heights(), []int{2, 6, 10, 14, 16, 16, 16, 16, 14, 10, 6, 2}; !slices.Equal(got, want) {
		t.Errorf("heel: %v, want %v", got, want)
	}
	if m.Unresolved() != 0 || m.ShortRowOpen() || m.Side() != RightSide {
		t.Errorf("heel: %d unresolved, side %s", m.Unresolved(), m.Side())
	}
}

// heelRows are the sixteen rows.
func heelRows() []Row {
	var rows []Row
	side := func(ws bool, knit, purl Op) Op {
		if ws {
			return purl
		}
		return knit
	}
	for i := range 8 { // 11, 10, 9 ... 4 stitches, then turn
		op := side(i%2 == 1, Knit, Purl)
		rows = append(rows, RowOf(Do(op, 11-i), Do(WrapTurn, 1)))
	}
	for i := range 8 { // 4, 5 ... 11 stitches, and the next with its wraps
		op, pick := side(i%2 == 1, Knit, Purl), side(i%2 == 1, KnitWrapped, PurlWrapped)
		r := RowOf(Do(op, 4+i), Do(pick, 1))
		if i < 6 { // beyond it one more is wrapped, for the second time
			r.Steps = append(r.Steps, Do(WrapTurn, 1))
		}
		rows = append(rows, r)
	}
	return rows
}

// TestTurnsAgainstStrip knits random plain short rows and compares with a strip
// of numbers and a position on it.
func TestTurnsAgainstStrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 500 {
		n := 1 + rng.IntN(12)
		strip, at, ws := make([]int, n), 0, false
		m := NewMachine(Flat)
		must(t, m.CastOn(n))
		for range 30 {
			left := n - at
			if ws {
				left = at
			}
			if m.ToWork() != left {
				t.Fatalf("%d to work, want %d", m.ToWork(), left)
			}
			k := rng.IntN(left + 1)
			row := RowOf(ToLast(Knit, left-k), Do(Turn, 1))
			if k == left && rng.IntN(2) == 0 {
				row = RowOf(ToEnd(Purl))
			}
			if err := m.Work(row); err != nil {
				t.Fatal(err)
			}
			for range k {
				if ws {
					at--
					strip[at]++
				} else {
					strip[at]++
					at++
				}
			}
			ws = !ws
			if got := m.Heights(); !slices.Equal(got, strip) {
				t.Fatalf("%v, want %v", got, strip)
			}
		}
	}
}
