package shortrow

// Hump is a wedge whose pairs of short rows under each stitch are given, at least none, from the
// right edge: no profile is read. Where neighbours lie more than a pair apart they are brought
// together, since turns lie a stitch apart at least, and turns that make double stitches keep
// clear of the edges. Its answer has the rows and what lies under the stitches; ok is false where
// no short row is left.
func Hump(pairs []int, method TurnMethod) (out Wedge, ok bool) {
	planned, _ := eased(pairs)
	if method == TurnMethodGerman {
		planned = clearOfDoubles(planned, TallEndUnspecified)
	}
	if level(planned) {
		return Wedge{}, false
	}
	list := spans(planned, false)
	s := shortRows{width: len(planned), method: method, rows: make([]WedgeRow, 0, 2*len(list)+2), turns: make([]turn, 0, 2*len(list))}
	s.work(list)
	return Wedge{TurnCount: len(s.turns), Rows: s.rows, FullRows: len(s.rows) - 2*len(list), width: len(planned), method: method,
		heights: shortRowHeights(len(planned), list, method)}, true
}
