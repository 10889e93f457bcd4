package pattern

// whileRows reports whether a change of which only the place is said, from token i on, is made while several rows are worked, "Work 10
// rows, inc 1 st at each end": in one of them or in each, which changes the count. A count after it tells.
func (p *parser) whileRows(i int) bool {
	n := len(p.piece.Lines)
	if n == 0 || p.lastRowSaid || p.onlyRows || p.claimAhead() || !p.tokens[i-1].among(", and while but & also") {
		return false
	}
	for i--; p.tokens[i].among(", and while but & also"); i-- {
	}
	if p.tokens[i].is(".", ";", "then") || p.tokens[i].kind == tokenNewline {
		return false
	}
	info := &p.piece.Lines[n-1].info
	return (info.kind == lineEven || info.kind == linePlain || info.kind == lineRepeat) && !single(info.counts, 1)
}
