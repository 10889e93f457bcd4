package flat

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// A rule is a row that changes the count, in words that hold for every count: on a right-side and on a wrong-side row.
type rule [2]string

// rules are those of shapes with a centre stitch, which is marked: of a row, as room stitch has it, see spine and mitre.
var (
	spineRule = rule{"k1, M1L, k to centre st, M1R, k1, M1L, k to last st, M1R, k1",
		"p1, M1RP, p to centre st, M1LP, p1, M1RP, p to last st, M1LP, p1"}
	mitreOutRule = rule{"k to centre st, M1R, k1, M1L, k to end", "p to centre st, M1LP, p1, M1RP, p to end"}
	mitreInRule  = rule{"k to 1 st before centre st, CDD, k to end", "p to 2 sts before centre st, p2tog, p1, ssp, p to end"}
)

// of is the rule of a side.
func (r rule) of(side stitch.Side) string {
	if side == stitch.WrongSide {
		return r[1]
	}
	return r[0]
}

// leastRuled is how many rows a rule is worth. Own choice.
const leastRuled = 3

// rule is that of the piece, if its rows follow one.
func (o Shape) rule() (r rule, ok bool) {
	switch {
	case len(o.Rows) < leastRuled:
		return rule{}, false
	case o.of.form == FormTriangleFromTop:
		return spineRule, true
	case o.of.form != FormMitredSquare:
		return rule{}, false
	case o.of.inwards:
		return mitreInRule, true
	}
	return mitreOutRule, true
}

// byRule tells the rows by their rule, once for each side that has one, and when it is worked.
func (o Shape) byRule(r rule) []string {
	first, name := o.Rows[0], "increase row"
	if o.of.inwards {
		name = "decrease row"
	}
	d := []string{"Mark the centre stitch, the " + report.Ordinal(o.StartStitches/2+1) + ", and move the mark up with the work."}
	d = report.AppendEven(d, noun(false), 1, first.RowNumber-1)
	text := "Row " + strconv.Itoa(first.RowNumber) + " (" + first.Side.String() + ", " + name + "): " + r.of(first.Side)
	again, numbers := "the "+name, make([]int, len(o.Rows))
	for i, row := range o.Rows {
		numbers[i] = row.RowNumber
	}
	if other := o.otherSide(); other != stitch.SideUnspecified {
		text += "; on " + other.String() + " rows " + r.of(other)
		again += ", as it is given for the side that faces,"
	} else {
		text += " (" + report.CountOf(first.Instruction.EndStitches, "stitches") + ")"
	}
	between, end := ", and the rows between even", " ("+report.CountOf(o.EndStitches, "stitches")+")."
	last := numbers[len(numbers)-1]
	if runs := schedule.RunsInTurn(numbers); len(runs) <= mostRuns {
		d = append(d, text+".", "Work "+again+" "+shaping.IntervalWords(runs, noun(false))+between+end)
	} else {
		d = append(d, text+".", "Work "+again+" on rows "+grouped(numbers[1:])+" too"+between+end)
	}
	return report.AppendEven(d, noun(false), last+1, o.TotalRows)
}

// mostRuns is how many runs of intervals are told as such. Own choice.
const mostRuns = 2

// otherSide is the side that the first row that changes the count does not have, if a later one has.
func (o Shape) otherSide() stitch.Side {
	for _, row := range o.Rows {
		if row.Side != o.Rows[0].Side {
			return row.Side
		}
	}
	return stitch.SideUnspecified
}

// grouped is "5-7, 9, 10 and 12-14": numbers of which three and more in succession are told by the first and the last.
func grouped(numbers []int) string {
	var parts []string
	for i := 0; i < len(numbers); {
		to := i
		for to+1 < len(numbers) && numbers[to+1] == numbers[to]+1 {
			to++
		}
		if to-i < 2 {
			parts = append(parts, strconv.Itoa(numbers[i]))
			i++
			continue
		}
		parts = append(parts, strconv.Itoa(numbers[i])+"-"+strconv.Itoa(numbers[to]))
		i = to + 1
	}
	return report.Listed(parts)
}
