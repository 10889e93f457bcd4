// Package yardage is how much yarn the knitting takes: metres and grams of pieces at a
// gauge, balls to buy, and whether what is left will last. It does not shape a piece,
// nor ask where its stitches lie: stitches, rows and areas are all that it sees of the
// knitting. What a yarn itself is stands in package yarn.
package yardage
