// Package gauge turns centimetres into stitches and rows, and counts at one gauge
// into counts at another. It knows no garment, no row and no yarn: whoever has a
// length and wants a count, exactly and by a rule, asks here.
//
// [ComputeCastOn] answers a width and a height, [ConvertGauge] a pattern printed at
// another gauge. What plans are built on is the [Density], a gauge in one direction
// in whole numbers, and what it fits: see [Density.VetFit] and [Regauge.VetFit].
package gauge
