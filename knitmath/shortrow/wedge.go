package shortrow

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// MaxWedgeRows is the greatest rise of a wedge, in rows: each pair of rows
// comes back written out, so the limit is tighter.
const MaxWedgeRows = 2_000

// TallEnd says where a wedge is tall, as seen from the right side.
type TallEnd int32

// The places.
const (
	TallEndUnspecified TallEnd = iota
	TallEndRight               // where right-side rows begin
	TallEndLeft                // where right-side rows end
	TallEndCentre
	TallEndSides
)

// Order says which short row comes first.
type Order int32

// The orders.
const (
	OrderUnspecified Order = iota // longest first
	OrderLongestFirst
	OrderShortestFirst
)

// TurnMethod says how a short row is turned and its gap closed.
type TurnMethod int32

// The methods.
const (
	TurnMethodUnspecified TurnMethod = iota // wrap and turn
	TurnMethodWrapAndTurn
	TurnMethodGerman
	TurnMethodYarnOver
)

// TurnSpread is how the steps between turns are chosen.
type TurnSpread int32

// The choices.
const (
	TurnSpreadUnspecified TurnSpread = iota // least effort of a straight wedge, interleaved of a curve
	TurnSpreadInterleaved
	TurnSpreadGrouped
	TurnSpreadLeastEffort
)

// Ranges of a wedge.
const (
	// MinAngle and MaxAngle bound the slope in degrees: below, a ten-metre edge
	// does not rise two centimetres; above, no turn is a stitch from the next.
	MinAngle = 0.1
	MaxAngle = 80.0
	// MaxProfilePoints is the most points of a curve: a point a stitch for the
	// widest piece that anybody shapes by eye.
	MaxProfilePoints = 500
	// MaxTolerance is the most rows that turns may depart beyond the nearest ones: more
	// than the rise of any shoulder or heel, so that whoever asks for it wants equal
	// steps whatever they cost.
	MaxTolerance = 100
	// MaxWedgeSpans is the most pairs of short rows in one answer, all humps of a
	// curve together: each comes back written out.
	MaxWedgeSpans = 2_000
)

// WedgeInput asks for a short-row wedge. It mirrors PlanWedgeRequest.
type WedgeInput struct {
	WidthStitches    int
	RiseRows         *int
	RiseCm           *float64
	RiseAngleDegrees *float64
	Gauge            *gauge.Gauge
	TallEnd          TallEnd
	Order            Order
	TurnMethod       TurnMethod
	Rounding         measure.Rounding
	Spread           TurnSpread
	DisplayUnit      measure.DisplayUnit
	ProfileRows      []float64
	ProfileCm        []float64
	WithOutline      bool
	ToleranceRows    *float64
}

// A TurnRun is a number of equal steps between turns.
type TurnRun struct {
	Stitches int
	Times    int
}

// A TurnSequence is the turns at one side of a wedge, in the order worked.
type TurnSequence struct {
	FirstUnworkedStitches int
	Steps                 []TurnRun
	Side                  stitch.Side
}

// A WedgeRow is one row of a wedge.
type WedgeRow struct {
	RowNumber        int
	Side             stitch.Side
	Instruction      stitch.Instruction
	UnworkedStitches int
	Resolving        bool
}

// Wedge is the answer to WedgeInput.
type Wedge struct {
	PairCount             int
	TurnCount             int
	Turns                 []TurnSequence
	Rows                  []WedgeRow
	TallRows              int
	FullRows              int
	AskedRiseRows         float64
	RiseRows              int
	RiseCm                *float64
	RiseAngleDegrees      *float64
	GreatestDepartureRows float64
	// LeastDepartureRows is that of the nearest turns; nil for a curve.
	LeastDepartureRows *float64
	Effort             int
	Notices            []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	width    int
	shortest bool
	method   TurnMethod
	easy     bool  // the turns are those of least effort
	heights  []int // short rows under every stitch
	unit     measure.DisplayUnit
}
