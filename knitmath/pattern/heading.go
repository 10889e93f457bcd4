package pattern

import (
	"strings"
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// steering are verbs that make a line more than a heading, beside the reserved
// words and the abbreviations.
var steering = map[string]bool{"work": true, "cont": true, "continue": true, "slip": true, "turn": true, "wrap": true,
	"cast": true, "bind": true, "pick": true, "picking": true, "join": true}

// headed passes over the heading of a part, "BODY", "Feather and fan", or what
// stands before a colon, "Heel: work ...". It ends the stitch pattern before it,
// and begins one if it names one.
func (p *parser) headed() bool {
	if !p.lineStart() || p.picotOff(p.next) {
		return false
	}
	i := p.next
	end := p.lineEnd(i)
	stop := p.headingEnd(i, end)
	switch {
	case p.rowsHeading(i, end):
		stop = end
	case stop == 0:
		return false
	}
	text := p.found.source[p.tokens[i].start:p.tokens[stop-1].end]
	note := p.front(i) && !(p.began && p.worksAfterLead(i, end))
	p.endPattern()
	if note {
		stop = p.noteEnd(i, end)
	} else if len(p.piece.Lines) > p.scopeFrom {
		p.forSizes = 0 // what was for some sizes alone ends with its part
	}
	p.passTo(stop)
	if !note {
		p.partBegins(i, stop)
	}
	p.workedInHeading(i, stop)
	switch {
	case note:
		if stop == end {
			p.passWrapped()
		}
	case !p.began && stop < end && !p.rowsOfHeading(stop): // "Two sizes: short [long]."
	default:
		p.beginPattern(i, stop, text)
		p.orderedHeading(i, stop)
	}
	return true
}

// partBegins notes of the line of a heading that it names a part.
func (p *parser) partBegins(i, stop int) {
	if n := len(p.piece.Lines); n > 0 && p.partAt(i) {
		info := &p.piece.Lines[n-1].info
		info.heading, info.part = true, p.tokens[i].to(p.tokens[stop-1].span)
	}
}

// headingEnd is the index after a heading at token i, the whole line or what stands before a
// colon in it; 0 if the line does not begin with one.
func (p *parser) headingEnd(i, end int) int {
	if p.beginsLabelled(i) || i >= end || p.tokens[i].kind != tokenWord {
		return 0
	}
	if p.headingAhead() || p.hashed(i) || p.partHeading(i, end) && !p.colonInside(i, end) || p.capitals(i, end) ||
		p.patternHeading(i, end) || p.numberedTitle(i, end) != 0 || p.shapingTitle(i, end) || p.orderEnds(i, end) {
		return end
	}
	if p.frontSentence(i, end) {
		return end
	}
	if stop := p.titleStop(i, end); stop != 0 {
		return stop
	}
	return p.lead(i, end)
}

// beginsLabelled reports whether a label, or the "Cast-on:" or "CO:" of a cast-on, stands at token i.
func (p *parser) beginsLabelled(i int) bool {
	return p.labelEnd(i) != 0 || p.tokens[i].is("cast-on", "co") && p.castAt(i) != 0
}

// picotOff reports whether "picot bind-off" stands at token i, which is no heading: all stitches are bound off.
func (p *parser) picotOff(i int) bool {
	return p.tokens[i].is("picot") && p.tokens[i+1].among("bind-off cast-off bind bo")
}

// frontSentence reports whether "Materials. 4 ozs. of wool" stands in the line of token i.
func (p *parser) frontSentence(i, end int) bool {
	return !p.began && draft.Front(p.tokens[i].text) && p.tokens[i+1].is(".") && i+2 < end && p.labelEnd(i+2) == 0
}

// hashed reports whether the line of token i is marked as a heading, "### Colourwork", and does not
// begin with what is worked.
func (p *parser) hashed(i int) bool {
	first := &p.tokens[i]
	from := strings.LastIndexAny(p.found.source[:first.start], "\n\r") + 1
	return strings.HasPrefix(strings.TrimSpace(p.found.source[from:first.start]), "#") && !directing[first.text] && !p.notation(first.text)
}

// workedInHeading reads "HEEL FLAP (worked back and forth on 32 sts)" in a heading from token i
// up to another: how its rows are worked.
func (p *parser) workedInHeading(i, stop int) {
	told := 0
	for n := i; n < stop-1; n++ {
		if p.tokens[n].is("(") && p.tokens[n+1].is("worked") {
			told = n + 1
		}
	}
	if told == 0 {
		return
	}
	save := p.next
	p.next = told
	line := Line{}
	if p.toldSetUp(&line) {
		p.finish(&line, p.tokens[told].span)
	}
	p.next = save
}

// headingAhead reports whether the rest of the line is a heading, such as
// "Feather and fan" or "Sleeves:". A heading has two words or ends with a colon,
// and holds no number, no star, no bracket and no word of the notation: whatever
// might be a row is read as one, so that nothing is lost by mistake.
func (p *parser) headingAhead() bool {
	words := 0
	for i := 0; ; i++ {
		p.looked++
		t := p.ahead(i)
		switch {
		case t.kind == tokenEnd || t.kind == tokenNewline:
			return p.titleOf(words, p.next+i)
		case t.is(":"):
			next := p.ahead(i + 1)
			return words > 0 && (next.kind == tokenEnd || next.kind == tokenNewline)
		case t.among(", - & and or the of"):
		case p.steers(t):
			return false
		default:
			words++
		}
	}
}

// steers reports whether a token makes a line more than a heading.
func (p *parser) steers(t *token) bool {
	return t.kind != tokenWord || steering[t.text] || reserved[t.text] || phrases[t.text] != nil || p.notation(t.text) ||
		draft.Harmless(t.text) || directing[t.text]
}

// titleOf reports whether a line up to a token, of so many words and no colon, is a title.
func (p *parser) titleOf(words, end int) bool {
	if words <= 1 {
		return words == 1 && end == p.next+1 && p.standsAlone()
	}
	return (p.titled(p.next, end) || !p.foreign(p.next, end)) &&
		(strings.HasSuffix(p.peek().text, "ing") || !p.unknownOrder(p.next, end))
}

// notation reports whether a word stands for something that is worked, or may.
func (p *parser) notation(word string) bool {
	if _, ok := lookUp(word, p.own); ok {
		return true
	}
	if _, ok := questions[word]; ok {
		return true
	}
	base, _, _, ok := split(word)
	if !ok {
		return false
	}
	_, ok = lookUp(base, p.own)
	return ok
}

// capitals reports whether a line is a title in capitals, of words that are not
// worked.
func (p *parser) capitals(i, end int) bool {
	letters := 0
	if end-i > 8 || p.tokens[end-1].is(".") {
		return false
	}
	for n := i; n < end; n++ {
		t := &p.tokens[n]
		switch {
		case t.kind == tokenStar:
			return false
		case t.kind != tokenWord:
			continue
		}
		for _, c := range p.found.source[t.start:t.end] {
			if unicode.IsLower(c) {
				return false
			}
		}
		if len(t.text) > 3 && !p.notation(t.text) && !directing[t.text] {
			letters++
		}
		if p.notation(t.text) && len(t.text) < 4 || t.among("co bo rep cast bind rows row rnd knit purl") {
			return false
		}
	}
	return letters > 0
}

// colonInside reports whether a line goes on after a colon.
func (p *parser) colonInside(i, end int) bool {
	for n := i; n+1 < end; n++ {
		if p.tokens[n].is(":") {
			return true
		}
	}
	return false
}

// lead is the index after the colon of a heading in whose line something follows,
// "Heel:" or "Left front (neck edge):"; 0 if there is none.
func (p *parser) lead(i, end int) int {
	if to := p.leadOfRow(i); to != 0 {
		return to
	}
	if i < end && !p.inLead(i, i) {
		return 0
	}
	stop := min(end, i+7+4*bit(p.anyOf(i, i+7, "("))) // "Side trim (both sides alike): ..."
	for n := i + 1; n < stop; n++ {
		t := &p.tokens[n]
		if to := p.leadStops(i, n, end); to != 0 {
			return to
		}
		if p.tokens[n-1].is("make") && t.kind == tokenNumber { // "Earflap (make 2): CO 7 sts"
			continue
		}
		if !p.inLead(i, n) {
			return 0
		}
	}
	return 0
}

// leadStops is where words at token i that lead a row or a direction in end, if they do at token n; else 0.
func (p *parser) leadStops(i, n, end int) int {
	t := &p.tokens[n]
	switch {
	case t.is(":"), t.is("-") && n+1 < end && p.partAt(i) && t.start > p.tokens[n-1].end,
		t.is(",") && p.firstRowAt(n+1): // "Thumb gusset, Rnd 1: ..."
		return n + 1
	case p.sideBefore(n): // "Divide for neck (RS): K28, ..."
		return n
	}
	return 0
}

// sideBefore reports whether "(RS):" stands at token n.
func (p *parser) sideBefore(n int) bool {
	return p.tokens[n].is("(") && p.sideOf(n+1) != 0 && p.tokens[n+2].is(")") && p.tokens[n+3].is(":")
}

// leadOfRow is the index after words at token i, and a colon or a dash, with which a first row or a cast-on is led in: "Then work
// the straight section: Row 1", "Cowl - cast on 140 sts"; 0 if that is not what stands there.
func (p *parser) leadOfRow(i int) int {
	if p.labelEnd(i) != 0 {
		return 0
	}
	for n := i; n < i+12; n++ {
		t := &p.tokens[n]
		switch {
		case n > i && (t.is(":") || t.is("-") && t.start > p.tokens[n-1].end):
			return p.ledByColon(i, n)
		case t.is("(") && p.remarkEnd(n) != 0:
			n = p.remarkEnd(n) - 1
		case t.kind != tokenWord, counting[t.text], n > i && p.leadWorks(n):
			return 0
		}
	}
	return 0
}

// ledByColon is the index after the colon n of words at token i where a first row, the cast-on or so many rows of a part follow;
// else 0.
func (p *parser) ledByColon(i, n int) int {
	if p.firstRowAt(n+1) || !p.began && p.castAt(n+1) != 0 || n == i+2 && draft.Part(p.tokens[i+1].text) && p.rowsAfter(n+2) {
		return n + 1
	}
	return 0
}

// leadWorks reports whether the word at token n, in what may lead in a row, may change a count, but for the last one,
// "Then decrease: Row 1".
func (p *parser) leadWorks(n int) bool {
	t := &p.tokens[n]
	return alarming(t.text) && !p.tokens[n+1].is(":") || t.stitches() || p.alarmingStitch(n, n, true)
}

// rowsHeading reports whether words fill the line of token i that end with "rows", and the first row stands below them.
func (p *parser) rowsHeading(i, end int) bool {
	return end > i+1 && end < i+5 && p.tokens[i].kind == tokenWord && p.tokens[end-1].is("rows", "rounds", "rnds") &&
		!p.anyNumber(i, end) && p.firstRowAt(end+1)
}

// firstRowAt reports whether the label of the first row stands at token i.
func (p *parser) firstRowAt(i int) bool {
	return p.tokens[i].row() && p.tokens[i+1].kind == tokenNumber && p.tokens[i+1].number == 1 && p.labelEnd(i) != 0
}

// inLead reports whether token n may stand in a heading that begins at token i, with something
// after it in the same line.
func (p *parser) inLead(i, n int) bool {
	t, first := &p.tokens[n], p.tokens[i].text
	part := draft.Part(first)
	switch {
	case t.among("( ) & , /"), n > i && p.fabricBeforeLabel(n):
		return true
	case t.kind != tokenWord && (t.kind != tokenNumber || !part && !draft.Front(first)):
		return false
	case t.row():
		return n > i && p.tokens[n-1].is("short")
	case t.stitches(), reserved[t.text] && !t.among("end and next in to"):
		return false
	case n == i:
		return !directing[first] || p.leadOfVerb(i)
	}
	return part || !p.notation(t.text)
}

// leadOfVerb reports whether a verb at token i begins a heading: "Shape back", "Turn to work the front".
func (p *parser) leadOfVerb(i int) bool {
	t, then := &p.tokens[i], &p.tokens[i+1]
	return p.sectionNamed(i) || t.among("work shape knit turn") && draft.Part(then.text) ||
		t.is("divide", "turn") && then.among("for the to work front back")
}

// sectionNamed reports whether "Increase section", "Work short rows" stands at token i: a verb in the name of what is
// worked below it.
func (p *parser) sectionNamed(i int) bool {
	then := &p.tokens[i+1]
	return then.is("section") || p.tokens[i].is("work") && (then.is("short-row", "short-rows") || then.is("short") && p.tokens[i+2].row())
}

// fabricBeforeLabel reports whether the name of a stitch pattern ends at token i, before the
// label of its first row: "Seed st: Row 1: ...".
func (p *parser) fabricBeforeLabel(i int) bool {
	return p.tokens[i].among("st stitch rib ribbing lace pattern") && p.tokens[i+1].is(":") && p.labelEnd(i+2) != 0
}

// directing are verbs with which a direction begins.
var directing = map[string]bool{"work": true, "cont": true, "continue": true, "rep": true, "repeat": true, "knit": true, "purl": true,
	"rib": true, "cast": true, "bind": true, "co": true, "bo": true, "place": true, "slip": true, "sl": true, "put": true, "leave": true,
	"pick": true, "join": true, "rejoin": true, "dec": true, "inc": true, "decrease": true, "increase": true, "shape": true,
	"divide": true, "distribute": true, "turn": true, "graft": true, "draw": true, "thread": true, "return": true, "transfer": true,
	"k": true, "p": true, "using": true, "with": true, "change": true, "beg": true, "beginning": true, "starting": true, "proceed": true,
	"keep": true, "keeping": true, "move": true, "hold": true, "bo,": true, "end": true, "ending": true, "arrange": true, "then": true}

// titleStop is the index after "Half-brioche." at token i, a title before the first row in its line;
// 0 if that is not what stands there.
func (p *parser) titleStop(i, end int) int {
	for n := i; n < min(end, i+4); n++ {
		t := &p.tokens[n]
		if t.is(".") && n > i {
			if n+2 < end && p.firstRowAt(n+1) {
				return n + 1
			}
			return 0
		}
		if t.kind != tokenWord || p.notation(t.text) || directing[t.text] || p.phraseHere(n) {
			return 0
		}
	}
	return 0
}
