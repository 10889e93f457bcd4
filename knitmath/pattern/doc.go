// Package pattern reads written instructions, for one size or for many at once,
// works them, writes them and mirrors them. It stands on knitmath/stitch.
//
// # How a text is read
//
//	text -> tokens, each with its line and column
//	     -> lines: rows (trees of steps with a number for every size) and directions
//	     -> for each size: what a row takes and leaves -> running counts
//	     -> findings, each at its place in the text
//
// Read never fails: what cannot be read becomes a Finding, the rest of that row
// is passed over, and reading goes on with the next. Work counts exactly, by the
// steps and not stitch by stitch; where counting is not the whole truth (make
// ones, turns, wraps, double stitches) the stitch machine works those rows too.
//
// # Grammar
//
// Case matters nowhere. Lines are counted from 1, columns from 1 in characters.
//
//	piece  = line { ( newline | "." ) line }
//	line   = [ label ":" ] row [ claim ] | direction [ claim ] | heading [ ":" ]
//	label  = ( "row" | "rnd" | "round" )s numbers [ "(RS)" | "(WS)" ] [ "and all WS rows" ]
//	       | up to four words and "row" or "rnd", as in "next row" or "set-up row (WS)"
//	row    = item { ( "," | ";" | "." | "and" | "then" ) item }
//	item   = work | group | star
//	work   = abbreviation [ n ] [ "sts" ] [ "tbl" ] [ manner ] [ upTo | times ]
//	group  = ( "[" row "]" | "(" row ")" | "{" row "}" ) ( times | upTo | "in next st" )
//	star   = "*" row ( "rep from *" | "*" "rep" ) ( [ "more" ] times | upTo )
//	times  = "once" | "twice" | n "times" | n "more times"
//	upTo   = "to end" | "to last" n "sts" | "until" n "sts rem" | "across" | "around"
//	n      = number | number "(" number { "," number } ")" | "(" number { "," number } ")"
//	claim  = "(96, 104, 112 sts)" | "- 96 (104, 112) sts" | "(2 sts dec)"
//	every  = "every" ( "row" | "other row" | n "th row" | n "th and" n "th row alternately" )
//	direction = "Rep Rows 3 and 4" times | "Work even until ..." | "Work 10 rows even"
//	       | ( "Rep" | "Work" ) name "row" every times { "then" every times }
//	       | "Knit 4 rows" | "CO 96 sts" | "BO 4 sts at beg of next 2 rows" | "Join in the rnd"
//
// A heading is a line of words of which none belongs to the notation, two at
// least or with a colon at its end: "Feather and fan". It is passed over, with a
// remark.
//
// A line break ends a row, but not within brackets or after a comma. Brackets
// with nothing but numbers in them, after a number or where one is due, are the
// numbers of the other sizes; brackets that end in "sts" are a claim; any others
// are a group. 0 and "-" mean that a size does without.
//
// # What is taken how
//
// The trade leaves some things open. What can be counted either way is read one
// way and the reading is said (KindReading): "rep from * 3 times" is 3 more than
// the first, m1 leans either way, "k2tog 3 times" repeats the k2tog alone. What
// cannot be counted without knowing is asked (KindQuestion): inc, dec, m, yf.
// The words and their uses are common practice; abbreviations as in
// testdata/stitch/abbreviations.csv.
package pattern
