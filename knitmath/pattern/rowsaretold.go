package pattern

// rowsAreRepeated reads "These 2 rows form the pattern and are repeated 3 times more", "The last 4 rows are worked until 16 sts rem":
// what is told of rows says how often they are worked.
func (p *parser) rowsAreRepeated(line *Line) bool {
	from, info := p.peek().span, &line.info
	p.accept("the")
	if !p.peek().among("these those last") || p.onlyRows {
		return false
	}
	n := p.rowCount(1)
	if n == 0 || !p.ahead(2).row() {
		return false
	}
	p.next += 3
	for words := 0; words < 9 && p.peek().kind == tokenWord && !p.peek().among("are is repeated"); words++ {
		p.next++
	}
	p.accept(",")
	for p.accept("are", "then", "now") {
	}
	if !p.acceptAmong("rep repeated worked knitted") || p.peek().among("throughout to for in as") || p.clauseEnds() ||
		!p.name(n, p.last()) {
		return false
	}
	info.kind, info.last = lineRepeat, n
	return p.howOften(info, from)
}

// repeatedSaid reports whether a sentence from token i up to another says how often something is repeated, "the pattern is repeated twice
// more": it tells more than what there is.
func (p *parser) repeatedSaid(i, end int) bool {
	for n := i + 1; n < end; n++ {
		p.looked++
		if p.tokens[n].is("repeated", "rep") && p.tokens[n-1].among("are is be then , now and") {
			return p.anyOf(n, end, "times", "twice", "once", "until", "till", "again")
		}
	}
	return false
}

// rowsInAll reads "- 8 rows in all", "(8 rows total)" after rows that are repeated: not how often, but how many rows they come to.
func (p *parser) rowsInAll(info *lineInfo) bool {
	save, found, before := p.next, p.found.mark(), *info
	bracket := p.peek().is("(", "[")
	if !p.acceptAmong("( [ , : -") {
		return false
	}
	p.acceptAll("to", "make")
	p.acceptAmong("making giving for")
	from := p.next
	if p.forRowsAhead() && p.repeatRows(info) && (p.anyOf(from, p.next, "total", "altogether", "all", "more", "further") ||
		p.rowsWorkedSaid()) &&
		(!bracket || p.accept(")", "]")) {
		return true
	}
	p.next, *info = save, before
	p.found.rewind(found)
	return false
}

// rowsWorkedSaid reads "worked in all", "have been worked" after a number of rows.
func (p *parser) rowsWorkedSaid() bool {
	return p.accept("worked", "completed") && p.acceptAny(inAll)
}
