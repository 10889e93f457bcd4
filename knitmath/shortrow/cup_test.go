package shortrow

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Every small cup is knit in the round, by wraps and by double stitches: all gaps are closed,
// the stitches beside have the two rounds, the centre every row, and in between the rows rise
// alike from both sides.
func TestCupIsKnitInTheRound(t *testing.T) {
	for worked := 5; worked <= 21; worked++ {
		for centre := 1 + (worked+1)%2; centre < worked; centre += 2 {
			for _, method := range []TurnMethod{TurnMethodWrapAndTurn, TurnMethodGerman} {
				at := fmt.Sprintf("%d to %d, method %d", worked, centre, method)
				stitches := worked + 9
				cup := Cup(stitches, worked, centre, method)
				m := knittest.CastOn(t, stitches, true)
				knitRows(t, at, m, cup.Rows)
				if m.Unresolved() != 0 || m.ShortRowOpen() || m.Side() != stitch.RightSide || m.StitchCount() != stitches {
					t.Fatalf("%s: %d gaps open, %d stitches", at, m.Unresolved(), m.StitchCount())
				}
				if short := len(cup.Rows) - 2; cup.TurnCount != short {
					t.Fatalf("%s: %d turns in %d short rows", at, cup.TurnCount, short)
				}
				checkCupHeights(t, at, m.Heights(), worked, len(cup.Rows))
			}
		}
	}
}

func checkCupHeights(t *testing.T, at string, h []int, worked, rows int) {
	t.Helper()
	for x, n := range h {
		switch {
		case x >= worked && n != 2:
			t.Fatalf("%s: %d rows at stitch %d beside the cup", at, n, x)
		case x < worked && max(n-h[worked-1-x], h[worked-1-x]-n) > 1:
			t.Fatalf("%s: %d rows at stitch %d, %d at its mirror", at, n, x, h[worked-1-x])
		case x > 0 && x <= worked/2 && n < h[x-1]:
			t.Fatalf("%s: the cup falls at stitch %d: %v", at, x, h)
		}
	}
	if h[worked/2] != rows {
		t.Fatalf("%s: %d rows at the centre of %d", at, h[worked/2], rows)
	}
}

// Half a cup in the middle of a round: its rows, and the round after up to the last stitch
// that it names, close all gaps, and the centre has them all.
func TestHalfCupIsKnitInTheRound(t *testing.T) {
	for worked := 5; worked <= 21; worked++ {
		for centre := 1 + (worked+1)%2; centre < worked; centre += 2 {
			for _, method := range []TurnMethod{TurnMethodWrapAndTurn, TurnMethodGerman, TurnMethodYarnOver} {
				at := fmt.Sprintf("%d to %d, method %d", worked, centre, method)
				before, stitches := 4, worked+9
				rows, next := HalfCup(stitches, before, worked, centre, method)
				m := knittest.CastOn(t, stitches, true)
				knitRows(t, at, m, rows)
				steps := make([]stitch.Step, 0, len(next)+1)
				for _, run := range next {
					steps = append(steps, stitch.Do(run.Op, run.Count))
				}
				if err := m.Work(stitch.RowOf(append(steps, stitch.ToEnd(stitch.Knit))...)); err != nil {
					t.Fatalf("%s: %v", at, err)
				}
				h := m.Heights()
				if m.Unresolved() != 0 || m.StitchCount() != stitches || h[before+worked/2] != len(rows)+1 {
					t.Fatalf("%s: %d gaps open, %d stitches, %d rows at the centre of %d",
						at, m.Unresolved(), m.StitchCount(), h[before+worked/2], len(rows)+1)
				}
				for x, n := range h {
					if beside := x < before || x >= before+worked; beside && n != 2 {
						t.Fatalf("%s: %d rows at stitch %d beside the cup", at, n, x)
					}
				}
			}
		}
	}
}

// A hump is knit flat, and lies under each stitch as it says: where turns lie wide enough
// apart, exactly as asked.
func TestHumpIsKnit(t *testing.T) {
	gentle := []int{0, 0, 1, 1, 2, 2, 3, 3, 3, 2, 2, 1, 1, 0, 0}
	for _, method := range []TurnMethod{TurnMethodWrapAndTurn, TurnMethodGerman, TurnMethodYarnOver} {
		for _, pairs := range [][]int{gentle, {0, 4, 0, 0, 4, 0, 0, 0}, {3, 2, 1, 1, 1, 1, 1, 1}, {1, 1, 1, 1, 1, 1, 1, 2}} {
			at := fmt.Sprintf("%v, method %d", pairs, method)
			out, ok := Hump(pairs, method)
			if !ok {
				t.Errorf("%s: no short row is left", at)
				continue
			}
			m := knittest.CastOn(t, len(pairs), false)
			knitRows(t, at, m, out.Rows)
			h := m.Heights()
			for x, rows := range out.RowsUnder() {
				if h[x] != rows {
					t.Fatalf("%s: %d rows at stitch %d, %d said", at, h[x], x, rows)
				}
			}
			if method == TurnMethodWrapAndTurn && &pairs[0] == &gentle[0] {
				for x, n := range pairs {
					if h[x] != 2*n+out.FullRows {
						t.Errorf("%s: %d rows at stitch %d", at, h[x], x)
					}
				}
			}
		}
	}
	if _, ok := Hump([]int{2, 2, 2, 2, 2}, TurnMethodWrapAndTurn); ok {
		t.Error("a level hump has short rows")
	}
}

// What is said of a way of turning is what its rows are worked with.
func TestTechniqueIsThatOfTheRows(t *testing.T) {
	for _, method := range []TurnMethod{TurnMethodWrapAndTurn, TurnMethodGerman, TurnMethodYarnOver} {
		if Technique(method) == "" {
			t.Errorf("nothing is said of method %d", method)
		}
		rows, _ := HalfCup(20, 3, 12, 4, method)
		first := rows[0].Instruction.Row.Steps
		if got := first[len(first)-1].Op; got != Turning(method) {
			t.Errorf("method %d turns by %v, not %v", method, got, Turning(method))
		}
		second := rows[1].Instruction.Row.Steps[0].Op
		if op, marked := AfterTurn(method); marked && op != second {
			t.Errorf("method %d begins with %v after a turn, not %v", method, second, op)
		}
		closes := false
		for _, step := range rows[len(rows)-1].Instruction.Row.Steps { // on the right side, over the turns of that side
			closes = closes || step.Op == Closing(method, stitch.RightSide)
		}
		if !closes {
			t.Errorf("method %d: the last row closes nothing by %v", method, Closing(method, stitch.RightSide))
		}
	}
}

// A rise that is no whole number of pairs says to which it was rounded.
func TestRiseNotice(t *testing.T) {
	n := RiseNotice("rise_cm", 7.5, 8)
	if n.Reason != RiseRounded || n.Field != "rise_cm" || n.Description == "" {
		t.Errorf("%+v", n)
	}
}
