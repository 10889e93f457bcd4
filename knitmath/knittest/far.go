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
