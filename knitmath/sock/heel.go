package sock

import (
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
)

// HeelKind is how a heel is made.
type HeelKind int32

// The kinds.
const (
	HeelKindUnspecified HeelKind = iota // round
	HeelKindRound                       // flap and gusset; the turn widens by a stitch a row
	HeelKindSquare                      // flap and gusset; the turn keeps its width
	HeelKindHeart                       // flap and gusset; as round, from a point
	HeelKindShortRows
	HeelKindWasteYarn // knit in afterwards
)

// Direction is where a sock is worked from.
type Direction int32

// The directions.
const (
	DirectionUnspecified Direction = iota // from the cuff
	DirectionCuffDown
	DirectionToeUp
)

// FlapStitch is the stitch pattern of a flap. The first stitch of every row is slipped in
// both.
type FlapStitch int32

// The patterns.
const (
	FlapStitchUnspecified FlapStitch = iota // slipped
	FlapStitchSlipped                       // every other stitch is slipped on the right side
	FlapStitchStockinette
)

// HeelPart is a part of a heel.
type HeelPart int32

// The parts, in the order worked.
const (
	HeelPartUnspecified HeelPart = iota
	HeelPartFlap
	HeelPartTurn
	HeelPartPickUp
	HeelPartGusset
	HeelPartShortRows
	HeelPartWasteYarn
	HeelPartClosing
)

// Ranges of a sock.
const (
	// MinRound and MaxRound bound the stitches of a round: a doll's sock, and more than any
	// stocking has in the finest wool.
	MinRound = 12
	MaxRound = 400
	// MinHeel is the fewest stitches of a heel.
	MinHeel = 6
	// MaxFlapRows is as many as the most stitches of a heel.
	MaxFlapRows = MaxRound
	// MaxEveryRounds is the slowest that gussets decrease.
	MaxEveryRounds = 6
	// MaxCorner is the most stitches picked up in a corner of a heel knit in afterwards.
	MaxCorner = 3
)

// HeelInput asks for a heel. It mirrors PlanHeelRequest.
type HeelInput struct {
	Kind                HeelKind
	Direction           Direction
	RoundStitches       *int
	FootCircumferenceCm *float64
	EasePercent         *float64
	Gauge               *gauge.Gauge
	StitchRule          *gauge.CountRule
	HeelStitches        *int
	FlapRows            *int
	FlapStitch          FlapStitch
	CentreStitches      *int
	PickUpStitches      *int
	GussetEveryRounds   *int
	SuccessiveRounds    *int
	TurnMethod          shortrow.TurnMethod
	CornerStitches      *int
	EndStitches         *int
	FootLengthCm        *float64
	LengthEaseCm        *float64
	DisplayUnit         measure.DisplayUnit
	WithOutline         bool
}
