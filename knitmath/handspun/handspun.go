package handspun

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

// A Ply is singles that are plied, or the one that is knit as it is.
type Ply struct {
	Name       string
	Count      *yarn.Count
	Times      *int
	TwistPerCm *float64
	// TreadlesPerDraft were counted as it was spun on the wheel, in place of its twist.
	TreadlesPerDraft *float64
	Direction        yarn.TwistDirection
}

// A Wheel is a wheel with a flyer. Exactly one of Ratio and the two diameters must be
// given.
type Wheel struct {
	Ratio             *float64
	DriveWheelCm      *float64
	WhorlCm           *float64
	DraftCm           *float64
	SlipPercent       *float64
	TreadlesPerMinute *float64
}

// Losses are what is lost of the fibre on its way.
type Losses struct {
	ScouringPercent  float64
	PreparingPercent *float64
	SpinningPercent  *float64
}

// An Input asks what a yarn will be. It mirrors PlanHandspunRequest.
type Input struct {
	Plies                 []Ply
	Spinning              yarn.Spinning
	TwistAngleDegrees     *float64
	PlyTwistPerCm         *float64
	PlyTreadlesPerDraft   *float64
	PlyContractionPercent *float64
	Gauge                 *gauge.Gauge
	// StitchGauge stands for a gauge of which the rows are not known, which nothing here uses.
	StitchGauge *yardage.StitchGauge
	WantedM     *float64
	WantedG     *float64
	Losses      *Losses
	BobbinG     *float64
	Wheel       *Wheel
	WithOutline bool
	DisplayUnit measure.DisplayUnit
}

// A PliedSingle is one of the singles. What is not known is nil.
type PliedSingle struct {
	Name             string
	Times            int
	Tex              float64
	DiameterMm       float64
	Twist            yarn.Twist
	LeftPerCm        *float64
	LengthM          *float64
	MassG            *float64
	BobbinCount      *int
	TreadlesPerDraft *float64
}

// Fit is whether a yarn knits to a gauge.
type Fit int32

// The fits.
const (
	FitUnspecified Fit = iota // no gauge
	FitFits
	FitNearly
	FitTooThick
	FitTooThin
)

// A SampleCheck is what to measure on the sample.
type SampleCheck struct {
	What     string
	Expected yardage.Range
	Unit     string
	IfLess   string
	IfMore   string
}

// A Plan is the answer to Input. What is not known is nil.
type Plan struct {
	Plies         []PliedSingle
	Tex           float64
	MetresPer100G float64
	YardsPerPound float64
	DiameterMm    float64
	WrapsPerCm    yardage.Range
	Twist         yarn.Twist
	BalancedPerCm *yardage.Range
	// PlyContractionPercent is what plying takes up, as asked or by the twist.
	PlyContractionPercent *float64
	GaugeStitches         yardage.Range
	Fits                  Fit
	FittingMetresPer100G  *yardage.Range
	YarnM                 *float64
	YarnG                 *float64
	FibreG                *yardage.Range
	BobbinCount           *int
	WheelRatio            *float64
	TreadlesPerDraft      *float64
	Hours                 *float64
	Samples               []SampleCheck
	Cautions              []string
	Outline               *outline.Outline
	Notices               []report.Notice

	unit   measure.DisplayUnit
	count  int
	losses bool
	angled bool // some twist comes from the angle
	// mixed is that the singles are not all spun the same way.
	mixed bool
	// plyAsked is that the ply twist was chosen.
	plyAsked bool
	// spun is how the question says that the fibre is spun.
	spun yarn.Spinning
	raw  bool
	// asbestos says that a single is counted as glass and asbestos are.
	asbestos bool
}

// Ranges of a handspun yarn.
const (
	MaxPlies = 8
	// MinTex and MaxTex: from a single finer than lace is spun of to a rope.
	MinTex, MaxTex     = 1.0, 10_000.0
	MinTwist, MaxTwist = 0.05, 50.0
	MinAngle, MaxAngle = 5.0, yarn.MostRoundAngle
	MaxContraction     = 40.0
	MaxWanted          = 1_000_000.0
	MaxBobbinG         = 10_000.0

	// DefaultAngle is that of soft knitting yarn of up to five plies, in degrees; see
	// softAngleOf for more.
	DefaultAngle = 20.0
	// DefaultBobbinG is what a usual bobbin holds. Common practice.
	DefaultBobbinG = 100.0
	// Losses in percent. Common practice.
	DefaultPreparing, DefaultSpinning                    = 10.0, 5.0
	MaxScouring, MaxPreparing, MaxSpinning               = 80.0, 60.0, 40.0
	DefaultDraftCm, DefaultSlip, DefaultTreadles         = 30.0, 5.0, 60.0
	MaxSlip, MaxDraftCm, MinTreadles, MaxTreadles        = 50.0, 300.0, 10.0, 1_000.0
	MinTreadled, MaxTreadled                             = 0.1, 10_000.0
	MaxRatio, MinDriveCm, MaxDriveCm, MinWhorl, MaxWhorl = 200.0, 5.0, 200.0, 0.5, 50.0
)

// PlanHandspun says what a yarn will be from its singles, and what it takes:
//
//	tex of the yarn = sum of the tex of its plies * 100 / (100 - contraction in percent)
//	tan(angle)      = pi * diameter * turns
//	balanced ply    = sum of the turns of n singles / (n + 1)
//
// The sources of each stand at yarn.Spinning, yarn.TwistOf, takenUp, balancedPly,
// yarn.StitchesAt and the defaults.
func PlanHandspun(in Input) (Plan, error) {
	var c fault.Checks
	q := spinning{in: in}
	q.vet(&c)
	if err := c.Err(); err != nil {
		return Plan{}, err
	}
	out := q.work(&c)
	if err := c.Err(); err != nil {
		return Plan{}, err
	}
	return out, nil
}
