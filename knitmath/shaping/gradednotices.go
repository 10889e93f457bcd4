package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// beyondNotices say in which sizes the schedule lies farther from the line than was
// asked, and what tolerance would have allowed it.
func beyondNotices(beyond []int, sizes []SizedTaper) []report.Notice {
	if len(beyond) == 0 {
		return nil
	}
	wanting := 0.0
	for _, k := range beyond {
		wanting = max(wanting, sizes[k].GreatestDepartureStitches-sizes[k].LeastDepartureStitches)
	}
	hundredths := float64(measure.CeilQuotient(wanting, 1.0/100)) / 100
	return []report.Notice{{Reason: BeyondTolerance, Field: "tolerance_stitches",
		Description: "in " + sizesWord(beyond) + " no schedule of two runs, one of which may alternate, lies that near to the straight line, " +
			"and the nearest is taken; " +
			"a tolerance of " + report.AmountOf(measure.Decimal(hundredths, 2), "stitches") + " at each edge allows it"}}
}

// sizesWord is "size 1", "sizes 1, 2 and 4" of sizes counted from 0.
func sizesWord(sizes []int) string {
	numbers := make([]string, len(sizes))
	for i, k := range sizes {
		numbers[i] = strconv.Itoa(k + 1)
	}
	if len(numbers) == 1 {
		return "size " + numbers[0]
	}
	return "sizes " + report.Listed(numbers)
}

// endNotices say in which sizes the first row shapes, or the last.
func (o GradedTaper) endNotices() []report.Notice {
	var first, last []int
	for i, s := range o.Sizes {
		if fault.Or(s.FirstShapingRowNumber, 0) == 1 {
			first = append(first, i)
		}
		if s.EvenAfterRows == 0 {
			last = append(last, i)
		}
	}
	noun := noun(o.t.round)
	var notices []report.Notice
	if len(first) > 0 {
		notices = append(notices, report.Notice{Reason: ShapedAtAnEnd, Field: "even_before_rows",
			Description: "in " + sizesWord(first) + " the first " + noun + " shapes; after a cast-on, work a " + noun + " even first"})
	}
	if len(last) > 0 {
		notices = append(notices, report.Notice{Reason: ShapedAtAnEnd, Field: "even_after_rows",
			Description: "in " + sizesWord(last) + " the last " + noun + " shapes; before a bind-off, work a " + noun + " even after it"})
	}
	return notices
}
