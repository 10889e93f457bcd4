package gauge

import (
	"math/big"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Regauge is a change from the gauge of a pattern to the knitter's own, in one
// direction.
type Regauge struct{ Pattern, Own Density }

// Convert is the exact number of stitches that has, at the knitter's gauge, the
// size of n at the pattern's,
//
//	n * own count * pattern span / (own span * pattern count)
//
// The numerator is at most 1e4 * 1e9 * 1e6 = 1e19, which fits 64 bits without a
// sign (1.8e19); the denominator is at most 1e15. A whole part beyond what any
// rule brings back under MaxStitches is cut off there.
func (g Regauge) Convert(n int) Mixed {
	num := uint64(n) * uint64(g.Own.Count) * uint64(g.Pattern.Span)
	den := uint64(g.Own.Span) * uint64(g.Pattern.Count)
	whole := min(num/den, stitch.MaxStitches*1_000)
	return Mixed{int64(whole), int64(num % den), int64(den)}
}

// Fit is density.fit for a size that is given as n at the pattern's gauge.
func (g Regauge) Fit(n int, r Rule) (f FittedCount, ok bool) {
	q := g.Convert(n)
	count, halfway, ok := r.choose(q)
	if !ok {
		return f, false
	}
	f = FittedCount{Count: int(count), Exact: q.float(), AskedCm: g.Pattern.SizeCm(n), Halfway: halfway}
	f.SizeCm = g.Own.SizeCm(f.Count)
	f.DifferenceCm = f.SizeCm - f.AskedCm
	below, above := r.neighbours(count)
	if below > 0 {
		size := g.Own.SizeCm(int(below))
		f.Below = NeighbourCount{int(below), size, size - f.AskedCm}
	}
	if above > 0 {
		size := g.Own.SizeCm(int(above))
		f.Above = NeighbourCount{int(above), size, size - f.AskedCm}
	}
	return f, true
}

// ratio is the size at the knitter's gauge over the size at the pattern's, of
// equal counts: num/den, each at most 1e15 and so exact as a float.
func (g Regauge) ratio() (num, den int64) {
	return g.Pattern.Count * g.Own.Span, g.Pattern.Span * g.Own.Count
}

// changePercent is what becomes of a size if the pattern is knit as written, in
// percent: negative when smaller.
func (g Regauge) changePercent() float64 {
	num, den := g.ratio()
	return 100 * float64(num-den) / float64(den)
}

// outcomeCm is what a printed size comes out at, in cm.
func (g Regauge) outcomeCm(um int64) float64 {
	num, den := g.ratio()
	return measure.Centimetres(um) * float64(num) / float64(den)
}

// outcomeDifferenceCm is the outcome of a printed size less the wanted one. The
// subtraction is exact, so that a hit is 0.
func (g Regauge) outcomeDifferenceCm(um, wanted int64) float64 {
	_, den := g.ratio()
	d, _ := new(big.Float).SetInt(g.distance(um, wanted)).Float64()
	return d / float64(den) / 1e4
}

// distance is the outcome of a printed size less the wanted one, in micrometres
// times the denominator of ratio: exact, and up to 1e22.
func (g Regauge) distance(um, wanted int64) *big.Int {
	num, den := g.ratio()
	d := new(big.Int).Mul(big.NewInt(um), big.NewInt(num))
	return d.Sub(d, new(big.Int).Mul(big.NewInt(wanted), big.NewInt(den)))
}
