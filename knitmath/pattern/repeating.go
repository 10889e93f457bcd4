package pattern

// repeating reads "rep Rows 3 and 4 five more times", "rep dec row every 6th row 5
// times", "as 1st row".
func (p *parser) repeating(line *Line) bool {
	info, verb := &line.info, p.peek()
	from := verb.span
	p.next++
	if !p.repeatsAfter(verb) {
		return false
	}
	if p.repeatedOtherwise(verb, line) {
		return true
	}
	alike := verb.is("as", "same")
	info.kind = lineRepeat
	info.afresh = worksAfresh(verb)
	info.ranges, info.firsts, info.lasts = nil, nil, nil // those of a label
	if p.accept("as", "like") && alike {
		return false
	}
	p.accept("the", "for")
	if !p.rowsRepeated(verb, info) {
		return false
	}
	if info.kind == lineUnread {
		return true
	}
	p.accept("only", "alone")
	p.ofThisPattern()
	p.ofHeading(info)
	p.patternGoesOn(info)
	if info.afresh && info.lines == nil && !p.workedAgainSaid(info) {
		return false // "work Row 1 of chart" is read elsewhere
	}
	if alike {
		info.counts = one
		return p.clauseEnds()
	}
	return p.howOften(info, from)
}

// repeatsAfter reports whether rows may follow a verb with which they are repeated, and passes over what belongs to the
// verb.
func (p *parser) repeatsAfter(verb *token) bool {
	switch {
	case verb.is("alternate"):
		return p.peek().is("these", "the", "last") || p.rowNumberNext()
	case verb.is("same"):
		return p.accept("as")
	case verb.is("keep"):
		p.accept("on")
		return p.accept("repeating", "working") || p.peek().among("decreasing increasing dec inc")
	}
	return true
}

// worksAfresh reports whether a verb works rows, where "rep" works them again.
func worksAfresh(verb *token) bool { return verb.among("work cont continue knit proceed") }

// repeatedOtherwise reads what a verb says again without naming rows: "rep from * again",
// "cont in this way".
func (p *parser) repeatedOtherwise(verb *token, line *Line) bool {
	if verb.is("rep", "repeat") {
		return p.again(line)
	}
	if !verb.among("cont continue work keep proceed") {
		return false
	}
	p.next--
	if p.inThisWay(line) {
		return true
	}
	p.next++
	return false
}

// rowsRepeated reads which rows are worked again, "rows 3 and 4", "from row 3". It asks where
// a verb does nothing but repeat and no rows are named.
func (p *parser) rowsRepeated(verb *token, info *lineInfo) bool {
	if end, _ := p.sizedEnd(p.next + 1); end != 0 && worksAfresh(verb) && p.ofPart(end) != 0 { // "knit these 13 sts" is a row
		return false
	}
	if p.rowsNamed(info) {
		return true
	}
	if worksAfresh(verb) {
		return false
	}
	if p.peek().is("until", "till", "til") && verb.is("rep", "repeat") {
		info.last = p.rowsInSet()
		return info.last > 0
	}
	if p.fromTheChange(info) {
		return true
	}
	if p.peek().is("from") && p.fromRow(info) {
		return true
	}
	if verb.is("as", "same") || p.starsFollow() {
		return false
	}
	p.ask(ReasonUnread, p.peek().span, "which rows?")
	info.kind = lineUnread
	return true
}

// ofThisPattern passes over "of this section", "of this pattern".
func (p *parser) ofThisPattern() {
	if end := p.ofPatternEnd(p.next); end != 0 {
		p.next = end
	} else {
		p.acceptAll("of", "this", "section")
	}
}

// timesInAll reports whether "a total of 5 times", "5 times in all" or "5 more times" comes
// next: it is said what the number holds.
func (p *parser) timesInAll() bool {
	save, found := p.next, p.found.mark()
	n, total, more := p.manyTimes()
	p.next = save
	p.found.rewind(found)
	return n != nil && (total || more)
}

// workedAgainSaid reports whether it is said how often, on which rows or until when rows are worked that are named, so that
// "work" means those of the text.
func (p *parser) workedAgainSaid(info *lineInfo) bool {
	switch {
	case info.last > 0 && p.peek().is("until", "till"):
		return true
	case info.last > 0 || info.ranges != nil:
		return info.last > 1 && p.timesAt(p.next) || p.timesInAll() || p.untilCountNext() || p.scheduleAhead()
	}
	return false
}

// untilCountNext reports whether "until 40 sts rem" comes next.
func (p *parser) untilCountNext() bool {
	save, found := p.next, p.found.mark()
	n := p.untilCount()
	p.next = save
	p.found.rewind(found)
	return n != nil
}

func (p *parser) starsFollow() bool { return p.peek().is("from") && p.ahead(1).kind == tokenStar }

// rowsNamed reads which rows: by their numbers, "last 2 rows", or by the name of a
// label.
func (p *parser) rowsNamed(info *lineInfo) bool {
	t := p.peek()
	switch {
	case p.patternRows(info):
		return true
	case t.row() && p.ahead(1).kind == tokenNumber:
		p.rowsByNumber(info)
		return true
	case p.rowsInBrackets(info), p.rowsAbove(info):
		return true
	case p.ordinalOfRow():
		return p.rowsByOrdinal(info)
	case t.is("first") && p.ahead(2).row():
		return p.firstRows(info)
	case t.is("them") && p.rowsSaid > 0:
		p.next++
		info.last = p.rowsSaid
		return true
	case t.among("these those this last both prev previous foregoing above preceding"):
		return p.lastRows(info)
	}
	return p.rowCalled(info)
}

// rowsByNumber reads "Rows 3 and 4", "Rows 1-6 inclusive".
func (p *parser) rowsByNumber(info *lineInfo) {
	p.next++
	if !p.rowNumbers(info) {
		info.kind = lineUnread
	}
	p.accept("inclusive", "incl")
}

// ordinalOfRow reports whether a row is called by its ordinal, "3rd row", "first row"; the
// rows of "first 2 rows" are counted.
func (p *parser) ordinalOfRow() bool {
	if p.peek().is("first") && !p.ahead(1).among("and & to ,") {
		return p.ahead(1).row()
	}
	return p.ordinalEnd(p.next) != 0
}

// rowsByOrdinal reads "3rd and 4th rows".
func (p *parser) rowsByOrdinal(info *lineInfo) bool {
	end, ranges := p.ordinals(p.next, true)
	if end == 0 || !p.tokens[end].row() || ranges == nil {
		return false
	}
	info.ranges = ranges
	p.next = end + 1
	return true
}

// firstRows reads "first 2 rows".
func (p *parser) firstRows(info *lineInfo) bool {
	n := p.rowCount(1)
	if n == 0 {
		return false
	}
	info.ranges = []rowRange{{1, int32(n)}}
	p.next += 3
	return true
}

// rowCount is the number n tokens ahead, 0 if there is none.
func (p *parser) rowCount(n int) int {
	t := p.ahead(n)
	if t.kind == tokenNumber && t.number >= 1 && t.number <= MaxRows {
		return int(t.number)
	}
	if n, ok := t.written(); ok {
		return n
	}
	return 0
}

// lastRows reads "last 2 rows", "these two rows", "both rows".
func (p *parser) lastRows(info *lineInfo) bool {
	both := p.peek().is("both")
	p.next++
	p.accept("these", "last")
	info.last = 1
	if both {
		info.last = 2
	}
	if p.thisChange(info) {
		return true
	}
	if p.acceptAll("pair", "of") {
		info.last = 2
	} else if n := p.rowCount(0); n > 0 {
		info.last = n
		p.next++
	} else if p.rowCalled(info) {
		info.last = 0
		return true
	}
	switch {
	case !p.peek().row():
		p.ask(ReasonUnread, p.peek().span, "which rows?")
	case !p.name(info.last, p.last()):
	case info.last == 1 && p.peek().is("rows", "rnds", "rounds") && !both && p.rowCountBefore() == 0 && !p.tokens[p.next-1].is("of"):
		p.ask(ReasonUnread, p.last().to(p.peek().span), "how many rows?")
	default:
		p.next++
		return true
	}
	info.kind = lineUnread
	return true
}

// fromTheChange reads "from the narrowing": the last row that changed the count and all rows since.
func (p *parser) fromTheChange(info *lineInfo) bool {
	save, n := p.next, len(p.piece.Lines)
	if !p.accept("from") || n == 0 {
		p.next = save
		return false
	}
	p.accept("the", "last", "first")
	if p.acceptAmong("narrowing decrease dec increase inc decreasing increasing widening") {
		p.acceptRow()
		rows := 0
		for i := n - 1; i >= 0 && rows >= 0 && p.piece.Lines[i].info.kind != lineCastOn; i-- {
			p.looked++
			l := &p.piece.Lines[i]
			rows += l.rowsOnce()
			if l.info.kind == lineRow && changesCount(l.Steps) && !p.piece.Lines[max(i-1, 0)].info.defined && p.name(rows, p.last()) {
				info.last = rows
				return true
			}
		}
	}
	p.next = save
	return false
}

// rowsOnce is how many rows a line is that is worked once: far below 0 where that is left open or differs among the sizes.
func (l *Line) rowsOnce() int {
	switch l.info.kind {
	case linePassed:
		return 0
	case lineRow:
		if l.info.forRows == nil && l.info.every == everyNone {
			return max(1, len(numbersOf(l.info.ranges)))
		}
	case linePlain, lineEven:
		if len(l.info.counts) == 1 {
			return l.info.counts[0]
		}
	}
	return -MaxRows
}

// changesCount reports whether a step takes more or fewer stitches than it leaves.
func changesCount(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; s.Steps == nil && s.takes != s.leaves || changesCount(s.Steps) {
			return true
		}
	}
	return false
}

// rowCountBefore is the number just passed over, 0 if there was none.
func (p *parser) rowCountBefore() int {
	p.next--
	n := p.rowCount(0)
	p.next++
	return n
}
