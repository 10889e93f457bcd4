package schedule

import (
	"math"
	"reflect"
	"testing"
)

// sweep is long, or short where tests are to be.
func sweep(long, short int) int {
	if testing.Short() {
		return short
	}
	return long
}

// Every choice there is: none departs less than the nearest.
func TestNoNestedChoiceIsNearerThanTheNearest(t *testing.T) {
	seen := 0
	nests(sweep(10, 8), func(n Nest) {
		best := math.MaxInt
		choices(n, func(rows, levels []int) { best = min(best, departureByHand(n, rows, levels)) })
		got := n.Nearest()
		if by := departureByHand(n, got.Rows, got.Levels); by != best || got.Departure != best {
			t.Fatalf("%+v: %+v departs by %d, and %d is possible", n, got, by, best)
		}
		seen++
	})
	if seen < sweep(200, 100) {
		t.Errorf("%d nests: the sweep has shrunk", seen)
	}
}

// Every choice again: none of those looked at that is allowed has less to remember than what is
// found, or as little and departs less, being ahead of the line counting three times where
// it is to be late. Beyond them, where intervals are not about
// what the line gives, there seldom is one.
func TestNestedEasiestAgainstEveryChoice(t *testing.T) {
	asked, beyond := 0, 0
	nests(sweep(9, 7), func(n Nest) {
		least := n.Nearest().Departure
		for _, allowed := range []int{least, least + n.Rows/2, least + n.Rows, 2 * n.Rows} {
			effort, near, least := math.MaxInt, math.MaxInt, math.MaxInt
			choices(n, func(rows, levels []int) {
				d := departureByHand(n, rows, levels)
				if d > allowed {
					return
				}
				easy, looked := isEasy(n, rows, levels)
				if !easy {
					return
				}
				told := leastTold(stepsOf(rows, levels, n.Apart))
				d = farthestByHand(n, rows, levels, aheadOf(n))
				least = min(least, told)
				switch {
				case !looked:
				case told < effort:
					effort, near = told, d
				case told == effort:
					near = min(near, d)
				}
			})
			got, ok := n.Easiest(allowed)
			asked++
			if least < effort {
				beyond++
			}
			if ok != (effort < math.MaxInt) {
				t.Fatalf("%+v, at most %d: found is %v, and there is one of %d", n, allowed, ok, effort)
			}
			if !ok {
				continue
			}
			if d := departureByHand(n, got.Rows, got.Levels); d != got.Departure || d > allowed {
				t.Fatalf("%+v, at most %d: %+v departs by %d", n, allowed, got, d)
			}
			if d := farthestByHand(n, got.Rows, got.Levels, aheadOf(n)); d != near {
				t.Fatalf("%+v, at most %d: %+v lies %d off, and %d is possible", n, allowed, got, d, near)
			}
			if told := Effort(got.Blocks()); told != effort {
				t.Fatalf("%+v, at most %d: %v takes %d, and %d is possible", n, allowed, got.Blocks(), told, effort)
			}
		}
	})
	if asked < sweep(700, 250) || 15*beyond > asked {
		t.Errorf("%d asked, of which %d have an easier choice beyond those looked at", asked, beyond)
	}
}

// Every short list of intervals: runs written out are the intervals again, and have as
// little to remember as any way of reading them as two runs.
func TestRunsAreTheLeastToRemember(t *testing.T) {
	two := 0
	for code := range 3 * 3 * 3 * 3 * 3 * 3 * 3 {
		for n := 1; n <= 8; n++ {
			rows := []int{4}
			for c := code; len(rows) < n; c /= 3 {
				rows = append(rows, rows[len(rows)-1]+1+c%3)
			}
			got := Runs(rows)
			back := []int{4}
			for _, every := range got.Intervals() {
				back = append(back, back[len(back)-1]+every)
			}
			if !reflect.DeepEqual(back, rows) {
				t.Fatalf("%v are %v", rows, got)
			}
			effort, ok := leastEffort(rows)
			if ok != twoRuns(rows) || ok && got.Effort() != effort {
				t.Fatalf("%v are %v, which takes %d, not %d", rows, got, got.Effort(), effort)
			}
			if ok && len(got) == 2 {
				two++
			}
		}
	}
	if two < 1000 {
		t.Errorf("%d are of two runs", two)
	}
}
