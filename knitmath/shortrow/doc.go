// Package shortrow plans short rows, which make one part of a piece taller than
// another and keep its stitches: wedges that are straight or follow a curve,
// circles of wedges, and the raised part of a round.
//
// It turns heights across a width into whole pairs of rows, and those into rows
// with their turns, each gap closed. A shape that changes the number of stitches
// is not made here.
package shortrow
