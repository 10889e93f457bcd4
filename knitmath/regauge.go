package knitmath

import "math/big"

// regauge is a change from the gauge of a pattern to the knitter's own, in one
// direction.
type regauge struct{ pattern, own density }

// convert is the exact number of stitches that has, at the knitter's gauge, the
// size of n at the pattern's,
//
//	n * own count * pattern span / (own span * pattern count)
//
// The numerator is at most 1e4 * 1e9 * 1e6 = 1e19, which fits 64 bits without a
// sign (1.8e19); the denominator is at most 1e15. A whole part beyond what any
// rule brings back under MaxStitches is cut off there.
func (g regauge) convert(n int) mixed {
	num := uint64(n) * uint64(g.own.count) * uint64(g.pattern.span)
	den := uint64(g.own.span) * uint64(g.pattern.count)
	whole := min(num/den, MaxStitches*1_000)
	return mixed{int64(whole), int64(num % den), int64(den)}
}

// fit is density.fit for a size that is given as n at the pattern's gauge.
func (g regauge) fit(n int, r rule) (f FittedCount, ok bool) {
	q := g.convert(n)
	count, halfway, ok := r.choose(q)
	if !ok {
		return f, false
	}
	f = FittedCount{Count: int(count), ExactCount: q.float(), AskedCm: g.pattern.sizeCm(n), Halfway: halfway}
	f.SizeCm = g.own.sizeCm(f.Count)
	f.DifferenceCm = f.SizeCm - f.AskedCm
	below, above := r.neighbours(count)
	if below > 0 {
		size := g.own.sizeCm(int(below))
		f.Below = NeighbourCount{int(below), size, size - f.AskedCm}
	}
	if above > 0 {
		size := g.own.sizeCm(int(above))
		f.Above = NeighbourCount{int(above), size, size - f.AskedCm}
	}
	return f, true
}

// ratio is the size at the knitter's gauge over the size at the pattern's, of
// equal counts: num/den, each at most 1e15 and so exact as a float.
func (g regauge) ratio() (num, den int64) {
	return g.pattern.count * g.own.span, g.pattern.span * g.own.count
}

// changePercent is what becomes of a size if the pattern is knit as written, in
// percent: negative when smaller.
func (g regauge) changePercent() float64 {
	num, den := g.ratio()
	return 100 * float64(num-den) / float64(den)
}

// outcomeCm is what a printed size comes out at, in cm.
func (g regauge) outcomeCm(um int64) float64 {
	num, den := g.ratio()
	return centimetres(um) * float64(num) / float64(den)
}

// outcomeDifferenceCm is the outcome of a printed size less the wanted one. The
// subtraction is exact, so that a hit is 0.
func (g regauge) outcomeDifferenceCm(um, wanted int64) float64 {
	_, den := g.ratio()
	d, _ := new(big.Float).SetInt(g.distance(um, wanted)).Float64()
	return d / float64(den) / 1e4
}

// distance is the outcome of a printed size less the wanted one, in micrometres
// times the denominator of ratio: exact, and up to 1e22.
func (g regauge) distance(um, wanted int64) *big.Int {
	num, den := g.ratio()
	d := new(big.Int).Mul(big.NewInt(um), big.NewInt(num))
	return d.Sub(d, new(big.Int).Mul(big.NewInt(wanted), big.NewInt(den)))
}
