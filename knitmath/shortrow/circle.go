package shortrow

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
)

// CircleInput asks for a disc or ring of wedges. It mirrors
// PlanCircleOfWedgesRequest.
type CircleInput struct {
	Gauge         *gauge.Gauge
	WidthStitches *int
	OuterRadiusCm *float64
	InnerRadiusCm *float64
	WedgeCount    *int
	TurnDegrees   *float64
	TurnMethod    TurnMethod
	Order         Order
	DisplayUnit   measure.DisplayUnit
	WithOutline   bool
}

// A CircleWedge is one kind of wedge in a circle.
type CircleWedge struct {
	PairCount             int
	FullRows              int
	Rows                  []WedgeRow
	GreatestDepartureRows float64
}

// A CircleWedgeRun is a number of equal wedges in succession.
type CircleWedgeRun struct {
	WedgeNumber int
	Times       int
}

// Circle is the answer to CircleInput.
type Circle struct {
	WidthStitches    int
	WedgeCount       int
	Wedges           []CircleWedge
	Sequence         []CircleWedgeRun
	OuterRows        int
	InnerRows        int
	WantedOuterRows  float64
	WantedInnerRows  float64
	ClosureRows      float64
	ClosureDegrees   float64
	InnerClosureRows float64
	OuterRadiusCm    float64
	InnerRadiusCm    float64
	Notices          []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	unit    measure.DisplayUnit
	degrees float64
	method  TurnMethod
}

// Ranges of a circle.
const (
	// MaxRadiusCm: a round blanket ten metres across.
	MaxRadiusCm = 500.0
	// MaxWedges is the most wedges in one circle.
	MaxWedges = 100
	// MaxCircleRows is the most rows that all kinds of wedges have together, as many
	// as the longest wedge has: each kind comes back written out.
	MaxCircleRows = 2 * MaxWedgeRows
	// MinTurn and MaxTurn bound how much of the full turn is filled, in degrees.
	MinTurn = 10.0
	MaxTurn = 720.0

	fewestWedges, mostWedges = 4, 24 // of the default
	turnsApart               = 2     // stitches, of the default
)

// PlanCircleOfWedges closes a disc or a ring from N wedges. With R and r the
// outer and inner radius and t the part of the full turn that is filled, the
// edges should have
//
//	outer rows = t * 2*pi*R * rows per cm
//	inner rows = t * 2*pi*r * rows per cm
//
// A wedge has 2n short rows, all at the outer edge, and an even number of rows
// over all stitches, at least two, so that every wedge begins as the first did.
// Both totals are therefore even; each is the even number nearest to what is
// wanted, half-way up, and is spread over the wedges as evenly as integers allow.
// The outer edge so closes within one row.
//
// The turns of a wedge lie nearest to its profile and not in steps of least effort:
// every wedge repeats the departures of the one before, so that two rows at one radius
// would be two for each wedge round the circle, and the piece would not lie flat.
//
// The radius is 0.1 to 500 cm, and N from 1 to 100. A wedge too steep for its
// stitches, a ring too narrow, or different wedges of too many rows together are
// refused with the nearest number of wedges that can be knit; a number that was not
// asked for is that one at once.
//
// Source: own derivation; the circumference of a circle.
func PlanCircleOfWedges(in CircleInput) (Circle, error) {
	var c fault.Checks
	q := vetCircle(&c, in)
	if err := c.Err(); err != nil {
		return Circle{}, err
	}
	out := q.plan()
	out.unit = in.DisplayUnit
	if in.WithOutline {
		out.Outline = out.outline()
	}
	return out, nil
}
