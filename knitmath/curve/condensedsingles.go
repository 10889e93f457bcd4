package curve

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// farthest is how many rows on a single row is still found by counting to it.
const farthest = 10

// afterEven tells the rows worked even before a run, where its words cannot hold them. It is
// how many rows after the last told the run begins, and whether on every right-side row.
func (c *condenser) afterEven(r Run) (after int, onRight bool) {
	after = r.FirstRowNumber - c.worked
	onRight = r.EveryRows == 2 && after <= 2 && c.rightSide(r)
	if after != r.EveryRows && !onRight && (r.Times > 1 || after == 2 || after > farthest) {
		c.even(after - 1)
		after = 1
		onRight = r.EveryRows == 2 && c.rightSide(r)
	}
	return after, onRight
}

// singles tells a run of decreases or increases.
//
//	every RS row 5 times      next 5 rows        every 6th row 3 times
//	next row, then every 4th row 4 times         foll 4th row
func (c *condenser) singles(r Run) {
	if r.AlternateRows > 0 {
		c.turns(r)
		return
	}
	after, onRight := c.afterEven(r)
	switch every := "every " + report.Ordinal(r.EveryRows) + " row "; {
	case onRight:
		c.single(r, "every RS row "+report.Times(r.Times))
	case r.Times == 1:
		c.single(r, onRow(after))
	case r.EveryRows == 1 && after == 1:
		c.single(r, "next "+report.CountOf(r.Times, "rows"))
	case after == r.EveryRows:
		c.single(r, every+report.Times(r.Times))
	case r.Times == 2:
		once := r
		once.Times = 1
		c.single(once, "next row")
		once.FirstRowNumber += r.EveryRows
		c.single(once, onRow(r.EveryRows))
	default:
		c.single(r, "next row, then "+every+report.Times(r.Times-1))
	}
}

// onRow is the row so many after the last told: "next row", or "foll 4th row".
func onRow(after int) string {
	if after == 1 {
		return "next row"
	}
	return "foll " + report.Ordinal(after) + " row"
}

// turns tells a run of two intervals in turn: "next row, then every 2nd and 4th row
// alternately 5 times each", or without the next row where an interval leads to it. Beside the
// next row itself it is "[foll 2nd row, then next row] 5 times": "every row" leaves none between.
func (c *condenser) turns(r Run) {
	after := r.FirstRowNumber - c.worked
	pair := func(first, second, times int) string {
		if first == 1 || second == 1 {
			return "[" + onRow(first) + ", then " + onRow(second) + "] " + report.Times(times)
		}
		return "every " + report.Ordinal(first) + " and " + report.Ordinal(second) + " row alternately " + report.Times(times) + " each"
	}
	if r.Times%2 == 0 && after == r.AlternateRows {
		c.single(r, pair(r.AlternateRows, r.EveryRows, r.Times/2))
		return
	}
	c.even(after - 1)
	last := r
	if r.Times%2 == 0 {
		r.Times--
	}
	c.single(r, "next row, then "+pair(r.EveryRows, r.AlternateRows, r.Times/2))
	if r.Times < last.Times {
		last.FirstRowNumber, last.Times, last.AlternateRows = last.lastRow(), 1, 0
		c.single(last, onRow(r.EveryRows))
	}
}

// single tells when a run is worked.
func (c *condenser) single(r Run, when string) {
	verb := "Dec "
	if r.Kind.Gains() {
		verb = "Inc "
	}
	c.count += c.change(r)
	c.worked = r.lastRow()
	c.tell(verb + sts(r.Stitches) + " " + c.end(r) + " of " + when)
}

// rightSide reports whether all rows of a run are right-side rows.
func (c *condenser) rightSide(r Run) bool {
	return r.evenly() && SideOf(r.FirstRowNumber, c.FirstSide) == stitch.RightSide
}

// end is where in their rows decreases stand: at each end, or at one.
func (c *condenser) end(r Run) string {
	edge := "right edge"
	if c.left {
		edge = "left edge"
	}
	switch faces := SideOf(r.FirstRowNumber, c.FirstSide); {
	case c.both:
		return "each end"
	case c.Edge != "":
		return "at " + c.Edge
	case !r.evenly():
		return "at " + edge
	case c.left == (faces == stitch.WrongSide):
		return "at beg"
	}
	return "at end"
}

// evenly reports whether all its steps lie on rows of one side.
func (r Run) evenly() bool { return r.EveryRows%2 == 0 && r.AlternateRows%2 == 0 }
