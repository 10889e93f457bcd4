package curve

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Wording is where condensed directions stand and what they call the edge.
type Wording struct {
	// FirstRow and LastRow are the rows that they tell.
	FirstRow, LastRow int
	FirstSide         stitch.Side
	// Start is the number of stitches before them.
	Start int
	// Edge names a single edge at which stitches are decreased: "neck edge". Without a
	// name that is the beg or end of the rows that do, or, where rows of both sides do, the
	// right edge or the left.
	Edge string
}

// Condensed tells a plan as the trade prints it: bind-offs one after another, decreases
// by intervals, and the count after each.
//
//	BO 4 sts at beg of next 2 rows, 3 sts at beg of next 4 rows: 70 stitches.
//	Dec 1 st each end of every RS row 5 times: 60 stitches.
//	Work 3 rows even.
func (p Plan) Condensed(w Wording) []string {
	c := condenser{Wording: w, worked: w.FirstRow - 1, count: w.Start, both: p.Right != nil && p.Left != nil, left: p.Right == nil}
	for i := 0; i < len(p.Runs); {
		if p.Runs[i].Kind.Groups() {
			i = c.groups(p.Runs, i)
			continue
		}
		c.singles(p.Runs[i])
		i++
	}
	c.even(w.LastRow - c.worked)
	return c.lines
}

// condenser writes the lines, run after run.
type condenser struct {
	Wording
	both, left    bool
	worked, count int // the last row told, and the stitches after it
	lines         []string
}

// even tells rows that shape nothing.
func (c *condenser) even(rows int) {
	if rows > 0 {
		c.lines = append(c.lines, "Work "+report.CountOf(rows, "rows")+" even.")
		c.worked += rows
	}
}

// change is how many stitches more there are after a run.
func (c *condenser) change(r Run) int {
	n := r.Times * Step{Kind: r.Kind, Stitches: r.Stitches}.change()
	if c.both {
		n *= 2
	}
	return n
}

// tell writes a line with the count after it.
func (c *condenser) tell(line string) {
	c.lines = append(c.lines, line+": "+report.CountOf(c.count, "stitches")+".")
}

// groups tells bind-offs, or cast-ons, that follow on one another, from a run on. It
// gives the run after them.
func (c *condenser) groups(runs []Run, i int) int {
	c.even(runs[i].FirstRowNumber - 1 - c.worked)
	line := "BO "
	if runs[i].Kind.Gains() {
		line = "CO "
	}
	for first := i; i < len(runs) && runs[i].Kind == runs[first].Kind; i++ {
		if i > first {
			if runs[i].FirstRowNumber != runs[i-1].lastRow()+2 {
				break
			}
			line += ", "
		}
		r := runs[i]
		line += sts(r.Stitches) + " at beg of " + c.rowsOf(r, i == first)
		c.count += c.change(r)
		c.worked = r.lastRow()
		if c.both {
			c.worked++
		}
	}
	c.tell(line)
	return i
}

// rowsOf is "next 4 rows" of both edges; of one, "next RS row and foll 2 alt rows" or,
// after others, "foll alt row".
func (c *condenser) rowsOf(r Run, first bool) string {
	switch {
	case c.both:
		return "next " + report.CountOf(2*r.Times, "rows")
	case !first:
		return follAlt(r.Times)
	case r.Times == 1:
		return "next " + c.side() + " row"
	}
	return "next " + c.side() + " row and " + follAlt(r.Times-1)
}

// side is that of the rows that begin at the edge.
func (c *condenser) side() string {
	if c.left {
		return stitch.WrongSide.String()
	}
	return stitch.RightSide.String()
}

// follAlt is "foll alt row", or "foll 3 alt rows".
func follAlt(times int) string {
	if times == 1 {
		return "foll alt row"
	}
	return "foll " + strconv.Itoa(times) + " alt rows"
}

// sts is "1 st", or "3 sts".
func sts(n int) string {
	if n == 1 {
		return "1 st"
	}
	return strconv.Itoa(n) + " sts"
}
