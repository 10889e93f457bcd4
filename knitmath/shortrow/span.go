package shortrow

// A span is the stitches of one pair of short rows: from has so many stitches
// to its right, and so has to.
type span struct{ from, to int }

// spans breaks heights, in pairs of rows, into the pairs of short rows that make
// them. Every stitch lies in as many spans as it has pairs, and spans lie inside
// or beside one another, never across. They come in working order from the right
// edge: longest first, each before those inside it; shortest first, each after
// them.
//
// The method is that of matching brackets: a span opens where the height rises
// and closes where it falls, the last opened first.
func spans(pairs []int, shortestFirst bool) []span {
	var list []span
	var open []int // indexes into list, or the first stitches of spans not listed yet
	level := 0
	for x := 0; x <= len(pairs); x++ {
		now := 0
		if x < len(pairs) {
			now = pairs[x]
		}
		for ; level > now; level-- {
			last := open[len(open)-1]
			open = open[:len(open)-1]
			if shortestFirst {
				list = append(list, span{last, x})
			} else {
				list[last].to = x
			}
		}
		for ; level < now; level++ {
			if shortestFirst {
				open = append(open, x)
			} else {
				open = append(open, len(list))
				list = append(list, span{from: x})
			}
		}
	}
	return list
}

// shortRowHeights is how many short rows lie under every stitch: two for each
// span over it. A stitch made double was knit once more on the way out: it is
// the one beyond each turn, which lies at either end of a span unless that is an
// edge.
func shortRowHeights(width int, list []span, method TurnMethod) []int {
	rows := make([]int, width+1) // differences first
	for _, s := range list {
		rows[s.from] += 2
		rows[s.to] -= 2
	}
	for x := 1; x < width; x++ {
		rows[x] += rows[x-1]
	}
	rows = rows[:width]
	if method != TurnMethodGerman {
		return rows
	}
	for _, s := range list {
		if s.to < width {
			rows[s.to]++
		}
		if s.from > 0 {
			rows[s.from-1]++
		}
	}
	return rows
}
