package flat

import (
	"slices"
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

// rule is that of the rows that follow one.
func (o Shape) rule() rule {
	switch {
	case o.of.form == FormTriangleFromTop:
		return spineRule
	case o.of.edged():
		from, to := o.of.step+pointStitches+2, pointStitches+2
		if !o.of.inwards {
			from, to = to, from
		}
		text := func(side stitch.Side) string { return stitch.RowOf(edgeRow(from, to, side)...).Text() }
		return rule{text(stitch.RightSide), text(stitch.WrongSide)}
	case o.of.inwards:
		return mitreInRule
	}
	return mitreOutRule
}

// cornered reports whether a piece in rows has a centre stitch.
func (p *piece) cornered() bool { return p.form == FormTriangleFromTop || p.form == FormMitredSquare }

// edged reports whether a piece is shaped at both edges.
func (p *piece) edged() bool {
	return p.form == FormTriangleFromPoint || p.form == FormTriangleFromSide
}

// parts are the rows that change the count: those that follow a rule, if there are any, and what comes before and after them.
func (o Shape) parts() (before, ruled, after []Row) {
	if !o.of.cornered() && !o.of.edged() {
		return o.Rows, nil, nil
	}
	narrowest := pointStitches
	if o.of.edged() && o.of.inwards { // both edge stitches, and between them what two decreases leave
		narrowest += 2
	}
	follows := func(r Row) bool {
		few, many := r.Instruction.StartStitches, r.Instruction.EndStitches
		if o.of.inwards {
			few, many = many, few
		}
		return many-few == o.of.step && few >= narrowest
	}
	from := slices.IndexFunc(o.Rows, follows)
	if from < 0 {
		return o.Rows, nil, nil
	}
	to := from
	for to < len(o.Rows) && follows(o.Rows[to]) {
		to++
	}
	if to-from < leastRuled {
		return o.Rows, nil, nil
	}
	return o.Rows[:from], o.Rows[from:to], o.Rows[to:]
}

// byRule tells the rows by their rule, once for each side that has one, and when it is worked, after so many rows.
func (o Shape) byRule(rows []Row, done int) (d []string) {
	r, first, name := o.rule(), rows[0], "increase row"
	if o.of.inwards {
		name = "decrease row"
	}
	if o.of.cornered() {
		d = append(d, "Mark the centre stitch, the "+report.Ordinal(o.StartStitches/2+1)+", and move the mark up with the work.")
	}
	d = report.AppendEven(d, noun(false), done+1, first.RowNumber-1)
	text := "Row " + strconv.Itoa(first.RowNumber) + " (" + first.Side.String() + ", " + name + "): " + r.of(first.Side)
	again, numbers := "the "+name, make([]int, len(rows))
	for i, row := range rows {
		numbers[i] = row.RowNumber
	}
	if other := otherSide(rows); other != stitch.SideUnspecified {
		text += "; on " + other.String() + " rows " + r.of(other)
		again += ", as it is given for the side that faces,"
	} else {
		text += " (" + report.CountOf(first.Instruction.EndStitches, "stitches") + ")"
	}
	between, end := ", and the rows between even", " ("+report.CountOf(rows[len(rows)-1].Instruction.EndStitches, "stitches")+")."
	runs := schedule.RunsInTurn(numbers)
	when := shaping.IntervalWords(runs, noun(false))
	if listed := "on rows " + grouped(numbers[1:]) + " too"; len(runs) > mostRuns && len(listed) <= len(when) {
		when = listed
	}
	return append(d, text+".", "Work "+again+" "+when+between+end)
}

// mostRuns is how many runs of intervals are always told as such; more, where that is shorter than a list of the rows. Own choice.
const mostRuns = 2

// otherSide is the side that the first row that changes the count does not have, if a later one has.
func otherSide(rows []Row) stitch.Side {
	for _, row := range rows {
		if row.Side != rows[0].Side {
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
