package yarn

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// TwistDirection is which way a yarn is twisted: held upright its fibres slope as the
// middle stroke of the letter.
type TwistDirection int32

// The directions.
const (
	TwistDirectionUnspecified TwistDirection = iota // Z of singles
	TwistDirectionS
	TwistDirectionZ
)

// String is the letter.
func (d TwistDirection) String() string {
	if d == TwistDirectionS {
		return "S"
	}
	return "Z"
}

// A Twist is said in every way.
type Twist struct {
	PerCm        float64
	PerInch      float64
	Factor       float64
	Multiplier   float64
	AngleDegrees float64
	Direction    TwistDirection
}

// TwistCited is the source of TwistOf.
var TwistCited = report.Source{Figure: "twist angle", Status: report.SourceStatusOwnDerivation,
	Citation: "a fibre at the surface is a helix: tan(angle) = pi * diameter * turns; factor = turns to the cm * sqrt(tex)"}

// Products of tex and a count, exactly: yards to the pound, and cotton count, 840 yards to
// the hank, 590.541 of ASTM D2260.
const (
	TexYards  = 16 * GramsPerOunce / MetresPerYard * 1000
	texCotton = TexYards / 840
)

// TwistOf is a twist of so many turns to the cm in a yarn of a tex and a diameter:
//
//	factor     = turns to the cm * sqrt(tex)
//	multiplier = turns to the inch / sqrt(cotton count)
//	tan(angle) = pi * diameter * turns
//
// It holds of a round yarn whose fibres lie in a helix at one angle at the surface; below
// some 5 degrees fibres slip, above some 50 a yarn kinks and is no longer round.
func TwistOf(perCm, tex, diameterCm float64, d TwistDirection) Twist {
	return Twist{
		PerCm: perCm, PerInch: perCm * measure.CmPerInch, Factor: perCm * math.Sqrt(tex),
		Multiplier:   perCm * measure.CmPerInch / math.Sqrt(texCotton/tex),
		AngleDegrees: math.Atan(math.Pi*diameterCm*perCm) * 180 / math.Pi,
		Direction:    d,
	}
}

// TurnsFor is the turns to the cm that give an angle at the surface.
func TurnsFor(degrees, diameterCm float64) float64 {
	return math.Tan(degrees*math.Pi/180) / (math.Pi * diameterCm)
}
