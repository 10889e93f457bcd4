// Package shaping plans increases and decreases that are spread evenly: across
// one row, along the edges of a piece that changes its width in a straight line
// (a taper), and along a side that changes its slope at given points.
//
// It counts stitches and rows and says on which of them to shape. What a width
// should be is asked elsewhere: a plan begins and ends with counts.
package shaping
