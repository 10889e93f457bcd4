package schedule

// Runs writes the intervals between rows as one run or two, of which one alternates
// at most, with as little to remember as can be; as runs of equal intervals if no two
// runs are enough.
func Runs(rows []int) Schedule {
	if len(rows) < 2 {
		return nil
	}
	cut, first, second := halves(rows)
	if cut == 0 {
		intervals := make([]int, len(rows)-1)
		for i := range intervals {
			intervals[i] = rows[i+1] - rows[i]
		}
		return Of(intervals)
	}
	var s Schedule
	for _, part := range []struct{ from, to, size int }{{0, cut, first}, {cut, len(rows) - 1, second}} {
		if part.from == part.to {
			continue
		}
		run := Run{Times: (part.to - part.from) / part.size}
		for i := part.from; i < part.from+part.size; i++ {
			run.EveryRows = append(run.EveryRows, rows[i+1]-rows[i])
		}
		s = append(s, run)
	}
	return s
}

// twoRuns reports whether the intervals between rows are two runs at most, of which one
// alternates at most.
func twoRuns(rows []int) bool {
	cut, _, _ := halves(rows)
	return cut > 0 || len(rows) < 2
}

// halves is after how many intervals a second run begins, and whether each run is of
// single intervals or of pairs; all of them if one run is enough, and 0 if no two are.
func halves(rows []int) (cut, first, second int) {
	last := len(rows) - 1
	equal, pairs := runFrom(rows, 0)
	if equal == last {
		return last, 1, 1
	}
	afterEqual, pairsAfterEqual := runFrom(rows, equal)
	switch {
	case equal+afterEqual == last:
		return equal, 1, 1
	case pairs == last:
		return last, 2, 1
	case equal+pairsAfterEqual == last:
		return equal, 1, 2
	}
	if equal > 1 { // the last of them may belong to the pairs
		if _, p := runFrom(rows, equal-1); equal-1+p == last {
			return equal - 1, 1, 2
		}
	}
	for cut := pairs; cut > 0; cut -= 2 {
		if e, _ := runFrom(rows, cut); cut+e == last {
			return cut, 2, 1
		}
	}
	return 0, 0, 0
}

// runFrom is how many intervals from a row on are equal, and how many are two in
// alternation.
func runFrom(rows []int, from int) (equal, pairs int) {
	interval := func(i int) int { return rows[i+1] - rows[i] }
	last := len(rows) - 1
	for i := from; i < last && interval(i) == interval(from); i++ {
		equal++
	}
	for i := from; i+1 < last && interval(i) == interval(from) && interval(i+1) == interval(from+1); i += 2 {
		pairs += 2
	}
	return equal, pairs
}
