package pattern

// markersAfter reports whether "of markers" comes next.
func (p *parser) markersAfter() bool {
	for n := range 5 {
		if n > 0 && p.ordinalEnd(p.next+n-1) == p.next+n+1 {
			continue // the "st" of "every 21st row"
		}
		if p.ahead(n).among("marker markers m raglan raglans st seam underarm centre center") {
			return true
		}
	}
	return false
}

// askMarkers asks how many stitches a change at markers comes to.
func (p *parser) askMarkers(info *lineInfo, from span) bool {
	for !p.clauseEnds() {
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "how many stitches is that in a row? write the row, or the count after it")
	info.kind = lineUnread
	return true
}

// shapedSteps is what a row of shaping comes to: all stitches as they are, but for
// those that the change takes.
func shapedSteps(p *parser, n []int, factor int) []Step {
	change := make([]int, len(n))
	last := make([]int, len(n))
	size, takes, leaves := factor, int16(0), int16(1)
	if factor < 0 {
		size, takes = -factor, 2
	}
	for i, v := range n {
		change[i] = min(max(v, 0)*size, MaxNumber)
		last[i] = change[i] * int(takes)
	}
	return []Step{
		{Name: "work", takes: 1, leaves: 1, RemainingStitches: last},
		{Name: "work", takes: takes, leaves: leaves, Times: change},
	}
}
