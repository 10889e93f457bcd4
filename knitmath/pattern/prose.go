package pattern

import (
	"strconv"
	"unicode"

	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/report"
)

// prose passes over a sentence that is no instruction: it begins with a word that
// is not worked. If a word in it might change a count it asks.
func (p *parser) prose(line *Line) bool {
	i := p.next
	t := &p.tokens[i]
	if t.is("(", "[") {
		return p.bracketed(line)
	}
	if t.kind != tokenWord && t.kind != tokenNumber && !t.is("\"") {
		return false
	}
	end := p.sentenceEnd(i)
	if stop := p.toldEnd(i, end); stop != 0 {
		p.passedTo(line, stop)
		return true
	}
	end = p.ordersAfter(i, end)
	known := phrasesHarmless(p, i) || draft.Harmless(t.text) && !p.claimAhead()
	if !known && !p.tells(i, end) {
		return false
	}
	if p.partHas(line, i, end) {
		return true
	}
	if bad := p.doubtful(i, end, known); bad != 0 && !p.zeroAt(i) {
		p.next = end
		p.askProse(i, bad)
		line.info.kind = lineUnread
		return true
	}
	p.noteRowsSaid(i)
	p.passedTo(line, end)
	p.noteThese(line, i, end)
	p.noteTold(&line.info, i, end)
	return true
}

// noteTold notes what a sentence from token i up to another tells of the pieces and of how they are
// worked.
func (p *parser) noteTold(info *lineInfo, i, end int) {
	if p.began && p.section == sectionBody && p.flatSaid(i, end) {
		info.turns = constructionFlat
		info.only = p.onNeedleOnly(i, end)
	}
	info.anotherStays = p.anotherStays(i, end)
	info.allDone = p.allWorkedSaid(i, end)
	info.eachSide = p.tokens[i].is("work", "working") && p.anyOf(i, end, "separately")
}

// passedTo passes over a line from the next token up to another.
func (p *parser) passedTo(line *Line, end int) {
	from := p.peek().span
	p.next = end
	p.passed(from.to(p.last()))
	line.info.kind = linePassed
}

// toldEnd is the index after what orders nothing by itself at token i: that every row is
// alike, how many rows there were, or that what is done follows; 0 if none of them stands there.
func (p *parser) toldEnd(i, end int) int {
	if alike := p.phraseEnd(i, allAlike); alike != 0 && p.endsAt(alike) {
		return alike
	}
	if p.tokens[i].kind == tokenNumber && p.rowsToldAt(i) == end {
		return end
	}
	return p.asFollows(i, end)
}

// ordersAfter is where a sentence stops telling, at a semicolon with an order after it, "These
// 32 sts form the heel; place the other 32 on a holder"; its end if it only tells.
//
// What was found is kept: each w&t of a long row is asked about, up to where the row ends.
func (p *parser) ordersAfter(i, end int) int {
	seen := &p.ordersSeen
	if seen.end == end && seen.from <= i && i < seen.found {
		return seen.found
	}
	*seen = ordersSeen{i, end, end}
	for n := i + 1; n < end; n++ {
		p.looked++
		if p.tokens[n].is(";") && (p.verbAt(n+1) || p.workedAt(n+1) >= 0) {
			seen.found = n
			break
		}
	}
	return seen.found
}

// ordersSeen is where ordersAfter has found a sentence from a token to its end to stop.
type ordersSeen struct{ from, end, found int }

// noteRowsSaid notes how many rows "These 4 rows form the pattern" at token i is about.
func (p *parser) noteRowsSaid(i int) {
	p.rowsSaid = 0
	if !p.tokens[i].is("these", "those") || !p.tokens[i+2].row() {
		return
	}
	save := p.next
	p.next = i + 1
	p.rowsSaid = p.rowCount(0)
	p.next = save
	if otherRows(p.rowsSaid, p.rowsInSet()) && !p.trying {
		p.mistake(ReasonRows, p.tokens[i+1].to(p.tokens[i+2].span), report.CountOf(p.rowsInSet(), "rows")+" stand above, not "+
			strconv.Itoa(p.rowsSaid))
	}
}

// otherRows reports whether "these rows", so many, cannot be those of a set, nor the last of them: more are said
// than there are, or an odd number of an even one.
func otherRows(said, set int) bool {
	return said > 0 && set > 0 && (said > set || said > 1 && said%2 != 0 && set%2 == 0)
}

// flatSaid reports whether a sentence says that what follows is worked flat.
func (p *parser) flatSaid(i, end int) bool {
	for ; i < end; i++ {
		if p.phraseEnd(i, flatWays) != 0 {
			return true
		}
	}
	return false
}

var flatWays = wordings("is worked flat", "is worked back and forth", "are worked flat", "are worked back and forth", "work back and forth",
	"work flat", "is now worked flat", "is now worked back and forth", "is worked in rows", "is knit flat", "working back and forth",
	"working flat", "is knitted flat", "worked flat from here", "do not join")

// allAlike say that what was written is worked in every row.
var allAlike = wordings("every row the same", "every row alike", "every rnd the same", "every rnd alike", "every round the same",
	"every round alike", "each row the same", "each row alike", "every row is the same", "every rnd is the same",
	"every row is worked alike",
	"all rows the same", "every following row the same", "every row like this", "every row as this")

// doubtful is the token of a sentence that may change a count, or its first if nobody knows
// what it orders; 0 if there is none.
func (p *parser) doubtful(i, end int, known bool) int {
	bad := 0
	if (!known || !p.tokens[i].among("these those this rows") && !p.lastRowsAt(i)) && !p.repeatTold(i) &&
		!p.piecesTold(i) && !p.choiceTold(i, end) && !p.sidesTold(i) {
		bad = p.alarm(i, end, known)
	}
	if bad == 0 && p.began && p.repeatedSaid(i, end) {
		bad = i
	}
	if bad == 0 && !known && (p.foreign(i, end) || p.unknownOrder(i, end)) {
		bad = i
	}
	return bad
}

// choiceTold reports whether a sentence only says how a piece may go on, "Go on with the neckband, or bind off
// loosely": neither is worked here.
func (p *parser) choiceTold(i, end int) bool {
	return p.tokens[i].is("go") && p.tokens[i+1].is("on") && p.tokens[i+2].is("with") && p.anyOf(i, end, "or")
}

// asFollows is the index after "work as follows:" or "decrease every rnd as follows" at token
// i: what is done is said after it; 0 if that is not what stands there.
func (p *parser) asFollows(i, end int) int {
	for n := i; n < min(end, i+9); n++ {
		t := &p.tokens[n]
		if t.is("follows", "foll") && n > i && p.tokens[n-1].is("as") && (n+1 == end || p.tokens[n+1].is(":")) ||
			t.is("thus") && n > i && p.tokens[n+1].is(":") {
			if n+1 < end {
				return n + 2
			}
			return end
		}
		if t.kind != tokenWord || t.stitches() || t.among("bo co cast bind") {
			return 0
		}
	}
	return 0
}

// bracketed passes over a remark in brackets that stands alone.
func (p *parser) bracketed(line *Line) bool {
	end := p.remarkEnd(p.next)
	if end == 0 && p.peek().is("(", "[") {
		end = p.rowsToldAt(p.next) // "(30 (32, 36) rows)"
	}
	if end == 0 {
		end = p.caption(p.next)
	}
	if end == 0 || !p.endsAt(end) && !p.sentenceIn(end) {
		return false
	}
	p.passedTo(line, end)
	return true
}

// sentenceIn reports whether brackets that close before token i hold a whole sentence, "(Yarn may be carried up the side.)".
func (p *parser) sentenceIn(i int) bool { return p.tokens[i-2].is(".") }

// caption is the index after "(Picture 3: how to slip 1 st)" at token i: what stands under or
// about a picture; 0 if that is not what stands there.
func (p *parser) caption(i int) int {
	t := &p.tokens[i+1]
	if !t.among("picture photo photograph fig figure diagram illustration chart see image drawing sketch") {
		return 0
	}
	for n := i + 1; n < i+60 && n < len(p.tokens)-1; n++ {
		switch {
		case p.tokens[n].is(")"):
			return n + 1
		case p.tokens[n].kind == tokenNewline && p.tokens[n].number > 1:
			return 0
		}
	}
	return 0
}

// sentenceEnd is the index of the full stop, or the line break or the end, after a
// sentence of prose that begins at token i. It goes on over a line break before a
// word in lower case, for maxWrapped tokens at most: each line of what is no prose asks anew.
func (p *parser) sentenceEnd(i int) int {
	from := i
	for begun := i; ; i++ {
		if p.sentenceSeen[0] <= i && i < p.sentenceSeen[1] {
			return p.sentenceSeen[1]
		}
		p.looked++
		t := &p.tokens[i]
		switch {
		case t.kind == tokenEnd || t.is(".") || t.kind == tokenNewline && !p.mayWrap(i):
			p.sentenceSeen = [2]int{from, i}
			return i
		case t.kind == tokenNewline:
			if i-begun > maxWrapped || p.labelEnd(i+1) != 0 || p.verbAt(i+1) {
				return i
			}
			from = i + 1 // whether a sentence goes on over a line break is asked anew
		}
	}
}

// mayWrap reports whether a line break is one that a sentence may go on over, by how it looks: the line
// before it is long, and what follows begins in lower case.
func (p *parser) mayWrap(i int) bool {
	next := &p.tokens[i+1]
	return p.tokens[i].number <= 1 && i > 0 && !p.rowsAlone(i+1) && p.tokens[i-1].column >= wrappedAt/2 && next.kind == tokenWord &&
		unicode.IsLower(rune(p.found.source[next.start]))
}

// maxWrapped is after how many words and marks a sentence goes on over no line break any more. Nobody's
// is so long.
const maxWrapped = 300
