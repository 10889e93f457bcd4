package yarn

import "math/big"

// thicknesses are how many times as thick the second yarn is as the first, by each measure
// that is known of both: the root of the tex, and one over wraps and stitches, which go with
// the thickness.
func (o *Comparison) thicknesses() (ratios []float64) {
	if r := o.ThicknessRatio; r != nil {
		ratios = append(ratios, *r)
	}
	if a, b := o.FirstWrapsPerInch, o.SecondWrapsPerInch; a != nil && b != nil {
		ratios = append(ratios, *a / *b)
	}
	if a, b := o.first.perCm(), o.second.perCm(); a != nil && b != nil {
		ratios = append(ratios, nearest(new(big.Rat).Quo(a, b)))
	}
	return ratios
}

// farApart is how much thicker a yarn may be by one measure than by another. Ordinary gauges
// of one length lie 1.19 apart, LowTightness to HighTightness; what is beyond this is another
// fabric, or a mistake. Own derivation.
const farApart = 1.25

// contradicts reports whether the measures say opposite things of the second yarn, beyond
// what still fits, or lie far apart.
func (o *Comparison) contradicts() bool {
	ratios := o.thicknesses()
	if len(ratios) < 2 {
		return false
	}
	thin, thick := ratios[0], ratios[0]
	for _, r := range ratios[1:] {
		thin, thick = min(thin, r), max(thick, r)
	}
	return thick > farApart*thin || thick > 1+fitsWithin && thin < 1/(1+fitsWithin)
}

// measureWords say each measure after the other.
func (o *Comparison) measureWords() string {
	words := ""
	for _, a := range o.Aspects {
		if a.Aspect != AspectThickness && a.Aspect != AspectWraps && a.Aspect != AspectGauge {
			continue
		}
		if words != "" {
			words += ", and "
		}
		words += a.inShort()
	}
	return words
}
