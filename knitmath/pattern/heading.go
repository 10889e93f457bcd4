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
	if !p.lineStart() {
		return false
	}
	i := p.next
	end := p.lineEnd(i)
	if p.labelEnd(i) != 0 || p.bracketHeading(i, end) {
		return false
	}
	stop := 0
	switch {
	case p.headingAhead() || p.partHeading(i, end) && !p.colonInside(i, end) || p.capitals(i, end) || p.patternHeading(i, end):
		stop = end
	case p.numberedTitle(i, end) != 0:
		stop = end
	case p.lead(i, end) != 0:
		stop = p.lead(i, end)
	default:
		return false
	}
	text := p.found.source[p.tokens[i].start:p.tokens[stop-1].end]
	note := draft.Front(p.tokens[i].text) && !(p.began && p.worksAfterLead(i, end))
	if note {
		stop = end
	}
	p.endPattern()
	told := 0
	for n := i; n < stop-1; n++ {
		if p.tokens[n].is("(") && p.tokens[n+1].is("worked") {
			told = n + 1
		}
	}
	part := draft.Part(p.tokens[i].text)
	p.passTo(stop)
	if n := len(p.piece.Lines); part && !note && n > 0 {
		p.piece.Lines[n-1].info.heading = true
	}
	if told != 0 { // "HEEL FLAP (worked back and forth on 32 sts)"
		save := p.next
		p.next = told
		line := Line{}
		if p.toldSetUp(&line) {
			p.finish(&line, p.tokens[told].span)
		}
		p.next = save
	}
	if note {
		p.passWrapped()
	} else {
		p.beginPattern(i, stop, text)
	}
	return true
}

// bracketHeading reports whether a line begins with what no heading begins with.
func (p *parser) bracketHeading(i, end int) bool {
	return i >= end || p.tokens[i].kind != tokenWord
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
			return words == 1 && i == 1 && p.standsAlone() || words > 1 && (p.titled(p.next, p.next+i) || !p.foreign(p.next, p.next+i)) &&
				(strings.HasSuffix(p.peek().text, "ing") || !p.unknownOrder(p.next, p.next+i))
		case t.is(":"):
			next := p.ahead(i + 1)
			return words > 0 && (next.kind == tokenEnd || next.kind == tokenNewline)
		case t.is(",", "-", "&", "and", "or", "the", "of"):
			continue
		case t.kind != tokenWord || steering[t.text] || reserved[t.text] || phrases[t.text] != nil || p.notation(t.text) ||
			draft.Harmless(t.text) || directing[t.text]:
			return false
		}
		words++
	}
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
		if p.notation(t.text) && len(t.text) < 4 || t.is("co", "bo", "rep", "cast", "bind", "rows", "row", "rnd", "knit", "purl") {
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
	for n := i; n < end && n-i < 7; n++ {
		t := &p.tokens[n]
		switch {
		case t.is(":") && n > i:
			return n + 1
		case t.is("-") && n > i && n+1 < end && draft.Part(p.tokens[i].text) && t.start > p.tokens[n-1].end:
			return n + 1
		case t.is("(", ")", "&", ",", "/"):
		case n > i && t.is("st", "stitch", "rib", "ribbing", "lace", "pattern") && p.tokens[n+1].is(":") && p.labelEnd(n+2) != 0:
		case t.kind != tokenWord && (t.kind != tokenNumber || !draft.Part(p.tokens[i].text) && !draft.Front(p.tokens[i].text)),
			directing[t.text] && n == i && !(t.is("work", "shape", "knit") && draft.Part(p.tokens[i+1].text)), t.row(), t.stitches(),
			reserved[t.text] && !t.is("end", "and", "next", "in", "to"):
			return 0
		case n > i && p.notation(t.text) && !draft.Part(p.tokens[i].text):
			return 0
		}
	}
	return 0
}

// directing are verbs with which a direction begins.
var directing = map[string]bool{"work": true, "cont": true, "continue": true, "rep": true, "repeat": true, "knit": true, "purl": true,
	"rib": true, "cast": true, "bind": true, "co": true, "bo": true, "place": true, "slip": true, "sl": true, "put": true, "leave": true,
	"pick": true, "join": true, "rejoin": true, "dec": true, "inc": true, "decrease": true, "increase": true, "shape": true,
	"divide": true, "distribute": true, "turn": true, "graft": true, "draw": true, "thread": true, "return": true, "transfer": true,
	"k": true, "p": true, "using": true, "with": true, "change": true, "beg": true, "beginning": true, "starting": true, "proceed": true,
	"keep": true, "keeping": true, "move": true, "hold": true, "bo,": true, "end": true, "ending": true, "arrange": true, "then": true}
