package pattern

// ruleTo reads "through Row 6" after a rule at token i, "Row 2 and all WS rows through Row 6": the rows of the label
// are then every other one up to there, and no rule for those that follow. It is the index after it, or i.
func (p *parser) ruleTo(i int, info *lineInfo) int {
	to := i
	if !p.tokens[to].is("through", "thru", "to") {
		return i
	}
	if to++; p.tokens[to].row() {
		to++
	}
	if p.tokens[to].kind != tokenNumber {
		return i
	}
	if info != nil {
		p.everyOtherTo(info, p.tokens[to].number, p.tokens[to].span)
	}
	return to + 1
}

// everyOtherTo makes a label with one number that of every other row from it up to another.
func (p *parser) everyOtherTo(info *lineInfo, last int32, at span) {
	if len(info.ranges) != 1 || info.ranges[0].first != info.ranges[0].last || info.every == everyNone || info.firsts != nil {
		return
	}
	first := info.ranges[0].first
	if last > MaxRows || last <= first || (last-first)%2 != 0 || !p.name(int(last-first)/2, at) {
		return
	}
	info.every = everyNone
	for n := first + 2; n <= last; n += 2 {
		info.ranges = append(info.ranges, rowRange{n, n})
	}
}
