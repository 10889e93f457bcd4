package shaping

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// manyIntervals is how many different intervals in a row are still easier to
// follow as words than as a list of row numbers.
const manyIntervals = 6

// manyNumbers is how many numbers of rows in a row are: beyond them even many intervals are
// easier to follow, where they are half as many.
const manyNumbers = 30

// shapedDirections write the rows of a piece of so many, stretch after stretch: each
// first shaping row where it is worked, and when it is repeated.
//
//	Work 4 rows even.
//	Row 5 (RS, decrease row): k1, ssk, k to last 3 sts, k2tog, k1.
//	Repeat the decrease row every 4th row 6 more times: 76 stitches.
//	Work 3 rows even.
//
// sides says whether row numbers carry their side. Stretches without a row are straight.
func shapedDirections(stretches []shapedRows, rows int, round, sides bool) (d []string) {
	worked := 0
	evenTo := func(row int) {
		if even := row - worked; even > 0 {
			d = append(d, "Work "+report.CountOf(even, noun(round)+"s")+" even.")
		}
	}
	for _, w := range stretches {
		if len(w.rows) == 0 {
			continue
		}
		evenTo(w.rows[0].RowNumber - 1)
		d = append(d, w.directions(round, sides)...)
		worked = w.rows[len(w.rows)-1].RowNumber
	}
	evenTo(rows)
	return d
}

// directions write the shaping rows of one stretch.
func (w shapedRows) directions(round, sides bool) []string {
	row, change := noun(round), "increase"
	if w.change < 0 {
		change = "decrease"
	}
	first := w.rows[0]
	here, other := w.rightSide, w.wrongSide
	if first.Side == stitch.WrongSide {
		here, other = other, here
	}
	line := strings.ToUpper(row[:1]) + row[1:] + " " + strconv.Itoa(first.RowNumber)
	if round {
		line += " (" + change + " " + row + "): " + here.Row.Text()
	} else {
		line += " (" + first.Side.String() + ", " + change + " " + row + "): " + here.Row.Text()
	}
	claim := ": " + report.CountOf(w.rows[len(w.rows)-1].EndStitches, "stitches") + "."
	if len(w.intervals) == 0 {
		return []string{line + claim}
	}
	again := "Repeat the " + change + " " + row
	if other != nil {
		line += "; on " + first.Side.Other().String() + " rows " + other.Row.Text()
		again += ", as it is given for the side that faces,"
	}
	return []string{line + ".", again + " " + intervalWords(w.intervals, w.rows, row, sides) + claim}
}

// intervalWords writes when the shaping row is worked again: "every 6th row 8 more
// times, then every 4th row 5 times", or the numbers of the rows where that would be
// hard to follow and no shorter. rows are all shaping rows, the first included.
func intervalWords(intervals schedule.Schedule, rows []ShapingRow, noun string, sides bool) string {
	if n := len(rows) - 1; len(intervals) > manyIntervals && (n <= manyNumbers || n <= 2*len(intervals)) {
		numbers := make([]string, len(rows)-1)
		for i, r := range rows[1:] {
			numbers[i] = r.number(sides)
		}
		return "on " + noun + "s " + report.Listed(numbers)
	}
	return IntervalWords(intervals, noun)
}

// IntervalWords writes when a row that was worked once is worked again: "every 6th row 8
// more times, then every 4th row 5 times".
func IntervalWords(intervals schedule.Schedule, noun string) string {
	return runWords(intervals, noun, true)
}

func runWords(intervals schedule.Schedule, noun string, more bool) string {
	parts := make([]string, len(intervals))
	for i, r := range intervals {
		parts[i] = everyWords(r, noun, more && i == 0)
	}
	return strings.Join(parts, ", then ")
}

// everyWords is "every 6th row 8 times", or "every 6th and 8th row alternately 4 times
// each" of a pair, or "[every row twice, then on the following 2nd row] 12 times" of more in turn, and of a pair with the
// next row, since "every row" leaves none for the other. The first run is so many times more than the row was worked
// already; what is in brackets was not worked before, and is never "more".
func everyWords(r schedule.Run, noun string, more bool) string {
	often := report.Times(r.Times)
	switch {
	case r.Times > 1 && (len(r.EveryRows) > 2 || len(r.EveryRows) == 2 && slices.Min(r.EveryRows) == 1):
		return "[" + runWords(schedule.Of(r.EveryRows), noun, false) + "] " + often
	case r.Times == 1 && len(r.EveryRows) == 1 && r.EveryRows[0] == 1:
		return "on the next " + noun
	case r.Times == 1 && len(r.EveryRows) > 1: // nothing comes again
		return runWords(schedule.Of(r.EveryRows), noun, more)
	case r.Times == 1:
		return "on the following " + report.Ordinal(r.EveryRows[0]) + " " + noun
	case more && r.Times > 2:
		often = strings.Replace(often, "times", "more times", 1)
	case more:
		often += " more"
	}
	if len(r.EveryRows) == 2 {
		return every(report.Ordinal(r.EveryRows[0])+" and "+report.Ordinal(r.EveryRows[1]), noun) + " alternately " + often + " each"
	}
	return every(report.Ordinal(r.EveryRows[0]), noun) + " " + often
}

// every is "every 8th row", and "every row" of the 1st.
func every(ordinal, noun string) string {
	if ordinal == report.Ordinal(1) {
		return "every " + noun
	}
	return "every " + ordinal + " " + noun
}

// shapingDirection is "Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1."
func shapingDirection(change, noun string, side stitch.Side, round bool, row *stitch.Instruction) string {
	s := change + " " + noun
	if !round {
		s += " (" + side.String() + ")"
	}
	return s + ": " + row.Row.Text() + "."
}
