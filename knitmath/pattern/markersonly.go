package pattern

// markersOnly reports whether a numbered row holds nothing but markers, "Row 1: Pm, sl m": it
// is a row that works no stitch, and no direction.
func (p *parser) markersOnly(line *Line) bool {
	if line.info.ranges == nil {
		return false
	}
	found := false
	for i := p.next; ; i++ {
		t := &p.tokens[i]
		switch {
		case p.endsAt(i):
			return found
		case t.among("pm sm m marker markers"):
			found = true
		case !t.among("place sl slip remove rm replace a the , ; and then"):
			return false
		}
	}
}
