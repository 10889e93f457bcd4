package shaping

import (
	"math"
	"sort"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// shapedRows is a taper worked out: its shaping rows, numbered through the piece.
type shapedRows struct {
	change               int // stitches of each row, negative for decreases
	rows                 []ShapingRow
	intervals            []IntervalRun
	rightSide, wrongSide *stitch.Instruction // the first of each side
}

// work places the shaping rows and writes them.
func (t taper) work() shapedRows {
	w := shapedRows{change: t.perRow(), rows: make([]ShapingRow, t.k)}
	if t.end < t.start {
		w.change = -t.perRow()
	}
	numbers, count := t.shapingRowNumbers(), t.start
	for i, r := range numbers {
		side, row := stitch.RightSide, &w.rightSide
		if !t.round && t.side(r) == stitch.WrongSide {
			side, row = stitch.WrongSide, &w.wrongSide
		}
		if *row == nil {
			*row = &stitch.Instruction{Row: t.shapingRow(side), StartStitches: count, EndStitches: count + w.change}
		}
		count += w.change
		w.rows[i] = ShapingRow{t.below + r, side, count}
		if i > 0 {
			w.intervals = appendInterval(w.intervals, r-numbers[i-1])
		}
	}
	return w
}

func appendInterval(runs []IntervalRun, every int) []IntervalRun {
	if last := len(runs) - 1; last >= 0 && runs[last].EveryRows == every {
		runs[last].Times++
		return runs
	}
	return append(runs, IntervalRun{every, 1})
}

// shapingRowNumbers places the k shaping rows on the slots.
func (t taper) shapingRowNumbers() []int {
	slots := make([]int, t.k)
	for i := range slots {
		slots[i] = spread.Place(i, t.k, t.slots, spread.Centred)
	}
	if t.order == IntervalSpreadSlowFirst || t.order == IntervalSpreadFastFirst {
		gaps := make([]int, t.k-1)
		for i := range gaps {
			gaps[i] = slots[i+1] - slots[i]
		}
		sort.Ints(gaps)
		for i := range gaps {
			gap := gaps[i]
			if t.order == IntervalSpreadSlowFirst {
				gap = gaps[len(gaps)-1-i]
			}
			slots[i+1] = slots[i] + gap
		}
	}
	for i, s := range slots {
		slots[i] = t.first + t.step*s
	}
	return slots
}

// departure is the greatest distance between the stitches after a row and the
// straight line from start to end, which runs from the end of one row to the end
// of another. It is reached either after a shaping row or just before one, or at
// an end.
func (t taper) departure(w shapedRows, from, to int) float64 {
	span := float64(to - from)
	line := func(row int) float64 {
		part := float64(row-from) / span
		return float64(t.start) + float64(t.end-t.start)*min(max(part, 0), 1)
	}
	worst, count := 0.0, t.start
	for _, r := range w.rows {
		row := r.RowNumber - t.below
		worst = max(worst, math.Abs(float64(count)-line(row-1)))
		count = r.EndStitches
		worst = max(worst, math.Abs(float64(count)-line(row)))
	}
	return worst
}

// manyIntervals is how many different intervals in a row are still easier to
// follow as words than as a list of row numbers.
const manyIntervals = 6

// directions write the shaping rows, and when they are worked:
// "Work the decrease row once, as row 5, then every 4th row 6 times: 76 stitches".
// sides says whether row numbers carry their side.
func (w shapedRows) directions(round, sides bool) (instructions []string, when string) {
	row, change := noun(round), "Increase"
	if w.change < 0 {
		change = "Decrease"
	}
	if w.rightSide != nil {
		instructions = append(instructions, shapingDirection(change, row, stitch.RightSide, round, w.rightSide))
	}
	if w.wrongSide != nil {
		instructions = append(instructions, shapingDirection(change, row, stitch.WrongSide, round, w.wrongSide))
	}
	when = "Work the " + strings.ToLower(change) + " " + row
	if w.rightSide != nil && w.wrongSide != nil {
		when += " of the side that faces"
	}
	when += " once, as " + row + " " + w.rows[0].number(sides)
	if len(w.intervals) > 0 {
		when += ", then " + intervalWords(w.intervals, w.rows, row, sides)
	}
	return instructions, when + ": " + report.CountOf(w.rows[len(w.rows)-1].EndStitches, "stitches")
}

// intervalWords writes when the shaping row is worked again: "every 6th row 8
// times, then every 4th row 5 times", or the numbers of the rows where that
// would be hard to follow. rows are all shaping rows, the first included.
func intervalWords(intervals []IntervalRun, rows []ShapingRow, noun string, sides bool) string {
	if len(intervals) > manyIntervals {
		parts := make([]string, len(rows)-1)
		for i, r := range rows[1:] {
			parts[i] = r.number(sides)
		}
		return "on " + noun + "s " + strings.Join(parts, ", ")
	}
	parts := make([]string, len(intervals))
	for i, r := range intervals {
		parts[i] = "every " + report.Ordinal(r.EveryRows) + " " + noun + " " + report.Times(r.Times)
		if r.EveryRows == 1 {
			parts[i] = "every " + noun + " " + report.Times(r.Times)
		}
	}
	return strings.Join(parts, ", then ")
}

// shapingDirection is "Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1."
func shapingDirection(change, noun string, side stitch.Side, round bool, row *stitch.Instruction) string {
	s := change + " " + noun
	if !round {
		s += " (" + side.String() + ")"
	}
	return s + ": " + row.Row.Text() + "."
}
