package gauge

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

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
	// MaxCount is the most stitches or rows over the counted length: a metre of
	// the finest gauge known to be knit by hand has fewer.
	MaxCount = 1_000.0
	// MinCount is the finest a count is read to.
	MinCount = 1e-6
	// MaxOverCm is the longest length a gauge may be stated over.
	MaxOverCm = 100.0
)

// Vet checks a gauge that must be there and gives its two densities, both zero
// when it is not sound.
func Vet(c *fault.Checks, field string, g *Gauge) (st, rw Density) {
	if g == nil {
		c.Add(field, fault.ReasonRequired, "is missing; give stitches and rows over a length")
		return st, rw
	}
	c.RequiredNumber(field, "stitches", g.Stitches, MinCount, MaxCount)
	c.RequiredNumber(field, "rows", g.Rows, MinCount, MaxCount)
	c.OptionalNumber(field, "over_cm", g.OverCm, measure.MinCm, MaxOverCm)
	if !c.Sound(field) {
		return st, rw
	}
	over := fault.Or(g.OverCm, DefaultOverCm)
	return NewDensity(g.Stitches, over), NewDensity(g.Rows, over)
}
