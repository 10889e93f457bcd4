package pattern

// thenEveryRow reads "then decrease on every rnd until 8 sts rem" after rows that were worked again until a
// count was reached: their row that changes the count is worked again without those between.
func (p *parser) thenEveryRow(line *Line) bool {
	last := len(p.piece.Lines) - 1
	if last < 0 || p.onlyRows || p.piece.Lines[last].info.kind != lineRepeat || p.piece.Lines[last].info.until == nil {
		return false
	}
	from := p.peek().span
	end := p.everyRowEnd(p.next)
	if end == 0 {
		return false
	}
	row := last - 1
	for row >= 0 && (p.piece.Lines[row].info.kind != lineRow || !changesCount(p.piece.Lines[row].Steps)) {
		p.looked++
		row--
	}
	p.next = end
	until := p.untilCount()
	if until == nil || row < 0 {
		return false
	}
	p.reading(from.to(p.last()), "read as the last row that changes the count, again and again, without rows between")
	info := &line.info
	info.kind, info.lines, info.until, info.afresh, info.adapting = lineRepeat, []int16{int16(row)}, until, true, true
	return true
}

// everyRowEnd is the index after "decrease on every rnd", "work dec rnd every rnd", "every round" at token i, before "until"
// or "to"; 0 if that is not what stands there.
func (p *parser) everyRowEnd(i int) int {
	if p.acceptedAt(&i, "work", "repeat", "rep", "working", "repeating") {
		for p.acceptedAt(&i, "the", "a", "this") {
		}
	}
	if p.acceptedAt(&i, "dec", "decrease", "decreasing", "inc", "increase", "increasing") && p.tokens[i].row() {
		i++
	}
	for p.acceptedAt(&i, "as", "before", "on", "in", "established", "this", "way", "manner") {
	}
	if !p.acceptedAt(&i, "every", "each") || !p.tokens[i].row() || !p.tokens[i+1].is("until", "till", "to") {
		return 0
	}
	return i + 1
}
