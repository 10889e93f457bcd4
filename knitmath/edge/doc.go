// Package edge plans what is worked along the edge of a finished piece: the
// stitches picked up for a band, and the buttonholes in one.
//
// It begins where the piece ends. What shapes the piece itself is not planned
// here.
package edge
