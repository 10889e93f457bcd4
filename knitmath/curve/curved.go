package curve

import (
	"errors"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Limits of a question. A coat of the finest gauge has a front edge of some 400 rows;
// no edge moves in by more than half a piece.
const (
	MaxPoints     = 20
	MaxRows       = 400
	MaxInward     = 300
	MaxChange     = 2
	MaxTolerance  = 2
	MaxRadiusCm   = 10_000.0
	maxEdgeStitch = 100
)

// Shape is how a curve goes to a point.
type Shape int32

// The shapes.
const (
	ShapeUnspecified Shape = iota // a line
	ShapeLine
	ShapeQuarterEllipse
	ShapeArc
)

// RowChoice says which rows may decrease or increase.
type RowChoice int32

// The choices.
const (
	RowChoiceUnspecified RowChoice = iota // right-side rows
	RowChoiceRightSide
	RowChoiceAny
)

// A CurvePoint is a point that the curve goes to. It mirrors the message of the same
// name.
type CurvePoint struct {
	HeightRows     *int
	HeightCm       *float64
	InwardStitches *int
	InwardCm       *float64
	Shape          Shape
	Leaving        Leaving
	RadiusCm       *float64
}

// CurvedEdgeInput asks for an edge that follows a curve. It mirrors
// PlanCurvedEdgeRequest.
type CurvedEdgeInput struct {
	StartStitches         int
	Points                []CurvePoint
	Gauge                 *gauge.Gauge
	Edges                 Edges
	EdgeStitches          *int
	RowChoice             RowChoice
	FirstSide             stitch.Side
	LargestChangeStitches *int
	LargestGroupStitches  *int
	ToleranceStitches     *float64
	EndRule               *gauge.CountRule
	DisplayUnit           measure.DisplayUnit
	WithOutline           bool
}

// A KnitEdge is one edge as knit.
type KnitEdge struct {
	Steps    []Step
	LengthCm float64 // along the steps
	SewnCm   float64 // along the line that a seam takes
}

// CurvedEdge is the answer to CurvedEdgeInput.
type CurvedEdge struct {
	HeightRows                int
	HeightCm                  float64
	EndStitches               int
	Rows                      []Row
	RightEdge                 *KnitEdge
	LeftEdge                  *KnitEdge
	Runs                      []Run
	CurveLengthCm             float64
	GreatestDepartureStitches float64
	GreatestDepartureRows     float64
	LeastDepartureStitches    float64
	Effort                    int
	Notices                   []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	edge curvedEdge
	plan Plan
}

// PlanCurvedEdge plans an edge, or both edges of a piece, along a curve through points:
// see [Follow]. Where the curve turns from inward to outward, or back, each stretch is
// planned by itself.
//
// Counts must be in [1, 10000], heights of points in [0, 400] rows and distances from
// where the edge began in [-300, 300] stitches, lengths to the nearest of either,
// halves up.
//
// Source: own derivation.
func PlanCurvedEdge(in CurvedEdgeInput) (CurvedEdge, error) {
	e, plan, rows, err := planned(in, true)
	if err != nil {
		return CurvedEdge{}, err
	}
	return e.answer(in, plan, rows), nil
}

// planned is the plan of a question; asked is whether a caller asks, and not a search for what would do.
func planned(in CurvedEdgeInput, asked bool) (e curvedEdge, plan Plan, rows []Row, err error) {
	var c fault.Checks
	if e = vetCurvedEdge(&c, in, asked); c.Err() == nil {
		plan, rows = e.work(&c)
	}
	err = c.Err()
	if refused := (*fault.InputError)(nil); errors.As(err, &refused) {
		refused.Sought = e.sought
	}
	return e, plan, rows, err
}
