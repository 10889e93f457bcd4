package yoke

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// RaglanLineFrom says whose stitches the lines of a raglan are.
type RaglanLineFrom int32

// Whose they are.
const (
	RaglanLineFromUnspecified RaglanLineFrom = iota // both
	RaglanLineFromBoth                              // half of each; an odd stitch is the body's
	RaglanLineFromBody                              // the body's
	RaglanLineFromSleeves                           // the sleeves'
)

// RoundChoice says which rounds of a raglan may decrease.
type RoundChoice int32

// The rounds.
const (
	RoundChoiceUnspecified RoundChoice = iota // any
	RoundChoiceAny                            // every round may
	RoundChoiceEverySecond                    // every second one, counted down from the last
)

// Ranges of a raglan.
const (
	// DefaultLine is the usual line: two stitches, one on each side of the join.
	// Common practice.
	DefaultLine = 2
	// MaxLine is the most stitches in one line: a wide cable panel.
	MaxLine = 20
	// MinRaglanNeck is the fewest stitches of front and back at the neck: the
	// next decrease round would have no stitch between its two decreases.
	MinRaglanNeck = 2
	// MostDeparture is how many stitches an edge may lie off its straight line: about
	// a centimetre, which the fabric evens out. Common practice.
	MostDeparture = 2
	// ShortEdge is how many times as many stitches an edge should lose: if it loses
	// fewer a plan is first looked for that lies nearer to the line by as much. Own
	// reckoning.
	ShortEdge = 8
)

// RaglanInput asks for a raglan. It mirrors PlanRaglanRequest.
type RaglanInput struct {
	Gauge             *gauge.Gauge
	BodyStitches      int
	SleeveStitches    *int
	UnderarmStitches  *int
	LineStitches      *int
	LineFrom          RaglanLineFrom
	FrontNeckStitches *int
	BackNeckStitches  *int
	SleeveTopStitches *int
	DepthCm           *float64
	DepthRounds       *int
	RoundChoice       RoundChoice
	DisplayUnit       measure.DisplayUnit
	WithOutline       bool
	ToleranceStitches *float64
}

// A RaglanPart is the back, the front or a sleeve, between two lines.
type RaglanPart struct {
	StartStitches            int
	EndStitches              int
	DecreaseRounds           int
	EdgeLostCm               float64
	EdgeAngleDegrees         float64
	FirstDecreaseRoundNumber int
	Intervals                schedule.Schedule
}

// A RaglanRound is the counts after one round.
type RaglanRound struct {
	RoundNumber       int
	BackStitches      int
	FrontStitches     int
	SleeveStitches    int
	TotalStitches     int
	InstructionNumber int
}

// A RaglanInstruction is one kind of decrease round.
type RaglanInstruction struct {
	BackDecreases    bool
	FrontDecreases   bool
	SleevesDecrease  bool
	Description      string
	Instruction      stitch.Instruction
	FirstRoundNumber int
	Times            int
}

// Raglan is the answer to RaglanInput.
type Raglan struct {
	BodyStitches     int
	SleeveStitches   int
	UnderarmStitches int
	LineStitches     int
	JoinStitches     int
	NeckStitches     int
	DepthRounds      int
	DepthCm          float64
	JoinCm           float64
	NeckCm           float64
	Back             RaglanPart
	Front            RaglanPart
	Sleeve           RaglanPart
	Rounds           []RaglanRound
	Instructions     []RaglanInstruction
	Steepness        float64
	Notices          []report.Notice
	Outline          *outline.Outline

	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	Effort                    int

	directions []string
	unit       measure.DisplayUnit
}

// PlanRaglan joins body and sleeves,
//
//	T = body + 2*sleeve - 4*underarm
//
// in four parts (back, left sleeve, front, right sleeve) with a line of plain
// stitches after each, and narrows every part by two stitches in each of its
// decrease rounds, one beside each line. A part that goes from a to b stitches
// has (a - b)/2 decrease rounds, of the rounds that may decrease (all, or every
// second one counted down from the last). Where a part decreases, those that decrease
// more often do too, so that there is a kind of round for every number of decreases,
// and at most one more, for the last decrease of the sleeves.
//
// Each edge is to follow a straight line from the join to the neck. The plan is the one
// of least effort ([schedule.Nest.Easiest]) that departs from the lines by no more
// than ToleranceStitches at each edge beyond what the nearest choice of rounds does. If
// that is nil, it is the one within an eighth of what an edge loses (ShortEdge) or within
// MostDeparture of the lines, or if there is none as far beyond the nearest. Up to four intervals in
// turn ([schedule.Nest.InTurns]) and every n-th decrease round another one ([schedule.Nest.InSpells]) are looked
// for where they are less to remember, or nothing else lies so near.
// Where there is none either the nearest easy plan there is is taken, up to wideningSteps stitches further
// off, and a notice says so; or if a tolerance was given the nearest rounds.
//
// Exact in whole stitches and rounds; a depth in cm is taken to the nearest round,
// half-way up.
//
// Source: percentage system for the defaults (see percentageCited); own derivation for
// the rounds.
func PlanRaglan(in RaglanInput) (Raglan, error) {
	r, err := in.settled()
	if err != nil {
		return Raglan{}, in.advised(err)
	}
	return r.answer(in), nil
}

// settled settles the question, stage after stage, as far as it goes.
func (in RaglanInput) settled() (raglan, error) {
	var c fault.Checks
	var r raglan
	for _, stage := range [...]func(*fault.Checks, *raglan, RaglanInput){vetRaglan, settleParts, settleNeck, vetRounds} {
		stage(&c, &r, in)
		if err := c.Err(); err != nil {
			return r, err
		}
	}
	return r, nil
}

// raglan is a question as the stages settle it.
type raglan struct {
	st, rw gauge.Density
	joining
	line        int
	parts       [sleevePart + 1]raglanPart
	rounds      int
	depthField  string
	everySecond bool
	excess      *float64 // stitches at each edge
}

// The parts of a raglan that have a rate of their own; the sleeves share one.
const (
	backPart = iota
	frontPart
	sleevePart
)

// fieldOrder is the parts as the request lists them.
var fieldOrder = [...]int{frontPart, backPart, sleevePart}

// raglanPart is one part: its stitches at the join and at the neck, its name in
// words and the field that sets its neck.
type raglanPart struct {
	start, end  int
	name, field string
}

func (p raglanPart) decreases() int { return (p.start - p.end) / 2 }
