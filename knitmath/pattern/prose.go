package pattern

import (
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// prose passes over a sentence that is no instruction: it begins with a word that
// is not worked. If a word in it might change a count it asks.
func (p *parser) prose(line *Line) bool {
	i := p.next
	t := &p.tokens[i]
	if t.kind != tokenWord && t.kind != tokenNumber && !t.is("(", "\"") {
		return false
	}
	if t.is("(") {
		return p.bracketed(line)
	}
	end := p.sentenceEnd(i)
	if alike := p.phraseEnd(i, allAlike); alike != 0 && p.endsAt(alike) {
		p.next = alike
		p.passed(t.span.to(p.last()))
		line.info.kind = linePassed
		return true
	}
	if t.kind == tokenNumber && p.rowsToldAt(i) == end {
		p.next = end
		p.passed(t.span.to(p.last()))
		line.info.kind = linePassed
		return true
	}
	if stop := p.asFollows(i, end); stop != 0 {
		p.next = stop
		p.passed(t.span.to(p.last()))
		line.info.kind = linePassed
		return true
	}
	for n := i + 1; n < end; n++ { // "These 32 sts form the heel; place the other 32 on a holder"
		if p.tokens[n].is(";") && p.verbAt(n+1) {
			end = n
		}
	}
	known := phrasesHarmless(p, i) || draft.Harmless(t.text) && !p.claimAhead()
	if !known && !p.tells(i, end) {
		return false
	}
	if p.partHas(line, i, end) {
		return true
	}
	if bad := p.doubtful(i, end, known); bad != 0 && !p.zeroAt(i) {
		p.next = end
		p.ask(ReasonUnread, p.tokens[max(bad, i)].to(p.last()), "what is to be done here? it may change the count, and cannot be read")
		line.info.kind = lineUnread
		return true
	}
	p.rowsSaid = 0
	if t.is("these", "those") && p.tokens[i+2].row() {
		p.next = i + 1
		p.rowsSaid = p.rowCount(0)
	}
	p.next = end
	p.passed(t.span.to(p.last()))
	line.info.kind = linePassed
	if p.began && p.section == sectionBody && p.flatSaid(i, end) {
		line.info.turns = constructionFlat
	}
	line.info.eachSide = t.is("work", "working") && p.anyOf(i, end, "separately")
	return true
}

// partHas reads "Each sleeve has 64 sts, of which 8 are for the underarm": a count of a part of the
// stitches, in a sentence that tells.
func (p *parser) partHas(line *Line, i, end int) bool {
	if !p.began || !p.tokens[i].is("each", "the", "this", "every", "both") && !draft.Part(p.tokens[i].text) {
		return false
	}
	for n := i; n < min(i+5, end-2); n++ {
		if !p.tokens[n].is("has", "have", "holds", "is", "consists") {
			if p.tokens[n].kind != tokenWord || alarming(p.tokens[n].text) {
				return false
			}
			continue
		}
		n++
		for p.tokens[n].is("now", "of", "a", "total") {
			n++
		}
		to, _ := p.sizedEnd(n)
		if to == 0 || !p.tokens[to].stitches() || p.alarm(to+1, end, true) != 0 {
			return false
		}
		from := p.tokens[i].span
		p.next = n
		if line.info.partial = p.number(); line.info.partial == nil {
			return false
		}
		p.next = end
		line.info.partial, line.info.kind, line.info.claimAt = without(line.info.partial), linePassed, from.to(p.last())
		line.info.tellsPart = true
		p.passed(line.info.claimAt)
		return true
	}
	return false
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
	"every round alike", "each row the same", "each row alike", "every row is the same", "every rnd is the same", "every row is worked alike",
	"all rows the same", "every following row the same", "every row like this", "every row as this")

// tells reports whether a sentence that begins with words not known to be harmless tells
// something, and is neither a row nor a direction.
func (p *parser) tells(i, end int) bool {
	t := &p.tokens[i]
	if p.onlyRows && p.startsItem(i) || t.kind == tokenNumber || p.likeRow(i, end) ||
		p.startsItem(i) && !p.told(i, end) || p.directionAhead() ||
		reserved[t.text] && !draft.Manner(t.text) {
		return false
	}
	return end-i >= 2 || draft.Part(t.text) || draft.Front(t.text) || draft.Manner(t.text)
}

// doubtful is the token of a sentence that may change a count, or its first if nobody knows
// what it orders; 0 if there is none.
func (p *parser) doubtful(i, end int, known bool) int {
	bad := 0
	if !known || !p.tokens[i].is("these", "those", "this", "rows") {
		bad = p.alarm(i, end, known)
	}
	if bad == 0 && !known && (p.foreign(i, end) || p.unknownOrder(i, end)) {
		bad = i
	}
	return bad
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
		if t.kind != tokenWord || t.stitches() || t.is("bo", "co", "cast", "bind") {
			return 0
		}
	}
	return 0
}

// likeRow reports whether a sentence that begins with an unknown word is set like a
// row: the word stands before a comma or a number, and what can be worked follows.
func (p *parser) likeRow(i, end int) bool {
	next := i + 1
	if p.tokens[next].kind == tokenNumber {
		next++
	}
	if !p.tokens[next].is(",") && !p.endsAt(next) || next == i+1 && p.endsAt(next) {
		return false
	}
	for next++; next < end; next++ {
		if p.tokens[next-1].is(",") && p.startsItem(next) {
			return true
		}
	}
	return p.tokens[i+1].kind == tokenNumber
}

// foreign reports whether a sentence has no word at all by which English prose is known:
// it may be an instruction in another language.
func (p *parser) foreign(i, end int) bool {
	words := 0
	for ; i < end; i++ {
		t := &p.tokens[i]
		if t.kind != tokenWord {
			continue
		}
		if draft.English(t.text) || draft.Part(t.text) || draft.Front(t.text) || len(t.text) > 2 && p.notation(t.text) || t.row() ||
			t.stitches() {
			return false
		}
		words++
	}
	return words > 2
}

// tellingWords are the verbs of a sentence that tells and orders nothing.
var tellingWords = wordSet(`is are was were be been being will would should shall can could may might must has have had does do did looks
	look forms form makes make gives give shows show leans lies lie runs run sits means mean grows grow needs need you your you'll i i've
	we they it it's that's there's don't isn't aren't won't can't creates create becomes become happens comes come feels seem seems relaxes
	thanks thank happy enjoy see says say`)

// madeUp are verbs of what is done to a piece that is knit.
var madeUp = wordSet(`close cover dab brush felt glue roll flatten smooth admire wear give decorate finish photograph sort collect gather
	tape label`)

// unknownOrder reports whether a sentence among the rows seems to order something with a
// verb that nobody knows, "Flurble the brim": its first word is none of the language of
// patterns, and nothing in it shows that it only tells.
func (p *parser) unknownOrder(i, end int) bool {
	if !p.began || p.section == sectionFront {
		return false
	}
	t := &p.tokens[i]
	if madeUp[t.text] || t.kind != tokenWord || t.row() || t.stitches() || p.notation(t.text) || draft.Manner(t.text) && !steering[t.text] ||
		draft.English(t.text) || draft.Part(t.text) ||
		draft.Front(t.text) || draft.Fabric(t.text) || colours[t.text] || p.patternWord(t.text) {
		return false
	}
	object := false
	for n := i; n < end; n++ {
		w := &p.tokens[n]
		if w.kind == tokenWord && tellingWords[w.text] {
			return false
		}
		object = object || n > i && (w.is("the", "these", "those", "all", "each", "both", "this", "a", "an", "it", "them") || w.stitches())
	}
	return object
}

// patternWord reports whether a word is of the name of a stitch pattern of the text.
func (p *parser) patternWord(word string) bool {
	for k := range p.patterns {
		for _, w := range p.patterns[k].words {
			if w == word {
				return true
			}
		}
	}
	return false
}

// bracketed passes over a remark in brackets that stands alone.
func (p *parser) bracketed(line *Line) bool {
	end := p.remarkEnd(p.next)
	if end == 0 {
		end = p.caption(p.next)
	}
	if end == 0 || !p.endsAt(end) {
		return false
	}
	from := p.peek().span
	p.next = end
	p.passed(from.to(p.last()))
	line.info.kind = linePassed
	return true
}

// caption is the index after "(Picture 3: how to slip 1 st)" at token i: what stands under or
// about a picture; 0 if that is not what stands there.
func (p *parser) caption(i int) int {
	t := &p.tokens[i+1]
	if !t.is("picture", "photo", "photograph", "fig", "figure", "diagram", "illustration", "chart", "see", "image", "drawing", "sketch") {
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

// told reports whether a sentence that begins with a word that may be worked tells
// about the work, and orders nothing: "Slip the first st of every row", "Knit in the
// round throughout".
func (p *parser) told(i, end int) bool {
	return p.phraseEnd(i, tellings) != 0 && p.alarm(i+2, end, true) == 0
}

var tellings = wordings("slip the first", "sl the first", "sl first", "slip first", "slip all", "sl all", "slip markers", "sl markers",
	"slip sts", "sl sts", "knit the first and last", "knit in the round", "turn work", "turn the work", "turn", "work all", "work edge",
	"slip stitches", "slip marker as", "sl markers as", "slip m as", "sl m as", "knit flat")

// sentenceEnd is the index of the full stop, or the line break or the end, after a
// sentence of prose that begins at token i. It goes on over a line break before a
// word in lower case.
func (p *parser) sentenceEnd(i int) int {
	if p.sentenceSeen[0] <= i && i < p.sentenceSeen[1] {
		return p.sentenceSeen[1]
	}
	from := i
	for {
		p.looked++
		t := &p.tokens[i]
		switch {
		case t.kind == tokenEnd || t.is("."):
			p.sentenceSeen = [2]int{from, i}
			return i
		case t.kind == tokenNewline:
			next := &p.tokens[i+1]
			if t.number > 1 || i == 0 || p.tokens[i-1].column < wrappedAt/2 || next.kind != tokenWord ||
				!unicode.IsLower(rune(p.found.source[next.start])) || p.labelEnd(i+1) != 0 ||
				p.verbAt(i+1) {
				return i
			}
			from = i + 1 // whether a sentence goes on over a line break is asked anew
		}
		i++
	}
}

// alarm is the first token of a sentence of prose that might change a count, 0 if
// there is none. known says that the sentence is about yarn or needles.
func (p *parser) alarm(from, end int, known bool) int {
	calm := false
	for i := from; i < end; i++ {
		t := &p.tokens[i]
		p.looked++
		switch {
		case t.is("gauge", "tension", "multiple", "mult", "=", "equals", "pattern", "chart", "measure", "measures", "measuring"):
			calm = true
		case t.kind == tokenStar:
			return i
		case t.kind == tokenNumber:
			if to, _ := p.sizedEnd(i); to != 0 && (p.tokens[to].stitches() || p.tokens[to].row()) && !calm {
				return i
			}
		case t.kind != tokenWord:
		case alarming(t.text), p.misspelt(i), i == from && t.is("foll", "following", "alt", "alternate", "every", "next"):
			return max(i, 1)
		case p.alarmingStitch(i, from, known):
			return i
		}
	}
	return 0
}

// misspelt reports whether "cast off" or "bind off" stands at token i with two letters the
// wrong way round.
func (p *parser) misspelt(i int) bool {
	text := p.tokens[i].text
	return p.tokens[i+1].is("off", "on") && len(text) == 4 && (swapped(text, "cast") || swapped(text, "bind"))
}

// alarming reports whether a word is about a change of the count.
func alarming(word string) bool {
	if draft.Changing(word) {
		return true
	}
	switch word {
	case "bo", "co", "cast", "bind", "inc", "dec", "increase", "decrease", "increasing", "decreasing", "rep", "repeat", "twice",
		"times", "holder", "holders", "reversing", "reverse-shaping", "follow":
		return true
	}
	return false
}

// alarmingStitch reports whether a word stands for a stitch that is worked here.
func (p *parser) alarmingStitch(i, from int, known bool) bool {
	t := &p.tokens[i]
	if _, _, _, counted := split(t.text); counted {
		return true
	}
	m, ok := lookUp(t.text, p.own)
	switch {
	case !ok:
		return false
	case m.takes != m.leaves && m.op != 0 && !t.is("yarn"):
		return true
	case i == from, p.tokens[i-1].is(",", ";", "then", "and", ":", "-", "time"):
		return !known && (t.is("knit", "purl", "k", "p", "work") || m.ask != "")
	}
	return false
}

// harmlessPhrases are sentences that change no count, by how they begin.
var harmlessPhrases = wordings("do not", "don't", "make sure", "make another", "work the other", "make 2", "make two", "make a second",
	"make the second",
	"make one more", "work second", "work the second", "work other", "knit second", "knit the second", "knit a second",
	"work as follows", "proceed as follows", "continue as follows", "cont as follows", "work in rows", "end of", "from here",
	"this is", "this forms", "these", "there is", "there are no", "rows 1", "turn work", "place marker for", "hold yarn",
	"all sts are", "all stitches are", "first st", "sl markers", "slip markers", "slip all", "read chart",
	"leave sts on needle", "leave sts on the needle", "leave the sts on the needle", "leave all sts on needle",
	"set aside", "set piece aside", "turn piece", "work each side of", "work each side separately", "work both sides of", "knit from the",
	"worked from the", "knit in one piece", "knit sts from needle", "knit the sts from needle", "cont in this way throughout")

// seeElsewhere are words that send the reader to another place.
var seeElsewhere = wordings("see page", "see pages", "see p", "see diagram", "see drawing", "see photo", "see picture", "see figure",
	"see fig", "see schematic", "see illustration", "please turn over", "turn over", "turn the page", "refer to", "see also", "see notes",
	"see note", "see above", "see below", "see overleaf", "continued on", "continued overleaf", "continued from", "please see")

// sidesTold reports whether "Short side = 80 sts, long side = 100 sts" stands at token i.
func (p *parser) sidesTold(i int) bool {
	from := i
	for p.tokens[i].is("short", "long", "each", "one", "upper", "lower", "left", "right", "side", "edge", "end", "top", "bottom") {
		i++
	}
	return i > from && p.tokens[i-1].is("side", "edge", "end") && p.tokens[i].is("=")
}

func phrasesHarmless(p *parser, i int) bool {
	if p.phraseEnd(i, seeElsewhere) != 0 || p.zeroAt(i) || p.sidesTold(i) {
		return true
	}
	if p.tokens[i].is("these", "those", "this", "rows") && !p.tokens[i].row() {
		// "These 2 rows form the pattern."
		end := p.sentenceEnd(i)
		for n := i; n < end; n++ {
			if p.tokens[n].is("form", "forms", "set", "sets", "establish", "establishes", "are", "is", "make", "makes") {
				return true
			}
		}
		return false
	}
	return p.phraseEnd(i, harmlessPhrases) != 0
}
