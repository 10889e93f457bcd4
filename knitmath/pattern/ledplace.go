package pattern

// ledPlace is "at each end of next row," before the verb of a change: where in its row it is
// made, and on which rows.
type ledPlace struct {
	factor    int // how many such places a row has, 0 for none
	rows, end int // the tokens that say the rows, and the one after them
	used      bool
	when      []shapings // on which rows, and how often, where that was said before the verb
}

// ledVerbs are the verbs that change a count where a place before them says.
var ledVerbs = wordSet(`dec decrease decreasing inc increase increasing bo bind cast co place put slip sl leave transfer pick k2tog
	p2tog ssk skp skpo loosely`)

// leadPlace passes over a place before the verb of a change, and keeps it for that. A place
// before any other verb is a lead-in like others.
func (p *parser) leadPlace(info *lineInfo) bool {
	i := p.next
	if !p.tokens[i].is("at", "on") || p.onlyRows || p.led.factor != 0 {
		return false
	}
	led := ledPlace{factor: 2, rows: p.phraseEnd(i, bothEnds)}
	if led.rows == 0 {
		if led = (ledPlace{factor: 1, rows: p.phraseEnd(i, oneEnd)}); led.rows == 0 {
			return false
		}
	}
	for led.end = led.rows; led.end < led.rows+16; led.end++ {
		t := &p.tokens[led.end]
		verb := led.end
		if t.is(",") {
			verb++
		}
		switch v := &p.tokens[verb]; {
		case v.is("work") && p.tokens[verb+1].among("k2tog p2tog ssk skp"):
			p.ledSide(led, info)
			p.led, p.next = led, verb+1
			return true
		case v.kind == tokenWord && ledVerbs[v.text], p.pairAhead(verb):
			p.ledSide(led, info)
			p.led, p.next = led, verb
			return true
		case verb > led.end, t.kind != tokenWord && t.kind != tokenNumber, t.is("and") && p.tokens[verb+1].is("then"):
			return false
		}
	}
	return false
}

// pairAhead reports whether "k 2 tog" or "work 2 tog" stands at token i.
func (p *parser) pairAhead(i int) bool {
	return p.tokens[i].among("k p work knit purl") && p.tokens[i+1].is("2", "two") && p.tokens[i+2].is("tog", "together")
}

// ledSide notes the side of "at each end of next RS row".
func (p *parser) ledSide(led ledPlace, info *lineInfo) {
	for i := led.rows; i < led.end; i++ {
		if p.tokens[i].is("next", "this") {
			p.leadSide(i, led.end, info)
		}
	}
}

// ledOf reads on which rows the place before the verb is: nothing, "of next row", "of every RS
// row". It is false where its words are not understood. What has been read of the clause
// stays read.
func (p *parser) ledOf() (s *shapings, ok bool) {
	save, found := p.next, p.found.mark()
	defer func() { p.next = save }()
	p.next = p.led.rows
	p.ofEvery()
	if p.next == p.led.end {
		return nil, true
	}
	p.next = p.led.rows
	if p.scheduleAhead() {
		said, ok := p.stretchOfRows(false, false)
		if ok && p.next == p.led.end {
			return &said, true
		}
	}
	p.found.rewind(found)
	return nil, false
}

// ledShaped makes a change one at the place before its verb: false, and nothing done, where
// that is to be read as it was without.
func (p *parser) ledShaped(info *lineInfo, from span, n []int, sign int) bool {
	s, ok := p.ledOf()
	if !ok && p.led.factor == 1 && !p.anyRow(p.led.rows, p.led.end) || s == nil && ok {
		return false
	}
	p.led.used = true
	if !ok || !p.ledHowLong(s) || !p.spaced(s, from) {
		for !p.clauseEnds() {
			p.next++
		}
		p.ask(ReasonUnread, from.to(p.last()), "on which rows is this, and how many times?")
		info.kind = lineUnread
		return true
	}
	info.kind = lineShape
	info.parts = []shapings{*s}
	info.hidden = shapedSteps(p, n, sign*p.led.factor)
	return true
}

// ledHowLong reads how often a change is made of which the rows were said before its verb, and
// reports whether that is known. Rows after it would be others.
func (p *parser) ledHowLong(s *shapings) bool {
	if p.scheduleAhead() {
		return false
	}
	if s.times == nil && s.until == nil {
		p.howLong(s)
	}
	return s.times != nil || s.until != nil
}

// anyRow reports whether "row" stands between two tokens.
func (p *parser) anyRow(i, end int) bool {
	for ; i < end; i++ {
		if p.tokens[i].row() {
			return true
		}
	}
	return false
}

// ledEdges reads "at beg of next 2 rows, BO 5 sts" from its number on, where the rows stand
// before the verb.
func (p *parser) ledEdges(line *Line) bool {
	info := &line.info
	if p.led.factor == 0 || p.led.rows == p.led.end {
		return false
	}
	from := p.peek().span
	n := p.number()
	if n == nil {
		return false
	}
	p.acceptAmong("st sts stitch stitches")
	if p.goesOn() || p.placeAt(p.next) {
		return false
	}
	runs, ok := p.ledRuns()
	if !ok && p.led.factor == 1 {
		return false
	}
	p.led.used = true
	if !ok || p.led.factor != 1 {
		p.ask(ReasonUnread, from.to(p.last()), "on which rows is this, at which end of each?")
		info.kind = lineUnread
		return true
	}
	info.kind = lineBeginning
	for _, q := range runs {
		q.stitches = without(n)
		info.edges = append(info.edges, q)
	}
	if p.peek().is(",", ";") && p.edgesAt(p.next+1) {
		p.next++
		return p.edges(line)
	}
	return true
}

// ledRuns reads the rows that stand before the verb, "of next 2 rows".
func (p *parser) ledRuns() (runs []edgeRows, ok bool) {
	save := p.next
	p.next = p.led.rows
	for p.acceptAmong("of on in the each every") {
	}
	runs, ok = p.nextSome()
	ok = ok && p.next == p.led.end
	p.next = save
	return runs, ok
}

// edgesAt reports whether "3 sts at beg of" stands at token i.
func (p *parser) edgesAt(i int) bool {
	end, _ := p.sizedEnd(i)
	if p.tokens[end].stitches() {
		end++
	}
	return end != 0 && p.beginningAt(p.namedEdge(end))
}

// ledTwice is so many stitches at each of the places before the verb.
func (p *parser) ledTwice(n []int) []int {
	if p.led.factor != 2 && p.led.when == nil || p.led.used || p.led.rows != p.led.end {
		return n
	}
	p.led.used = true
	return added(n, n, p.sizes)
}

// ledUnused asks about a place before a verb that could mean that something is done twice
// in a row, and was not understood so.
func (p *parser) ledUnused(line *Line, from span) {
	if p.led.factor != 2 || p.led.used || p.trying || line.info.kind == linePassed || line.info.kind == lineUnread {
		return
	}
	p.ask(ReasonUnread, from.to(p.last()), "how many stitches is that at both ends? write the row, or the count after it")
	line.info.kind = lineUnread
}

// twoEnds is how often something is done that is done at each end, at token i: 2 for "each
// side", "both edges", 1 where nothing of the kind stands, 0 where it cannot be known.
func (p *parser) twoEnds(i int) int {
	t := &p.tokens[i]
	if !t.is("each", "both", "either") {
		return 1
	}
	for i++; p.tokens[i].among("side armhole neck shoulder selvedge garter the of front") &&
		p.tokens[i+1].kind == tokenWord && !p.tokens[i+1].among("of on onto and with in to"); i++ {
	}
	if p.tokens[i].among("end ends side sides edge edges corner corners") {
		return 2
	}
	return 0
}

// alongBoth reports whether stitches are picked up "at each end", "along each side edge",
// "down both sides".
func (p *parser) alongBoth() bool {
	return p.peek().among("at along down up on from across") && p.twoEnds(p.next+1) == 2
}

// doneAtEnds is a number of stitches of a clause that begins at token from, as often as
// it says.
func (p *parser) doneAtEnds(info *lineInfo, from int) {
	if info.counts == nil {
		return
	}
	if info.counts = p.ledTwice(info.counts); p.led.used {
		return
	}
	for i := from; i < p.next; i++ {
		switch p.twoEnds(i) {
		case 2:
			info.counts = added(info.counts, info.counts, p.sizes)
			return
		case 0:
			if !p.began { // of pieces that are made already
				info.kind = linePassed
				return
			}
			p.ask(ReasonUnread, p.tokens[from].span.to(p.last()), "how many stitches is that in all?")
			info.kind = lineUnread
			return
		}
	}
}

// castAtEnds reads "at each end of next row" after a number of stitches that are cast on.
func (p *parser) castAtEnds(info *lineInfo, from span) {
	n := info.counts
	if info.counts = p.ledTwice(n); p.led.used {
		info.adds = true
	}
	switch {
	case p.acceptAny(bothUnderarms):
		info.counts, info.adds = added(n, n, p.sizes), true
	case !p.acceptAny(bothEnds):
	case p.scheduleAhead():
		info.hidden = shapedSteps(p, n, 2)
		p.scheduled(info)
	case p.peek().is("of") && p.markersAfter():
		p.askMarkers(info, from)
	default:
		info.counts, info.adds = added(n, n, p.sizes), true
	}
}

// bothUnderarms are places of which a body has two.
var bothUnderarms = wordings("at each underarm", "at both underarms", "for each underarm", "at each armhole", "over each gap")
