package schedule

import "iter"

// A Run is intervals in succession: equal ones, or two in alternation, or up to
// four in turn.
type Run struct {
	// EveryRows is the interval, or those that take turns. An interval counts
	// the row that it ends with: every 2nd row leaves one row between.
	EveryRows []int
	// Times is how often the interval, or all that take turns, come.
	Times int
}

// A Schedule is the intervals from the first time on, in order.
type Schedule []Run

// Of writes intervals as runs, equal neighbours joined.
func Of(intervals []int) Schedule {
	var s Schedule
	for _, every := range intervals {
		if last := len(s) - 1; last >= 0 && s[last].EveryRows[0] == every {
			s[last].Times++
			continue
		}
		s = append(s, Run{[]int{every}, 1})
	}
	return s
}

// Intervals writes the runs out, one interval after the other.
func (s Schedule) Intervals() []int {
	var all []int
	for _, r := range s {
		for range r.Times {
			all = append(all, r.EveryRows...)
		}
	}
	return all
}

// From are the places, or rows, that the intervals lead to, the first of them included.
func (s Schedule) From(first int) iter.Seq[int] {
	return func(yield func(int) bool) {
		at := first
		if !yield(at) {
			return
		}
		for _, r := range s {
			for range r.Times {
				for _, every := range r.EveryRows {
					if at += every; !yield(at) {
						return
					}
				}
			}
		}
	}
}

// What there is to remember of a run, beside its numbers: of two intervals that
// alternate, which is next. Own reckoning: a pair so costs more than two runs of one
// interval each, which is how the trade writes a slope that no interval gives.
const effortOfAlternating = 2

// Effort is how much of the schedule there is to remember: the numbers of every run,
// and of a run that alternates where in it one is.
func (s Schedule) Effort() int {
	effort := 0
	for _, r := range s {
		intervals := len(r.EveryRows)
		if r.lastDiffers() {
			intervals = threeInTurn
		}
		effort += runEffort(intervals)
	}
	return effort
}

// threeInTurn is how many intervals there are to remember where three or more take turns and only the last is another: "every
// row 3 times, then the 2nd" is no harder than "twice".
const threeInTurn = 3

// lastDiffers reports whether more than three intervals take turns, all but the last alike.
func (r Run) lastDiffers() bool {
	last := len(r.EveryRows) - 1
	for i := 1; i < last; i++ {
		if r.EveryRows[i] != r.EveryRows[0] {
			return false
		}
	}
	return last >= threeInTurn
}

// runEffort is that of a run of one interval, or of more in turn.
func runEffort(intervals int) int {
	if intervals > 1 {
		return intervals + 1 + effortOfAlternating
	}
	return intervals + 1
}

// Odd reports whether an interval is odd, so that rows of both sides come up.
func (s Schedule) Odd() bool {
	for _, r := range s {
		for _, every := range r.EveryRows {
			if every%2 == 1 {
				return true
			}
		}
	}
	return false
}
