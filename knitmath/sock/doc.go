// Package sock plans the two ends of a sock's foot: the heel, row by row, from the cuff down
// or from the toe up, and the toe.
//
// The round begins at the heel all the while: first the stitches of the heel, later the
// sole, then those of the instep. What shapes the leg is not here, nor what closes a tube
// in general, of which a toe is one.
package sock
