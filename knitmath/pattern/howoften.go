package pattern

import "example.com/knitmath/knitmath/draft"

// howOften reads how often rows are repeated: a number of times, on which rows, or
// until when. Nothing else is taken for it: what is not understood is asked.
func (p *parser) howOften(info *lineInfo, from span) bool {
	p.acceptAny(asItFaces)
	p.acceptAny(theseWays)
	p.fewerLed(info)
	if p.formingNext() && p.ahead(2).is("until", "till", "for") {
		p.next += 2
	}
	named := info.lines != nil
	if p.onWhichRows(info, from) {
		return true
	}
	switch {
	case info.forRows != nil && p.clauseEnds(): // "Next 3 rows: Rep Row 1"
		info.afresh = true
		return true
	case p.formingNext():
		info.kind = linePassed
		p.next += 2
		return true
	case named && p.rowsNamedAhead():
		p.onRows(info)
		return true
	case named && p.clauseEnds():
		info.counts, info.afresh = one, true
		return true
	case p.forRowsAhead():
		return p.repeatRows(info)
	case p.peek().among("until to till til for") && !(p.peek().is("for") && p.timesInAll()): // "for a total of 4 times"
		return p.repeatUntil(info)
	}
	return p.repeatTimes(info)
}

// onWhichRows reads on which rows a single row is worked again, where that is said: before the verb, here, or after how often.
func (p *parser) onWhichRows(info *lineInfo, from span) bool {
	switch {
	case p.formingNext(), info.lines == nil && !p.oneRow(info), info.forRows != nil && p.clauseEnds():
		return false
	case p.led.when != nil:
		p.ledToRows(info, from, true)
		return true
	case p.scheduleAhead():
		return p.scheduled(info)
	}
	return p.timesThenWhen(info, from, true)
}

// repeatTimes reads how many times rows are repeated that are named, or asks.
func (p *parser) repeatTimes(info *lineInfo) bool {
	at := p.peek().span
	if p.rowsInAll(info) {
		return true
	}
	p.commaBeforeTimes()
	n, total, more := p.manyTimes()
	if n == nil {
		if info.last == 0 && info.ranges == nil && info.lines == nil {
			return false
		}
		p.askTimes(info, at)
		return true
	}
	if info.afresh && info.last > 1 && !more && !total {
		total = true
		p.reading(at.to(p.last()), "a number of times is read as so many in all, the first with them")
	}
	info.counts, info.total = n, total
	if !more && !total && !info.afresh {
		p.reading(at.to(p.last()), "a number of times is read as so many more than they were worked already")
	}
	return true
}

// formingNext reports whether it is only said what rows are repeated for: "for pattern", "to
// form rib", "throughout".
func (p *parser) formingNext() bool {
	t, then := p.peek(), p.ahead(1)
	return t.is("for") && then.among("patt pattern pat form") || t.is("to") && then.is("form") || t.is("throughout")
}

// askTimes passes over the rest of a clause and asks how many times.
func (p *parser) askTimes(info *lineInfo, from span) {
	if p.clauseEnds() && p.peek().is(".") && from.start == p.peek().start { // nothing more is said: the rows are quoted, and not the full stop
		from = p.last()
	}
	for !p.clauseEnds() {
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "how many times?")
	info.kind = lineUnread
}

// oneRow reports whether a repeat is of a single row.
func (p *parser) oneRow(info *lineInfo) bool {
	return len(info.ranges) == 1 && info.ranges[0].first == info.ranges[0].last || info.last == 1
}

// clauseStopsAt reports whether nothing more belongs to a direction at token i.
func (p *parser) clauseStopsAt(i int) bool {
	save := p.next
	p.next = i
	ok := p.clauseEnds()
	p.next = save
	return ok
}

// bareRepeat reads ", then row 1 once more" after rows that are repeated: the verb is said once.
func (p *parser) bareRepeat(line *Line) bool {
	n := len(p.piece.Lines)
	if !p.bareRepeatAt(p.next) || n == 0 || p.piece.Lines[n-1].info.kind != lineRepeat {
		return false
	}
	from := p.peek().span
	line.info.kind = lineRepeat
	if !p.firstOfThese(&line.info, &p.piece.Lines[n-1].info) {
		if p.accept("the"); !p.rowsNamed(&line.info) {
			return false
		}
	}
	p.patternGoesOn(&line.info)
	p.accept("only", "alone")
	if p.peek().is("every", "each") && p.ahead(1).row() && p.ahead(2).is("until", "till") {
		p.next += 2
	}
	return p.howOften(&line.info, from)
}

// inAll are words after a number that holds what was worked before.
var inAll = wordings("in all", "in total", "altogether", "total")

// bareRepeatAt reports whether "row 1 once more", "rows 1 and 2 again" stands at token i.
func (p *parser) bareRepeatAt(i int) bool {
	if end := p.firstOnes(i); end != 0 {
		i = end
	} else if p.tokens[i].is("first") && p.tokens[i+1].kind == tokenNumber && p.tokens[i+2].row() {
		i += 3
	} else if end := p.ordinalRowsEnd(i); end != 0 {
		i = end
	} else if !p.tokens[i].row() || p.tokens[i+1].kind != tokenNumber {
		return false
	} else {
		i = p.rowNumbersEnd(i + 1)
	}
	for p.tokens[i].is("only", "alone") {
		i++
	}
	if p.tokens[i].is("every", "each") && p.tokens[i+1].row() {
		i += 2
	}
	return p.tokens[i].is("again", "until", "till") || p.timesEnd(i) != 0
}

// ordinalRowsEnd is the index after "1st row", "the first and second rows" at token i; 0 if that is not what stands there.
func (p *parser) ordinalRowsEnd(i int) int {
	if p.tokens[i].is("the") {
		i++
	}
	end, _ := p.ordinals(i, false)
	if end == 0 || !p.tokens[end].row() {
		return 0
	}
	return end + 1
}

// beforeRowsAgain are words before a number of rows that are worked again; rowsMore those that say that others were worked before.
var (
	beforeRowsAgain = []string{"a", "an", "total", "of", "another", "further", "additional", "extra", "the", "next", "foll", "following"}
	rowsMore        = []string{"another", "more", "further", "additional", "extra", "next", "foll", "following"}
)

// forRowsAhead reports whether "for 10 rows" or "for 10 more rows" comes next.
func (p *parser) forRowsAhead() bool {
	i := p.next
	if p.tokens[i].is("for") {
		i++
	}
	for p.tokens[i].is(beforeRowsAgain...) {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 {
		return false
	}
	return p.tokens[p.afterMore(end)].row()
}

// repeatRows reads "for 10 rows": so many rows of the repeat, not so many times.
func (p *parser) repeatRows(info *lineInfo) bool {
	at, from := p.peek().span, p.next
	p.accept("for")
	for p.peek().is(beforeRowsAgain...) {
		info.total = info.total || p.peek().is("total")
		p.next++
	}
	n := p.number()
	if n == nil {
		info.kind = lineUnread
		return true
	}
	if p.next = p.afterMore(p.next); p.acceptRow() {
		p.accept("more", "further")
	}
	info.total = p.acceptAny(inAll) || info.total
	more := p.anyOf(from, p.next, rowsMore...)
	info.forRows = without(n)
	if !more && !info.afresh {
		info.total = true
		p.reading(at.to(p.last()), "read as so many rows in all, those that were worked already with them")
	}
	return true
}

// nthAhead reports whether an interval of rows stands at token i: "4th", "other", "8 (8, 6, 6)th",
// "8th (8th, 6th)".
func (p *parser) nthAhead(i int) bool {
	if p.ordinalEnd(i) != 0 {
		return true
	}
	// "- (-, 9th, 9th)", of which the first size has none
	if p.tokens[i].is("-") && p.tokens[i+1].is("(", "[") {
		n := i + 2
		for p.tokens[n].is("-", ",") {
			n++
		}
		return p.ordinalEnd(n) != 0
	}
	if n, ok := draft.Ordinal(p.tokens[i].text); ok && n > 0 && p.tokens[i].kind == tokenWord {
		return true
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].among("th nd rd st") && p.tokens[end-1].end == p.tokens[end].start
}
