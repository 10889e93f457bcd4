package flat

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// Form is the shape that is wanted.
type Form int32

// The forms.
const (
	FormUnspecified Form = iota
	FormDisc
	FormRing
	FormSector // of a disc: a half disc, a crescent
	FormPolygon
	FormMitredSquare
	FormTriangleFromPoint
	FormTriangleFromSide
	FormTriangleFromTop
	FormBiasStrip
	FormStar
)

// Direction is where the work begins.
type Direction int32

// The directions.
const (
	DirectionUnspecified Direction = iota // outwards
	DirectionOutwards
	DirectionInwards
)

// Arrangement is where in a row the stitches of a disc are gained or lost.
type Arrangement int32

// The arrangements.
const (
	ArrangementUnspecified Arrangement = iota // staggered
	ArrangementStaggered
	ArrangementWedges
	ArrangementDoubling
	ArrangementShortRows
)

// Ranges of a flat shape.
const (
	// MaxChanges is the most rows that change the count: each comes back written out.
	MaxChanges = 500
	// MaxRows is the most rows or rounds of a shape.
	MaxRows = 4_000
	// MinWedges and MaxWedges are how many stitches a row of a disc may gain.
	MinWedges = 1
	MaxWedges = 48
	// MinCorners and MaxCorners bound a polygon.
	MinCorners = 3
	MaxCorners = 12
	// MinTurn and MaxTurn bound a sector, in degrees.
	MinTurn = 20.0
	MaxTurn = 350.0
	// MinStart and MaxStart bound the stitches that a shape from the centre begins with.
	MinStart = 2
	MaxStart = 100
	// MaxToleranceRows is the most that rows may lie off for a plan that is easier to remember.
	MaxToleranceRows = 10.0
)

// Input asks for a flat shape. It mirrors PlanFlatShapeRequest.
type Input struct {
	Gauge         *gauge.Gauge
	Form          Form
	AcrossCm      *float64
	HoleCm        *float64
	TurnDegrees   *float64
	SideCm        *float64
	CornerCount   *int
	ValleyCm      *float64
	WidthCm       *float64
	HeightCm      *float64
	LengthCm      *float64
	Direction     Direction
	Arrangement   Arrangement
	WedgeCount    *int
	StartStitches *int
	ToleranceRows *float64
	DisplayUnit   measure.DisplayUnit
	WithOutline   bool
}

// A Row is one row or round that changes the count.
type Row struct {
	RowNumber         int
	Side              stitch.Side // unspecified in the round
	WantedStitches    float64
	DepartureStitches float64
	Instruction       stitch.Instruction
}

// Effect is what too many or too few stitches do to a flat shape.
type Effect int32

// The effects.
const (
	EffectUnspecified Effect = iota
	EffectFlat
	EffectCups
	EffectRuffles
)

// A Recipe is a rule of the trade, and what it does at this gauge.
type Recipe struct {
	Name             string
	GrowthStitches   float64 // a row
	RimStitches      float64
	DeparturePercent float64
	DepartureCm      float64
	Effect           Effect

	same bool // comes to the count of the plan
}

// Shape is the answer to Input.
type Shape struct {
	Construction              stitch.Construction
	StartStitches             int
	EndStitches               int
	TotalRows                 int
	GrowthStitches            float64 // a row that lie flat
	WedgeCount                int
	WantedRimStitches         float64
	GreatestDepartureStitches float64
	Effort                    int
	WidthCm                   float64
	HeightCm                  float64
	LeanDegrees               *float64
	Rows                      []Row
	Recipes                   []Recipe
	// Wedges are the kinds of wedges of short rows, and Sequence is their order.
	Wedges   []shortrow.CircleWedge
	Sequence []shortrow.CircleWedgeRun
	Notices  []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	of     piece
	circle *shortrow.Circle // of short rows
}
