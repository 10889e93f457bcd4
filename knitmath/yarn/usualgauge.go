package yarn

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Tightness is sqrt(tex) to the cm of loop, the tightness factor, of ordinary knitting by
// hand: 9.5 to 11.3, from yarns of 200, 230 and 400 m to 100 g at the gauges of their
// bands, 18, 22 and 30 stitches to 10 cm. Lace and felted fabrics lie outside.
//
// Source: own derivation, by the loop geometry of plain knitting fully relaxed.
const (
	LowTightness    = 9.5
	LikelyTightness = 10.5
	HighTightness   = 11.3
)

// The yarns to 100 g that the gauges of bands are known of, with some room on both sides.
// Beyond them the usual gauge is a guess: lace is knit far more loosely.
const (
	LeastUsualMetres = 80.0
	MostUsualMetres  = 500.0
)

// LoopsToAStitch is kw, loop lengths to the width of a stitch, fully relaxed. Source: GATE
// Textile Engineering 2015, question 54.
const LoopsToAStitch = 4.2

// UsualGaugeCited is the source of StitchesAt and TexAt.
var UsualGaugeCited = report.Source{Figure: "usual gauge of a thickness", Status: report.SourceStatusOwnDerivation,
	Citation: "stitches to the cm = 4.2 * tightness / sqrt(tex): kw 4.2 of GATE Textile Engineering 2015, question 54; tightness 9.5 to " +
		"11.3 is that of 200, 230 and 400 m to 100 g at 18, 22 and 30 stitches to 10 cm; holds from 80 to 500 m to 100 g"}

// StitchesAt is the stitches to 10 cm of a yarn that is knit so tightly.
func StitchesAt(tightness, tex float64) float64 {
	return 10 * LoopsToAStitch / math.Sqrt(tex) * tightness
}

// TexAt is the yarn that has so many stitches to the cm where it is knit so tightly.
func TexAt(tightness, perCm float64) float64 {
	root := LoopsToAStitch * tightness / perCm
	return root * root
}

// GaugeWords writes a range of stitches to 10 cm, or to 4 in.
func GaugeWords(u measure.DisplayUnit, low, high float64) string {
	over := "10 cm"
	if u == measure.DisplayUnitIn {
		low, high, over = low*fourInchesToTenCm, high*fourInchesToTenCm, "4 in"
	}
	from, to := measure.Decimal(low, 0), measure.Decimal(high, 0)
	if from == to {
		return from + " stitches to " + over
	}
	return from + " to " + to + " stitches to " + over
}

// fourInchesToTenCm is how much longer 4 in are.
const fourInchesToTenCm = 4 * measure.CmPerInch / 10
