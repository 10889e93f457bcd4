package stitch

import (
	"math"
	"reflect"
	"testing"
)

// A shoulder in groups, for stitches of 0.5 and rows of 0.3 cm: a seam cuts across its steps,
// from the corner of each to that of the next, and is so much shorter than they are.
func TestSeamsByHand(t *testing.T) {
	kAll, pAll := RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl))
	off := func(n int) Row { return RowOf(Do(BindOff, n), ToEnd(Knit)) }
	m, f := recorded(t, Flat, 20, off(3), pAll, off(2), pAll, off(2), pAll, kAll, pAll)
	e := f.Selvedge(RightHand, 1, 8)
	want := 3*0.5 + 2*math.Hypot(2*0.5, 2*0.3) + 4*0.3
	if got := e.SewnCm(0.5, 0.3, 0); math.Abs(got-want) > 1e-12 {
		t.Errorf("%v, want %v: %v", got, want, e.Parts())
	}
	steps := 7*0.5 + 8*0.3
	if got := e.LengthCm(0.5, 0.3); math.Abs(got-steps) > 1e-12 {
		t.Errorf("its steps are %v long, want %v", got, steps)
	}
	// It is sewn on over 1 cm of the top of the last row: the last stroke slants over it.
	want += math.Hypot(1, 4*0.3) - 4*0.3
	if got := e.SewnCm(0.5, 0.3, 1); math.Abs(got-want) > 1e-12 {
		t.Errorf("with 1 cm over %v, want %v", got, want)
	}
	if got := (Edge{}).SewnCm(0.5, 0.3, 0); got != 0 {
		t.Errorf("no edge is %v long", got)
	}

	// Cast on again at the end, as a strap is: the corner is where the stitches begin.
	must(t, m.Work(RowOf(ToEnd(Knit))))
	must(t, m.Work(RowOf(Do(CastOn, 4), ToEnd(Purl))))
	must(t, m.Work(kAll))
	left := f.Selvedge(LeftHand, 9, 11)
	if got := left.SewnCm(0.5, 0.3, 0); got <= 4*0.5 || got >= left.LengthCm(0.5, 0.3)+1e-12 {
		t.Errorf("over a cast-on of 2 cm the seam is %v long, its steps %v: %v", got, left.LengthCm(0.5, 0.3), left.Parts())
	}
}

// Parts of a line are taken by their place, and by what they are: the pieces of a closed line
// go on across the place at which it begins.
func TestPartsOfALine(t *testing.T) {
	_, f := recorded(t, Flat, 6, RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl)))
	line := f.Boundary()[0]
	parts := line.Parts()
	for i := range parts {
		for j := i; j <= len(parts); j++ {
			if got := line.Slice(i, j).Parts(); len(got) != j-i || j > i && !reflect.DeepEqual(got, parts[i:j]) {
				t.Fatalf("%d to %d: %v", i, j, got)
			}
		}
	}
	of := func(kinds ...EdgeKind) []int {
		var lengths []int
		for _, run := range line.Runs(func(p EdgePart) bool {
			for _, k := range kinds {
				if p.Kind == k {
					return true
				}
			}
			return false
		}) {
			lengths = append(lengths, run.Len())
		}
		return lengths
	}
	if got := of(EdgeLive); !reflect.DeepEqual(got, []int{6}) {
		t.Errorf("live: %v", got)
	}
	if got := of(EdgeCastOn); !reflect.DeepEqual(got, []int{6}) {
		t.Errorf("cast on: %v", got)
	}
	if got := of(); got != nil {
		t.Errorf("none: %v", got)
	}
	if got := line.Runs(func(EdgePart) bool { return true }); len(got) != 1 || got[0].Len() != line.Len() {
		t.Errorf("all: %d runs", len(got))
	}
	if got := line.Runs(func(p EdgePart) bool { return p.Kind != EdgeLive && p.Kind != EdgeCastOn }); len(got) != 2 {
		t.Errorf("%d selvedges", len(got))
	}
}

// What shapes an edge changes the count by as much as it is asked, in a row of either side,
// and leans: on the right side ssk and M1L where the row begins, k2tog and M1R where it ends.
func TestShapedEdges(t *testing.T) {
	for _, side := range []Side{SideUnspecified, RightSide, WrongSide} {
		for _, ends := range []bool{false, true} {
			for change := -3; change <= 3; change++ {
				m := NewMachine(Flat)
				must(t, m.CastOn(12))
				if side == WrongSide {
					must(t, m.Work(RowOf(ToEnd(Knit))))
				}
				shaped := Shaped(side, ends, change)
				plain := side.Plain()
				if change < -2 || change == 0 || change > 2 {
					if shaped != nil {
						t.Errorf("%d is shaped by %v", change, shaped)
					}
					continue
				}
				row := append([]Step{Do(plain, 1)}, shaped...)
				must(t, m.Work(RowOf(append(row, ToEnd(plain))...)))
				if m.StitchCount() != 12+change {
					t.Errorf("side %v, ends %v: %d instead of %d", side, ends, m.StitchCount(), 12+change)
				}
			}
		}
	}
	for _, c := range []struct {
		side   Side
		ends   bool
		change int
		want   Op
	}{
		{RightSide, false, -1, SSK}, {RightSide, true, -1, K2tog}, {RightSide, false, 1, M1L}, {RightSide, true, 1, M1R},
		{WrongSide, false, -1, P2tog}, {WrongSide, true, -1, SSP}, {WrongSide, false, 1, M1RP}, {WrongSide, true, 1, M1LP},
	} {
		if got := Shaped(c.side, c.ends, c.change); len(got) != 1 || got[0].Op != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

func TestAppendStep(t *testing.T) {
	var steps []Step
	for _, s := range []Step{Do(Knit, 2), Do(Knit, 3), Do(Purl, 0), Do(Purl, 1), Do(Knit, 1)} {
		steps = AppendStep(steps, s.Op, s.Count)
	}
	if got := RowOf(steps...).Text(); got != "k5, p1, k1" {
		t.Errorf("%q", got)
	}
}
