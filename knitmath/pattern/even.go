package pattern

import "example.com/knitmath/knitmath/stitch"

// evenWork is what is known of rows that may change nothing, while they are read.
type evenWork struct {
	even    bool // "even", "straight", or a stitch pattern that keeps the count
	counted bool // a number of rows
	listed  bool // rows by their numbers
	length  bool // until a length
	direct  bool // "work Leaf lace": its rows once
	setUp   bool // "back and forth", "on these 28 sts only"
	verb    *token
	from    span
}

// even reads rows that change nothing, or those of a stitch pattern: "work even until
// ...", "knit 4 rows", "cont in St st for 10 rows", "rib 24 rows", "work Rows 1-8 of
// Leaf lace twice".
func (p *parser) even(line *Line) bool {
	info := &line.info
	if p.rowsFollow() {
		return false
	}
	w := evenWork{verb: p.peek(), from: p.peek().span}
	first := p.next
	if !p.evenLed(&w, info) {
		return false
	}
	p.next++
	if w.verb.among("work cont continue knit keep") {
		p.next = p.partNamed(p.next)
	}
	if end := p.goesOnWith(&w); end != 0 {
		p.next = end
		info.kind = linePassed
		p.passed(w.from.to(p.last()))
		return true
	}
	if w.even = w.verb.is("rib") || w.verb.is("even") && p.endsAt(p.next); w.even {
		p.fabricBracket(info)
	}
	if w.verb.is("rib", "patt") && p.stitchesNext() && p.ribSpeltEnd(p.next) == 0 {
		return false
	}
	for p.evenPart(&w, info) {
		if info.kind == lineUnread || info.kind == lineRepeat {
			return true
		}
	}
	info.rib, info.ribAs = p.ribIn(first, p.next), p.ribAs(first)
	return p.evenRows(line, &w)
}

// evenLed reads what is said of the rows before the verb, "for 6 rows, work", "without shaping, knit", and reports
// whether a verb comes next.
func (p *parser) evenLed(w *evenWork, info *lineInfo) bool {
	if !w.verb.is("for", "over", "without") {
		return true
	}
	for !p.accept(",") {
		if !p.evenPart(w, info) {
			return false
		}
	}
	w.verb = p.peek()
	return w.verb.among("work cont continue proceed knit k purl p rib patt")
}

// rowsFollow reports whether "work as follows:" comes next, after which the rows are written.
func (p *parser) rowsFollow() bool {
	stop := p.asFollows(p.next, p.sentenceEnd(p.next))
	return stop != 0 && !p.onlyRows && !p.anyNumber(p.next, stop)
}

// evenRows makes rows of what was said of them. It reports whether that was enough.
func (p *parser) evenRows(line *Line, w *evenWork) bool {
	info := &line.info
	switch {
	case w.listed:
		return p.listedRows(line)
	case p.peek().among("to until across around") && !w.counted, !p.evenSaid(w):
		return false
	case w.plainlyCounted() && p.soAsBefore(info):
		return true
	}
	info.kind = lineEven
	if w.direct && !w.counted && !w.length {
		return p.patternOnce(info, w.from)
	}
	if w.plainlyCounted() && w.plain() {
		info.kind = linePlain
		info.op = stitch.Knit
		if w.verb.is("purl", "p") {
			info.op = stitch.Purl
		}
	}
	info.open = info.counts == nil && (w.even || w.length)
	return true
}

// goesOnWith is the index after "in colour A", "with the head" where no stitch is said, as in
// "continue in colour A and knit 4 rows"; 0 if that is not what stands there.
func (p *parser) goesOnWith(w *evenWork) int {
	if p.inRow || !p.peek().among("in with on onto to") || !w.verb.among("cont continue proceed work") {
		return 0
	}
	end := 0
	if p.peek().is("in", "with") {
		if end = p.colourEnd(p.next); end == 0 {
			end = p.strandEnd(p.next)
		}
	}
	if end == 0 && !w.verb.is("work") {
		end = p.nextPartEnd(p.next + 1)
	}
	if end == 0 || !p.endsAt(end) && !p.tokens[end].among(", ; and :") {
		return 0
	}
	return end
}

// nextPartEnd is the index after "the head", "the second sleeve as follows" at token i; 0 if that
// is not what stands there.
func (p *parser) nextPartEnd(i int) int {
	for p.tokens[i].among("the to this other") {
		i++
	}
	end := p.partWordsEnd(i)
	if end == i {
		return 0
	}
	if p.tokens[end].is("as") && p.tokens[end+1].is("follows") {
		end += 2
	}
	return end
}

// strandEnd is the index after "with a single strand", "with both yarns" at token i; 0 if that is not
// what stands there.
func (p *parser) strandEnd(i int) int {
	for i++; p.tokens[i].among("a one the both two single double doubled only main other"); i++ {
	}
	if !p.tokens[i].among("strand strands yarn yarns ball balls thickness") {
		return 0
	}
	for i++; p.tokens[i].among("held together of yarn only alone"); i++ {
	}
	return i
}

// evenSaid reports whether it is said how far rows are worked even.
func (p *parser) evenSaid(w *evenWork) bool {
	return w.counted || w.even && !w.plain() || w.length && p.lengthVerb(w.verb) || w.even && w.length || w.setUp
}

// plain reports whether the verb names a stitch.
func (w *evenWork) plain() bool { return w.verb.among("k p knit purl") }

func (w *evenWork) plainlyCounted() bool { return w.counted && !w.even }

// lengthVerb: "work until it measures", "knit for 5 cm"; "k to end" is a row.
func (p *parser) lengthVerb(t *token) bool {
	return t.among("work cont continue proceed keep knit rib even purl k patt")
}

// stitchesNext reports whether a number of stitches, or up to where, comes next.
func (p *parser) stitchesNext() bool {
	end, _ := p.sizedEnd(p.next)
	if end == 0 {
		return p.peek().is("to", "until") && !p.measureAhead(p.next+1) || p.peek().is("across") || p.clauseEnds() && p.peek().is(",")
	}
	if p.tokens[end].is("more") {
		end++
	}
	return !p.tokens[end].row() && p.measuredEnd(p.next) == 0
}

// evenPart reads one part of such a direction, and reports whether there may be more.
func (p *parser) evenPart(w *evenWork, info *lineInfo) bool {
	t := p.peek()
	switch {
	case p.clauseEnds() && !t.is("and") && !p.fabricNext():
		return false
	case p.saidEven(w), p.evenTurns(w, info):
		if w.even {
			p.fabricBracket(info)
		}
		return true
	case p.evenFabric(w, info), p.fabricAsOn(w):
		return true
	case t.among("every each all in as") && p.asEstablished(w), p.evenCount(w, info), p.evenLength(w):
		return true
	case p.onTheseStitches(info):
		w.setUp = true
		return true
	case w.counted && !w.even && p.inThatWay(info):
		return true
	}
	return p.evenUntil(w, info)
}

// saidEven reads "even", "straight", "without shaping".
func (p *parser) saidEven(w *evenWork) bool {
	if !p.acceptAmong("even straight evenly plain without level") {
		return false
	}
	w.even = w.even || !p.last1().is("plain") || !w.plain() // "knit 5 rounds plain" are rounds that are knit
	for p.accept(withoutWhat...) {
	}
	return true
}

// withoutWhat is without what rows are worked even.
var withoutWhat = []string{"any", "further", "more", "shaping", "decreases", "increases", "decreasing", "increasing"}

// fabricAsOn passes over "as for Back" after a fabric.
func (p *parser) fabricAsOn(w *evenWork) bool { return w.even && p.acceptEnd(p.asOnPartAt(p.next)) }

// evenUntil reads until when rows are worked even: a row of a chart, so many rows worked, or
// a length.
func (p *parser) evenUntil(w *evenWork, info *lineInfo) bool {
	until := !w.counted && p.peek().is("until", "till")
	switch {
	case until && p.untilChartRow(info):
		w.counted, w.even = true, true
	case until && p.untilWorked(info):
		w.counted, w.even = info.counts != nil, true
	case p.peek().among("for until to till") && p.measureAhead(p.next+1):
		w.length = true
		p.openLength()
	default:
		return false
	}
	return true
}

// evenLength reads a length, "5 cm", "a further 5 cm", "5 cm more".
func (p *parser) evenLength(w *evenWork) bool {
	i := p.next
	for p.tokens[i].is(beforeRowCount...) {
		i++
	}
	end := p.measuredEnd(i)
	if end == 0 || p.tokens[end-1].system() == unitNone {
		return false
	}
	p.next = end
	p.accept("more", "further", "longer")
	w.length = true
	return true
}

// evenTurns reads "back and forth", "in rows", "in the round".
func (p *parser) evenTurns(w *evenWork, info *lineInfo) bool {
	t, first, second := p.peek(), p.ahead(1), p.ahead(2)
	switch {
	case second.kind == tokenNumber: // "in rows 1 to 4"
		return false
	case t.is("back") && first.is("and") && second.is("forth"):
		p.next += 3
		info.turns = constructionFlat
	case t.is("in") && first.is("rows"):
		p.next += 2
		info.turns = constructionFlat
	case t.is("in") && (first.is("the") && second.is("round", "rnd") || first.is("rnds", "rounds")):
		p.next += 2
		p.accept("round", "rnd")
		p.fabricBracket(info)
		info.turns = constructionRound
	default:
		return false
	}
	w.setUp = true
	p.accept("of") // "in rounds of st st"
	return true
}

// ribSpelled passes over ", k2, p2" after "in rib", where nothing else follows.
func (p *parser) ribSpelled() {
	if !p.tokens[p.next-1].is("rib", "ribbing") || !p.peek().is(",", ":") {
		return
	}
	i := p.next
	for p.tokens[i].is(",", ":") && p.tokens[i+1].kind == tokenWord && ribWord(p.tokens[i+1].text) {
		i += 2
	}
	if i > p.next+2 && p.endsAt(i) {
		p.next = i
	}
}

// evenFabric reads what rows are worked in.
func (p *parser) evenFabric(w *evenWork, info *lineInfo) bool {
	if p.fabricPart(w, info) {
		p.ribSpelled()
		return true
	}
	return w.verb.is("rib") && (p.ribWorked() || p.acceptEnd(p.ribSpeltEnd(p.next)))
}

// ribWorked passes over "in k1, p1" after "rib" or "rib 12 rows".
func (p *parser) ribWorked() bool {
	i := p.next + 1
	if !p.peek().is("in", "of", "as") || p.tokens[i].kind != tokenWord || !ribWord(p.tokens[i].text) {
		return false
	}
	for i++; p.tokens[i].is(",", "and", "/") && p.tokens[i+1].kind == tokenWord && ribWord(p.tokens[i+1].text); i += 2 {
	}
	p.next = i
	return true
}

// commaClause reports whether what follows a comma begins a clause of its own.
func (p *parser) commaClause() bool {
	save := p.next
	p.next++
	ok := p.peek().among("ending end beg finishing") || p.nextClause()
	p.next = save
	return ok
}
