package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// taper is a checked question: a straight taper, or a stretch of a shaped side,
// which is one with its place in the piece.
type taper struct {
	start, end    int
	rows          int
	below         int // rows of the piece before it
	before, after int // rows kept plain
	round         bool
	edges         ShapedEdges
	perEdge       int // stitches changed at each shaped edge
	edge          int // plain stitches outside the shaping
	anyRow        bool
	firstSide     stitch.Side
	order         IntervalSpread
	from, to      string // the fields of its counts
	rowField      string // the field of its height

	step  int // rows from one slot to the next
	first int // row of the first slot
	slots int
	k     int // shaping rows
}

// straight reports whether nothing is shaped.
func (t taper) straight() bool { return t.start == t.end }

// placeSlots finds the rows that may shape: first, first+step, ... slots of
// them.
func (t *taper) placeSlots() {
	t.step, t.first, t.slots = 1, t.before+1, 0
	if !t.anyRow {
		t.step = 2
		if t.side(t.first) == stitch.WrongSide {
			t.first++
		}
	}
	if last := t.rows - t.after; last >= t.first {
		t.slots = (last-t.first)/t.step + 1
	}
}

// side is the side of a row. In the round it serves to tell every second round,
// counted from the first.
func (t taper) side(row int) stitch.Side {
	odd := row%2 == 1
	if odd == (t.firstSide != stitch.WrongSide) {
		return stitch.RightSide
	}
	return stitch.WrongSide
}

// perRow is how many stitches one shaping row changes.
func (t taper) perRow() int {
	if t.edges == ShapedEdgesBeginning || t.edges == ShapedEdgesEnd {
		return t.perEdge
	}
	return 2 * t.perEdge
}

// total is how many stitches all shaping rows together change.
func (t taper) total() int { return measure.Abs(t.end - t.start) }

// vetFits settles the shaping rows, and checks that they exist, fit, and can be
// worked. between says where, if it is not the whole piece.
func (t *taper) vetFits(c *fault.Checks, between string) {
	if t.total()%t.perRow() != 0 {
		c.Infeasible(t.notWhole(), t.from, t.to)
		return
	}
	t.k = t.total() / t.perRow()
	if t.k > t.slots {
		c.Infeasible(between+t.tooFewRows(), t.to, t.rowField)
	}
	if detail := t.tooNarrow(); detail != "" {
		c.Infeasible(detail, t.from, t.to, "edge_stitches")
	}
}

// notWhole says that no whole number of shaping rows makes the change.
func (t taper) notWhole() string {
	per := t.perRow()
	return "each shaping row changes " + report.CountOf(per, "stitches") + ", and " + strconv.Itoa(t.total()) +
		" is not a multiple of that; the nearest end counts that are: " + t.nearestEnds(per)
}

// tooNarrow says that the shaping rows have too few stitches to be worked on;
// it is empty when they have enough.
func (t taper) tooNarrow() string {
	least, before := t.leastWidth(), t.start
	if t.start > t.end {
		before = t.end + t.perRow()
	}
	if before >= least {
		return ""
	}
	return "a shaping row needs at least " + report.CountOf(least, "stitches") + " with this edge, and the narrowest has " +
		strconv.Itoa(before)
}

// nearestEnds names the end counts on either side that whole shaping rows reach.
func (t taper) nearestEnds(per int) string {
	change := t.total() / per * per
	near, far := t.start+change, t.start+change+per
	if t.end < t.start {
		near, far = t.start-change, t.start-change-per
	}
	if far < 1 || far > stitch.MaxStitches {
		return strconv.Itoa(near)
	}
	if change == 0 {
		return strconv.Itoa(far)
	}
	return strconv.Itoa(near) + " and " + strconv.Itoa(far)
}

// tooFewRows says how many rows it would take, and what else would do.
func (t taper) tooFewRows() string {
	may := strconv.Itoa(t.slots)
	if t.slots == 0 {
		may = "none"
	}
	s := report.CountOf(t.k, "shaping rows") + " " + report.Are(t.k) + " needed and " + may + " may shape; it takes at least " +
		report.CountOf(t.first+(t.k-1)*t.step+t.after, "rows")
	if t.step == 2 {
		s += ", or shaping on any row"
	}
	if t.perEdge < MaxChangePerEdge && t.k%2 == 0 {
		s += ", or 2 stitches at each edge"
	}
	if t.before+t.after > 0 {
		s += ", or fewer rows kept plain"
	}
	return s
}
