package shaping

import (
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// manyIntervals is how many different intervals in a row are still easier to
// follow as words than as a list of row numbers.
const manyIntervals = 6

// directions write the shaping rows, and when they are worked:
// "Work the decrease row on row 5, then every 4th row 6 times: 76 stitches".
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
	when += " on " + row + " " + w.rows[0].number(sides)
	if len(w.intervals) > 0 {
		when += ", then " + intervalWords(w.intervals, w.rows, row, sides)
	}
	return instructions, when + ": " + report.CountOf(w.rows[len(w.rows)-1].EndStitches, "stitches")
}

// intervalWords writes when the shaping row is worked again: "every 6th row 8
// times, then every 4th row 5 times", or the numbers of the rows where that
// would be hard to follow. rows are all shaping rows, the first included.
func intervalWords(intervals schedule.Schedule, rows []ShapingRow, noun string, sides bool) string {
	if len(intervals) > manyIntervals {
		parts := make([]string, len(rows)-1)
		for i, r := range rows[1:] {
			parts[i] = r.number(sides)
		}
		return "on " + noun + "s " + strings.Join(parts, ", ")
	}
	parts := make([]string, len(intervals))
	for i, r := range intervals {
		parts[i] = everyWords(r, noun)
	}
	return strings.Join(parts, ", then ")
}

// everyWords is "every 6th row 8 times", or "every 6th and 8th row alternately, 4
// times each" of a pair.
func everyWords(r schedule.Run, noun string) string {
	every := make([]string, len(r.EveryRows))
	for i, n := range r.EveryRows {
		every[i] = report.Ordinal(n)
		if n == 1 && len(r.EveryRows) == 1 {
			return "every " + noun + " " + report.Times(r.Times)
		}
	}
	s := "every " + strings.Join(every, " and ") + " " + noun + " "
	if len(every) > 1 {
		return s + "alternately, " + report.Times(r.Times) + " each"
	}
	return s + report.Times(r.Times)
}

// shapingDirection is "Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1."
func shapingDirection(change, noun string, side stitch.Side, round bool, row *stitch.Instruction) string {
	s := change + " " + noun
	if !round {
		s += " (" + side.String() + ")"
	}
	return s + ": " + row.Row.Text() + "."
}
