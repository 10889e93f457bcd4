package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// interval reads "4th row", "other row", "RS row", "row", "4 rows", "8 (8, 6, 6)th row".
func (p *parser) interval(s *shapings) bool {
	p.accept("of")
	switch {
	case p.peek().row():
		s.interval = one
	case p.sideNext(s):
		s.interval = []int{2}
	case p.plainRowAt(p.next): // of stocking stitch: every other row
		s.interval = []int{2}
		p.next++
	case p.nthAhead(p.next):
		if s.interval = p.nth(); s.interval == nil {
			return false
		}
		if p.peek().is("and") && p.nthAhead(p.next+1) {
			p.next++
			if s.second = p.nth(); s.second == nil {
				return false
			}
		}
		p.sideNext(s)
		s.side = stitch.SideUnspecified
	case p.rowsEvery(p.next):
		n := p.number()
		if n == nil {
			return false
		}
		s.interval = n
	default:
		return false
	}
	p.acceptRow()
	if s.second == nil {
		s.second = p.andEveryOther()
	}
	// Of two intervals "alternately" is expected, and of one it is not.
	return p.accept("alternately") == (s.second != nil)
}

// andEveryOther reads "and every 2nd row" where "alternately" follows; nil where it does not.
func (p *parser) andEveryOther() []int {
	save, found := p.next, len(p.found.list)
	if !p.accept("and") || !p.accept("every") {
		p.next = save
		return nil
	}
	second := one
	if !p.peek().row() {
		if second = nil; p.nthAhead(p.next) {
			second = p.nth()
		}
	}
	if p.acceptRow() && p.peek().is("alternately") && second != nil {
		return second
	}
	p.next, p.found.list = save, p.found.list[:found]
	return nil
}

// plainRowAt reports whether "k row", "purl row" stands at token i.
func (p *parser) plainRowAt(i int) bool {
	return p.tokens[i].among("k knit p purl plain") && p.tokens[i+1].row()
}

func (p *parser) acceptRow() bool {
	if p.peek().row() {
		p.next++
		return true
	}
	return false
}

// sideNext reads "RS" or "right side".
func (p *parser) sideNext(s *shapings) bool {
	side := p.sideOf(p.next)
	if side == stitch.SideUnspecified {
		return false
	}
	s.side = side
	p.next++
	p.accept("side")
	return true
}

// nth reads an interval of rows, with those of the other sizes.
func (p *parser) nth() []int {
	t := p.peek()
	if n, ok := draft.Ordinal(t.text); ok && t.kind == tokenWord {
		p.next++
		p.accept("alt", "other")
		return []int{n}
	}
	if t.is("-") { // the first size does without
		p.next++
		return p.nthList([]int{0}, t.span)
	}
	if end := p.ordinalEnd(p.next); end != 0 {
		numbers := []int{int(t.number)}
		p.next = end
		return p.nthList(numbers, t.span)
	}
	n := p.number()
	p.acceptAmong("th nd rd st")
	return n
}

// nthList reads "(8th, 6th, 6th)" after a first interval.
func (p *parser) nthList(numbers []int, at span) []int {
	if p.peek().is("(", "[") && p.ahead(1).kind == tokenNumber || p.peek().is("(", "[") && p.ahead(1).is("-") {
		closer := closers[p.peek().text]
		for p.next++; !p.peek().is(closer) && p.peek().kind != tokenEnd && p.peek().kind != tokenNewline; p.next++ {
			switch t := p.peek(); {
			case t.kind == tokenNumber:
				numbers = append(numbers, int(t.number))
			case t.is("-"):
				numbers = append(numbers, 0)
			}
		}
		p.accept(closer)
	}
	if p.listed += len(numbers); len(numbers) != 1 && len(numbers) != p.sizes || p.listed > MaxListed {
		p.mistake(ReasonSizes, at.to(p.last()), "the intervals are not those of all sizes")
		return nil
	}
	for _, n := range numbers {
		if n > MaxRows {
			p.mistake(ReasonTooLarge, at.to(p.last()), "rows are at most 10000 apart")
			return nil
		}
	}
	return numbers
}

// howLong reads how often a stretch is worked, or up to which count.
func (p *parser) howLong(s *shapings) {
	p.acceptAny(theseWays)
	p.acceptAny(furtherOn)
	p.commaBeforeHowLong()
	p.accept("for")
	if n := p.untilCount(); n != nil {
		s.until, s.times = n, nil
		return
	}
	if p.peek().is("until", "to") {
		return
	}
	p.acceptAny(thoseWays)
	at := p.peek().span
	n, total, more := p.manyTimes()
	if n != nil && s.second != nil {
		p.accept("each") // of two intervals that alternate
	}
	p.timesOfNamed(s, n != nil && !total && !more, at)
	switch {
	case s.more != nil:
		s.times = one
	case n == nil: // "next and every foll 4th row": how often must be said
	case s.next && !(single(s.times, 1) && single(s.interval, 1)):
		s.total, s.more, s.times = total, n, one
	default:
		s.total, s.times = total, n
	}
}

// timesOfNamed says of a row of the text that is worked again what its bare number of times means, or leaves it to the counts.
func (p *parser) timesOfNamed(s *shapings, bare bool, at span) {
	bare = bare && s.named && s.turns == nil // what is in brackets was not worked already
	switch s.worked = s.worked && bare; {
	case s.worked:
		s.timesAt = at.to(p.last())
	case bare:
		p.reading(at.to(p.last()), "a number of times is read as so many more than it was worked already")
	}
}

// furtherOn are words after "every 4th row" that only say that it goes on so.
var furtherOn = wordings("thereafter", "from here on", "from now on", "after that", "from then on", "as you go")

// commaBeforeHowLong passes over the comma of "every 4th row, until 40 sts rem".
func (p *parser) commaBeforeHowLong() {
	if !p.accept(",") {
		return
	}
	save, found := p.next, p.found.mark()
	n := p.untilCount()
	if n == nil {
		p.accept("for")
		n, _, _ = p.manyTimes()
	}
	p.next = save
	p.found.rewind(found)
	if n == nil {
		p.next--
	}
}

// spaced checks that every interval that is worked has a row.
func (p *parser) spaced(s *shapings, from span) bool {
	for size := range p.sizes {
		for _, every := range [][]int{s.interval, s.second} {
			if every == nil {
				continue
			}
			n := at(every, size)
			worked := s.until != nil || s.more != nil || s.times != nil && at(s.times, size) > 0
			if n > MaxRows || n < 1 && worked {
				p.mistake(ReasonTooLarge, from.to(p.last()), "an interval has from 1 to 10000 rows")
				return false
			}
		}
	}
	return true
}

// less1 is one less of each.
func less1(numbers []int) []int {
	out := make([]int, len(numbers))
	for i, n := range numbers {
		out[i] = max(n-1, 0)
	}
	return out
}
