package handspun

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

// texYards is tex times yards to the pound: 453.59237 g to the pound, 0.9144 m to the
// yard, exactly.
const texYards = 16 * yarn.GramsPerOunce / yarn.MetresPerYard * 1000

// texCotton is tex times the cotton count, 840 yards to the hank: 590.541. Source: ASTM
// D2260.
const texCotton = texYards / 840

// diameterRules is k of diameters to the inch = k sqrt(yards to the pound), by
// Preparation: of yarn as compact as it lies in cloth. Read on a page on weaving of
// 1999; attributed to Ashenhurst from memory. Outside of wool other k hold.
var diameterRules = [...]float64{PreparationUnspecified: 0.84, PreparationWoollen: 0.84, PreparationWorsted: 0.90}

// wrapRule is the same of wraps that lie side by side without pull: 0.35 to 0.39 over all
// categories of the yarn chart of the magazine Spin Off, likely 0.38. Wraps are not
// diameters: a wrapped yarn is a good deal looser.
var wrapRule = yardage.Range{Low: 0.35, Likely: 0.38, High: 0.39}

var (
	woollenCited = report.Source{Figure: "diameter", Status: report.SourceStatusPublished,
		Citation: "diameters to the inch = 0.84 sqrt(yards to the pound), woollen: weaving reference page (1999), the form of Ashenhurst"}
	worstedCited = report.Source{Figure: "diameter", Status: report.SourceStatusPublished,
		Citation: "diameters to the inch = 0.90 sqrt(yards to the pound), worsted: weaving reference page (1999), the form of Ashenhurst"}
	wrapsCited = report.Source{Figure: "wraps", Status: report.SourceStatusOwnDerivation,
		Citation: "0.35 to 0.39 sqrt(yards to the pound) to the inch, from the ranges of the Yarn Standards chart of the magazine Spin Off"}
	twistCited = report.Source{Figure: "twist angle", Status: report.SourceStatusOwnDerivation,
		Citation: "a fibre at the surface is a helix: tan(angle) = pi * diameter * turns; factor = turns to the cm * sqrt(tex)"}
	angleCited = report.Source{Figure: "usual angles", Status: report.SourceStatusPublished, Uncertain: true,
		Citation: "15 degrees at least, 20 soft knitting yarn, 30 to 35 socks: a handspinner's weblog (2008)"}
	balanceCited = report.Source{Figure: "balanced ply", Status: report.SourceStatusSecondHand,
		Citation: "ply turns equal the turns left in the singles, attributed to Ross, Handspinner's Workbook: " +
			"P = sum of S / (n + 1); 0.9 to 1.125 times that, which for two plies is 0.6 to 0.75 of the singles"}
)

// diameterCm is the diameter of a compact yarn.
func (p Preparation) diameterCm(tex float64) float64 {
	return measure.CmPerInch / (diameterRules[p] * math.Sqrt(texYards/tex))
}

// twistOf says turns to the cm in every way.
func twistOf(perCm, tex, diameterCm float64, d TwistDirection) Twist {
	return Twist{
		PerCm: perCm, PerInch: perCm * measure.CmPerInch, Factor: perCm * math.Sqrt(tex),
		Multiplier:   perCm * measure.CmPerInch / math.Sqrt(texCotton/tex),
		AngleDegrees: math.Atan(math.Pi*diameterCm*perCm) * 180 / math.Pi,
		Direction:    d,
	}
}

// turnsFor is the turns to the cm that give an angle at the surface.
func turnsFor(degrees, diameterCm float64) float64 {
	return math.Tan(degrees*math.Pi/180) / (math.Pi * diameterCm)
}

// balance is the ply twist at which as many turns are put in as are left in the singles,
// when all their turns make so many to the cm together:
//
//	P = sum of (S - P) over n plies, so that P = sum of S / (n + 1)
//
// two thirds of the singles' for two plies, three quarters for three. It holds of plies
// of about one thickness, freshly spun; set twist, fibre and washing move it, hence the
// range: 0.6 to 0.75 of the singles for two plies, and in proportion for more.
//
// Source: the condition is attributed to Ross, Handspinner's Workbook (second-hand); the
// solution and its range for more than two plies are own derivation.
func balance(turns float64, n int) yardage.Range {
	p := turns / float64(n+1)
	return yardage.Range{Low: 0.9 * p, Likely: p, High: 1.125 * p}
}

// String is the letter.
func (d TwistDirection) String() string {
	if d == TwistDirectionS {
		return "S"
	}
	return "Z"
}
