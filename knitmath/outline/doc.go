// Package outline is a plan as lines to draw: points in the plane, the names of
// the lines through them, and the axes that say what is measured. It decides
// nothing about a plan, and draws nothing: whoever plans hands over the corners,
// and whoever draws gets points in a frame.
//
// [Corner] is a point in whole stitches and rows, where it is exact whether three
// lie on one stroke; [SizedBy] turns corners into points in cm at a gauge.
package outline
