package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// scheduleAhead reports whether it is said on which rows something is done: "every
// 4th row", "on next and foll 6 alt rows", "5th and every foll 6th row".
func (p *parser) scheduleAhead() bool {
	i := p.next
	for p.tokens[i].among("on in at of the then and , work for") {
		i++
	}
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch {
	case t.is("eor"), p.sideRowsAt(i):
		return true
	case t.is("every", "each"):
		return p.everyRowAt(i + 1)
	case t.is("["):
		return p.inTurnAt(i)
	case t.is("next"):
		return then.row() || then.among("and rs ws foll following alt every row.") || p.rowsOfNumberAt(i+1)
	case t.among("foll following alt alternate"):
		return then.row() || then.among("alt rs ws every") || p.rowsOfNumberAt(i+1)
	case t.is("this"):
		return then.row() || then.is("and")
	}
	return p.nthAhead(i) && p.rowInClause(i)
}

// sideRowsAt reports whether "RS rows", "all wrong side rows" stands at token i.
func (p *parser) sideRowsAt(i int) bool {
	if p.tokens[i].is("all") {
		i++
	}
	if p.sideOf(i) == stitch.SideUnspecified {
		return false
	}
	if i++; p.tokens[i].is("side") {
		i++
	}
	return p.tokens[i].is("rows")
}

// everyRowAt reports whether rows stand at token i after "every": "row", "RS row", "4 rows",
// "of the next 5 rows".
func (p *parser) everyRowAt(i int) bool {
	p.acceptedAt(&i, "one")
	if p.tokens[i].is("of") {
		return p.tokens[i+1].is("next") || p.tokens[i+1].is("the") && p.tokens[i+2].is("next", "foll", "following")
	}
	return p.tokens[i].row() || p.tokens[i].among("foll following rs ws right wrong other alt alternate") ||
		p.nthAhead(i) || p.rowsEvery(i) || p.plainRowAt(i)
}

// rowsOfNumberAt reports whether a number or an interval stands at token i after "next" or "foll".
func (p *parser) rowsOfNumberAt(i int) bool {
	end, _ := p.sizedEnd(i)
	return end != 0 || p.nthAhead(i)
}

// rowInClause reports whether "row" stands in the clause from token i on.
func (p *parser) rowInClause(i int) bool {
	for n := i; n < min(i+30, len(p.tokens)) && !p.endsAt(n); n++ {
		if p.tokens[n].row() {
			return true
		}
	}
	return false
}

// rowsEvery reports whether "4 rows" stands at token i, of "every 4 rows".
func (p *parser) rowsEvery(i int) bool {
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].row()
}

// scheduled reads on which rows something is done, one stretch after the other. Where it does
// not know how often, it has said why.
func (p *parser) scheduled(info *lineInfo) bool {
	info.kind = lineShape
	for {
		from, found := p.peek().span, len(p.found.list)
		if p.onListed(info) || !p.scheduledStretch(info, from, found) || !p.stretchAfter(info) {
			return true
		}
	}
}

// scheduledStretch reads one stretch that begins at a place, before which so much was found.
// Where it cannot, it has said why.
func (p *parser) scheduledStretch(info *lineInfo, from span, found int) bool {
	named := info.hidden == nil && len(info.parts) == 0
	s, ok := p.stretchOfRows(named, named && info.afresh)
	switch ok = ok && p.spaced(&s, from); {
	case !ok && len(p.found.list) > found:
		info.kind = lineUnread // it has been said why
		return false
	case !ok:
		p.ask(ReasonUnread, from.to(p.last()), "how many times?")
		info.kind = lineUnread
		return false
	}
	if s.times == nil && s.until == nil {
		p.withinRowsBefore(&s)
	} else {
		p.afterRowsBefore(&s, from)
	}
	if s.times == nil && s.until == nil && s.within == nil {
		p.askTimes(info, from)
		return false
	}
	info.parts = append(info.parts, s)
	return true
}

// stretchAfter goes on to the next stretch, ", then on every foll 6th row", which may name the
// same places once more; it reports whether there is one.
func (p *parser) stretchAfter(info *lineInfo) bool {
	save := p.next
	p.accept(",", ";")
	p.accept("and")
	then := p.accept("then") || p.acceptAll("followed", "by") || p.acceptAll("and", "then")
	p.sameChange(info)
	if info.hidden != nil && p.samePlace() {
		p.accept("of")
		p.accept("the")
	}
	if save == p.next || !then && !p.peek().among("on every foll next following") || !p.scheduleAhead() {
		p.next = save
		return false
	}
	return true
}

// onListed reads "of 3rd, 7th and 13th rows": on each of them, counted from here.
func (p *parser) onListed(info *lineInfo) bool {
	i := p.next
	for p.tokens[i].among("on in of the") {
		i++
	}
	end, ranges := p.ordinals(i, true)
	if end == 0 || len(ranges) < 2 || !p.tokens[end].row() {
		return false
	}
	before := int32(0)
	for _, q := range ranges {
		if q.first != q.last || q.first <= before {
			return false
		}
		info.parts = append(info.parts, shapings{lead: []int{int(q.first - before - 1)}, interval: one, times: one})
		before = q.first
	}
	p.next = end + 1
	p.listedWithin(int(before))
	return true
}

// listedWithin takes the rows that were listed up to a number from those that the sentence has just said:
// "knit 10 rows, dec 1 st at each end of 3rd and 7th rows" is ten rows. After "then" they are more.
func (p *parser) listedWithin(last int) {
	n := len(p.piece.Lines)
	if n == 0 || p.trying {
		return
	}
	before := &p.piece.Lines[n-1].info
	if before.kind != lineEven && before.kind != linePlain || before.counts == nil || before.pattern != 0 || p.sentenceBroken(before.at.end) {
		return
	}
	even := make([]int, len(before.counts))
	for i, rows := range before.counts {
		if even[i] = rows - last; even[i] < 0 {
			return
		}
	}
	before.counts = even
}

// sentenceBroken reports whether a full stop, a line break or "then" stands after a place of the text.
func (p *parser) sentenceBroken(from int32) bool {
	for i := p.next - 1; i >= 0 && p.tokens[i].start >= from; i-- {
		if p.endsAt(i) || p.tokens[i].is("then", "after") {
			return true
		}
	}
	return false
}

// stretchOfRows reads one stretch of a schedule: of a row of the text that is named, and worked rather than repeated.
func (p *parser) stretchOfRows(named, worked bool) (shapings, bool) {
	for p.acceptAmong("on in at of the work ,") {
	}
	if p.sideRowsAt(p.next) {
		p.accept("all")
	}
	if p.inTurnAt(p.next) {
		return p.intervalsInTurn(named)
	}
	s := shapings{named: named, worked: worked}
	ok := false
	switch {
	case p.accept("eor"):
		s.interval, ok = []int{2}, true
	case p.accept("next", "this"):
		ok = p.nextRows(&s)
	case p.peek().is("each", "every") && p.ahead(1).is("of", "one"):
		ok = p.eachOfRows(&s)
	case p.accept("every", "each"):
		p.accept("foll", "following")
		ok = p.interval(&s)
	case p.sideRowsAt(p.next):
		ok = p.interval(&s)
	case p.peek().is("alt", "alternate") && p.ahead(1).row():
		p.next += 2
		s.interval, ok = []int{2}, true
	case p.acceptAmong("foll following alt alternate"):
		ok = p.followingRows(&s)
	default: // "5th and every foll 6th row"
		if ok = p.interval(&s); ok {
			s.lead, s.next = less1(s.interval), true
			ok = p.andEvery(&s)
		}
	}
	if !ok {
		return s, false
	}
	p.intoPattern()
	p.howLong(&s)
	return s, true
}

// eachOfRows reads "each of the next 5 rows".
func (p *parser) eachOfRows(s *shapings) bool {
	p.next++
	p.accept("one")
	p.accept("of")
	p.accept("the")
	if p.accept("next") {
		return p.nextRows(s)
	}
	return p.accept("foll", "following") && p.followingRows(s)
}

// intoPattern passes over ", taking inc sts into patt," before it is said until when.
func (p *parser) intoPattern() {
	if !p.peek().is(",", "and", "(") {
		return
	}
	save := p.next
	p.next++
	if p.acceptAmong("taking working keeping bringing incorporating") {
		for n := 0; n < 8 && !p.endsAt(p.next) && !p.peek().is(",", ")"); n++ {
			p.next++
		}
		if patt := p.tokens[p.next-1]; patt.among("patt pattern correct pat st rib") && p.accept(",", ")") {
			return
		}
	}
	p.next = save
}

// newIntoPattern is the index after "working the extra sts into the pattern" after a change; 0 if that
// is not what comes next.
func (p *parser) newIntoPattern() int {
	if !p.peek().among("working taking bringing incorporating knitting work") {
		return 0
	}
	into := false
	i := p.next + 1
	for ; p.tokens[i].stitches() || p.tokens[i].among("the extra new increased inc inc'd added all these into in "+
		"patt pattern rib lace"); i++ {
		into = into || p.tokens[i].is("into")
	}
	if !into || !p.clauseStopsAt(i) || !p.tokens[i-1].among("patt pattern rib lace") {
		return 0
	}
	return i
}

// nextRows reads what follows "next": "row", "5 rows", "row and every foll 4th row".
func (p *parser) nextRows(s *shapings) bool {
	s.next, s.lead, s.interval = true, []int{0}, one
	p.accept("and")
	if p.sideNext(s); s.side != stitch.SideUnspecified {
		s.lead = nil // the next row of that side
	}
	switch {
	case p.peek().is("every", "foll", "following") || p.peek().row() || p.someFollowing():
		if p.peek().row() {
			p.next++
		}
		return p.andEvery(s)
	case p.numberAhead() && !p.nthAhead(p.next):
		n := p.number()
		if n == nil {
			return false
		}
		if p.sideNext(s) { // "next 3 RS rows": with one of the other side between them
			s.lead, s.interval = nil, []int{2}
		}
		s.alternately(p)
		s.times = without(n)
		return p.acceptRow()
	case p.nthAhead(p.next):
		if !p.interval(s) {
			return false
		}
		s.lead = less1(s.interval)
		return p.andEvery(s)
	}
	return false
}

// alternately reads "alt" of "next 5 alt rows".
func (s *shapings) alternately(p *parser) {
	if p.accept("alt", "alternate", "other") {
		s.interval = []int{2}
	}
}

// andEvery reads "and every foll 4th row", "and foll 6 (7) alt rows", after which the
// first is on the row that was said.
func (p *parser) andEvery(s *shapings) bool {
	save := p.next
	p.accept("and", ",")
	then := p.accept("then")
	p.accept("on")
	p.accept("the")
	switch {
	case p.accept("every", "each"):
		p.accept("foll", "following")
		if p.interval(s) {
			s.after = then
			return true
		}
	case p.someFollowing(), p.accept("foll", "following"):
		var more shapings
		at := p.last()
		if p.followingRows(&more) {
			if single(more.times, 1) && !single(more.interval, 1) {
				p.reading(at.to(p.last()), "read as so many rows after the one before")
			}
			s.interval, s.more, s.after = more.interval, more.times, true
			return true
		}
	}
	p.next = save
	s.times = one
	return true
}

// someFollowing reports whether "5 foll alt rows" comes next, and turns to it as to "foll 5 alt rows".
func (p *parser) someFollowing() bool {
	end, _ := p.sizedEnd(p.next)
	return end != 0 && p.tokens[end].is("foll", "following") &&
		(p.tokens[end+1].among("alt alternate rows row rnds rs ws") || p.nthAhead(end+1))
}

// followingRows reads what stands after "foll": "6 (7) alt rows", "4th row", "alt row".
func (p *parser) followingRows(s *shapings) bool {
	if p.numberAhead() && !p.nthAhead(p.next) {
		n := p.number()
		if n == nil {
			return false
		}
		s.times = without(n)
		s.interval = one
		p.accept("foll", "following")
		if !p.acceptRow() {
			return p.interval(s)
		}
		return true
	}
	s.times = one
	ok := p.interval(s)
	if p.tokens[p.next-1].is("rows", "rnds", "rounds") {
		s.times = nil // "on following 8th rows": how many of them is said elsewhere
	}
	return ok
}
