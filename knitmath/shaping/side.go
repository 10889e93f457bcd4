package shaping

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// MaxSidePoints is the most points of a shaped side: hem, waist, bust, underarm
// and as many again for a coat, with room.
const MaxSidePoints = 20

// A SidePoint is a point that a shaped side passes through.
type SidePoint struct {
	HeightRows *int
	HeightCm   *float64
	Stitches   int
}

// ShapedSideInput asks for a side that changes its slope. It mirrors
// PlanShapedSideRequest.
type ShapedSideInput struct {
	StartStitches      int
	Points             []SidePoint
	Gauge              *gauge.Gauge
	Construction       stitch.Construction
	Edges              ShapedEdges
	EdgeChangeStitches *int
	EdgeStitches       *int
	ShapingRows        ShapingRows
	FirstSide          stitch.Side
	Spread             IntervalSpread
	DisplayUnit        measure.DisplayUnit
	WithOutline        bool
}

// A SideStretch is a side from one point to the next.
type SideStretch struct {
	FirstRowNumber    int
	LastRowNumber     int
	StartStitches     int
	EndStitches       int
	ShapingRowCount   int
	RowChangeStitches int
	Intervals         []IntervalRun
	RightSideRow      *stitch.Instruction
	WrongSideRow      *stitch.Instruction
}

// ShapedSide is the answer to ShapedSideInput.
type ShapedSide struct {
	HeightRows                int
	Stretches                 []SideStretch
	ShapingRows               []ShapingRow
	NarrowestStitches         int
	WidestStitches            int
	GreatestDepartureStitches float64
	HeightCm                  *float64
	directions                []string
	Notices                   []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	side shapedSide
	unit measure.DisplayUnit
}

// PlanShapedSide shapes a side through a list of points. Each stretch from one
// point to the next is a taper of its own (see PlanTaper), on the rows of the
// whole piece that may shape, or straight where its counts are equal.
//
// Joins: between the last shaping row of one stretch and the first of the next
// lie two rows at least, the shaping row counted, which is the smallest interval
// between right-side rows. Where right-side rows alone shape that is so of
// itself. Where any row may shape and two would be neighbours, one row at each
// join is kept plain: the last row below it or, where every row of that stretch
// shapes, the first row above it. Own derivation: a row that a stretch can spare
// below its upper join is of use to no other join, so that deciding from the
// start up finds a way whenever there is one.
//
// Counts must be in [1, 10000], rows in [1, 10000]; a height in [0.1, 1000] cm is
// taken to the nearest row, half-way up.
//
// Source: own derivation on the Euclidean spread (see [spread.Place]).
func PlanShapedSide(in ShapedSideInput) (ShapedSide, error) {
	var c fault.Checks
	side, st, rw := vetShapedSide(&c, in)
	if c.Err() == nil {
		vetStretchesFit(&c, &side)
	}
	if c.Err() == nil {
		vetJoins(&c, &side)
	}
	if err := c.Err(); err != nil {
		return ShapedSide{}, err
	}
	return side.plan(in, st, rw), nil
}

// shapedSide is a checked question.
type shapedSide struct {
	taper     // what all stretches share
	anyRow    ShapingRows
	stretches []stretch
	apart     bool // a row at each join is kept plain
}

// stretch is a taper with its place in the piece.
type stretch struct {
	taper
	below    int    // rows before it
	from, to string // fields of its counts
	rowField string
}

// straight reports whether nothing is shaped.
func (x stretch) straight() bool { return x.start == x.end }

// vetShapedSide checks each field for itself and settles the rows.
func vetShapedSide(c *fault.Checks, in ShapedSideInput) (s shapedSide, st, rw gauge.Density) {
	c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	if len(in.Points) == 0 {
		c.Add("points", fault.ReasonRequired, "are missing; give from 1 to %d", MaxSidePoints)
	}
	var rows []int
	var standard fault.Checks // its faults come after those of the points, which need it
	if in.Gauge != nil {
		st, rw = gauge.Vet(&standard, "gauge", in.Gauge)
	}
	if c.Items("", "points", len(in.Points), MaxSidePoints) {
		rows = vetSidePoints(c, in, rw)
		if in.Gauge == nil && slices.ContainsFunc(in.Points, func(p SidePoint) bool { return p.HeightCm != nil }) {
			c.Add("gauge", fault.ReasonRequired, "is missing; height_cm needs it")
		}
	}
	c.Violations = append(c.Violations, standard.Violations...)
	fault.Enum(c, "", "construction", in.Construction, stitch.InTheRound)
	fault.Enum(c, "", "edges", in.Edges, ShapedEdgesEnd)
	c.OptionalCount("", "edge_change_stitches", in.EdgeChangeStitches, 1, MaxChangePerEdge)
	c.OptionalCount("", "edge_stitches", in.EdgeStitches, 1, MaxTaperEdge)
	fault.Enum(c, "", "shaping_rows", in.ShapingRows, ShapingRowsAny)
	fault.Enum(c, "", "first_side", in.FirstSide, stitch.WrongSide)
	if in.Construction == stitch.InTheRound && in.FirstSide == stitch.WrongSide {
		c.Add("first_side", fault.ReasonContradictory, "must be the right side in the round, which has no other")
	}
	fault.Enum(c, "", "spread", in.Spread, IntervalSpreadFastFirst)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Err() != nil {
		return s, st, rw
	}
	s.anyRow = in.ShapingRows
	s.taper = taper{start: in.StartStitches, end: in.Points[len(in.Points)-1].Stitches, rows: rows[len(rows)-1],
		round: in.Construction == stitch.InTheRound, edges: in.Edges, perEdge: fault.Or(in.EdgeChangeStitches, 1),
		edge: fault.Or(in.EdgeStitches, 1), firstSide: in.FirstSide, order: in.Spread}
	s.stretches = make([]stretch, len(rows))
	below, count, from := 0, in.StartStitches, "start_stitches"
	for i, p := range in.Points {
		x := stretch{taper: s.taper, below: below, from: from, to: fault.Join(fault.Index("points", i), "stitches"),
			rowField: fault.Join(fault.Index("points", i), "height_rows")}
		if p.HeightRows == nil {
			x.rowField = fault.Join(fault.Index("points", i), "height_cm")
		}
		x.start, x.end, x.rows = count, p.Stitches, rows[i]-below
		x.firstSide = s.side(below + 1)
		s.stretches[i] = x
		below, count, from = rows[i], p.Stitches, x.to
	}
	return s, st, rw
}

// vetSidePoints checks the points and gives the row of each.
func vetSidePoints(c *fault.Checks, in ShapedSideInput, rw gauge.Density) []int {
	rows := make([]int, len(in.Points))
	before := 0
	for i, p := range in.Points {
		path := fault.Index("points", i)
		ok := c.OptionalCount(path, "height_rows", p.HeightRows, 1, stitch.MaxRows)
		ok = c.OptionalNumber(path, "height_cm", p.HeightCm, measure.MinCm, measure.MaxCm) && ok
		ok = c.OneOf(p.HeightRows != nil, p.HeightCm != nil, fault.Join(path, "height_rows"), fault.Join(path, "height_cm")) && ok
		field := "height_rows"
		switch {
		case !ok:
		case p.HeightRows != nil:
			rows[i] = *p.HeightRows
		case !rw.IsZero():
			field = "height_cm"
			rows[i] = rw.Nearest(measure.Micrometres(*p.HeightCm))
			if rows[i] < 1 || rows[i] > stitch.MaxRows {
				c.Infeasible("the height is "+report.CountOf(rows[i], "rows")+" at this gauge; it must be from 1 to "+
					strconv.Itoa(stitch.MaxRows), fault.Join(path, "height_cm"), "gauge")
				rows[i] = 0
			}
		}
		if rows[i] > 0 && rows[i] <= before {
			c.Add(fault.Join(path, field), fault.ReasonContradictory, "is row %d, and the point before is row %d; it must lie above that",
				rows[i], before)
		}
		before = max(before, rows[i])
		c.RequiredCount(path, "stitches", p.Stitches, 1, stitch.MaxStitches)
	}
	return rows
}

// vetStretchesFit checks that the shaping rows of every stretch exist, fit, and can
// be worked.
func vetStretchesFit(c *fault.Checks, s *shapedSide) {
	shaped := false
	for i := range s.stretches {
		x := &s.stretches[i]
		if x.straight() {
			continue
		}
		shaped = true
		x.placeSlots(s.anyRow)
		if measure.Abs(x.end-x.start)%x.perRow() != 0 {
			c.Infeasible(x.notWhole(), x.from, x.to)
			continue
		}
		x.k = measure.Abs(x.end-x.start) / x.perRow()
		if x.k > x.slots {
			c.Infeasible("between these points "+x.tooFewRows(), x.to, x.rowField)
		}
		if detail := x.tooNarrow(); detail != "" {
			c.Infeasible(detail, x.from, x.to, "edge_stitches")
		}
	}
	if !shaped {
		c.Infeasible("all counts are equal: there is nothing to shape", "start_stitches", "points")
	}
}

// vetJoins keeps shaping rows apart across joins.
func vetJoins(c *fault.Checks, s *shapedSide) {
	if !s.meet() {
		return
	}
	s.apart = true
	for i := 1; i < len(s.stretches); i++ {
		lower, upper := &s.stretches[i-1], &s.stretches[i]
		switch {
		case lower.straight() || upper.straight():
		case lower.slots > lower.k:
			lower.after = 1
			lower.placeSlots(s.anyRow)
		case upper.slots > upper.k:
			upper.before = 1
			upper.placeSlots(s.anyRow)
		default:
			c.Infeasible("below and above this point every row shapes, and a row must be kept plain between; "+
				"one row more, or one shaping row less, on either side of it would do", lower.to, lower.rowField)
		}
	}
}

// meet reports whether two shaping rows are neighbours across any join.
func (s shapedSide) meet() bool {
	last := 0
	for _, x := range s.stretches {
		if x.straight() {
			continue
		}
		rows := x.shapingRowNumbers()
		if last > 0 && x.below+rows[0]-last < 2 {
			return true
		}
		last = x.below + rows[len(rows)-1]
	}
	return false
}
