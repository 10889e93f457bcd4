package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/draft"
)

// skipBreaks passes over what stands between lines, and ends what a blank line ends.
func (p *parser) skipBreaks() {
	for {
		t := p.peek()
		switch {
		case t.kind == tokenNewline:
			if t.number > 1 {
				p.blankLine()
			}
		case t.is("-") && p.next > 0 && p.tokens[p.next-1].is(".") && p.labelEnd(p.next+1) != 0:
		case !t.is(".", ";", ","):
			return
		}
		p.next++
	}
}

// line reads a sentence, and appends the rows and directions that it holds. Whatever
// happens, it moves on.
func (p *parser) line() {
	first, since := p.next, p.found.mark()
	p.depth, p.inside, p.stars, p.sizesTold = 0, 0, p.stars[:0], 0
	if !p.ruled() && !p.tabled() && !p.stripes() && !(p.began && p.sizesOnly()) && !p.frontMatter() && !p.sizesOnly() &&
		!p.needlesAlone() && !p.holesAlone() && !p.gaugeTold() && !p.loneClaim() && !p.headed() && !p.ledInLine() {
		p.sentenceOrRemark()
	}
	if p.next == first {
		p.next++
	}
	p.listsGraded(first, p.next, since)
	p.sizesPassedOver(first, since)
}

// ledInLine passes over "Toe:" within a line, where the name of a part leads a row or a direction in.
func (p *parser) ledInLine() bool {
	if p.lineStart() || p.next < 2 || !p.tokens[p.next-1].is(".") || p.labelEnd(p.next) != 0 {
		return false
	}
	stop := p.leadOfRow(p.next)
	if draft.Part(p.peek().text) {
		stop = p.lead(p.next, p.lineEnd(p.next))
	}
	if stop == 0 {
		return false
	}
	p.endPattern()
	p.passTo(stop)
	return true
}

// ruled passes over a line that is drawn, "-----" or "=====".
func (p *parser) ruled() bool {
	if !p.lineStart() {
		return false
	}
	i := p.next
	for ; !(p.tokens[i].kind == tokenNewline || p.tokens[i].kind == tokenEnd); i++ {
		if !p.tokens[i].among("- = _ ~ # | +") && p.tokens[i].kind != tokenStar {
			return false
		}
	}
	if i < p.next+3 && !p.ornament(i) {
		return false
	}
	p.next = i
	return true
}

// ornament reports whether nothing but stars stands in a line that ends at token i, and
// nothing is repeated from them later.
func (p *parser) ornament(i int) bool {
	first := &p.tokens[p.next]
	if first.kind != tokenStar || i == p.next {
		return false
	}
	if p.starsFrom == nil {
		p.findRepeatedStars()
	}
	return p.starsFrom[first.text] < i
}

// findRepeatedStars finds where the text last repeats from each of its stars: once, since a text may have thousands of them.
func (p *parser) findRepeatedStars() {
	p.starsFrom = map[string]int{}
	for n := range p.tokens[:len(p.tokens)-1] {
		p.looked++
		if p.tokens[n+1].kind == tokenStar && p.tokens[n].among("from between rep repeat to") {
			p.starsFrom[p.tokens[n+1].text] = n
		}
	}
}

// sentence reads a row with its label, or one direction after the other.
func (p *parser) sentence() {
	p.patternLead()
	line := p.blank // A sentence may stand within one.
	if line == nil {
		line = new(Line)
	}
	p.blank = nil
	defer func() { p.blank = line }()
	for len(p.piece.Lines) < MaxLines {
		from := p.peek().span
		*line = Line{}
		p.opensDirections()
		if !p.calledNext() && !p.whenLeads() && p.label(line) {
			p.labelledLine(line, from)
			return
		}
		if !p.clauseLine(line, from) {
			return
		}
	}
}

// patternLead passes over "Commence pattern:", "Set patt:" before the label of a row.
func (p *parser) patternLead() {
	i := p.next
	if !p.tokens[i].among("commence begin beg start set establish now") {
		return
	}
	for i++; p.tokens[i].among("the patt pattern lace as follows commence"); i++ {
	}
	if i > p.next+1 && p.tokens[i].is(":") && p.labelEnd(i+1) != 0 {
		from := p.peek().span
		p.next = i + 1
		p.passed(from.to(p.last()))
	}
}

// clauseLine reads one row or direction of a sentence, and reports whether another
// follows in it.
func (p *parser) clauseLine(line *Line, from span) bool {
	p.depth, p.inside, p.stars = 0, 0, p.stars[:0]
	first := p.next
	if p.sidesApart(line) {
		p.finish(line, from)
		return true
	}
	if end := p.wrapsOrdered(first); end != 0 {
		p.passedTo(line, end)
		p.finish(line, from)
		return p.accept(";")
	}
	p.leadIn(&line.info)
	led := p.next
	more := false
	switch {
	case p.closesBracket(line), p.asPart(line):
		more = p.tail(line)
	case p.matching(line):
	case p.pieceLaidAside(p.next):
		p.passedTo(line, p.sentenceEnd(p.next))
	case p.moreEdges(line), p.pickedUpSaid(line):
		more = p.tail(line)
	case p.needles(line), p.toldSetUp(line), p.direction(line):
		more = p.tail(line)
	case p.prose(line):
	default:
		more = p.row(line)
	}
	if p.next == first {
		p.next++
	}
	p.stockingSide(&line.info, first)
	p.ledUnused(line, from)
	more = !p.ledOften(line, first, led, more) && more
	p.lengthsOf(line, first)
	p.finish(line, from)
	return more
}

// lengthsOf notes the lengths that a line says for its sizes.
func (p *parser) lengthsOf(line *Line, first int) {
	if line.info.kind != linePassed && line.info.kind != lineUnread {
		p.lengthsGraded(first)
	}
}

// labelledLine reads what follows a label.
func (p *parser) labelledLine(line *Line, from span) {
	if len([]rune(line.Label)) > MaxLabelLength {
		p.mistake(ReasonTooLarge, line.info.at, "a label has at most "+strconv.Itoa(MaxLabelLength)+" characters")
		line.Label, line.info.ranges, line.info.kind = "", nil, lineUnread
		p.finish(line, from)
		return
	}
	p.forWhat()
	p.inRow = true
	if p.rowSizes != 0 {
		before := p.forSizes
		p.forSizes = p.rowSizes
		defer func() { p.forSizes = before }()
	}
	defer func() { p.inRow = false }()
	p.leadIn(&line.info)
	p.claimOfLabel(line)
	if p.copies(line, from) {
		return
	}
	label, first := line.info, p.next
	if !p.needles(line) && (p.markersOnly(line) || p.holdsInRows(&line.info) || !p.direction(line)) {
		more := p.row(line)
		p.calledOtherwise(line, label.at)
		p.ledUnused(line, from)
		p.finish(line, from)
		if !more {
			return
		}
	} else {
		more := p.tail(line)
		p.forLabel(line, &label, more && p.tokens[p.next-1].among("then and , ;"))
		p.lengthsGraded(first)
		p.ledUnused(line, from)
		p.finish(line, from)
		if !more {
			return
		}
	}
	p.sentence()
}

// forWhat passes over "For the holes:" after a label.
func (p *parser) forWhat() {
	if !p.peek().is("for") {
		return
	}
	for n := 1; n < 6; n++ {
		t := p.ahead(n)
		if t.is(":") && n > 1 {
			p.next += n + 1
			return
		}
		if t.kind != tokenWord {
			return
		}
	}
}

// forLabel makes rows that are worked even what the label says they are: so many, or
// those of its numbers. goesOn says that the sentence goes on with other rows of the same
// label: "Rows 4-10: Rep Rows 2 and 3 three times, then Row 2 once more".
func (p *parser) forLabel(line *Line, label *lineInfo, goesOn bool) {
	info := &line.info
	if label.ranges != nil {
		if info.kind == lineRepeat {
			info.labelLast = label.ranges[len(label.ranges)-1].last
		}
		if !goesOn {
			p.rowsAsNumbered(label, func(size int) int { return repeatedRows(info, size) })
		}
	}
	p.shapedInAll(info)
	if info.kind != lineEven && info.kind != linePlain || info.pattern > 0 {
		return
	}
	switch {
	case info.ranges != nil:
		if info.counts == nil || single(info.counts, 1) || p.rowsAsNumbered(label, func(size int) int { return at(info.counts, size) }) {
			info.hidden = []Step{{Name: "work", takes: 1, leaves: 1, RemainingStitches: toEnd}}
			info.counts, info.open = nil, false
		}
	case info.counts != nil:
	case info.forRows != nil:
		info.counts, info.open = info.forRows, false
	case line.Label != "" && info.every == everyNone:
		info.counts, info.open = one, false
	}
}
