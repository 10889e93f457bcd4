package neck

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// Shape is how a neck looks from the front.
type Shape int32

// The shapes.
const (
	ShapeUnspecified Shape = iota // round
	ShapeRound
	ShapeV
	ShapeSquare
	ShapeBoat
)

// Centre is what becomes of the stitches in the middle of a neck.
type Centre int32

// The ways.
const (
	CentreUnspecified Centre = iota // bound off, but of a V's point and between straps
	CentreBoundOff
	CentreHeld
)

// ShoulderMethod is how a shoulder slopes.
type ShoulderMethod int32

// The methods.
const (
	ShoulderMethodUnspecified ShoulderMethod = iota // bound off in steps
	ShoulderMethodSteppedBindOff
	ShoulderMethodShortRows
)

// Ranges of a neck.
const (
	// MaxDepthRows is the deepest neck that is planned, since every row that shapes is
	// written out: more than a metre of a common gauge.
	MaxDepthRows = 400
	// MaxDepthCm is deeper than any neck: a coat that is open to its hem.
	MaxDepthCm = 200.0
	// MaxNeckStitches is the widest neck that is planned: more than a metre of fine yarn.
	MaxNeckStitches = 500
	// MaxTolerance is the most stitches that an edge of least effort may depart beyond the
	// nearest one: more is no longer that neck.
	MaxTolerance = 2.0
	// MaxSlopeRows, MaxSlopeCm and MaxSlopeDegrees are beyond any shoulder, of which the
	// steepest slope by some 25 degrees.
	MaxSlopeRows    = 200
	MaxSlopeCm      = 50.0
	MaxSlopeDegrees = 60.0
	// MaxEdgeStitches is the most plain stitches beside a decrease.
	MaxEdgeStitches = 10
	// MinHeadCm is a doll's, MaxHeadCm beyond anybody's.
	MinHeadCm = 5.0
	MaxHeadCm = 100.0
	// MaxStretch is more than any edge of knitting gives.
	MaxStretch = 3.0
	// MaxStrapStitches is that of a sleeve of package armhole.
	MaxStrapStitches = 260
)

// Input asks for a neckline. It mirrors PlanNecklineRequest.
type Input struct {
	Gauge                *gauge.Gauge
	Shape                Shape
	WidthStitches        *int
	WidthCm              *float64
	NeckStitches         *int
	NeckCm               *float64
	ShoulderStitches     *int
	ShoulderCm           *float64
	WidthRule            *gauge.CountRule
	NeckRule             *gauge.CountRule
	FrontDepthRows       *int
	FrontDepthCm         *float64
	BackDepthRows        *int
	BackDepthCm          *float64
	FrontCentreStitches  *int
	BackCentreStitches   *int
	Centre               Centre
	ShoulderSlopeRows    *int
	ShoulderSlopeCm      *float64
	ShoulderSlopeDegrees *float64
	ShoulderMethod       ShoulderMethod
	TurnMethod           shortrow.TurnMethod
	RowChoice            shaping.RowChoice
	EdgeStitches         *int
	ToleranceStitches    *float64
	FrontWidthStitches   *int
	FrontWidthCm         *float64
	ArmholeRows          *int
	ArmholeSteps         []ArmholeStep
	FrontArmholeSteps    []ArmholeStep
	StrapStitches        *int
	BandGauge            *gauge.Gauge
	BandRule             *gauge.CountRule
	HeadCm               *float64
	BodyCm               *float64
	StretchRatio         *float64
	DisplayUnit          measure.DisplayUnit
	WithOutline          bool
}

// Part is which stitches of a piece a row is worked over.
type Part int32

// The parts.
const (
	PartUnspecified Part = iota
	PartWhole            // all of them: the neck is not divided yet
	PartFirstSide        // those where right-side rows begin
	PartSecondSide       // those where right-side rows end
)

// A Row is one row that does more than work even.
type Row struct {
	RowNumber   int
	Part        Part
	Side        stitch.Side
	Instruction stitch.Instruction
}

// A Step is so many stitches that go at the neck edge of each side in one row.
type Step struct {
	// FirstSideRowNumber and SecondSideRowNumber are the rows in which they go.
	FirstSideRowNumber  int
	SecondSideRowNumber int
	Stitches            int
	BoundOff            bool
}

// A Piece is the front or the back.
type Piece struct {
	// DepthRows is the depth of the first side, SecondSideDepthRows that of the second,
	// which the yarn reaches a row earlier or later.
	DepthRows                 int
	SecondSideDepthRows       int
	DepthCm                   float64
	StartStitches             int // before row 1
	NeckStitches              int
	CentreStitches            int
	NeckRowNumber             int // the row that divides
	SlopeRowNumber            int // the first that shapes a shoulder, or binds it off
	HeightRows                int // from row 1 to the last
	Steps                     []Step
	Rows                      []Row
	EdgeCm                    float64 // of one side, from the centre to the shoulder
	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	Effort                    int

	layout *layout
}

// SectionPlace is where along the neck stitches are picked up.
type SectionPlace int32

// The places, in the order in which they are met from the right shoulder, as worn.
const (
	SectionPlaceUnspecified SectionPlace = iota
	SectionPlaceBack
	SectionPlaceLeftFront
	SectionPlaceFrontCentre
	SectionPlaceRightFront
	// The ends of a saddle's straps: the left one is met after the back, the right one last.
	SectionPlaceLeftStrap
	SectionPlaceRightStrap
)

// A Section is the stitches picked up along one part of the neck.
type Section struct {
	Place    SectionPlace
	Stitches int
	// WantedStitches is how many the length wants, before the rule of the band.
	WantedStitches float64
	LengthCm       float64
	EdgeRows       int
	// LiveStitches are taken from a holder and not picked up.
	LiveStitches int
}

// Neckline is the answer to Input.
type Neckline struct {
	WidthStitches        int
	NeckStitches         int
	ShoulderStitches     int
	WidthCm              float64
	NeckCm               float64
	ShoulderCm           float64
	ShoulderStepStitches []int
	SlopeRows            int
	SlopeCm              float64
	SlopeDegrees         float64
	Front                Piece
	Back                 Piece
	Sections             []Section
	PickedUpStitches     int
	WantedStitches       float64
	OpeningCm            float64
	StretchedCm          float64
	// HeadCm and GoesOverHead are nil for a toy.
	HeadCm       *float64
	GoesOverHead *bool
	Notices      []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	in Input
	rw gauge.Density
}
