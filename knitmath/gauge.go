package knitmath

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

// density is a gauge in one direction, exactly: count millionths of a stitch
// (or row) over span micrometres.
type density struct {
	count int64
	span  int64
}

// gauge checks a gauge that must be there and gives its two densities.
func (c *checks) gauge(field string, g *Gauge) (st, rw density, ok bool) {
	if g == nil {
		c.add(field, ReasonRequired, "is missing; give stitches and rows over a length")
		return st, rw, false
	}
	okSt := c.requiredNumber(field, "stitches", g.Stitches, MinGaugeCount, MaxGaugeCount)
	okRw := c.requiredNumber(field, "rows", g.Rows, MinGaugeCount, MaxGaugeCount)
	okOver := c.optionalNumber(field, "over_cm", g.OverCm, MinCm, MaxOverCm)
	if !okSt || !okRw || !okOver {
		return st, rw, false
	}
	span := micrometres(or(g.OverCm, DefaultOverCm))
	return density{toMillionths(g.Stitches), span}, density{toMillionths(g.Rows), span}, true
}

// perCm is the density as a float, for geometry that is not a count.
func (d density) perCm() float64 { return float64(d.count) / 1e6 / centimetres(d.span) }

// sizeCm is the length of n stitches or rows, in cm. The products are exact
// integers below 2^53, so that the one division is rounded correctly.
func (d density) sizeCm(n int) float64 {
	return float64(int64(n)*d.span*100) / float64(d.count)
}

// exact is the rational number of stitches in um micrometres, num/den.
//
// With um at most 3e7 (ten metres and 200 % ease) and count at most 1e9, num is
// at most 3e16; den is at most 1e12.
func (d density) exact(um int64) (num, den int64) { return um * d.count, d.span * 1e6 }

// nearest is the whole number of stitches nearest to um micrometres, halves up.
func (d density) nearest(um int64) int {
	num, den := d.exact(um)
	return int(halfUpDiv(num, den))
}
