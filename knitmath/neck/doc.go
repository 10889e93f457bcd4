// Package neck is the neck of a garment with the shoulders beside it: how the stitches
// across the shoulders divide, the edge of the neck row by row at both of its sides, the
// slope of the shoulders, the stitches that a band picks up all round, and whether a head
// goes through. Curves are followed by package curve, straight slants by package shaping,
// how short rows turn is known to package shortrow. Armholes have a room of their own.
//
// A piece is worked from the row that divides it: the stitches where right-side rows begin
// are its first side and are finished at once, the others wait and are its second. Of a
// front the first side is the left one as worn, of a back the right one.
package neck
