package schedule

import (
	"math"
	"slices"
	"testing"
)

// toldAsTurns is the effort of the least way to tell steps in one block or two, with a single
// step before them or after, and false if there is none.
func toldAsTurns(steps []Step) (int, bool) {
	best := math.MaxInt
	for before := range 2 {
		for after := range 2 {
			inner := len(steps) - before - after
			for first := 1; first <= mostSteps; first++ {
				for to := first; to <= inner; to += first {
					if first > 1 && to == first || !comeAgain(steps[before:before+to], first, before == 0) {
						continue
					}
					left := inner - to
					for second := range mostSteps + 1 {
						if (second == 0) != (left == 0) || second > 0 && left%second != 0 || second > 1 && left == second ||
							!comeAgain(steps[before+to:before+inner], second, false) {
							continue
						}
						effort := 2*(before+after) + first + 1
						if first > 1 {
							effort += 2
						}
						if second > 0 {
							effort += second + 1
						}
						if second > 1 {
							effort += 2
						}
						best = min(best, effort)
					}
				}
			}
		}
	}
	return best, best < math.MaxInt
}

// comeAgain reports whether steps are the first so many again and again. The very first
// of all may come after any number of rows.
func comeAgain(steps []Step, size int, start bool) bool {
	for i := size; i < len(steps); i++ {
		a, b := steps[i-size], steps[i]
		if a.Level != b.Level || a.Every != b.Every && !(start && i == size) {
			return false
		}
	}
	return true
}

// runsByHand reports whether intervals are two runs at most of up to mostSteps in turn.
func runsByHand(intervals []int) bool {
	one := func(of []int) bool {
		for size := 1; size <= mostSteps && size <= len(of); size++ {
			same := len(of)%size == 0
			for i := size; i < len(of); i++ {
				same = same && of[i] == of[i-size]
			}
			if same {
				return true
			}
		}
		return len(of) == 0
	}
	for cut := range len(intervals) + 1 {
		if one(intervals[:cut]) && one(intervals[cut:]) {
			return true
		}
	}
	return false
}

// intervalsByHand are those between the rows of a thing.
func intervalsByHand(n Nested, thing int) []int {
	var list []int
	rows := n.RowsOf(thing)
	for i := range rows[1:] {
		list = append(list, rows[i+1]-rows[i])
	}
	return list
}

// Every choice there is: where one can be told in two blocks of turns InTurns finds one that
// takes no more, and nothing else.
func TestNestedInTurnsAgainstEveryChoice(t *testing.T) {
	asked, found := 0, 0
	nests(sweep(10, 8), func(n Nest) {
		if n.slots() > 9 || n.Rows%2 > 0 && n.slots() > 8 {
			return
		}
		least := n.Nearest().Departure
		for _, allowed := range []int{least, least + n.Rows/2, 2 * n.Rows} {
			effort := math.MaxInt
			choices(n, func(rows, levels []int) {
				if departureByHand(n, rows, levels) > allowed {
					return
				}
				choice := Nested{Rows: rows, Levels: levels}
				for thing := range n.Times {
					if !runsByHand(intervalsByHand(choice, thing)) {
						return
					}
				}
				if told, ok := toldAsTurns(stepsOf(rows, levels, 0)); ok && told < effort && oneApart(n, rows) {
					effort = told
				}
			})
			got, ok := n.InTurns(allowed, math.MaxInt)
			asked++
			if ok != (effort < math.MaxInt) {
				t.Fatalf("%+v, at most %d: found is %v, and there is one of %d", n, allowed, ok, effort)
			}
			if !ok {
				continue
			}
			found++
			if d := departureByHand(n, got.Rows, got.Levels); d != got.Departure || d > allowed {
				t.Fatalf("%+v, at most %d: %+v departs by %d", n, allowed, got, d)
			}
			if told, _ := toldAsTurns(stepsOf(got.Rows, got.Levels, 0)); n.Apart == 0 && Effort(got.Blocks()) > effort || told == math.MaxInt {
				t.Fatalf("%+v, at most %d: %v takes %d, and %d is possible", n, allowed, got.Blocks(), Effort(got.Blocks()), effort)
			}
			for thing, k := range n.Times {
				if rows := got.RowsOf(thing); len(rows) != k || !runsByHand(intervalsByHand(got, thing)) {
					t.Fatalf("%+v, at most %d: thing %d in %v", n, allowed, thing, rows)
				}
			}
		}
	})
	if asked < sweep(500, 200) || found < asked/2 {
		t.Errorf("%d asked, %d found", asked, found)
	}
}

// oneApart reports whether the intervals between all rows are those looked at.
func oneApart(n Nest, rows []int) bool {
	least, most := math.MaxInt, 0
	for i := range rows[1:] {
		places := (rows[i+1] - rows[i]) / n.Every
		least, most = min(least, places), max(most, places)
	}
	ideal := n.slots() / n.Times[0]
	return len(rows) < 2 || most-least <= 1 && most <= ideal+1 && least >= max(1, ideal-1)
}

// Every short list of intervals: two runs of turns are the intervals again, wherever there are any.
func TestRunsInTurn(t *testing.T) {
	inTurn := 0
	for code := range 3 * 3 * 3 * 3 * 3 * 3 * 3 * 3 * 3 {
		rows := []int{4}
		for c := code; len(rows) < 10; c /= 3 {
			rows = append(rows, rows[len(rows)-1]+1+c%3)
		}
		for n := 2; n <= len(rows); n++ {
			got := RunsInTurn(rows[:n])
			var want []int
			for i := range rows[1:n] {
				want = append(want, rows[i+1]-rows[i])
			}
			if !slices.Equal(got.Intervals(), want) {
				t.Fatalf("%v are %v", rows[:n], got)
			}
			if two := runsByHand(want); two != (len(got) <= 2) {
				t.Fatalf("%v are %v, in two runs: %v", rows[:n], got, two)
			}
			for _, r := range got {
				if len(r.EveryRows) > 2 {
					inTurn++
				}
			}
		}
	}
	if inTurn < 1000 {
		t.Errorf("%d take turns of three or more", inTurn)
	}
}

// Whether two runs are enough is what the runs themselves say, up to so many in turn as may be.
func TestTwoTurnsAsToldByRuns(t *testing.T) {
	enough := 0
	for code := range sweep(1<<13, 1<<11) {
		rows := []int{4}
		for bits := code; len(rows) < 14; bits >>= 1 {
			rows = append(rows, rows[len(rows)-1]+2+bits&1)
		}
		for _, most := range []int{mostSteps, mostAlike} {
			two := twoTurns(rows, most)
			if two {
				enough++
			}
			if got := runsOf(rows, most); two != (len(got) <= 2) {
				t.Fatalf("%v are %v, two runs of up to %d: %v", rows, got, most, two)
			}
		}
	}
	if enough < sweep(500, 300) {
		t.Errorf("%d are two runs", enough)
	}
}
