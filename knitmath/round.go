package knitmath

import "math"

// All rounding of the package is named here.

// floorDiv is a/b rounded down, for b > 0.
func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}

// ceilDiv is a/b rounded up, for b > 0.
func ceilDiv(a, b int64) int64 { return -floorDiv(-a, b) }

// halfUpDiv is a/b rounded to the nearest integer, exactly half-way up, for
// b > 0. 2a + b must fit in an int64.
func halfUpDiv(a, b int64) int64 { return floorDiv(2*a+b, 2*b) }

// roundHalfUp rounds a finite float to the nearest integer, half-way up (toward
// plus infinity, so that -0.5 gives 0: the same rule as halfUpDiv).
func roundHalfUp(x float64) int64 { return int64(math.Floor(x + 0.5)) }

// nearestInt rounds a finite float to the nearest integer, half-way away from
// zero.
func nearestInt(x float64) int64 { return int64(math.Round(x)) }

// toUnits reads a decimal to the nearest whole number of units, of which one has
// so many. A decimal that is a whole number of units is read exactly: it lies
// within far less than half a unit of its float.
func toUnits(x, perOne float64) int64 { return nearestInt(x * perOne) }

// toMillionths reads a decimal to the nearest millionth.
func toMillionths(x float64) int64 { return toUnits(x, 1e6) }

// ceilSlack is the part of a quotient that ceilQuotient does not count: far above
// the rounding of the floats that lead to it (some 1e-15) and far below anything
// that can be measured.
const ceilSlack = 1e-12

// ceilQuotient is the fewest whole parts that hold an amount. An amount of exactly
// a whole number of parts takes that number, whatever the last bits of its float
// say: 550.0000000000001 in parts of 50 are 11.
func ceilQuotient(amount, part float64) int {
	return int(math.Ceil(amount / part * (1 - ceilSlack)))
}
