package stitch

import (
	"slices"
	"testing"
)

// partsOf are the parts of the whole line around a fabric that are of one kind.
func partsOf(f *Fabric, kind EdgeKind) Edge {
	return f.Boundary()[0].Runs(func(p EdgePart) bool { return p.Kind == kind })[0]
}

// Stitches bound off and the feet of a cast-on are picked up along like the sides of
// rows, on empty needles with the right side facing, and each new stitch is made of the
// part in whose place it stands, in the order of the edge.
func TestEdgesAreLaidInOrder(t *testing.T) {
	whole := []Row{RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl)), RowOf(Do(BindOff, 5))}
	for _, kind := range []EdgeKind{EdgeBoundOff, EdgeCastOn} {
		m, f := recorded(t, Flat, 5, whole...)
		along := partsOf(f, kind)
		must(t, m.LayEdge(along))
		if along.Len() != 5 || m.Side() != RightSide || m.ToWork() != 5 {
			t.Fatalf("kind %d: %d parts, %d to work, %s", kind, along.Len(), m.ToWork(), m.Side())
		}
		must(t, m.Work(RowOf(ToEnd(PickUp))))
		checkFabric(t, m, f)
		checkMadeOf(t, m, f, along.cells)
	}
}

// The edge beyond the end of a row is picked up along from the nearest part to the
// farthest: down the left selvedge after a right-side row, down the right one after a
// wrong-side row, which is against the order of the edge.
func TestEdgesAreLaidFromTheNeedleDown(t *testing.T) {
	for rows, hand := range map[int]Hand{4: LeftHand, 5: RightHand} {
		m, f := recorded(t, Flat, 3)
		for range rows {
			must(t, m.Work(RowOf(ToEnd(Knit))))
		}
		along := f.Selvedge(hand, 1, rows)
		must(t, m.LayEdge(along))
		must(t, m.Work(RowOf(Do(Knit, 3), ToEnd(PickUp))))
		checkFabric(t, m, f)
		want := slices.Clone(along.cells)
		if hand == RightHand {
			slices.Reverse(want)
		}
		for i, part := range want[1:] {
			if above := f.cells[want[i]].row; f.cells[part].row >= above {
				t.Errorf("%d rows: row %d is picked up after row %d", rows, f.cells[part].row, above)
			}
		}
		if hand == RightHand { // the row went from left to right as the right side shows
			slices.Reverse(want)
			checkMadeOf(t, m, f, append(want, 0, 0, 0))
		} else {
			checkMadeOf(t, m, f, append([]int32{0, 0, 0}, want...))
		}
	}
}

// checkMadeOf compares what the stitches on the needles were made of, in right-side
// order, with numbers of which 0 is anything.
func checkMadeOf(t *testing.T, m *Machine, f *Fabric, want []int32) {
	t.Helper()
	numbers := m.Numbers()
	if len(numbers) != len(want) {
		t.Fatalf("%d stitches, want %d", len(numbers), len(want))
	}
	for i, n := range numbers {
		if want[i] != 0 && !slices.Equal(f.Stitch(n).Under, []int{int(want[i])}) {
			t.Errorf("stitch %d is made of %v, want %d", i+1, f.Stitch(n).Under, want[i])
		}
	}
}

// What cannot be picked up along is refused, and nothing changes.
func TestEdgesThatCannotBeLaid(t *testing.T) {
	rows := []Row{RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl))}
	m, f := recorded(t, Flat, 5, rows...)
	_, other := recorded(t, Flat, 5, rows...)
	large, wide := recorded(t, Flat, MaxStitches-1, rows...)
	turned, short := recorded(t, Flat, 5, append(rows, RowOf(Do(Knit, 2), Do(Turn, 1)))...)
	for _, c := range []struct {
		name string
		m    *Machine
		e    Edge
		want Reason
	}{
		{"nothing", m, Edge{fabric: f}, ReasonNotPossible},
		{"of another piece", m, partsOf(other, EdgeCastOn), ReasonNotPossible},
		{"nothing remembered", NewMachine(Flat), partsOf(f, EdgeCastOn), ReasonNotPossible},
		{"a short row is open", turned, partsOf(short, EdgeCastOn), ReasonNotPossible},
		{"live stitches", m, partsOf(f, EdgeLive), ReasonNotEdge},
		{"more stitches than there may be", large, partsOf(wide, EdgeCastOn).Slice(0, 2), ReasonTooLarge},
	} {
		before := c.m.ToWork()
		if got := reasonOf(c.m.LayEdge(c.e)); got != c.want || c.m.ToWork() != before {
			t.Errorf("%s: %q, want %q; %d to work, were %d", c.name, got, c.want, c.m.ToWork(), before)
		}
	}
	must(t, large.LayEdge(partsOf(wide, EdgeCastOn).Slice(0, 1)))
}

// A fabric is remembered from empty needles and holders on.
func TestRecordBeginsEmpty(t *testing.T) {
	for held, row := range map[int]Row{0: RowOf(Do(Knit, 4)), 2: RowOf(Do(Knit, 2), Do(Hold, 2)), 4: RowOf(Do(Hold, 4))} {
		m := NewMachine(Flat)
		must(t, m.CastOn(4))
		must(t, m.Work(row))
		if _, err := m.Record(); reasonOf(err) != ReasonNotPossible {
			t.Errorf("%d of 4 held: %v", held, err)
		}
	}
}

// Where rows have made two edges on one hand, the selvedge is the one begun first: three
// stitches wait on a holder while the others get rows 1 to 5, and get rows 7 to 9 themselves.
func TestSelvedgeIsTheOneBegunFirst(t *testing.T) {
	m, f := recorded(t, Flat, 6, RowOf(Do(Knit, 3), Do(Hold, 3)))
	for range 4 {
		must(t, m.Work(RowOf(ToEnd(Knit))))
	}
	must(t, m.Work(RowOf(Do(Hold, 3))))
	must(t, m.TakeUp(RightSide, 0))
	for range 3 {
		must(t, m.Work(RowOf(ToEnd(Knit))))
	}
	checkFabric(t, m, f)
	for _, c := range []struct{ first, last, from, to int }{{1, 9, 1, 5}, {3, 9, 3, 5}, {6, 9, 7, 9}, {8, 8, 8, 8}} {
		var rows []int
		for _, p := range f.Selvedge(LeftHand, c.first, c.last).Parts() {
			rows = append(rows, p.Row)
		}
		slices.Sort(rows)
		if len(rows) != c.to-c.from+1 || rows[0] != c.from || rows[len(rows)-1] != c.to {
			t.Errorf("rows %d to %d: the selvedge is of rows %v, want %d to %d", c.first, c.last, rows, c.from, c.to)
		}
	}
}
