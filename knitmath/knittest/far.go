package knittest

import (
	"math"
	"math/rand/v2"
)

// Far is a number within bounds, as often at one of them as of any size between.
func Far(rng *rand.Rand, least, most int) *int {
	switch rng.IntN(8) {
	case 0:
		return &least
	case 1:
		return &most
	}
	low := math.Log(float64(max(least, 1)))
	n := int(math.Exp(low + rng.Float64()*(math.Log(float64(most+1))-low)))
	return Ptr(min(max(n, least), most))
}

// FarGauge is stitches and rows of any yarn, in one question of five of none.
func FarGauge(rng *rand.Rand) (stitches, rows float64) {
	if rng.IntN(5) == 0 {
		return float64(*Far(rng, 1, 1000)), float64(*Far(rng, 1, 1000))
	}
	return 14 + 20*rng.Float64(), 18 + 30*rng.Float64()
}

// Some is such a number in one question of three, else nil.
func Some(rng *rand.Rand, least, most int) *int {
	if rng.IntN(3) > 0 {
		return nil
	}
	return Far(rng, least, most)
}

// Halves is a number of halves as one of whole, nil of nil.
func Halves(n *int) *float64 {
	if n == nil {
		return nil
	}
	return Ptr(float64(*n) / 2)
}
