package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// worded reads a step that is said in words. found is false, and nothing taken, if there is
// none here; ok says whether it could be read.
func (p *parser) worded() (s Step, found, ok bool) {
	if p.inEveryAt(p.next) {
		s, ok = p.inEvery()
		return s, true, ok
	}
	if s, found, ok = p.alternating(); found {
		return s, found, ok
	}
	if s, found = p.chartSpan(); found {
		return s, true, true
	}
	if s, found, ok = p.patternRow(); found {
		return s, found, ok
	}
	if s, found = p.doubleWorked(); found {
		return s, true, true
	}
	if s, found = p.turnSpelt(); found {
		return s, true, true
	}
	if s, found, ok = p.withWrap(); found {
		return s, found, ok
	}
	if s, found = p.withCastOn(); found {
		return s, true, true
	}
	return p.fabricStitches()
}

// item reads one step. alone says that nothing of the row came before it.
func (p *parser) item(alone bool) (Step, bool) {
	t := p.peek()
	switch {
	case t.kind == tokenNumber:
		if s, found, ok := p.numberedItem(alone); found {
			return s, ok
		}
	case t.is("[", "(", "{"):
		return p.group()
	case t.kind == tokenStar:
		return p.star()
	case p.leadsColours():
		p.next++
		return p.item(alone)
	case t.kind == tokenWord:
		if p.own[t.text].name == "" {
			if s, found, ok := p.worded(); found {
				return s, ok
			}
		}
		return p.work(alone)
	}
	p.ask(ReasonUnread, t.span, "a stitch, a bracket or a star is expected here")
	return Step{}, false
}

// numberedItem reads a step that begins with a number: more that are picked up or brought, "12 x
// (yo, k2tog)", "5 blue", "2/2 lc". found is false, and nothing taken, if there is none.
func (p *parser) numberedItem(alone bool) (s Step, found, ok bool) {
	switch t, then := p.peek(), p.ahead(1); {
	case p.alsoPickedUp():
		s, ok = p.pickedUpMore()
	case p.alsoBrought():
		s, ok = p.broughtMore()
	case then.is("x", "×") && p.ahead(2).is("(", "[", "{") && t.number <= MaxNumber:
		s, ok = p.timesGroup()
	case p.colourNext():
		s, ok = p.colouredMore()
		return s, ok, ok
	case then.is("/"):
		s, ok = p.work(alone)
	case p.plainCounted():
		s, ok = p.countedPlain()
	default:
		return Step{}, false, false
	}
	return s, true, ok
}

// plainCounted reports whether "3 plain", "2 purl" of old booklets comes next.
func (p *parser) plainCounted() bool {
	return p.peek().number <= MaxNumber && p.ahead(1).among("plain purl seam knit") &&
		(p.clauseStopsAt(p.next+2) || p.ahead(2).among(", ; ) ] and"))
}

// countedPlain reads it.
func (p *parser) countedPlain() (Step, bool) {
	t := p.peek()
	op := stitch.Knit
	if p.ahead(1).is("purl", "seam") {
		op = stitch.Purl
	}
	p.next += 2
	return Step{Operation: op, Times: []int{int(t.number)}, takes: 1, leaves: 1, at: t.to(p.last())}, true
}

// timesGroup reads "12 x (yo, k2tog)".
func (p *parser) timesGroup() (Step, bool) {
	t, found, n := p.peek(), p.found.mark(), len(p.found.list)
	p.next += 2
	s, ok := p.group()
	if ok && single(s.Times, 1) && !s.stretch() {
		if len(p.found.list) == n+1 {
			p.found.rewind(found) // that no number of times stands after the brackets
		}
		s.Times, s.at = []int{int(t.number)}, t.to(s.at)
	}
	return s, ok
}

// open goes one level deeper. Brackets round a single stitch, "[k2tog] 3 times",
// are no group and may stand once more in the innermost; see placedInside.
func (p *parser) open(at span) bool {
	if p.depth++; p.depth > stitch.MaxDepth+1 {
		p.tooDeep(at)
		return false
	}
	return true
}

func (p *parser) tooDeep(at span) {
	p.mistake(ReasonTooLarge, at, "repeats lie at most "+strconv.Itoa(stitch.MaxDepth)+" deep in one another")
}

// group reads brackets and what is done with them.
func (p *parser) group() (Step, bool) {
	from := p.peek().span
	closer := closers[p.peek().text]
	if p.groupOfSizes(from, closer) {
		return Step{}, false
	}
	if p.next > 0 && p.peek().text == "(" {
		before := &p.tokens[p.next-1]
		if _, _, _, attached := split(before.text); before.kind == tokenNumber || before.kind == tokenWord && attached {
			p.reading(from, "after a number, brackets with stitches in them are read as a group, not as the numbers of other sizes")
		}
	}
	p.next++
	if !p.open(from) {
		return Step{}, false
	}
	stars := len(p.stars)
	p.inside++
	steps, ok := p.items(closer)
	p.inside--
	p.depth--
	p.stars = p.stars[:min(stars, len(p.stars))]
	if !ok {
		return Step{}, false
	}
	if !p.peek().is(closer) {
		t := p.peek()
		switch {
		case t.is(")", "]", "}"):
			p.mistake(ReasonOpenBracket, from, "it is closed by "+t.text+"; it should be "+closer)
		case p.claimAhead():
			p.mistake(ReasonSizes, t.span, "a count stands within brackets with stitches; give it brackets of its own")
		default:
			p.mistake(ReasonOpenBracket, from, "a "+closer+" is missing before the end of the row")
		}
		return Step{}, false
	}
	p.next++
	if len(steps) == 0 {
		p.mistake(ReasonEmpty, from.to(p.last()), "nothing stands in the brackets")
		return Step{}, false
	}
	return p.repeated(steps, from)
}

// repeated reads what is done with a group: how many times, up to where, or into
// which stitch.
func (p *parser) repeated(steps []Step, from span) (Step, bool) {
	s := Step{Steps: steps, Times: one}
	if p.intoDoubleLoop(steps) || p.workedOnNeedles(&s, false) {
		s.at = from.to(p.last())
		return s, true
	}
	if p.intoNext() {
		s.IntoOneStitch = true
		s.at = from.to(p.last())
		if !p.fitsOne(steps) {
			p.ask(ReasonAmbiguous, s.at, "only single stitches and yarn overs can be worked into one stitch")
			return Step{}, false
		}
		return p.intoTimes(s)
	}
	p.repToEnd()
	at := p.peek().span
	u, ok := p.upTo(false)
	if !ok {
		return Step{}, false
	}
	s.at = from.to(p.last())
	switch {
	case u.times != nil && u.more:
		p.ask(ReasonAmbiguous, at.to(p.last()), "are the brackets worked once before these times? write the whole number of times")
		return Step{}, false
	case u.times != nil:
		s.Times = u.times
		if into, ok := p.severalInto(s); ok {
			return into, true
		}
	case u.last != nil && p.endingFollows(u.last):
		s.Times, s.toFit = nil, true
	case u.last != nil:
		s.Times, s.RemainingStitches = nil, u.last
	case u.mark != nil:
		s.Times, s.BeforeMarkerStitches = nil, u.mark
	default:
		p.reading(s.at, "no number of times stands after the brackets: worked once")
	}
	return simple(s), true
}

// intoTimes reads a number of times after "in next st".
func (p *parser) intoTimes(s Step) (Step, bool) {
	u, ok := p.upTo(false)
	if !ok {
		return Step{}, false
	}
	switch {
	case u.times != nil && !u.more:
		s.Times = u.times
	case u.last != nil:
		s.Times, s.RemainingStitches = nil, u.last
	}
	s.at = s.at.to(p.last())
	return s, true
}

// repToEnd passes over the "rep" of "(p2, k2) rep to end".
func (p *parser) repToEnd() {
	if p.peek().is("rep", "repeat") && p.ahead(1).is("to", "across", "around") && len(p.stars) == 0 {
		p.next++
	}
}

// intoDoubleLoop reads "into double yo" after two stitches: each loop of it is a stitch.
func (p *parser) intoDoubleLoop(steps []Step) bool {
	if len(steps) != 2 || !p.peek().is("in", "into") {
		return false
	}
	i := p.next + 1
	if p.tokens[i].is("the", "next") {
		i++
	}
	double := p.tokens[i].is("double") && p.tokens[i+1].is("yo", "yarn-over", "loop") || p.tokens[i].is("yo2", "dyo")
	if !double {
		return false
	}
	if p.tokens[i].is("double") {
		i++
	}
	p.next = i + 1
	return true
}

// intoNext reads "in next st", "into the same stitch".
func (p *parser) intoNext() bool {
	i := 0
	if p.ahead(i).is("all") {
		i++
	}
	if !p.ahead(i).is("in", "into") {
		return false
	}
	i++
	if p.ahead(i).is("the") {
		i++
	}
	if p.ahead(i).among("next same one a each first last every foll following marked centre center") {
		i++
	} else if t := p.ahead(i); t.kind == tokenNumber && t.number == 1 {
		i++
	}
	if !p.ahead(i).is("st", "stitch") {
		return false
	}
	p.next += i + 1
	return true
}

// fitsOne: the steps of a group worked into one stitch leave stitches and take
// none but that one.
func (p *parser) fitsOne(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if s.Steps != nil || s.stretch() || s.takes > 1 || s.leaves < 0 || s.Operation.EndsRow() {
			return false
		}
	}
	return true
}

// simple makes a group of one single stitch that stitch, repeated: they are
// written alike.
func simple(s Step) Step {
	if len(s.Steps) != 1 || s.IntoOneStitch || s.toFit {
		return s
	}
	in := s.Steps[0]
	if in.Steps != nil || in.stretch() || !single(in.Times, 1) || formOf(&in) != formBracketed && s.RemainingStitches == nil &&
		s.BeforeMarkerStitches == nil ||
		in.Operation.EndsRow() {
		return s
	}
	in.Times, in.RemainingStitches, in.BeforeMarkerStitches, in.at = s.Times, s.RemainingStitches, s.BeforeMarkerStitches, s.at
	return in
}

// groupOfSizes asks about brackets that are for some sizes only, or hold what is worked in the others.
func (p *parser) groupOfSizes(from span, closer string) bool {
	switch {
	case p.sizes < 2:
		return false
	case p.sizesInBracket(p.next) == p.next+1:
		p.ask(ReasonUnread, from, "for some sizes only? say so before the row")
	case p.stepsBySizes(closer):
		p.ask(ReasonUnread, from, "are these the stitches of the other sizes? write a row for each size")
	default:
		return false
	}
	return true
}

// stepsBySizes reports whether brackets hold what is worked in other sizes, "k6 [k2tog, k13: k2tog, k6]".
func (p *parser) stepsBySizes(closer string) bool {
	for i := p.next + 1; i < p.next+24 && !p.endsAt(i) && !p.tokens[i].is(closer); i++ {
		if p.tokens[i].is(":") && p.startsItem(i+1) && p.tokens[i-1].kind != tokenNumber {
			return true
		}
	}
	return false
}
