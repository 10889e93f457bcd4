package gauge

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// Counted is a distance as a count: given so, or in cm at a gauge.
func (d Density) Counted(count *int, cm *float64) int {
	if count != nil {
		return *count
	}
	return d.Nearest(measure.Micrometres(*cm))
}

// SizeWith is the length of n stitches in cm when the gauge is off by a number
// of stitches over its length. With 0 it is sizeCm.
func (d Density) SizeWith(n int, off float64) float64 {
	return float64(int64(n)*d.Span*100) / (float64(d.Count) + off*1e6)
}

// A Gauge is stitches and rows over one length. It mirrors the message of the
// same name: see proto/knitmath/v1/gauge.proto for ranges and defaults.
type Gauge struct {
	Stitches float64
	Rows     float64
	OverCm   *float64
}

// Ranges of a gauge.
const (
	// DefaultOverCm is the trade's usual length to count over.
	DefaultOverCm = 10.0
	// MaxGaugeCount is the most stitches or rows over the counted length: a
	// metre of the finest gauge known to be knit by hand has fewer.
	MaxGaugeCount = 1_000.0
	// MinGaugeCount is the finest a count is read to.
	MinGaugeCount = 1e-6
	// MaxOverCm is the longest length a gauge may be stated over.
	MaxOverCm = 100.0
)

// Density is a gauge in one direction, exactly: count millionths of a stitch
// (or row) over span micrometres.
type Density struct {
	Count int64
	Span  int64
}

// Check checks a gauge that must be there and gives its two densities.
func Check(c *fault.Checks, field string, g *Gauge) (st, rw Density, ok bool) {
	if g == nil {
		c.Add(field, fault.ReasonRequired, "is missing; give stitches and rows over a length")
		return st, rw, false
	}
	okSt := c.RequiredNumber(field, "stitches", g.Stitches, MinGaugeCount, MaxGaugeCount)
	okRw := c.RequiredNumber(field, "rows", g.Rows, MinGaugeCount, MaxGaugeCount)
	okOver := c.OptionalNumber(field, "over_cm", g.OverCm, measure.MinCm, MaxOverCm)
	if !okSt || !okRw || !okOver {
		return st, rw, false
	}
	span := measure.Micrometres(fault.Or(g.OverCm, DefaultOverCm))
	return Density{measure.ToMillionths(g.Stitches), span}, Density{measure.ToMillionths(g.Rows), span}, true
}

// PerCm is the density as a float, for geometry that is not a count.
func (d Density) PerCm() float64 { return float64(d.Count) / 1e6 / measure.Centimetres(d.Span) }

// SizeCm is the length of n stitches or rows, in cm. The products are exact
// integers below 2^53, so that the one division is rounded correctly.
func (d Density) SizeCm(n int) float64 {
	return float64(int64(n)*d.Span*100) / float64(d.Count)
}

// Exact is the rational number of stitches in um micrometres, num/den.
//
// With um at most 3e7 (ten metres and 200 % ease) and count at most 1e9, num is
// at most 3e16; den is at most 1e12.
func (d Density) Exact(um int64) (num, den int64) { return um * d.Count, d.Span * 1e6 }

// Nearest is the whole number of stitches nearest to um micrometres, halves up.
func (d Density) Nearest(um int64) int {
	num, den := d.Exact(um)
	return int(measure.HalfUpDiv(num, den))
}

// Over is the count in span micrometres. The product is at most 1e10 * 1e6, so
// that readings over equal lengths come out as they were read.
func (d Density) Over(span int64) float64 {
	return float64(d.Count*span) / (float64(d.Span) * 1e6)
}
