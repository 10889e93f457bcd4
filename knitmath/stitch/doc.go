// Package stitch is the model of written knitting: stitch operations, rows made
// of them, the notation that patterns write them in, and a machine that knits
// them. Everything the service tells a knitter to do is a Row of this package. It
// knows stitches and rows as they are worked: a length, a plan or a question has no
// place here.
//
// # Operations
//
// An Op takes stitches off the left needle and leaves stitches on the right; see
// the table in op.go. Abbreviations are those of the trade's published list, or
// common practice where it has none. Those that pick up stitches along an edge
// take its rows where the others take stitches.
//
// # Rows
//
// A Row is a list of steps: operations with a count, groups repeated a number of
// times, operations worked to the last n stitches. Row.Count is its arithmetic,
// Expand the flat sequence it comes to, and Compress the way back: the shortest
// honest way of writing a sequence. Machine works rows stitch by stitch and
// refuses what hands could not do.
//
// # Notation
//
// Row.Text writes, in lower case but for the DS of a double stitch:
//
//	row    = [ item { ", " item } ]
//	item   = work | repeat | last
//	work   = ( "k" | "p" ) n [ " tbl" ]         k5, p1, k2 tbl
//	       | ( "sl" | "CO" | "BO" ) " " n       sl 1, BO 4
//	       | ( "pick up and knit" | "skip" ) " " n
//	       | "place " n " sts on hold"
//	       | name [ times, name in brackets ]   k2tog, [k2tog] 3 times
//	repeat = "[" item { ", " item } "]" times   [k2tog, k8] 4 times
//	last   = abbr ( " to end" | " to last st" | " to last " n " sts" )
//	times  = " once" | " twice" | " " n " times"
//	n      = a whole number from 1, without leading zeros
//
// where name is the abbreviation of any other operation and abbr that of any
// operation that takes stitches. What is repeated always stands in brackets, even
// a single k2tog: "k1, k2tog 3 times" is read in two ways. An item that ends
// the row, "turn" or "w&t", is written like any other. Words and punctuation
// are common practice.
//
// Two different things have one text. A group of a single operation reads like
// that operation with a count. The yarn over of a short row reads "yo" like any
// other; it is the one that begins a row after a row that ended with "turn".
package stitch
