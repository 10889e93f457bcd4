package yoke

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
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

// ShapingRounds says which rounds of a raglan may decrease.
type ShapingRounds int32

// The rounds.
const (
	ShapingRoundsUnspecified ShapingRounds = iota // any
	ShapingRoundsAny                              // every round may
	ShapingRoundsEverySecond                      // every second one, counted down from the last
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
	ShapingRounds     ShapingRounds
	DisplayUnit       measure.DisplayUnit
	WithOutline       bool
}

// A RaglanPart is the back, the front or a sleeve, between two lines.
type RaglanPart struct {
	StartStitches      int
	EndStitches        int
	DecreaseRoundCount int
	EdgeLostCm         float64
	EdgeAngleDegrees   float64
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
	directions       []string
	Notices          []report.Notice
	Outline          *outline.Outline

	unit measure.DisplayUnit
}

// PlanRaglan joins body and sleeves,
//
//	T = body + 2*sleeve - 4*underarm
//
// in four parts (back, left sleeve, front, right sleeve) with a line of plain
// stitches after each, and narrows every part by two stitches in each of its
// decrease rounds, one beside each line. A part that goes from a to b stitches
// has k = (a - b)/2 decrease rounds. Of the n rounds that may decrease (all, or
// every second one counted down from the last) it decreases in
//
//	n - floor((k - i) * n / k),  i = 1 .. k
//
// which is the Euclidean spread counted down from the neck: distances between
// decrease rounds differ by at most one, the one from the join included, and the
// last decrease round of every part is the last round of all. Exact in whole
// stitches and rounds; a depth in cm is taken to the nearest round, half-way up.
//
// Source: percentage system for the defaults (see percentageCited); own derivation
// on the Euclidean spread (see [spread.Place]) for the rounds.
func PlanRaglan(in RaglanInput) (Raglan, error) {
	var c fault.Checks
	var r raglan
	for _, stage := range [...]func(*fault.Checks, *raglan, RaglanInput){vetRaglan, settleParts, settleNeck, vetRounds} {
		stage(&c, &r, in)
		if err := c.Err(); err != nil {
			return Raglan{}, err
		}
	}
	return r.answer(in), nil
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
