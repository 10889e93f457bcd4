package pattern

// markersLabel is the index of the colon of "Place markers for the thumb gusset: K23, pm", "Establish raglan lines: k22, pm"
// at token i, a row that is called after what it does; 0 if that is not what stands there.
func (p *parser) markersLabel(i int) int {
	if !p.tokens[i].among("place set setting placing establish establishing position positioning") {
		return 0
	}
	named := false
	for n := i + 1; n < i+9; n++ {
		switch t := &p.tokens[n]; {
		case t.is(":"):
			if _, _, _, counted := split(p.tokens[n+1].text); named && (counted || p.startsItem(n+1) && !p.tokens[n+1].is("place", "pm")) {
				return n
			}
			return 0
		case t.kind != tokenWord && t.kind != tokenNumber:
			return 0
		default:
			named = named || t.among("marker markers raglan raglans")
		}
	}
	return 0
}
