// Package curve is what is wanted from point to point, and edges that follow it: heights
// and how far an edge lies in at each, as straight lines, quarter ellipses and arcs of
// circles, and the bind-offs, decreases, increases and cast-ons that come near it. Which
// curve an armhole or a neck has is said in rooms of their own; the steps of straight
// slopes between counts are a taper's (package shaping), those across a row a wedge's
// (package shortrow).
//
// A [Path] is the curve of an edge, a [Course] the same in stitches and rows, [Follow]
// plans one edge or two along it, and [Worked] writes the rows of any two edges together.
// [Strokes] are what other plans step along.
package curve
