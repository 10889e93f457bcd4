package yarn

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// TwistDirection is which way a yarn is twisted: held upright its fibres slope as the
// middle stroke of the letter.
type TwistDirection int32

// The directions.
const (
	TwistDirectionUnspecified TwistDirection = iota // Z of singles, S of plies
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

// usualDirection is how most such yarn is twisted: singles Z, and plies against them.
// Common practice.
func (t Thickness) usualDirection() TwistDirection {
	if t.Plies > 1 {
		return TwistDirectionS
	}
	return TwistDirectionZ
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
	Citation: "a fibre at the surface of a single, or a ply at that of a plied yarn, is a helix: tan(angle) = pi * diameter * turns; " +
		"factor = turns to the cm * sqrt(tex)"}

// MostRoundAngle is the angle in degrees beyond which a yarn kinks and is no longer the
// round one that TwistOf measures. Common practice of spinners; TightestAngle is where
// geometry ends.
const MostRoundAngle = 50.0

// BeyondRound are words on an angle that is greater than that, none on another.
func BeyondRound(degrees float64) string {
	if degrees <= MostRoundAngle {
		return ""
	}
	return "; above some 50 degrees a yarn kinks and is no longer round: if it was counted, count again, over 1 cm and not an inch"
}

// TightestAngle is the most degrees that a surface may have, where sec = 3:
//
// twisting shortens a yarn by (1 + sec)/2, the mean over all its fibres, and thickens it by
// the root of that, its volume being the same. Of so much fibre the turns are then as
// sqrt(sec - 1) / (1 + sec), which is greatest at sec = 3: whoever twists on shortens the
// yarn and gets no turn into it.
//
// Source: own derivation, of round yarn as dense as before.
var TightestAngle = math.Acos(1.0/3) * 180 / math.Pi

// VetTurns checks that a yarn of a diameter can have so many turns to the cm.
func VetTurns(c *fault.Checks, field string, perCm, diameterCm float64) {
	a := TwistOf(perCm, 1, diameterCm, TwistDirectionZ).AngleDegrees
	if a <= TightestAngle {
		return
	}
	c.Infeasible("is "+measure.Decimal(perCm, 2)+" turns to the cm, which in a yarn of "+measure.Decimal(10*diameterCm, 2)+
		" mm would stand at "+measure.Decimal(a, 0)+" degrees; none takes more than "+measure.Decimal(TightestAngle, 1)+", which are "+
		measure.Decimal(float64(int(100*TurnsFor(TightestAngle, diameterCm)))/100, 2)+
		" turns to the cm: were they counted over an inch, or over more?", field)
}

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
// It holds of a round yarn whose fibres, or plies, lie in a helix at one angle at the
// surface; below some 5 degrees fibres slip, above MostRoundAngle a yarn kinks.
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
