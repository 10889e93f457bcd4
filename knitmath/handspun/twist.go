package handspun

import (
	"math"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yardage"
)

var (
	angleCited = report.Source{Figure: "usual angles", Status: report.SourceStatusCommonPractice,
		Citation: "common practice of spinners by hand: 15 degrees at least, 20 soft knitting yarn, 30 to 35 socks; of six plies and " +
			"more less, so that the balanced ply has 35 (own derivation)"}
	balanceCited = report.Source{Figure: "balanced ply", Status: report.SourceStatusSecondHand,
		Citation: "ply turns equal the turns left in the singles, attributed to Ross, Handspinner's Workbook: " +
			"P = sum of S / (n + 1); 0.9 to 1.125 times that, which for two plies is 0.6 to 0.75 of the singles"}
)

// softAngleOf is the angle of singles that make a knitting yarn of n plies, in degrees, where
// nobody says how they are spun: DefaultAngle, and less where they are so many that a
// balanced ply of them would be steeper than a sock yarn, 35 degrees. With d the diameter
// of a single, n of them make a yarn of d*sqrt(n), plied with n/(n+1) of their turns:
//
//	tan(ply) = tan(single) * sqrt(n) * n/(n+1)
//
// which comes to 35 degrees from singles of 18.4 for six plies, 16.8 for seven and 15.6 for
// eight. What plying takes up makes the yarn thicker and its angle a little steeper still.
//
// Source: own derivation, from angleCited and balancedPly.
func softAngleOf(n int) float64 {
	plies := float64(n)
	most := math.Atan(math.Tan(steepestPly*math.Pi/180)*(plies+1)/(plies*math.Sqrt(plies))) * 180 / math.Pi
	return min(DefaultAngle, most)
}

// steepestPly is the most of angleCited, that of a sock yarn, in degrees.
const steepestPly = 35.0

// balancedPly is the ply twist at which as many turns are put in as are left in the singles,
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
func balancedPly(turns float64, n int) yardage.Range {
	p := turns / float64(n+1)
	return yardage.Range{Low: 0.9 * p, Likely: p, High: 1.125 * p}
}
