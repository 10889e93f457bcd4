package handspun

import (
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

// nearly is the part by which a gauge may lie outside what is usual and still be worth a
// swatch. Common practice.
const nearly = 0.10

// usualGauge is the stitches to 10 cm that a yarn is usually knit at.
func usualGauge(tex float64) yardage.Range {
	return yardage.Range{Low: yarn.StitchesAt(yarn.LowTightness, tex), Likely: yarn.StitchesAt(yarn.LikelyTightness, tex),
		High: yarn.StitchesAt(yarn.HighTightness, tex)}
}

// fitting is the metres to 100 g that are usually knit at so many stitches to the cm.
func fitting(perCm float64) yardage.Range {
	return yardage.Range{Low: 1e5 / yarn.TexAt(yarn.HighTightness, perCm), Likely: 1e5 / yarn.TexAt(yarn.LikelyTightness, perCm),
		High: 1e5 / yarn.TexAt(yarn.LowTightness, perCm)}
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
