package schedule

// RunsInTurn is [Runs], but where two runs of those kinds are not enough it is two of up to
// mostSteps intervals in turn.
func RunsInTurn(rows []int) Schedule {
	if twoRuns(rows) {
		return Runs(rows)
	}
	cut, first, second := turns(rows)
	if cut == 0 {
		return Runs(rows)
	}
	s := Schedule{turnRun(rows, 0, cut, first)}
	if cut < len(rows)-1 {
		s = append(s, turnRun(rows, cut, len(rows)-1, second))
	}
	return s
}

// turnRun is the run of so many intervals in turn from one row to another.
func turnRun(rows []int, from, to, size int) Run {
	run := Run{Times: (to - from) / size}
	for i := from; i < from+size; i++ {
		run.EveryRows = append(run.EveryRows, rows[i+1]-rows[i])
	}
	return run
}

// twoTurns reports whether the intervals between rows are two runs at most, of up to mostSteps
// intervals in turn.
func twoTurns(rows []int) bool {
	cut, _, _ := turns(rows)
	return cut > 0 || len(rows) < 2
}

// turns is after how many intervals a second run begins and how many intervals take turns in
// each, with the least to remember; all intervals if one run is enough, and 0 if no two are.
func turns(rows []int) (cut, first, second int) {
	last := len(rows) - 1
	from := turnsFrom(rows)
	effort := 0
	for size := 1; size <= mostSteps; size++ {
		for to := size; to <= last; to += size {
			if to > size && !again(rows, to-size, size) {
				break
			}
			if to == last && (cut == 0 || runEffort(size) < effort) {
				cut, first, second, effort = last, size, 0, runEffort(size)
			}
			for other := 1; other <= mostSteps && to < last; other++ {
				e := runEffort(size) + runEffort(other)
				if to >= from[other] && (last-to)%other == 0 && (cut == 0 || e < effort) {
					cut, first, second, effort = to, size, other, e
				}
			}
		}
	}
	return cut, first, second
}

// turnsFrom is, for each number of intervals that may take turns, the first interval from
// which on all come again so many later.
func turnsFrom(rows []int) (from [mostSteps + 1]int) {
	for size := 1; size <= mostSteps; size++ {
		from[size] = max(0, len(rows)-1-size)
		for i := from[size] - 1; i >= 0 && interval(rows, i) == interval(rows, i+size); i-- {
			from[size] = i
		}
	}
	return from
}

func interval(rows []int, i int) int { return rows[i+1] - rows[i] }

// again reports whether so many intervals are those before them again.
func again(rows []int, from, size int) bool {
	for i := from; i < from+size; i++ {
		if interval(rows, i) != interval(rows, i-size) {
			return false
		}
	}
	return true
}
