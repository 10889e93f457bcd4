// Package draft knows what a designer's text is made of beside rows: the signs
// that keyboards and word processors put in for the plain ones, the headings and
// front matter, and the words that say how something is done and change no count.
// It reads no row and counts no stitch; that is pattern's.
package draft
