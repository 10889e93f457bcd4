// Package yarn is what a yarn is, and how much of it is needed: put-ups, weight
// categories, dye lots, and metres and grams for pieces at a gauge. It does not
// shape a piece, nor ask where its stitches lie: stitches, rows and areas are all
// that it sees of the knitting.
package yarn
