package solid

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// Form is a surface of revolution.
type Form int32

// The forms. A cone and a cylinder stand on a flat base.
const (
	FormUnspecified Form = iota
	FormSphere
	FormEgg
	FormCone
	FormCylinder
	FormDrop
	FormProfile // through points
)

// Start is the end at which the work begins.
type Start int32

// The ends.
const (
	StartUnspecified Start = iota // at the base
	StartBase
	StartTop
)

// Lines says where in a round the count changes.
type Lines int32

// Where it changes.
const (
	LinesUnspecified Lines = iota // staggered
	LinesStaggered
	LinesStacked
)

// Way is how a solid is worked.
type Way int32

// The ways.
const (
	WayUnspecified Way = iota // in rounds
	WayRounds
	WayWedges // of short rows, from end to end
)

// Ranges of a solid.
const (
	// MaxSolidRounds is the most rounds of a solid.
	MaxSolidRounds = 700
	// MaxSolidWedges is the most stitches that are gained or lost together.
	MaxSolidWedges = 24
	// MaxProfilePoints is the most points of a profile.
	MaxProfilePoints = 20
	// MaxSolidCm is how large a solid may be.
	MaxSolidCm = 200.0
)

// A ProfilePoint is how wide a solid is at a height.
type ProfilePoint struct {
	HeightCm float64
	AcrossCm float64
}

// SolidInput asks for a solid. It mirrors PlanSolidRequest.
type SolidInput struct {
	Gauge          *gauge.Gauge
	Form           Form
	AcrossCm       *float64
	HeightCm       *float64
	Points         []ProfilePoint
	BaseOpeningCm  *float64
	TopOpeningCm   *float64
	Start          Start
	Lines          Lines
	WedgeCount     *int
	StuffOpeningCm *float64
	// PickedUp says that the stitches at the end where the work begins are picked up, in a ring
	// of another body.
	PickedUp    bool
	Limbs       []LimbInput
	Way         Way
	TurnMethod  shortrow.TurnMethod
	DisplayUnit measure.DisplayUnit
	WithOutline bool
}

// A SolidRound is one round that changes the count.
type SolidRound struct {
	RoundNumber       int
	WantedStitches    float64
	DepartureStitches float64
	Instruction       stitch.Instruction
}

// Solid is the answer to SolidInput.
type Solid struct {
	StartStitches             int
	EndStitches               int
	GreatestStitches          int
	TotalRounds               int
	WedgeCount                int
	TotalStitches             int
	WantedTotalStitches       float64
	GreatestDepartureStitches float64
	AcrossCm                  float64
	HeightCm                  float64
	MeridianCm                float64
	// StuffBeforeRoundNumber is the round before which it is stuffed; nil where an end is open.
	StuffBeforeRoundNumber *int
	// EdgeRoundNumbers are those at which a flat base or top ends.
	EdgeRoundNumbers []int
	Rounds           []SolidRound
	Limbs            []Limb
	// Wedges are the kinds of wedges of short rows, none where it is worked in rounds.
	Wedges                []WedgeKind
	Sequence              []shortrow.CircleWedgeRun
	GreatestRows          int
	GreatestDepartureRows float64
	Notices               []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	of                  revolved
	openFirst, openLast bool
	sharp               []int   // rounds that are purled for sharp edges
	measured            string  // of which rounds the greatest departure is, in words
	stuffOpenCm         float64 // how wide it is open when it is stuffed
}

// revolved is a question as it is settled.
type revolved struct {
	in      SolidInput
	st, rw  gauge.Density
	way     meridian
	flat    float64 // stitches that a round more can gain and lie flat
	wedges  int
	wanted  []float64 // of each round
	surface float64   // stitches that its area has at the gauge
	counts  []int
	high    float64 // of a round along the meridian, in cm
	limbs   []Limb
	notices []report.Notice // on limbs
	side    []spot          // where half of the ring that is tried is laid: there are hundreds
	pairs   []pair          // likewise, of the stitches that are looked at for it
	wedge   *shortWedges    // nil in rounds
	sewn    bool            // both ends are closed, or the open one is picked up
}

// PlanSolid plans a surface of revolution in rounds. With r(s) its radius at the length s
// along the meridian, S in all,
//
//	rounds = S * rows per cm                       nearest, half-way up
//	wanted = 2 pi * r((i - 1/2) S / rounds) * stitches per cm   in round i
//
// A round has the multiple of the wedges that is nearest to what is wanted, at least one
// stitch for each, or half of them where a sharp end wants fewer; along straight parts of the meridian the count changes in the rounds that
// are least to remember among those within one round of that. Where all rounds together
// would be off by more than 1 % of the stitches that the area of the surface has at the gauge, and by
// more than a stitch a round, changes come a round earlier or later. No radius grows faster than its meridian, so that nothing
// ruffles.
//
// Source: own derivation; the circumference of a circle.
func PlanSolid(in SolidInput) (Solid, error) {
	out, err := planSolid(in)
	if err != nil {
		err = in.advised(err)
	}
	return out, err
}

func planSolid(in SolidInput) (Solid, error) {
	var c fault.Checks
	var b revolved
	stages := [...]func(*fault.Checks, *revolved, SolidInput){vetSolid, settleMeridian, settleCounts, settleLimbs}
	if in.Way == WayWedges {
		stages[2] = settleShortWedges
	}
	for _, stage := range stages {
		stage(&c, &b, in)
		if err := c.Err(); err != nil {
			return Solid{}, err
		}
	}
	return b.answer(), nil
}
