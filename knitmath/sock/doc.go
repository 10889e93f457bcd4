// Package sock plans the two ends of a sock's foot, worked from the cuff down: the heel,
// row by row, and the toe.
//
// The round begins at the heel all the while: first the stitches of the heel, later the
// sole, then those of the instep. What shapes the leg is not here, nor what closes a tube
// in general, of which a toe is one.
package sock
