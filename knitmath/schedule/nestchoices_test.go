package schedule

import (
	"math"
	"reflect"
)

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
			for size := 1; size <= 10; size++ {
				if (to-from)%size != 0 || size > 1 && to-from < 2*size || size > 4 && oddOnes(steps[from:from+size]) != 1 {
					continue
				}
				again := true
				for i := from + size; i < to; i++ {
					a, b := steps[i], steps[i-size]
					again = again && a.Level == b.Level && a.Apart == b.Apart && (a.Every == b.Every || i == size)
				}
				if again {
					effort := min(size, 4) + 1
					if size > 4 {
						effort = 4
					}
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

// oddOnes is how many steps do other things than most, or one in a way of its own.
func oddOnes(steps []Step) int {
	odd := len(steps)
	for level := range mostThings + 1 {
		others := 0
		for _, s := range steps {
			if s.Level != level || s.Apart {
				others++
			}
		}
		odd = min(odd, others)
	}
	return odd
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
