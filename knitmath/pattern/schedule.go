package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/report"
)

// scheduled is a row that is worked again and again: "Repeat the decrease row every
// 8th (8th, 6th) row 5 (6, 7) more times, then every 6th (6th, 4th) row 3 (2, 0) times".
type scheduled struct {
	line int16    // of the row, where it has a name that stood before; -1 where it has not
	row  lineInfo // which row it is, where it is known by its number, or as the last
	runs []scheduledRun
}

// scheduledRun is equal intervals, or two that alternate, each for all sizes or with
// a number for every one. An interval counts the row that it ends with.
type scheduledRun struct {
	every [][]int
	times []int
}

// rowNames are the short forms of names.
var rowNames = map[string]string{"dec": "decrease", "inc": "increase", "rows": "row", "rnd": "round", "rnds": "round", "rounds": "round"}

// rowName is the name of a row without its side, "decrease row" of "Dec row (RS)";
// empty for a row that is known by a number or its place.
func rowName(label string) string {
	var name []string
	for _, word := range strings.Fields(strings.ToLower(label)) {
		if long, ok := rowNames[word]; ok {
			word = long
		}
		name = append(name, word)
		if word == "row" || word == "round" {
			break
		}
	}
	if len(name) < 2 || name[0] == "next" {
		return ""
	}
	return strings.Join(name, " ")
}

// nameRow remembers on which line a row with a name was written.
func (p *parser) nameRow(l *Line, line int) {
	if name := rowName(l.Label); name != "" {
		if p.names == nil {
			p.names = map[string]int16{}
		}
		p.names[name] = int16(line)
	}
}

// scheduleAhead tells "rep dec row every 4th row" from rows repeated at once.
func (p *parser) scheduleAhead() bool {
	for i := 1; i < 6 && p.ahead(i).kind == tokenWord; i++ {
		if !p.ahead(i).row() {
			continue
		}
		if p.ahead(i+1).kind == tokenNumber {
			i++
		}
		return p.ahead(i + 1).is("every")
	}
	return false
}

// zeroAhead reports whether a sentence comes that says what a 0 among the numbers of
// the sizes means: "Where your size has 0, skip that part."
func (p *parser) zeroAhead() bool {
	zero := false
	for i := range 12 {
		t := p.ahead(i)
		if t.kind == tokenEnd || t.kind == tokenNewline || t.is(".") {
			return false
		}
		zero = zero || t.kind == tokenNumber && t.number == 0
		if zero && t.is("skip", "skips", "omit", "omits") {
			return true
		}
	}
	return false
}

// schedule reads which row is worked again, and when.
func (p *parser) schedule(info *lineInfo) bool {
	s := &scheduled{line: -1}
	info.schedule = s
	p.next++
	p.accept("the")
	from := p.next
	for !p.peek().row() {
		p.next++
	}
	noun := p.peek()
	p.next++
	switch {
	case p.peek().kind == tokenNumber:
		if !p.rowNumbers(&s.row) {
			return false
		}
	case p.tokens[from].is("last", "this") && p.tokens[from+1].row():
		s.row.last = 1
	default:
		at := p.tokens[from].span.to(noun.span)
		if line, ok := p.names[rowName(p.found.source[at.start:at.end])]; ok {
			s.line = line
		}
	}
	for p.accept("every") {
		if !p.scheduledRun(s) {
			return false
		}
		back := p.next
		p.accept(",", ";")
		p.accept("and")
		p.accept("then")
		if !p.peek().is("every") {
			p.next = back
		}
	}
	if t := p.peek(); t.kind != tokenEnd && t.kind != tokenNewline && !t.is(".") && !p.claimAhead() {
		p.ask(ReasonUnread, t.span, "nothing but a count is expected after the number of times")
		return false
	}
	return true
}

// scheduledRun reads what follows "every".
func (p *parser) scheduledRun(s *scheduled) bool {
	from := p.last()
	var run scheduledRun
	for {
		every := p.interval()
		if every == nil {
			return false
		}
		run.every = append(run.every, every)
		if len(run.every) == 2 || !p.accept("and") {
			break
		}
	}
	if p.peek().row() {
		p.next++
	}
	if alternating := p.accept("alternately"); alternating != (len(run.every) == 2) {
		p.ask(ReasonUnread, from.to(p.last()), "of two intervals \"alternately\" is expected, and of one it is not")
		return false
	}
	at := p.peek().span
	u, ok := p.upTo(false)
	if !ok {
		return false
	}
	if u.times == nil {
		p.ask(ReasonUnread, at, "how many times is it worked?")
		return false
	}
	if len(s.runs) == 0 && !u.more {
		p.reading(at.to(p.last()), "a number of times is read as so many more than it was worked already")
	}
	run.times = u.times
	s.runs = append(s.runs, run)
	return p.spaced(&run, from.to(p.last()))
}

// interval reads "other", "8th", "8th (8th, 6th)", "8 (8, 6)th" or "8 (8, 6)"; of
// "every row" it takes nothing, and is 1.
func (p *parser) interval() []int {
	switch {
	case p.accept("other", "alt", "alternate"):
		return []int{2}
	case p.peek().row():
		return one
	case p.peek().kind != tokenNumber:
		p.ask(ReasonUnread, p.peek().span, "a number of rows is expected after \"every\"")
		return nil
	}
	if !p.ordinalsAhead() {
		n := p.number()
		p.ordinalEnd()
		return n
	}
	at := p.peek().span
	var numbers []int
	for !p.accept(")", "]", "}") {
		switch t := p.peek(); {
		case t.kind == tokenNumber:
			numbers = append(numbers, int(t.number))
		case t.is("-"):
			numbers = append(numbers, 0)
		}
		p.next++
	}
	return p.graded(numbers, at.to(p.last()))
}

// graded checks a list that has a number for every size.
func (p *parser) graded(numbers []int, at span) []int {
	p.listed += len(numbers)
	switch {
	case len(numbers) != p.sizes:
		p.mistake(ReasonSizes, at, report.CountOf(len(numbers), "numbers")+" for "+report.CountOf(p.sizes, "sizes"))
		return nil
	case p.listed > MaxListed:
		p.mistake(ReasonTooMany, at, "the lists of this text hold more than 20000 numbers")
		return nil
	}
	return tidy(numbers)
}

// ordinalsAhead reports whether "8th (8th, 6th)" comes next: an ordinal, and a list
// of ordinals.
func (p *parser) ordinalsAhead() bool {
	i := p.next + 1
	if !ordinalEnd(&p.tokens[i]) || !p.tokens[i+1].is("(", "[", "{") {
		return false
	}
	closer := closers[p.tokens[i+1].text]
	for i += 2; ; i++ {
		p.looked++
		t := &p.tokens[i]
		if t.kind == tokenMark && t.text == closer {
			return true
		}
		if t.kind != tokenNumber && !t.is(",", "-") && !ordinalEnd(t) {
			return false
		}
	}
}

// ordinalEnd reports whether it is the end of "1st", "2nd", "3rd" or "4th".
func ordinalEnd(t *token) bool { return t.is("st", "nd", "rd", "th") }

func (p *parser) ordinalEnd() {
	if ordinalEnd(p.peek()) {
		p.next++
	}
}

// spaced checks that every interval that is worked has a row.
func (p *parser) spaced(run *scheduledRun, place span) bool {
	for size := range p.sizes {
		for _, every := range run.every {
			n, times := at(every, size), at(run.times, size)
			if n > MaxRows || n < 1 && times > 0 {
				p.mistake(ReasonTooLarge, place, "an interval has from 1 to 10000 rows")
				return false
			}
		}
	}
	return true
}
