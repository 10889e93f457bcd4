// Package measure is lengths in whole micrometres, the named roundings, and
// sizes in words. What needs a gauge to be said, or a stitch, is not at home here.
//
// A length enters the arithmetic by [Micrometres] and is counted from then on:
// sums and comparisons of lengths are exact. Everything that is rounded anywhere
// is rounded by a function of round.go, whose name says which way the half goes:
//
//	HalfUpDiv, RoundHalfUp    toward plus infinity
//	NearestInt                away from zero
//	FloorDiv, CeilDiv         there is no half
//	RoundedDiv                as the caller's Rounding says
//
// A [DisplayUnit] writes lengths for people, in centimetres or inches; figures
// are always metric.
package measure
