package pattern

// repeating reads "rep Rows 3 and 4 five more times", "rep dec row every 6th row 5
// times", "as 1st row".
func (p *parser) repeating(line *Line) bool {
	info := &line.info
	from := p.peek().span
	verb := p.peek()
	p.next++
	if verb.is("same") && !p.accept("as") || verb.is("keep") && !p.accept("repeating", "working") {
		return false
	}
	if verb.is("rep", "repeat") && p.again(line) {
		return true
	}
	if verb.is("cont", "continue", "work") {
		p.next--
		if p.inThisWay(line) {
			return true
		}
		p.next++
	}
	work := verb.is("work", "cont", "continue", "knit")
	info.kind = lineRepeat
	info.afresh = work
	info.ranges, info.firsts, info.lasts = nil, nil, nil // those of a label
	if p.accept("as", "like") && verb.is("as", "same") {
		return false
	}
	p.accept("the", "for")
	switch {
	case p.rowsNamed(info):
	case !work && p.peek().is("from") && p.ahead(1).row():
		p.next++
		if !p.rowsNamed(info) {
			return false
		}
	case !work && !verb.is("as", "same") && !p.starsFollow():
		p.ask(ReasonUnread, p.peek().span, "which rows?")
		info.kind = lineUnread
		return true
	default:
		return false
	}
	if info.kind == lineUnread {
		return true
	}
	p.accept("only", "alone")
	if !p.acceptAll("of", "this", "section") {
		p.acceptAll("of", "this", "pattern")
	}
	p.ofHeading(info)
	if work && info.lines == nil && !(info.last > 0 && p.timesInAll()) {
		return false // "work Row 1 of chart" is read elsewhere
	}
	if verb.is("as", "same") {
		info.counts = one
		return p.clauseEnds()
	}
	return p.howOften(info, from)
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

func (p *parser) starsFollow() bool { return p.peek().is("from") && p.ahead(1).kind == tokenStar }

// rowsNamed reads which rows: by their numbers, "last 2 rows", or by the name of a
// label.
func (p *parser) rowsNamed(info *lineInfo) bool {
	t := p.peek()
	switch {
	case t.row() && p.ahead(1).kind == tokenNumber:
		p.next++
		if !p.rowNumbers(info) {
			info.kind = lineUnread
		}
		p.accept("inclusive", "incl")
		return true
	case p.ordinalEnd(p.next) != 0 && !t.is("first") || t.is("first") && p.ahead(1).row():
		end, ranges := p.ordinals(p.next, true)
		if end == 0 || !p.tokens[end].row() || ranges == nil {
			return false
		}
		info.ranges = ranges
		p.next = end + 1
		return true
	case t.is("first") && p.ahead(2).row():
		n := p.rowCount(1)
		if n == 0 {
			return false
		}
		info.ranges = []rowRange{{1, int32(n)}}
		p.next += 3
		return true
	case t.row() && p.letterAt(p.next+1):
		return p.rowCalled(info)
	case t.is("them") && p.rowsSaid > 0:
		p.next++
		info.last = p.rowsSaid
		return true
	case t.is("these", "those", "this", "last", "both", "prev", "previous", "foregoing", "above", "preceding"):
		return p.lastRows(info)
	}
	return p.rowCalled(info)
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

// thisChange reads "dec" of "repeat this dec every 4th row": the last row that changed the
// count so.
func (p *parser) thisChange(info *lineInfo) bool {
	t := p.peek()
	if !t.is("dec", "inc", "decrease", "increase", "shaping", "decreases", "increases") || p.ahead(1).row() {
		return false
	}
	n := len(p.piece.Lines) - 1
	for n >= 0 && (p.piece.Lines[n].info.kind == linePassed || !changesCount(p.piece.Lines[n].Steps)) {
		if p.piece.Lines[n].info.kind != linePassed && p.piece.Lines[n].info.kind != lineRow {
			return false
		}
		p.looked++
		n--
	}
	if n < 0 || p.piece.Lines[n].info.kind != lineRow {
		return false
	}
	p.next++
	info.lines, info.last = []int16{int16(n)}, 0
	return true
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
