package handspun

import (
	"math"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yardage"
)

// tightness is sqrt(tex) to the cm of loop, the tightness factor, of ordinary knitting by
// hand: 9.5 to 11.3, from yarns of 200, 230 and 400 m to 100 g at the gauges of their
// bands, 18, 22 and 30 stitches to 10 cm. Lace and felted fabrics lie outside.
//
// Source: own derivation, by the loop geometry of package yardage fully relaxed.
var tightness = yardage.Range{Low: 9.5, Likely: 10.5, High: 11.3}

// The yarns to 100 g that the gauges of bands are known of, with some room on both sides.
// Beyond them the usual gauge is a guess: lace is knit far more loosely.
const leastKnown, mostKnown = 80.0, 500.0

// wales is kw, loop lengths to the width of a stitch, fully relaxed. Source: GATE Textile
// Engineering 2015, question 54.
const wales = 4.2

// nearly is the part by which a gauge may lie outside what is usual and still be worth a
// swatch. Common practice.
const nearly = 0.10

var tightnessCited = report.Source{Figure: "usual gauge", Status: report.SourceStatusOwnDerivation,
	Citation: "stitches to the cm = 4.2 * tightness / sqrt(tex), tightness 9.5 to 11.3 as ordinary yarns have at the gauge of their bands"}

// usualGauge is the stitches to 10 cm that a yarn is usually knit at.
func usualGauge(tex float64) yardage.Range {
	per := 10 * wales / math.Sqrt(tex)
	return yardage.Range{Low: per * tightness.Low, Likely: per * tightness.Likely, High: per * tightness.High}
}

// fitting is the metres to 100 g that are usually knit at so many stitches to the cm.
func fitting(perCm float64) yardage.Range {
	of := func(k float64) float64 { tex := wales * k / perCm; return 1e5 / (tex * tex) }
	return yardage.Range{Low: of(tightness.High), Likely: of(tightness.Likely), High: of(tightness.Low)}
}

// fit compares the usual gauge of a yarn with a pattern's stitches to 10 cm.
func fit(usual yardage.Range, wanted float64) Fit {
	switch {
	case wanted >= usual.Low && wanted <= usual.High:
		return FitFits
	case wanted >= usual.Low*(1-nearly) && wanted <= usual.High*(1+nearly):
		return FitNearly
	case wanted > usual.High:
		return FitTooThick
	}
	return FitTooThin
}
