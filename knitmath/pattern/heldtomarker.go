package pattern

// heldUpToMarker reads stitches up to a marker that are put aside within a row.
func (p *parser) heldUpToMarker(steps *[]Step) bool {
	from := p.peek().span
	if !p.acceptEnd(p.heldToMarker(p.next)) {
		return false
	}
	*steps, p.asGiven = append(*steps, Step{Name: "hold", takes: 1, BeforeMarkerStitches: toEnd, at: from.to(p.last())}), true
	return true
}

// heldToMarker is the index after "place sts to m on hold", "slip the sts between markers onto waste yarn" at token i, and after
// "place gusset sts on waste yarn" where a marker is taken off just behind it: all stitches up to there; 0 if that is not what stands
// there.
func (p *parser) heldToMarker(i int) int {
	if !p.tokens[i].among("place put slip sl leave transfer") {
		return 0
	}
	for i++; p.tokens[i].among("the all foll following"); i++ {
	}
	sts := p.ofPart(i)
	if sts == 0 {
		return 0
	}
	place := p.markerToldEnd(sts + 1)
	end := max(sts+1, place)
	if !p.tokens[end].is("on", "onto", "to") {
		return 0
	}
	aside := false
	for end++; !p.endsClause(end) && !p.tokens[end].is("and", "("); end++ {
		aside = aside || p.tokens[end].is(puttingAside...) && p.asideAt(end)
	}
	if !aside || place == 0 && (sts == i || !p.markerRemovedAt(end)) {
		return 0
	}
	return end
}

// markerToldEnd is the index after "to next marker", "between markers" at token i; 0 if that is not what stands there.
func (p *parser) markerToldEnd(i int) int {
	switch {
	case p.tokens[i].is("to", "before"):
		return p.markerAt(i + 1)
	case !p.tokens[i].is("between"):
		return 0
	}
	for i++; p.tokens[i].among("the gusset thumb two 2"); i++ {
	}
	if !p.tokens[i].is("markers", "mkrs", "ms") {
		return 0
	}
	return i + 1
}

// markerRemovedAt reports whether ", remove marker" stands at token i.
func (p *parser) markerRemovedAt(i int) bool {
	for p.tokens[i].among(", ; and then") {
		i++
	}
	return p.tokens[i].is("rm") || p.tokens[i].is("remove") && p.markerAt(i+1) != 0
}
