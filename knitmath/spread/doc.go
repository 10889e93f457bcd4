// Package spread is k things over n places as evenly as integers allow. It knows
// neither stitches nor rows, only numbers of places: what a place is, and which
// way of being even a knitter wants, is said by the rooms above.
//
// [Place] gives the places themselves and [Share] the units between them,
// [Palindrome] orders gaps so that they read the same from both ends, and a
// [GapRun] writes equal gaps as one. A [Fraction] says a ratio in the smallest
// numbers that come nearest to it.
package spread
