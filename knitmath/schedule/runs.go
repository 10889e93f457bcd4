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
	equal := equalFrom(rows, 0)
	if equal == last {
		return last, 1, 1
	}
	if equal+equalFrom(rows, equal) == last {
		return equal, 1, 1
	}
	pairs := pairsFrom(rows, 0)
	switch {
	case pairs == last:
		return last, 2, 1
	case equal+pairsFrom(rows, equal) == last:
		return equal, 1, 2
	case equal > 1 && equal-1+pairsFrom(rows, equal-1) == last: // the last of them may belong to the pairs
		return equal - 1, 1, 2
	case pairs > 0 && pairs+equalFrom(rows, pairs) == last: // if fewer pairs would do, so do these
		return pairs, 2, 1
	}
	return 0, 0, 0
}

// equalFrom is how many intervals from a row on are equal.
func equalFrom(rows []int, from int) int {
	i := from
	for i < len(rows)-1 && interval(rows, i) == interval(rows, from) {
		i++
	}
	return i - from
}

// pairsFrom is how many intervals from a row on are two in alternation.
func pairsFrom(rows []int, from int) int {
	i := from
	for i+2 < len(rows) && interval(rows, i) == interval(rows, from) && interval(rows, i+1) == interval(rows, from+1) {
		i += 2
	}
	return i - from
}
