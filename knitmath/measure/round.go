package measure

import "math"

// All rounding of the house is named here.

// Rounding says which way a length goes to a count when it falls between two
// legal ones.
type Rounding int32

// The roundings.
const (
	RoundingUnspecified Rounding = iota // nearest
	RoundingNearest                     // exactly half-way goes up
	RoundingUp
	RoundingDown
)

// FloorDiv is a/b rounded down, for b > 0.
func FloorDiv(a, b int64) int64 {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}

// CeilDiv is a/b rounded up, for b > 0.
func CeilDiv(a, b int64) int64 { return -FloorDiv(-a, b) }

// HalfUpDiv is a/b rounded to the nearest integer, exactly half-way up, for
// b > 0. 2a + b must fit in an int64.
func HalfUpDiv(a, b int64) int64 { return FloorDiv(2*a+b, 2*b) }

// RoundHalfUp rounds a finite float to the nearest integer, half-way up (toward
// plus infinity, so that -0.5 gives 0: the same rule as [HalfUpDiv]).
func RoundHalfUp(x float64) int64 {
	// What lies behind the point is exact, where x + 0.5 would be rounded itself:
	// the float below 0.5 would give 1.
	down := math.Floor(x)
	if x-down >= 0.5 {
		down++
	}
	return int64(down)
}

// NearestInt rounds a finite float to the nearest integer, half-way away from
// zero.
func NearestInt(x float64) int64 { return int64(math.Round(x)) }

// ToUnits reads a decimal to the nearest whole number of units, of which one has
// so many. A decimal that is a whole number of units is read exactly: it lies
// within far less than half a unit of its float.
func ToUnits(x, perOne float64) int64 { return NearestInt(x * perOne) }

// ToMillionths reads a decimal to the nearest millionth.
func ToMillionths(x float64) int64 { return ToUnits(x, 1e6) }

// ceilSlack is the part of a quotient that [CeilQuotient] does not count: far above
// the rounding of the floats that lead to it (some 1e-15) and far below anything
// that can be measured.
const ceilSlack = 1e-12

// CeilQuotient is the fewest whole parts that hold an amount. An amount of exactly
// a whole number of parts takes that number, whatever the last bits of its float
// say: 550.0000000000001 in parts of 50 are 11.
func CeilQuotient(amount, part float64) int {
	return int(math.Ceil(amount / part * (1 - ceilSlack)))
}

// Abs is n without its sign.
func Abs(n int) int { return max(n, -n) }

// RoundedDiv is a/b rounded as r says, nearest and half-way up by default, for
// b > 0.
func RoundedDiv(a, b int64, r Rounding) int64 {
	switch r {
	case RoundingUp:
		return CeilDiv(a, b)
	case RoundingDown:
		return FloorDiv(a, b)
	}
	return HalfUpDiv(a, b)
}
