package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// manyInSuccession is how many rows one after another may decrease at both edges
// before it is remarked on: an armhole does so for a few rows and then for every
// second, and a longer slope of the kind draws in. Common practice.
const manyInSuccession = 8

// senseNotices are the remarks on shaping rows that count right and are still not
// what hands like or cloth bears. total is how many rows the piece has; height,
// before and after are the fields that say so, and what is kept even at its ends.
func (t taper) senseNotices(rows []ShapingRow, total int, height, before, after string) []report.Notice {
	var notices []report.Notice
	noun := noun(t.round)
	if n := t.inSuccession(rows); n > manyInSuccession {
		notices = append(notices, report.Notice{Reason: DecreasedEveryRow, Field: height,
			Description: strconv.Itoa(n) + " " + noun + "s one after another decrease at both edges, which draws the edges in; " +
				"more " + noun + "s, or a bind-off at the beginning, would ease it"})
	}
	even := "a " + noun + " even"
	if rows[0].RowNumber == 1 {
		notices = append(notices, report.Notice{Reason: ShapedAtAnEnd, Field: before,
			Description: "the first " + noun + " shapes; after a cast-on, work " + even + " first"})
	}
	if rows[len(rows)-1].RowNumber == total {
		notices = append(notices, report.Notice{Reason: ShapedAtAnEnd, Field: after,
			Description: "the last " + noun + " shapes; before a bind-off, work " + even + " after it"})
	}
	return notices
}

// inSuccession is the most rows one after another that decrease at both edges.
func (t taper) inSuccession(rows []ShapingRow) int {
	if t.edges == ShapedEdgesBeginning || t.edges == ShapedEdgesEnd {
		return 0
	}
	most, n := 0, 0
	for i, r := range rows {
		before := t.start
		if i > 0 {
			before = rows[i-1].EndStitches
		}
		switch {
		case r.EndStitches > before:
			n = 0
		case i > 0 && r.RowNumber == rows[i-1].RowNumber+1:
			n++
		default:
			n = 1
		}
		most = max(most, n)
	}
	return most
}
