// Package hand plans what goes on a hand: the top of a mitten, and its thumb. Cuffs are
// tubes and not here; the stacks of decreases that close a top are those of package solid.
//
// Left and right are as worn, and the rounds of both hands are written out: they begin at
// the edge of the little finger, the fingers pointing up as they are worked.
package hand
