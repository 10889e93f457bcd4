package schedule

// A Size is what one of several sizes asks of a schedule that all share.
type Size struct {
	Line Line
	// Departure is how far it may depart from its line, in parts.
	Departure int
}

// A GradedRun is a run of equal intervals, or of two in alternation, with its numbers for
// every size.
type GradedRun struct {
	// EveryRows is the interval in each size. Where a size does without the run it is
	// that of a neighbour.
	EveryRows []int
	// AlternateRows is the second of two intervals that alternate, in each size; nil
	// where the run does not alternate.
	AlternateRows []int
	// Times is how often it comes in each size; 0 where a size does without it.
	Times []int
}

// A Graded is a schedule of at most two runs for several sizes: "every 8th (8th, 6th,
// 6th) row 5 (6, 7, 8) times, then every 6th (6th, 4th, 4th) row 3 (2, 0, 4) times".
type Graded struct {
	// Firsts are the places of the first thing in each size.
	Firsts []int
	Runs   []GradedRun
	// Effort is what there is to remember in all sizes, and what it costs to print them
	// in one sentence.
	Effort int

	price price
}

// What a form for several sizes costs, on the scale on which a run costs 2 (see
// [Schedule.Effort]). Own reckoning, in this order: a 0 is what readers stumble over
// most, so that it costs more than the run that it saves; an interval that changes
// between two sizes makes a list of what would be one number, and costs as much as a
// run; a run that comes once is a number more to remember for a single row.
const (
	effortOfZero   = 3
	effortOfChange = 2
	effortOfOnce   = 1
)

// Grade finds one schedule for all sizes, of a form. Of every size it looks at
// the schedules of that form that depart from its line by no more than its departure,
// and takes the one of least effort; of equal ones that with the smaller sum of
// departures, counted in things, and a quarter of a thing more for each size with odd
// intervals where even ones are liked better. Equal intervals lie within one of the two
// that the line of the size lies between; those that alternate are as in [Line.Easiest].
//
// It is false where a size has no such schedule: its departure must be
// [Line.LeastGraded] at least, which is enough where no run alternates.
//
// Dynamic programming over the sizes: what it takes is in proportion to the things of
// all sizes together, and to the third power of the sizes. Source: own derivation.
func Grade(sizes []Size, kind GradedForm) (Graded, bool) {
	all := make([]sizeChoices, len(sizes))
	for i, s := range sizes {
		all[i] = s.choices(kind)
	}
	var best chosen
	var found bool
	if kind.alternates() {
		best, found = ofTurns(all, kind)
	} else {
		best, found = ofOneRun(all)
		two, ok := ofTwoRuns(all, kind == LongFirst)
		if ok && (!found || two.sum.less(best.sum)) {
			best, found = two, true
		}
	}
	if !found {
		return Graded{}, false
	}
	return best.graded(), true
}

// Easier reports whether it takes less effort than another form, or as much and
// departs less.
func (g Graded) Easier(than Graded) bool { return g.price.less(than.price) }

// Of is the schedule of one size, counted from 0.
func (g Graded) Of(size int) Schedule {
	var s Schedule
	for _, r := range g.Runs {
		if r.Times[size] == 0 {
			continue
		}
		every := []int{r.EveryRows[size]}
		if r.AlternateRows != nil {
			every = append(every, r.AlternateRows[size])
		}
		s = append(s, Run{every, r.Times[size]})
	}
	return s
}

// InRows is the schedule with so many rows to a place.
func (g Graded) InRows(rows int) Graded {
	scaled := func(places []int) []int {
		if places == nil {
			return nil
		}
		in := make([]int, len(places))
		for i, n := range places {
			in[i] = rows * n
		}
		return in
	}
	runs := make([]GradedRun, len(g.Runs))
	for i, r := range g.Runs {
		runs[i] = GradedRun{scaled(r.EveryRows), scaled(r.AlternateRows), r.Times}
	}
	g.Runs = runs
	return g
}

// LeastGraded is how far from the line the nearest schedule of a form lies that [Grade]
// looks at.
func (l Line) LeastGraded(kind GradedForm) int {
	least := -1
	l.try(kind, func(_ form, _, off int) {
		if least < 0 || off < least {
			least = off
		}
	})
	return least
}
