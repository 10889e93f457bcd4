package pattern

import "example.com/knitmath/knitmath/stitch"

// place is where in its row a change of the count is made.
type place struct {
	factor int  // how many such places a row has
	said   bool // a place was said
	spread bool // evenly
}

// shaping reads a change of the count that is known: "dec 1 st each end of next and
// every foll 4th row to 40 sts", "inc 8 sts evenly across", "purl, inc 1 st in centre".
func (p *parser) shaping(line *Line) bool {
	from := p.peek().span
	ok := p.shapingSaid(line)
	if ok && p.sameTime && !p.trying {
		if line.info.kind != lineUnread {
			p.ask(ReasonUnread, from.to(p.last()), "on which of the rows before is this?")
		}
		line.info.kind = lineUnread
	}
	if !p.trying {
		p.sameTime = false
	}
	return ok
}

// shapingSaid reads a change and on which rows it is made.
func (p *parser) shapingSaid(line *Line) bool {
	info := &line.info
	s := saidShaping{from: p.peek().span, first: p.next}
	p.lastRowSaid = false
	if p.peek().is("shape") {
		return p.shapeTitle(line)
	}
	if s.prefixed = p.shapedRow(); s.prefixed && p.inEveryAt(p.next) {
		p.shapedInEvery(info)
		return true
	}
	if s.sign = p.changeSign(); s.sign == 0 {
		return false
	}
	if !p.howMany(&s) {
		info.kind = lineUnread
		return true
	}
	var ok bool
	if s.where, ok = p.where(info, s.from); !ok || info.kind == lineUnread {
		return info.kind == lineUnread
	}
	if p.led.when != nil {
		return p.shapedLed(info, &s)
	}
	if p.ledTo(info, &s) {
		return true
	}
	p.untilSaid(info, &s)
	if info.until == nil && !s.where.said && !s.said {
		return false
	}
	return p.shapedWhen(info, &s)
}

// shapedLed makes a change on the rows that were said before its verb; "every 4th row, work dec row" is none of its own.
func (p *parser) shapedLed(info *lineInfo, s *saidShaping) bool {
	if p.peek().row() {
		return false
	}
	if !s.where.said && p.led.factor != 0 {
		s.where.factor = p.led.factor
	}
	info.hidden = shapedSteps(p, s.n, s.sign*s.where.factor)
	p.ledToRows(info, s.from, false)
	return true
}

// shapedWhen reads on which rows a change is made that has been read.
func (p *parser) shapedWhen(info *lineInfo, s *saidShaping) bool {
	switch {
	case p.shapedUnsaid(info, s):
		return true
	case p.timesThenWhen(info, s.from, false):
		p.placeSaidLate(s)
		info.hidden = shapedSteps(p, s.n, s.sign*s.where.factor)
		return true
	case p.scheduleAhead():
		info.hidden = shapedSteps(p, s.n, s.sign*s.where.factor)
		if s.prefixed && s.said && !s.where.said && p.found.source[s.from.start]|0x20 == 'c' { // "cont to dec 6 sts"
			info.saidChange = signedBy(s.n, s.sign)
		}
		p.changing, p.changingAt = s.n, s.where.factor
		p.scheduled(info)
		if info.kind == lineShape {
			p.placeSaidLate(s)
			info.hidden = shapedSteps(p, s.n, s.sign*s.where.factor)
		}
		return true
	case !p.shapesHere(info, s):
		return false
	}
	p.shapedHere(info, s)
	return true
}

// shapedInEvery reads "increasing 1 st in every 12th st" after "knit".
func (p *parser) shapedInEvery(info *lineInfo) {
	step, ok := p.inEvery()
	if info.kind = lineShape; !ok {
		info.kind = lineUnread
	}
	info.hidden = []Step{step}
	p.fit(info.hidden)
	info.parts = []shapings{{next: true, lead: []int{0}, interval: one, times: one}}
}

// saidShaping is a change as it is read.
type saidShaping struct {
	from     span
	first    int   // the token with which it begins
	prefixed bool  // on a row that is said before
	sign     int   // 1 of an increase, -1 of a decrease
	n        []int // of how many stitches
	said     bool  // the number is written
	where    place
}

// howMany reads of how many stitches a change is: one, if no number is written. It is false
// when the number cannot be read.
func (p *parser) howMany(s *saidShaping) bool {
	s.n = one
	if p.peek().is("a") && p.ahead(1).is("st", "stitch") {
		s.said = true
		p.next += 2
		return true
	}
	end, _ := p.sizedEnd(p.next)
	if end == 0 || !p.tokens[end].stitches() && !p.placeAt(end) {
		return true
	}
	if s.n = p.number(); s.n == nil {
		return false
	}
	s.said = true
	p.acceptAmong("st sts stitch stitches")
	if p.peek().is("on", "in", "over") && p.anyOf(p.next, p.next+4, "last") {
		p.ofEvery()
	}
	return true
}

// ledTo takes the place that was said before the change, and reports whether the change has
// been read with it.
func (p *parser) ledTo(info *lineInfo, s *saidShaping) bool {
	if p.led.factor == 0 || s.where.said || s.where.spread {
		return false
	}
	if p.ledShaped(info, s.from, s.n, s.sign) {
		return true
	}
	s.where.factor, s.where.said, p.led.used = p.led.factor, true, true
	return false
}

// onlyWhere reports whether nothing but a place is said.
func (s *saidShaping) onlyWhere(info *lineInfo) bool {
	return s.where.said && !s.where.spread && info.until == nil
}

// untilSaid reads to which count the change goes on.
func (p *parser) untilSaid(info *lineInfo, s *saidShaping) {
	if !s.where.said && !s.said && info.until == nil {
		if end, _ := p.sizedEnd(p.next); end == 0 || !p.peek().is("to") {
			info.until = p.untilCount()
		}
	}
	if info.until == nil && p.peek().is("to", "until") && (s.where.spread || s.prefixed) {
		info.until = p.untilCount()
	}
}

// shapedUnsaid asks how many stitches a change is of that is spread over a row, or on which rows one is made of which only the place is
// said, where that has to be known.
func (p *parser) shapedUnsaid(info *lineInfo, s *saidShaping) bool {
	switch {
	case s.where.spread && !s.said && info.until == nil && !p.claimAhead() && !p.onlyRows:
		p.ask(ReasonUnread, s.from.to(p.last()), "how many stitches?")
		info.kind = lineUnread
		return true
	case s.onlyWhere(info) && !p.scheduleAhead() && (p.peek().is("until", "till") || p.whileRows(s.first)):
		return p.rowsUnsaid(info, s.from)
	}
	return false
}

// rowsUnsaid asks on which rows a change is made.
func (p *parser) rowsUnsaid(info *lineInfo, from span) bool {
	for !p.clauseEnds() {
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "on which rows is this?")
	info.kind = lineUnread
	return true
}

// shapesHere reports whether the change is made on the next row.
func (p *parser) shapesHere(info *lineInfo, s *saidShaping) bool {
	return s.where.said || p.lastRowSaid || s.where.spread || s.prefixed || info.until != nil || p.clauseEnds() && !p.goesOn()
}

// shapedHere is a change on the next row, or on the last.
func (p *parser) shapedHere(info *lineInfo, s *saidShaping) {
	info.kind = lineShape
	info.onLast = p.lastRowSaid
	info.parts = []shapings{{next: true, lead: []int{0}, interval: one, times: one, until: info.until}}
	info.spread = info.until != nil
	if info.spread {
		info.op = stitch.BindOff // a decrease
		if s.sign > 0 {
			info.op = stitch.CastOn
		}
	}
	info.hidden = shapedSteps(p, s.n, s.sign*s.where.factor)
}

// goesOn reports whether a row goes on after a comma.
func (p *parser) goesOn() bool {
	return p.peek().is(",", ";") && p.startsItem(p.next+1) && !p.ahead(1).is("inc", "dec")
}

var (
	bothEnds = append(beginningAndEnd(), wordings("at each side edge", "each side edge", "at both side edges",
		"at each end", "at both ends", "each end", "both ends", "at each side", "at both sides", "each side", "both sides",
		"at each edge", "each edge", "at either end", "at either edge", "at each armhole edge", "at both edges", "both edges",
		"at each neck edge", "at side edges", "each armhole edge", "on each side",
		"at the side edges",
		"at armhole edges", "on each end", "on both ends", "at each end of the needle",
		"in the first and last st", "in the first and last stitch", "in first and last st",
		"in first and last stitch", "in each of first and last st", "in each of the first and last stitches",
		"on both sides", "at each end of needle", "at both ends of needle", "either end", "each end of needle")...)
	oneEnd = wordings("at right-hand edge", "at left-hand edge", "at right hand edge", "at left hand edge",
		"at start", "at the start",
		"at neck edge", "at beg", "at beginning", "at end", "at armhole edge", "at front edge", "at side edge", "neck edge",
		"at this edge", "at same edge", "at the neck edge", "at the beg", "at the beginning", "at the end", "at the same edge", "armhole edge",
		"at shaped edge", "at inner edge", "at outer edge", "at left edge", "at right edge", "front edge", "in centre", "in center",
		"in the centre", "in the center", "at centre", "at center", "in middle", "in the middle", "at front neck edge", "at raglan edge",
		"at sleeve edge", "at seam edge", "at the armhole edge", "at the front edge", "at opening edge", "at the side edge", "on neck edge")
	acrossRow = wordings("across row", "across the row", "across rnd", "across", "in next row", "over the row")
	wholeRow  = wordings("the row", "the rnd", "the round", "row", "rnd", "round", "next row", "next rnd", "this row", "the next row",
		"all sts", "sts", "the sts", "this rnd")
)

// beginningAndEnd are "at beg and end", "at the beginning and at the end", in each of their forms.
func beginningAndEnd() [][]string {
	var list [][]string
	for _, first := range []string{"at beg", "at the beg", "at beginning", "at the beginning", "at start", "at the start"} {
		list = append(list, wordings(first+" and end", first+" and the end", first+" and at end", first+" and at the end")...)
	}
	return list
}

// ofEvery passes over the "of" before a schedule.
func (p *parser) ofEvery() {
	save := p.next
	p.accept("only")
	p.accept("of", "on", "in")
	p.accept("the")
	if p.scheduleAhead() {
		return
	}
	if p.lastOfRows() || p.acceptRow() || p.accept("needle") {
		return
	}
	if !p.accept("row") {
		p.next = save
	}
}
