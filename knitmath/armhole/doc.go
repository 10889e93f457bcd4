// Package armhole plans armholes and the caps of the sleeves that are set into them,
// together, since neither is right without the other: the edge of the cap must go into
// that of the armhole, both measured as they are knit. Bodies and sleeves elsewhere are
// tapers (package shaping), necks and shoulders package neck's.
//
//	question -> checks -> counts of back, front and sleeve -> edges of back and front
//	         -> cap after cap, of other heights or slopes, until its edge is as long as is wanted
//	         -> rows, words, outline
//
// How an edge follows its curve is package curve's to say.
package armhole
