package armhole

import (
	"math/rand/v2"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// garment is a body near to a charted one or far from it, with some of the rest given, by a number: in
// counts, in cm and in inches, with rules.
func garment(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 73))
	who := charted[r.IntN(len(charted))]
	g := &gauge.Gauge{Stitches: float64(36+r.IntN(28)) / 2, Rows: float64(48+r.IntN(40)) / 2}
	if r.IntN(8) == 0 {
		g.Stitches, g.Rows = knittest.FarGauge(r)
	}
	far := []float64{0.1, 0.5}[r.IntN(2)]
	off := func(cm float64) *float64 {
		return new(float64(measure.RoundHalfUp(10*cm*(1-far+2*far*r.Float64()))) / 10)
	}
	some := func(low, high int) *int {
		if r.IntN(6) > 0 {
			return nil
		}
		return new(low + r.IntN(high-low+1))
	}
	part := func(low, high float64) *float64 {
		if r.IntN(6) > 0 {
			return nil
		}
		return new(float64(measure.RoundHalfUp(10*(low+(high-low)*r.Float64()))) / 10)
	}
	rule := func() *gauge.CountRule {
		if r.IntN(6) > 0 {
			return nil
		}
		return &gauge.CountRule{Multiple: new(1 + r.IntN(8)), Remainder: new(r.IntN(4)), Edge: some(0, 2)}
	}
	in := Input{Gauge: g, Style: []Style{0, StyleSetIn, StyleSetIn, StyleSaddle}[r.IntN(4)], ChestCm: &who[0], AcrossBackCm: off(who[1]),
		ArmholeDepthCm: off(who[2]), UpperArmCm: off(who[3]), ChestEaseCm: part(-5, 30), SleeveEaseCm: part(0, 12),
		UnderarmStitches: some(1, 12), LargestGroupStitches: some(1, 6), ShapingRows: some(6, 40), CapTopStitches: some(6, 40),
		CapExcessPercent: part(0, 5), ToleranceStitches: part(0, 3), SleeveRule: rule(), AcrossRule: rule(), StitchRule: rule(),
		DisplayUnit: measure.DisplayUnit(r.IntN(3))}
	if r.IntN(4) == 0 {
		in.CapTopStitches, in.CapTopCm, in.TopRule = nil, part(3, 15), rule()
	}
	switch r.IntN(4) {
	case 0:
		in.CapHeightRule = CapHeightRule(r.IntN(5))
	case 1:
		in.CapHeightCm = off(who[2] * 0.65)
	}
	if in.UnderarmStitches == nil {
		in.UnderarmRule = rule()
	}
	return in
}
