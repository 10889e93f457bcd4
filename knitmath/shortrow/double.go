package shortrow

// clearOfDoubles lowers pairs so that no stitch is made double where its row more
// would show as a rise that nobody asked for. The double stitch is the one beyond
// a turn: it may not be the stitch at either edge, nor, where a wedge is tall at
// both sides, any of the lowest in the middle that has none beside it. The turns
// next to those places move a stitch away from them, and others with them as far
// as they would meet.
func clearOfDoubles(pairs []int, tall TallEnd) []int {
	out, width := append([]int(nil), pairs...), len(pairs)
	fromRight := func(x int) func(int) int { return func(d int) int { return x + d } }
	fromLeft := func(x int) func(int) int { return func(d int) int { return x - d } }
	climbLater(out, width, fromRight(0))
	climbLater(out, width, fromLeft(width-1))
	if tall == TallEndSides {
		climbLater(out, width-width/2, fromRight(width/2))
		climbLater(out, (width+1)/2, fromLeft((width-1)/2))
	}
	return out
}

// climbLater lets the heights of n stitches, the first of which is at(0), rise by
// a pair a stitch from the second on, where they rose from the first.
func climbLater(pairs []int, n int, at func(int) int) {
	for d := 1; d < n; d++ {
		most := pairs[at(d-1)] + 1
		if d == 1 {
			most--
		}
		pairs[at(d)] = min(pairs[at(d)], most)
	}
}
