package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// shapedRows is a taper worked out: its shaping rows, numbered through the piece.
type shapedRows struct {
	change               int // stitches of each row, negative for decreases
	rows                 []ShapingRow
	intervals            schedule.Schedule
	rightSide, wrongSide *stitch.Instruction // the first of each side
	// least is how far the nearest choice of rows departs from the straight line, in
	// stitches, both edges together.
	least float64
	// wanting is how much an easy schedule would have to be allowed to depart further;
	// nil where the schedule is easy, or was not to be.
	wanting *float64
}

// work places the shaping rows and writes them.
func (t taper) work() shapedRows {
	w := shapedRows{change: t.rowChange()}
	nearest := t.rowNumbers(t.slotLine().Nearest())
	w.rows = t.shape(nearest, w.change)
	w.least = t.departure(w)
	numbers, intervals, easy := t.ordered(nearest)
	w.rows, w.intervals = t.shape(numbers, w.change), intervals
	w.least = min(w.least, t.departure(w)) // which may lie nearer, if it needs a row that was to be kept even
	if !easy {
		w.wanting = t.wanting()
	}
	for i, r := range w.rows {
		row := &w.rightSide
		if r.Side == stitch.WrongSide {
			row = &w.wrongSide
		}
		if *row == nil {
			*row = &stitch.Instruction{Row: t.shapingRow(r.Side), StartStitches: t.start + i*w.change, EndStitches: r.EndStitches}
		}
	}
	return w
}

// effort is how much of it there is to remember: the kinds of shaping row, and when
// they come.
func (w shapedRows) effort() int {
	kinds := 0
	for _, row := range []*stitch.Instruction{w.rightSide, w.wrongSide} {
		if row != nil {
			kinds++
		}
	}
	return kinds + w.intervals.Effort()
}

// shape says of each shaping row on which side it is worked and what it leaves.
func (t taper) shape(numbers []int, change int) []ShapingRow {
	rows := make([]ShapingRow, len(numbers))
	for i, r := range numbers {
		side := stitch.RightSide
		if !t.round {
			side = t.side(r)
		}
		rows[i] = ShapingRow{t.below + r, side, t.start + (i+1)*change}
	}
	return rows
}

// rowNumbers are the rows of slots.
func (t taper) rowNumbers(slots []int) []int {
	rows := make([]int, len(slots))
	for i, s := range slots {
		rows[i] = t.first + t.step*s
	}
	return rows
}

// slotLine is the straight line, on the slots.
//
// By row r the line has come to L(r) = k * (r - from) / span shaping rows. Number i,
// counted from 0, departs least in the row whose L(r-1) and L(r) lie evenly about
// i + 1/2, which is
//
//	r = from + 1/2 + (2i + 1) * span / 2k
//
// and for every row further from there by k / span more.
func (t taper) slotLine() schedule.Line {
	from, to := t.line()
	span := to - from
	return schedule.Line{
		Times: t.k, Places: t.slots,
		Start: 2*t.k*(from-t.first) + t.k + span, Step: 2 * span, Unit: 2 * t.k * t.step,
		Even: t.step == 1,
	}
}

// line says between the ends of which rows, of its own, the straight line runs: a
// stretch of a shaped side runs from point to point, whatever is kept even.
func (t taper) line() (from, to int) {
	if t.through != nil {
		return 0, t.rows
	}
	return t.before, t.rows - t.after
}

// shapingRowNumbers are the rows that shape, counted from the taper's first.
func (t taper) shapingRowNumbers() []int {
	numbers, _, _ := t.ordered(t.rowNumbers(t.slotLine().Nearest()))
	return numbers
}

// ordered puts the shaping rows, which lie nearest to the line, into the order that
// is asked for. It is not easy if that is the one of least effort and there is none.
func (t taper) ordered(nearest []int) (numbers []int, intervals schedule.Schedule, easy bool) {
	gaps := make([]int, t.k-1)
	for i := range gaps {
		gaps[i] = nearest[i+1] - nearest[i]
	}
	easy = true
	switch t.order {
	case IntervalSpreadInterleaved:
	case IntervalSpreadFastFirst:
		slices.Sort(gaps)
	case IntervalSpreadSlowFirst:
		slices.Sort(gaps)
		slices.Reverse(gaps)
	default:
		if first, runs, ok := t.easiestAtItsEnds(); ok {
			return following(first, runs.Intervals()), runs, true
		}
		easy = false
	}
	return following(nearest[0], gaps), schedule.Of(gaps), easy
}

// easiestAtItsEnds is the easiest schedule that keeps the first row and the last even,
// where nobody said otherwise and there is one, and the easiest of all elsewhere.
func (t taper) easiestAtItsEnds() (first int, runs schedule.Schedule, ok bool) {
	if first, runs, ok = t.easiest(t.allowed()); ok {
		return first, runs, true
	}
	free := t.freely()
	if first, runs, ok = free.easiest(free.allowed()); !ok {
		return 0, nil, false
	}
	t.excess *= endsWorth
	if inner, kept, ok := t.easiest(t.allowed()); ok {
		return inner, kept, true
	}
	return first, runs, true
}

// wanting is by how many stitches at each edge the easiest schedule there is departs
// further than the nearest rows do, up to a hundredth; nil if there is none. The first row and the
// last may be even, or not: the less of the two.
func (t taper) wanting() *float64 {
	kept := t.leastWanting()
	if !t.evenFirst && !t.evenLast {
		return kept
	}
	free := t.freely().leastWanting()
	if kept == nil || free != nil && *free < *kept {
		return free
	}
	return kept
}

// leastWanting is that of a taper as its rows are: on any of them, or on right-side rows alone.
func (t taper) leastWanting() *float64 {
	line := t.slotLine()
	least, found := line.LeastDeparture()
	if alone, fits := t.onRightSides(); fits {
		departure, ok := alone.slotLine().LeastDeparture()
		if ok && (!found || departure < least) {
			least, found = departure, true
		}
	}
	if !found {
		return nil
	}
	beyond := t.atEdge(least - line.Departure(line.Nearest()))
	return new(float64(measure.CeilQuotient(beyond, 1.0/100)) / 100)
}

// following are the rows that so many intervals after the first lead to.
func following(first int, intervals []int) []int {
	rows := []int{first}
	for _, every := range intervals {
		first += every
		rows = append(rows, first)
	}
	return rows
}

// easiest is the schedule of least effort, in rows, that departs by at most so many
// parts of the line. Where any row may shape it is one on right-side rows alone if
// that is no harder, since it has one kind of row to remember and not two.
func (t taper) easiest(departure int) (first int, runs schedule.Schedule, ok bool) {
	first, runs, ok = t.easiestOnSlots(departure)
	only, fits := t.onRightSides()
	if !fits {
		return first, runs, ok
	}
	one, alone, found := only.easiestOnSlots(departure)
	if found && (!ok || alone.Effort() <= runs.Effort() || alone.Effort() == runs.Effort()+1 && runs.Odd()) {
		return one, alone, true
	}
	return first, runs, ok
}

// onRightSides is a taper that any row may shape, on right-side rows alone, if there are enough of them.
func (t taper) onRightSides() (alone taper, fits bool) {
	if t.round || !t.anyRow {
		return t, false
	}
	t.anyRow = false
	t.placeSlots()
	return t, t.k <= t.slots
}

func (t taper) easiestOnSlots(departure int) (first int, runs schedule.Schedule, ok bool) {
	slot, slots, ok := t.slotLine().Easiest(departure)
	if !ok {
		return 0, nil, false
	}
	for _, r := range slots {
		every := make([]int, len(r.EveryRows))
		for i, n := range r.EveryRows {
			every[i] = n * t.step
		}
		runs = append(runs, schedule.Run{EveryRows: every, Times: r.Times})
	}
	return t.first + t.step*slot, runs, true
}
