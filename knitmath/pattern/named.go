package pattern

import (
	"slices"
	"strconv"
	"strings"
)

// rowCalled reads "dec row", "the eyelet rnd": the last row whose label says so.
func (p *parser) rowCalled(info *lineInfo) bool {
	words, i := p.rowName()
	if !p.tokens[i].row() || p.anyOf(p.next, i, "until", "till") || p.inTheRow(i) || p.numberIn(i) {
		return false // "knit one row", "work even for six rows"
	}
	lettered := p.letterAt(i + 1)
	if len(words) == 0 && !lettered || len(words) > 0 && !p.mayName(words[0]) {
		return false
	}
	at := p.peek().span.to(p.tokens[i].span)
	if (lettered || p.tokens[i+1].kind == tokenNumber) && p.rowsApart(info, words, i+1) {
		return true
	}
	p.next = i + 1
	if n := p.lineCalled(words); n >= 0 && len(words) > 0 {
		info.lines = []int16{int16(n)}
		return true
	}
	p.ask(ReasonUnread, at, "no row above has this name")
	info.kind = lineUnread
	return true
}

// inTheRow reports whether "in the" stands before token i.
func (p *parser) inTheRow(i int) bool {
	return i > p.next+1 && p.tokens[i-1].is("the") && p.tokens[i-2].is("in")
}

// numberIn reports whether a number is written out before token i.
func (p *parser) numberIn(i int) bool {
	for n := p.next; n < i; n++ {
		if _, number := p.tokens[n].written(); number {
			return true
		}
	}
	return false
}

// rowName is the words of a name before "row", in the shortest way each is written, and the index
// after them.
func (p *parser) rowName() (words []string, end int) {
	end = p.next
	for len(words) < 4 && p.tokens[end].kind == tokenWord && !p.tokens[end].row() {
		words = append(words, nameWord(p.tokens[end].text))
		end++
	}
	return words, end
}

// mayName reports whether the name of a row may begin with the next word, which is written so at
// its shortest: it is no verb, and says no rule.
func (p *parser) mayName(word string) bool {
	if labelVerbs[word] && word != "rib" || p.tokens[p.next].is("next") || p.tokens[p.next].is("the") && p.tokens[p.next+1].is("next") {
		return false
	}
	return !ruleWord(p.peek()) || p.peek().is("odd", "even", "the")
}

// nameWord is a word of a name, in the shortest way it is written.
func nameWord(word string) string {
	switch word {
	case "decrease", "decreasing", "decr":
		return "dec"
	case "increase", "increasing", "incr":
		return "inc"
	case "setup":
		return "set-up"
	}
	return word
}

// labelCalled reports whether a label has all the words of a name, and whether it has no others
// beside its number and side.
func labelCalled(label string, words []string) (all, alone bool) {
	have, alone := map[string]bool{}, true
	for _, t := range scan(label) {
		word := nameWord(t.text)
		have[word] = true
		alone = alone && (t.kind != tokenWord || t.row() || t.is("and", "rs", "ws") || slices.Contains(words, word))
	}
	for _, w := range words {
		if !have[w] {
			return false, false
		}
	}
	return true, alone
}

// lineCalled is the last line whose label is a name, or if there is none the last whose label has
// all its words; -1 if none has. A "sleeve dec rnd" below is not the "dec rnd".
func (p *parser) lineCalled(words []string) int {
	found := -1
	for n := len(p.piece.Lines) - 1; n >= 0; n-- {
		l := &p.piece.Lines[n]
		p.looked++
		if l.info.kind != lineRow && l.info.kind != lineShape || l.Label == "" {
			continue
		}
		all, alone := labelCalled(l.Label, words)
		if alone {
			return n
		}
		if all && found < 0 {
			found = n
		}
	}
	return found
}

// letterAt reports whether a letter by which rows are told apart stands at token i: "Rnd A".
func (p *parser) letterAt(i int) bool {
	t := &p.tokens[i]
	return t.kind == tokenWord && len(t.text) == 1 && t.text[0] >= 'a' && t.text[0] <= 'h' && p.found.source[t.start] < 'a'
}

// rowsApart reads the letters or numbers from token i on by which rows of the same name are told
// apart, "Dec Rnd A", "Rib Rows 1 and 2"; false, and nothing taken, if no such rows are above.
func (p *parser) rowsApart(info *lineInfo, words []string, i int) bool {
	var lines []int16
	for {
		n := -1
		if p.letterAt(i) || p.tokens[i].kind == tokenNumber {
			n = p.lineCalled(append(words[:len(words):len(words)], p.tokens[i].text))
		}
		if n < 0 || len(lines) == 8 {
			return false
		}
		lines = append(lines, int16(n))
		i++
		if lines, i, n = p.rowsNamedTo(lines, words, i); n < 0 {
			return false
		}
		if !p.tokens[i].is("and", "&", ",") || !p.letterAt(i+1) && p.tokens[i+1].kind != tokenNumber {
			break
		}
		i++
	}
	info.lines = lines
	p.next = i
	return true
}

// rowsNamedTo adds the rows of "short rows 3-4" after the first, whose number is the token before i; last is below 0 where one
// of them is none above.
func (p *parser) rowsNamedTo(lines []int16, words []string, i int) (all []int16, next, last int) {
	first, to := &p.tokens[i-1], &p.tokens[i+1]
	if first.kind != tokenNumber || !p.tokens[i].among("- to through thru") || to.kind != tokenNumber || p.ordinalEnd(i+1) != 0 {
		return lines, i, 0
	}
	if to.number <= first.number || to.number-first.number > 8 {
		return lines, i, -1
	}
	for n := first.number + 1; n <= to.number; n++ {
		k := p.lineCalled(append(words[:len(words):len(words)], strconv.Itoa(int(n))))
		if k < 0 {
			return lines, i, -1
		}
		lines = append(lines, int16(k))
	}
	return lines, i + 2, 0
}

// copiesNamed reads "Rib Row 2: As Rib Row 1": a row without a number that is written as another
// one.
func (p *parser) copiesNamed(line *Line, from span) bool {
	if !p.peek().is("as", "same") || line.Label == "" || line.info.every != everyNone {
		return false
	}
	save, found := p.next, p.found.mark()
	p.next++
	p.accept("as")
	var target lineInfo
	if (p.asBefore(line, &target) || p.rowCalled(&target)) && len(target.lines) == 1 && p.clauseEnds() {
		if source := &p.piece.Lines[target.lines[0]]; len(source.Steps) > 0 {
			p.steps += len(source.Steps)
			line.Steps, line.info.copied = source.Steps, true
			if p.claimAhead() && !p.claim(line) {
				line.info.kind = lineUnread
			}
			p.finish(line, from)
			return true
		}
	}
	p.next = save
	p.found.rewind(found)
	return false
}

// asBefore reads "as before" after a label that a row above has too: that row.
func (p *parser) asBefore(line *Line, target *lineInfo) bool {
	if !p.peek().is("before", "above") || !p.clauseStopsAt(p.next+1) {
		return false
	}
	for i := len(p.piece.Lines) - 1; i >= 0; i-- {
		p.looked++
		if l := &p.piece.Lines[i]; l.info.kind == lineRow && strings.EqualFold(l.Label, line.Label) {
			p.next++
			target.lines = []int16{int16(i)}
			return true
		}
	}
	return false
}
