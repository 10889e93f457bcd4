package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/curve"
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
	below         int                  // rows of the piece before it
	before, after int                  // rows kept even
	through       curve.Strokes[int64] // the points of a shaped side, of which it runs from one to the next; nil of a taper alone
	round         bool
	edges         ShapedEdges
	perEdge       int // stitches changed at each shaped edge
	edge          int // plain stitches outside the shaping
	anyRow        bool
	firstSide     stitch.Side
	order         IntervalSpread
	excess        float64 // stitches at each edge, see TaperInput
	// evenFirst and evenLast: nobody said how many rows are kept even below and above,
	// so that one is, where it can be spared.
	evenFirst, evenLast bool
	would               func(change) bool // nil when no remedies are wanted
	from, to            string            // the fields of its counts
	rowField            string            // the field of its height

	step  int // rows from one slot to the next
	first int // row of the first slot
	slots int
	k     int // shaping rows
}

// straight reports whether nothing is shaped.
func (t taper) straight() bool { return t.start == t.end }

// placeSlots finds the rows that may shape: first, first+step, ... slots of
// them. Once it is known how many are needed, the first row of the piece and the
// last are left out where they can be spared.
func (t *taper) placeSlots() {
	t.step, t.first, t.slots = 1, t.before+1, 0
	if !t.anyRow {
		t.step = 2
		if t.side(t.first) == stitch.WrongSide {
			t.first++
		}
	}
	last := t.rows - t.after
	if last >= t.first {
		t.slots = (last-t.first)/t.step + 1
	}
	if t.k == 0 {
		return
	}
	if t.evenFirst && t.first == 1 && t.slots > t.k {
		t.first += t.step
		t.slots--
	}
	if t.evenLast && t.first+t.step*(t.slots-1) == t.rows && t.slots > t.k {
		t.slots--
	}
}

// freely is the taper with no row left out but for what was asked.
func (t taper) freely() taper {
	t.evenFirst, t.evenLast = false, false
	t.placeSlots()
	return t
}

// spare reports whether more rows may shape than have to.
func (t taper) spare() bool { return t.freely().slots > t.k }

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

// rowChange is the same, negative for decreases.
func (t taper) rowChange() int {
	if t.end < t.start {
		return -t.perRow()
	}
	return t.perRow()
}

// edgeCount is how many edges are shaped.
func (t taper) edgeCount() int { return t.perRow() / t.perEdge }

// total is how many stitches all shaping rows together change.
func (t taper) total() int { return measure.Abs(t.end - t.start) }

// vetFits settles the shaping rows, and checks that they exist, fit, and can be
// worked. between says where, if it is not the whole piece.
func (t *taper) vetFits(c *fault.Checks, between string) {
	if t.total()%t.perRow() != 0 {
		c.Infeasible(t.notWhole(), t.from, t.to)
		near := *t // the height is judged by as few shaping rows as another count may take
		if near.k = max(1, t.total()/t.perRow()); near.k > t.slots {
			c.Infeasible(between+"even for "+report.CountOf(near.k*t.perRow(), "stitches")+" "+near.tooFewRows(), t.rowField)
		}
		if t.start > t.end {
			near.end = t.start - near.k*t.perRow()
		}
		if detail := near.tooNarrow(); detail != "" {
			c.Infeasible(detail, t.from, t.to, "edge_stitches")
		}
		return
	}
	t.k = t.total() / t.perRow()
	if t.k > t.slots {
		c.Infeasible(between+t.tooFewRows(), t.to, t.rowField)
	}
	t.placeSlots()
	if detail := t.tooNarrow(); detail != "" {
		c.Infeasible(detail, t.from, t.to, "edge_stitches")
	}
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
