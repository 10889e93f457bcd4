package schedule

import "slices"

// RunsInTurn is [Runs], but where two runs of those kinds are not enough it is two of up to
// mostSteps intervals in turn.
func RunsInTurn(rows []int) Schedule { return runsOf(rows, mostSteps) }

// RunsInLongTurn is [RunsInTurn], but where those are not enough it is two of up to mostAlike
// intervals in turn. More than mostSteps come again at least once.
func RunsInLongTurn(rows []int) Schedule {
	if twoTurns(rows, mostSteps) {
		return runsOf(rows, mostSteps)
	}
	return runsOf(rows, mostAlike)
}

// runsOf is two runs of up to so many intervals in turn, or else runs of equal ones.
func runsOf(rows []int, most int) Schedule {
	if twoRuns(rows) {
		return Runs(rows)
	}
	cut, first, second := turns(rows, most)
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

// twoTurns reports whether the intervals between rows are two runs at most, of up to so many
// intervals in turn.
func twoTurns(rows []int, most int) bool {
	if len(rows) < 2 {
		return true
	}
	last := len(rows) - 1
	from := turnsFrom(rows, most)
	earliest := slices.Min(from[1 : most+1])
	for size := 1; size <= most; size++ {
		to := size
		for to+size <= last && again(rows, to, size) {
			to += size
		}
		for ; to >= max(size, earliest) && to <= last; to -= size {
			if size > mostSteps && to == size {
				break
			}
			for other := range most + 1 {
				if runsOn(to, last, other, from[other]) {
					return true
				}
			}
		}
	}
	return false
}

// turns is after how many intervals a second run begins and how many intervals take turns in
// each, with the least to remember; all intervals if one run is enough, and 0 if no two are.
func turns(rows []int, most int) (cut, first, second int) {
	last := len(rows) - 1
	from := turnsFrom(rows, most)
	effort := 0
	for size := 1; size <= most; size++ {
		for to := size; to <= last && (to == size || again(rows, to-size, size)); to += size {
			if size > mostSteps && to == size {
				continue
			}
			for other := 0; other <= most; other++ {
				e := blockEffort(size)
				if other > 0 {
					e += blockEffort(other)
				}
				if runsOn(to, last, other, from[other]) && (cut == 0 || e < effort) {
					cut, first, second, effort = to, size, other, e
				}
			}
		}
	}
	return cut, first, second
}

// runsOn reports whether intervals from one to the last are a run of so many in turn, which they are from an
// interval on; none are if the last was reached.
func runsOn(to, last, size, from int) bool {
	if size == 0 || to == last {
		return size == 0 && to == last
	}
	return to >= from && (last-to)%size == 0 && (size <= mostSteps || last-to > size)
}

// turnsFrom is, for each number of intervals that may take turns, the first interval from
// which on all come again so many later.
func turnsFrom(rows []int, most int) (from [mostAlike + 1]int) {
	for size := 1; size <= most; size++ {
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
