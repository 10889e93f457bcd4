package pattern

// patternReps reads "work 4 more reps of patt", "work 3 repeats of feather and fan": the rows of a
// stitch pattern, so many times. Of rows that stand just above, a number without "more" holds the
// time that they were worked there.
func (p *parser) patternReps(line *Line) bool {
	if !p.peek().among("work knit cont continue complete") || p.onlyRows {
		return false
	}
	from := p.peek().span
	p.next++
	p.accept("another", "a")
	more := p.tokens[p.next-1].is("another") || p.peek().is("further")
	p.accept("further", "total", "of")
	end, _ := p.sizedEnd(p.next)
	if end == 0 {
		return false
	}
	for ; p.tokens[end].among("more further additional full complete pattern patt vertical"); end++ {
		more = more || p.tokens[end].is("more", "further", "additional")
	}
	if !p.tokens[end].among("reps repeats repetitions rep repeat") {
		return false
	}
	n := p.number()
	if n == nil {
		return false
	}
	p.next = end + 1
	if !p.repsOf(&line.info, more) {
		return false
	}
	line.info.kind, line.info.counts = lineRepeat, without(n)
	if line.info.pattern == 0 && !more {
		line.info.total, line.info.afresh = true, false
		p.reading(from.to(p.last()), "read as so many times in all, the one above with them")
	}
	return true
}

// repsOf reads which rows are worked so often: those of a pattern that the text names, or "the
// pattern", those that stand above.
func (p *parser) repsOf(info *lineInfo, more bool) bool {
	if !p.accept("of") {
		if p.clauseEnds() && p.rowsInSet() > 0 {
			info.last = p.rowsInSet()
			return true
		}
		return false
	}
	if p.patternRows(info) {
		info.afresh = more
		return true
	}
	p.accept("the", "this")
	if end, number := p.patternAt(p.next); end != 0 {
		p.next = end
		info.pattern, info.afresh = number, true
		return true
	}
	if p.accept("lace", "stitch", "st"); !p.acceptAmong("patt pattern pat rows sequence") {
		return false
	}
	if n := p.rowsInSet(); n > 0 {
		info.last, info.afresh = n, more
		return true
	}
	if n := p.rowsSaid; n > 0 {
		info.last, info.afresh = n, more
		return true
	}
	return false
}
