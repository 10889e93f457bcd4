package gauge

import (
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// A Regauge is a change from the gauge of a pattern to the knitter's own, in one
// direction.
type Regauge struct{ pattern, own Density }

// Change is the change from one known gauge to another.
func Change(pattern, own Density) Regauge { return Regauge{pattern, own} }

// CountRatio is the count at the knitter's gauge over the count at the
// pattern's, of equal sizes: num/den, each at most 1e15.
func (g Regauge) CountRatio() (num, den int64) {
	return g.own.count * g.pattern.span, g.own.span * g.pattern.count
}

// convert is the exact number of stitches that has, at the knitter's gauge, the
// size of n at the pattern's,
//
//	n * own count * pattern span / (own span * pattern count)
//
// The numerator is at most 1e4 * 1e9 * 1e6 = 1e19, which fits 64 bits without a
// sign (1.8e19); the denominator is at most 1e15. A whole part beyond what any
// rule brings back under MaxStitches is cut off there.
func (g Regauge) convert(n int) mixed {
	ratio, den := g.CountRatio()
	num := uint64(n) * uint64(ratio)
	whole := min(num/uint64(den), stitch.MaxStitches*1_000)
	return mixed{int64(whole), int64(num % uint64(den)), den}
}

// fit is the legal count that the rule's rounding chooses for the size of n at
// the pattern's gauge. Nil when there is none.
func (g Regauge) fit(n int, r Rule) *FittedCount {
	asked := g.pattern.SizeCm(n)
	f := r.fit(g.convert(n), func(count int) (sizeCm, differenceCm float64) {
		size := g.own.SizeCm(count)
		return size, size - asked
	})
	if f != nil {
		f.AskedCm = asked
	}
	return f
}

// VetFit turns n stitches at the pattern's gauge into the legal count that the
// rule's rounding chooses at the knitter's, exactly. Where there is none from 1
// to MaxStitches on the right side it is nil, and every one of the fields
// involved is infeasible.
func (g Regauge) VetFit(c *fault.Checks, n int, r Rule, noun string, fields ...string) *FittedCount {
	f := g.fit(n, r)
	if f == nil {
		c.Infeasible(r.misfit(g.convert(n), noun), fields...)
	}
	return f
}

// ratio is the size at the knitter's gauge over the size at the pattern's, of
// equal counts: num/den, each at most 1e15 and so exact as a float.
func (g Regauge) ratio() (num, den int64) {
	den, num = g.CountRatio()
	return num, den
}

// changeCited is the source of changePercent.
var changeCited = report.Source{Figure: "change if knit as written", Status: report.SourceStatusOwnDerivation,
	Citation: "100 * (pattern gauge / own gauge - 1): a size is a count divided by its gauge"}

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
