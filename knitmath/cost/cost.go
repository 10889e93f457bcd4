package cost

import "math"

// Most is the greatest price: sums and products stay there. It fits 32 bits, as the
// prices of a whole process added up fit 64.
const Most = math.MaxInt32

// Limit is the dearest question that is worked: a twentieth of a second on a slow
// core. Checking a written pattern, which works every row in every size, has a limit
// of its own.
const Limit = 50_000

// Sum adds up. What is below 0 counts as 0.
func Sum(parts ...int) int {
	sum := 0
	for _, p := range parts {
		sum = min(sum+within(p), Most)
	}
	return sum
}

// Product multiplies. What is below 0 counts as 0.
func Product(factors ...int) int {
	product := int64(1)
	for _, f := range factors {
		product = min(product*int64(within(f)), Most)
	}
	return int(product)
}

// Clamp is the number in range that is nearest to n.
func Clamp(n, least, most int) int { return min(max(n, least), most) }

// Ceil is x rounded up, from 0 to most; what is not a number counts as 0.
func Ceil(x float64, most int) int {
	switch {
	case x > float64(most):
		return most
	case x > 0:
		return most - int(float64(most)-x) // cut towards zero from above is rounded up
	}
	return 0
}

func within(n int) int { return Clamp(n, 0, Most) }
