package shaping

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
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
	RowChoice          RowChoice
	FirstSide          stitch.Side
	Spread             IntervalSpread
	ToleranceStitches  *float64
	DisplayUnit        measure.DisplayUnit
	WithOutline        bool
}

// A SideStretch is a side from one point to the next.
type SideStretch struct {
	FirstRowNumber    int
	LastRowNumber     int
	StartStitches     int
	EndStitches       int
	ShapingRows       int
	RowChangeStitches int
	Intervals         schedule.Schedule
	RightSideRow      *stitch.Instruction
	WrongSideRow      *stitch.Instruction
}

// ShapedSide is the answer to ShapedSideInput.
type ShapedSide struct {
	HeightRows                int
	Stretches                 []SideStretch
	Rows                      []ShapingRow
	NarrowestStitches         int
	WidestStitches            int
	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	Effort                    int
	HeightCm                  *float64
	Notices                   []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	side shapedSide
	work []shapedRows // of every stretch, none where it is straight
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
// join is kept even: the last row below it or, where every row of that stretch
// shapes, the first row above it. Own derivation: a row that a stretch can spare
// below its upper join is of use to no other join, so that deciding from the
// start up finds a way whenever there is one. Where no row can be spared on either
// side of a join, the two are neighbours as others of a slope so steep are.
//
// Counts must be in [1, 10000], rows in [1, 10000]; a height in [0.1, 1000] cm is
// taken to the nearest row, half-way up.
//
// Source: own derivation.
func PlanShapedSide(in ShapedSideInput) (ShapedSide, error) {
	var c fault.Checks
	side, st, rw := vetShapedSide(&c, in, func(i int, ch change) bool { return in.with(i, ch).accepts() })
	if err := c.Err(); err != nil {
		return ShapedSide{}, err
	}
	side.vetStretchesFit(&c)
	if err := c.Err(); err != nil {
		return ShapedSide{}, err
	}
	side.keepApart()
	return side.plan(in, st, rw), nil
}
