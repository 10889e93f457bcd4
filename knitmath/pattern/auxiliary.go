package pattern

// auxiliaries stand before a verb that they only tell to go on.
var auxiliaries = map[string]bool{"cont": true, "continue": true, "continuing": true, "keep": true, "proceed": true, "go": true}

// plainVerbs are verbs in the form in which they stand after "continue" or "by", and as they begin a direction.
var plainVerbs = map[string]string{"repeating": "repeat", "working": "work", "knitting": "knit", "alternating": "alternate",
	"rep": "rep", "repeat": "repeat", "work": "work", "alternate": "alternate"}

// plainChanges are the same of verbs that change the count, after "keep" and "go on".
var plainChanges = map[string]string{"decreasing": "dec", "increasing": "inc", "dec": "dec", "inc": "inc"}

// auxiliary passes over "continue" and the like before a verb with which rows are worked again, "continue to repeat these 2
// rows", "keep working rows 1 and 2", so that the verb is read as if it stood alone.
func (p *parser) auxiliary() bool {
	i := p.next
	if p.shapedByVerb() {
		return true
	}
	if p.onlyRows || !auxiliaries[p.tokens[i].text] || p.tokens[i].kind != tokenWord {
		return false
	}
	i++
	for p.tokens[i].is("to", "on", "by") {
		i++
	}
	if changing, ok := plainChanges[p.tokens[i].text]; ok && p.tokens[p.next].is("keep", "go", "proceed") && p.phraseEnd(i+1, theseWays) == 0 {
		p.tokens[i].text = changing
		p.next = i
		return true
	}
	verb, ok := plainVerbs[p.tokens[i].text]
	if !ok || p.tokens[i].kind != tokenWord || !p.rowsWordedAt(i+1) && !(verb == "work" && p.evenSoonAt(i+1)) {
		return false
	}
	p.tokens[i].text = verb
	p.next = i
	return true
}

// shapedByVerbs are verbs after "shape the sleeve by", as they begin a direction.
var shapedByVerbs = map[string]string{"decreasing": "dec", "increasing": "inc", "binding": "bind", "casting": "cast"}

// shapedByVerb passes over "shape the sleeve by" before "decreasing", "increasing" or "binding off", which is read as if it stood alone.
func (p *parser) shapedByVerb() bool {
	if p.onlyRows || !p.peek().is("shape", "shaping") {
		return false
	}
	for i := p.next + 1; i < p.next+7 && p.tokens[i].kind == tokenWord; i++ {
		verb, ok := shapedByVerbs[p.tokens[i+1].text]
		if p.tokens[i].is("by") && ok {
			p.tokens[i+1].text = verb
			p.next = i + 1
			return true
		}
	}
	return false
}

// evenSoonAt reports whether it is said at token i that rows are worked even.
func (p *parser) evenSoonAt(i int) bool {
	return p.tokens[i].among("even straight plain evenly without") || p.tokens[i].is("in") && p.fabricEnd(i+1) != 0
}

// rowsWordedAt reports whether words for certain rows begin at token i: "rows 1 and 2", "[Rows 1-2]", "the last 2 rows",
// "these two rows", "1st and 2nd rows", "the two rows above", "dec row".
func (p *parser) rowsWordedAt(i int) bool {
	if p.tokens[i].is("[", "(") {
		i++
		return p.tokens[i].row() && p.tokens[i+1].kind == tokenNumber
	}
	for p.tokens[i].among("the these this those last prev previous preceding foregoing above both first") {
		i++
	}
	if end, _ := p.ordinals(i, false); end != 0 {
		return p.tokens[end].row()
	}
	if end, _ := p.sizedEnd(i); end != 0 && p.tokens[end].kind == tokenWord {
		i = end
		for p.tokens[i].among("last prev previous preceding foregoing above") {
			i++
		}
		return p.tokens[i].row()
	}
	return p.rowNamedAt(i)
}

// rowNamedAt reports whether a row is called by a name at token i, "dec row", or by its change, "this decrease".
func (p *parser) rowNamedAt(i int) bool {
	for n := 0; n < 3 && p.tokens[i].kind == tokenWord && !p.tokens[i].row(); n++ {
		changes := p.tokens[i].among("dec inc decrease increase dec. inc.")
		if changes && i > 0 && p.tokens[i-1].is("this") {
			return true
		}
		if !changes && p.notation(p.tokens[i].text) {
			return false
		}
		i++
	}
	return p.tokens[i].row()
}

// beforeRows are words of where rows stand that are worked again.
var beforeRows = []string{"prev", "previous", "preceding", "foregoing", "above", "last"}

// rowsAbove reads "2 previous rows", "two rows above", "2 rows just worked": so many, counted back from here.
func (p *parser) rowsAbove(info *lineInfo) bool {
	n := p.rowCount(0)
	if n == 0 {
		return false
	}
	i := p.next + 1
	placed := false
	for ; p.tokens[i].is(beforeRows...); i++ {
		placed = true
	}
	if !p.tokens[i].row() {
		return false
	}
	i++
	if p.tokens[i].is("just", "immediately", "directly") {
		i++
	}
	if p.tokens[i].is("above", "before", "worked") {
		placed = true
		i++
	}
	if !placed || !p.name(n, p.peek().span) {
		return false
	}
	info.last, p.next = n, i
	return true
}

// rowsInBrackets reads "[Rows 3-4]".
func (p *parser) rowsInBrackets(info *lineInfo) bool {
	closer := closers[p.peek().text]
	if closer == "" || !p.ahead(1).row() || p.ahead(2).kind != tokenNumber {
		return false
	}
	end := p.rowNumbersEnd(p.next + 2)
	if !p.tokens[end].is(closer) {
		return false
	}
	p.next++
	p.rowsByNumber(info)
	p.accept(closer)
	return true
}
