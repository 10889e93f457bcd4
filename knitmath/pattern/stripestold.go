package pattern

// stripesInAllAt reports whether "15 B stripes" stands at token i, and one stripe of that colour in the set of rows above: each time that
// these are worked is one.
func (p *parser) stripesInAllAt(i int) bool {
	end, _ := p.sizedEnd(i)
	if end == 0 || p.tokens[end].kind != tokenWord || !p.tokens[end+1].is("stripe", "stripes") {
		return false
	}
	colour, runs, on := p.tokens[end].text, 0, false
	lines := p.piece.Lines
	for k := len(lines) - 1; k >= 0 && lines[k].info.kind == lineRow && lines[k].numbered(); k-- {
		is := p.workedIn(lines[k].info.at, colour)
		if is && !on {
			runs++
		}
		on = is
		if lines[k].info.ranges[0].first == 1 {
			break
		}
	}
	return runs == 1
}

// workedIn reports whether a row is worked "with B".
func (p *parser) workedIn(at span, colour string) bool {
	tokens := scan(p.found.source[at.start:max(at.start, at.end)])
	for i := 1; i < len(tokens); i++ {
		if tokens[i].is(colour) && tokens[i-1].among("with in using") {
			return true
		}
	}
	return false
}
