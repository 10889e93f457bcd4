package pattern

// fabricOfLabel reads "k1, p1 rib" after "Rnds 1 to 12:", "in garter st" after "Next 8 rows:": the rows of the label are
// worked so.
func (p *parser) fabricOfLabel(line *Line) bool {
	if !p.inRow || p.onlyRows {
		return false
	}
	first := p.next
	p.accept("in")
	end := p.ribEnd(p.next)
	if end == 0 && (p.next > first || !p.peek().among("patt pattern pat rib moss")) {
		end = p.fabricEnd(p.next)
	}
	if end == 0 || !p.clauseStopsAt(end) {
		p.next = first
		return false
	}
	p.next = end
	line.info.kind, line.info.rib = lineEven, p.ribIn(first, end)
	return true
}
