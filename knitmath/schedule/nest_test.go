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

// nests are all small nests of up to three things, in every row and in every
// second one counted down from the last.
func nests(rows int, do func(Nest)) {
	for n := 2; n <= rows; n++ {
		for every := 1; every <= 2; every++ {
			first := n - every*(n/every-1)
			slots := n / every
			for a := 1; a <= slots; a++ {
				do(Nest{n, first, every, []int{a}, 0, n%2 == 0})
				for b := 1; b < a; b++ {
					do(Nest{n, first, every, []int{a, b}, (a + b + n) % 3, (a+b)%2 == 0})
					for c := 1; c < b && slots <= 6; c++ {
						do(Nest{n, first, every, []int{a, b, c}, (a + b + n) % 4, (a+c)%2 == 0})
					}
				}
			}
		}
	}
}

// choices are all choices of rows there are, one level for every row.
func choices(n Nest, do func(rows, levels []int)) {
	slots := n.slots()
	levels := make([]int, slots)
	for {
		count := make([]int, len(n.Times))
		var rows, used []int
		for i, l := range levels {
			for t := range l {
				count[t]++
			}
			if l > 0 {
				rows, used = append(rows, n.First+i*n.Every), append(used, l)
			}
		}
		if reflect.DeepEqual(count, n.Times) {
			do(rows, used)
		}
		i := 0
		for i < slots && levels[i] == len(n.Times) {
			levels[i] = 0
			i++
		}
		if i == slots {
			return
		}
		levels[i]++
	}
}

// departureByHand counts through all rows, as what is done up to the end of each.
func departureByHand(n Nest, rows, levels []int) int { return farthestByHand(n, rows, levels, 1) }

func aheadOf(n Nest) int {
	if n.Late {
		return 3
	}
	return 1
}

// farthestByHand is the same where being ahead of a line counts several times.
func farthestByHand(n Nest, rows, levels []int, ahead int) int {
	worst := 0
	done := make([]int, len(n.Times))
	next := 0
	for row := range n.Rows + 1 {
		if next < len(rows) && rows[next] == row {
			for t := range levels[next] {
				done[t]++
			}
			next++
		}
		for t, k := range n.Times {
			worst = max(worst, ahead*(done[t]*n.Rows-k*row), k*row-done[t]*n.Rows)
		}
	}
	return worst
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

// stepsOf are the steps of a choice. The last row of the thing apart is told apart.
func stepsOf(rows, levels []int, apart int) []Step {
	steps := make([]Step, len(rows))
	for i := range rows {
		steps[i].Level = levels[i]
		if i > 0 {
			steps[i].Every = rows[i] - rows[i-1]
		}
	}
	for i := len(rows) - 1; i >= 0 && apart > 0; i-- {
		if levels[i] >= apart {
			steps[i].Apart = true
			break
		}
	}
	return steps
}

// leastTold is the least effort of telling steps in blocks, tried in every way.
func leastTold(steps []Step) int {
	best := make([]int, len(steps)+1)
	for to := 1; to <= len(steps); to++ {
		best[to] = math.MaxInt
		for from := range to {
			for size := 1; size <= mostSteps; size++ {
				if (to-from)%size != 0 || size > 1 && to-from < 2*size {
					continue
				}
				again := true
				for i := from + size; i < to; i++ {
					a, b := steps[i], steps[i-size]
					again = again && a.Level == b.Level && a.Apart == b.Apart && (a.Every == b.Every || i == size)
				}
				if again {
					effort := size + 1
					if size > 1 {
						effort += 2
					}
					best[to] = min(best[to], best[from]+effort)
				}
			}
		}
	}
	return best[len(steps)]
}

// isEasy reports whether every thing has a schedule of at most two runs, and whether
// they are of the kind that the search looks at: two runs also when they are counted in
// times of the one before, of intervals one apart and about what its line gives.
func isEasy(n Nest, rows, levels []int) (easy, looked bool) {
	looked = true
	for t, k := range n.Times {
		var own []int // of the rows that the thing may have
		places, next := n.slots(), n.First
		if t > 0 {
			places = n.Times[t-1]
		}
		at := 0
		for i, row := range rows {
			for t == 0 && next < row {
				next += n.Every
				at++
			}
			if levels[i] > t {
				own = append(own, at)
			}
			if t > 0 && levels[i] >= t {
				at++
			}
		}
		if _, ok := leastEffort(Nested{Rows: rows, Levels: levels}.RowsOf(t)); !ok {
			return false, false
		}
		ratio := places / k
		least, most := math.MaxInt, 0
		for i := range own[1:] {
			least, most = min(least, own[i+1]-own[i]), max(most, own[i+1]-own[i])
		}
		if _, ok := leastEffort(own); !ok || k > 1 && (most-least > 1 || least < max(1, ratio-1) || most > ratio+1) {
			looked = false
		}
	}
	return true, looked
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
