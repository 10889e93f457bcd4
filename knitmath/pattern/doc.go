// Package pattern reads written instructions, for one size or for many at once,
// works them, writes them and mirrors them. It stands on knitmath/stitch.
//
// # How a text is read
//
//	text -> plain signs (draft), tokens with their line and column
//	     -> lines and sentences: front matter, headings, notes; labels, rows, directions
//	     -> clauses, each understood, passed over with a remark, or asked
//	     -> for each size: what a row takes and leaves -> running counts
//	     -> findings, each at its place in the text
//
// Read never fails: what cannot be read becomes a Finding, the rest of that row
// is passed over, and reading goes on with the next. Work counts exactly, by the
// steps and not stitch by stitch; where counting is not the whole truth (make
// ones, turns, wraps, double stitches) the stitch machine works those rows too, and
// where markers matter a walker goes from one to the next.
//
// Nothing is passed over in silence: a word that might change a count is understood or
// asked, and a number of times that cannot be read is never taken from the claim.
//
// # Grammar
//
// It stands in testdata/instruction/grammar.md, for callers without Go too. Lines are
// counted from 1, columns from 1 in characters.
//
// # What is taken how
//
// The trade leaves some things open. What can be counted either way is read one
// way and the reading is said (KindReading): "rep from * 3 times" is 3 more than
// the first, m1 leans either way, "k2tog 3 times" repeats the k2tog alone. What
// cannot be counted without knowing is asked (KindQuestion): m, yf after a purl.
// The words and their uses are common practice; abbreviations as in
// testdata/stitch/abbreviations.csv.
package pattern
