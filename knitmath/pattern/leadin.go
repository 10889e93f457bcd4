package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// leadIns are words before a direction or a row that say with what, where or when,
// up to a comma or to the verb.
var leadIns = map[string]bool{"with": true, "using": true, "leaving": true, "beg": true, "beginning": true, "starting": true,
	"start": true, "from": true, "keeping": true, "working": true, "maintaining": true, "when": true, "once": true, "after": true,
	"cont": true, "continuing": true, "on": true, "for": true, "now": true, "then": true, "next": true, "by": true, "still": true,
	"and": true, "also": true, "over": true, "begin": true, "in": true, "at": true, "as": true, "if": true, "holding": true, "again": true,
	"to": true, "take": true}

// leadIn passes over what stands before the verb of a direction or before the
// stitches of a row: "Using smaller needles,", "With RS facing,", "Beg with a k row,".
func (p *parser) leadIn(info *lineInfo) {
	p.led = ledPlace{}
	for {
		if p.leadWhen() || p.leadPlace(info) {
			continue
		}
		switch {
		case p.wordLed(), p.narrowLed():
			p.next++
			continue
		case p.sideRemark(info):
			continue
		}
		if p.acceptEnd(p.everyRowLed(p.next)) {
			continue
		}
		if end := p.edgesKept(p.next); end != 0 && p.tokens[end].is(",", "and") {
			info.edges1 = p.edgeStitches(p.next)
			p.next = end + 1
			continue
		}
		end := p.leadWords()
		if end == 0 && p.auxiliary() {
			continue
		}
		if end == 0 {
			return
		}
		p.leadSide(p.next, end, info)
		p.leadStitches(end, info)
		p.leadCounts(end, info)
		p.leadTo(end, info)
	}
}

// wordLed reports whether a word leads in that says nothing but that more comes, "now", "next,", or a comma does.
func (p *parser) wordLed() bool {
	t := p.peek()
	return t.among("now then and also again") && !p.claimAhead() || t.is("next", "first") && p.ahead(1).is(",") ||
		t.is(",") && p.next > 0 && !p.lineStart()
}

// leadTo goes on behind words that lead in, and notes where they stand.
func (p *parser) leadTo(end int, info *lineInfo) {
	if info.ledBy.end == 0 {
		info.ledBy = p.peek().span
	}
	p.next = end
	info.ledBy = info.ledBy.to(p.last())
}

// narrowLed passes over the "narrow" of "narrow: knit 10, knit 2 together", up to its colon.
func (p *parser) narrowLed() bool { return p.ahead(1).is(":") && p.accept("narrow", "widen") }

// leadWords is the index after the next lead; 0 if there is none, or it is one that goes on with changes.
func (p *parser) leadWords() int {
	if p.changesLed() {
		return 0
	}
	return max(p.leadEnd(p.next), p.castLed(p.next), p.markersLabel(p.next), p.mindedLed(p.next), p.markersMinded(p.next))
}

// mindedLed is the index after what is minded in what follows, "Changing to a longer needle when necessary,"; 0 if that is not
// what stands at token i.
func (p *parser) mindedLed(i int) int {
	if !mindings[p.tokens[i].text] {
		return 0
	}
	end := p.besideEnd(i)
	if end == 0 || !p.tokens[end].is(",") || !p.verbAt(end+1) {
		return 0
	}
	return end + 1
}

// castLed is the index of the first cast-on of a text in the clause at token i, behind words about yarn and needles, "Take No. 14
// needles and cast on 80 stitches"; 0 if that is not what stands there.
func (p *parser) castLed(i int) int {
	if p.began || p.given || p.castAt(i) != 0 {
		return 0
	}
	for n := i; n < i+24; n++ {
		t := &p.tokens[n]
		switch {
		case n > i && p.castAt(n) != 0:
			return n
		case t.is(".") && p.tokens[max(n-1, 0)].is("no"):
		case p.breaksLead(t), t.kind == tokenStar, t.row(), t.stitches(), t.kind == tokenNumber && !p.measured(n) && !p.tokens[n-1].is(".", "no"),
			t.kind == tokenWord && (alarming(t.text) || p.alarmingStitch(n, n, true)):
			return 0
		}
	}
	return 0
}

// sideRemark passes over "(RS)" before what is worked, and notes the side.
func (p *parser) sideRemark(info *lineInfo) bool {
	end := 0
	if p.peek().is("(") && p.sideOf(p.next+1) != 0 {
		end = p.remarkEnd(p.next)
	}
	if end == 0 {
		return false
	}
	info.side = p.sideOf(p.next + 1)
	if p.tokens[end-1].is(")") && p.tokens[end].is(":") {
		end++
	}
	p.leadTo(end, info)
	return true
}

// leadStitches notes "on these 11 sts only,", "working on right front sts only," in a lead-in: the others are left out.
func (p *parser) leadStitches(end int, info *lineInfo) {
	from := p.next
	defer func() { p.next = from }()
	if numberAt, to := p.onTheseEnd(from); numberAt == 0 && to != 0 && to < end && p.tokens[to-1].is("only") {
		info.onThese = true
	}
	if p.tokens[from].among("working work continuing cont") {
		p.next++
	}
	if p.peek().is("on") && p.ahead(1).among("these those this the first last next rem remaining") && p.next < end {
		p.onTheseStitches(info)
	}
}

// leadEnd is the index after a lead-in at token i, 0 if there is none. It ends with
// its comma, or before the verb.
func (p *parser) leadEnd(i int) int {
	if !p.leadsIn(i) {
		return 0
	}
	with := p.tokens[i].among("with using on holding from by take")
	skip := false // "beg with a k row": the stitch after "with" is none that is worked here
	for n := i + 1; n < i+28; n++ {
		t := &p.tokens[n]
		switch {
		case t.is(","):
			if p.afterLeadIn(n + 1) {
				return n + 1
			}
		case p.breaksLead(t), t.among("times twice thrice until till"): // how often, or until when, is no lead-in
			return 0
		case p.groupAt(n):
			if with {
				return n
			}
			return 0
		case p.facingEnd(n) != 0:
			n = p.facingEnd(n) - 1
		case t.is("with"):
			skip = true
		case skip && p.tokens[n-1].is("with", "a", "an", "the", "from", "with rs") && !t.is("a", "an", "the"):
			skip = false
		case t.kind == tokenNewline, p.castingNamed(n):
		case p.verbOfLead(i, n, with):
			return n
		}
	}
	return 0
}

// facingEnd is the index after "right side of the work facing you" at token i; 0 if that is not what stands there.
func (p *parser) facingEnd(i int) int {
	if p.sideOf(i) == stitch.SideUnspecified {
		return 0
	}
	for i++; p.tokens[i].among("side of the work piece knitting fabric garment sock body heel flap"); i++ {
	}
	if !p.tokens[i].is("facing") {
		return 0
	}
	return i + 1 + bit(p.tokens[i+1].is("you"))
}

// afterLeadIn reports whether what stands after the comma of a lead-in, a verb or another lead-in,
// begins at token i.
func (p *parser) afterLeadIn(i int) bool {
	return p.verbAt(i) || leadIns[p.tokens[i].text] && !p.tokens[i].is("to")
}

// groupAt reports whether a star or a bracket with stitches in it stands at token i.
func (p *parser) groupAt(i int) bool {
	return p.tokens[i].kind == tokenStar || p.tokens[i].is("[", "(") && p.startsItem(i+1)
}

// verbOfLead reports whether the verb that a lead-in at token i stands before is token n: after
// "with" any, but for those that may be its noun, else only one after a row.
func (p *parser) verbOfLead(i, n int, with bool) bool {
	if !p.verbAt(n) {
		return false
	}
	if with {
		return n > i+1 || !p.tokens[n].is(worksWith...)
	}
	return p.tokens[n-1].is("row", "rnd", "row)") || p.tokens[n].is("pick") && p.tokens[i+1].is("at")
}

// castingNamed reports whether "cast on" at token n is a way of casting on, "a provisional cast on and
// waste yarn", and casts nothing on.
func (p *parser) castingNamed(n int) bool {
	return p.tokens[n].is("cast", "bind") && p.tokens[n+1].is("on", "off") && p.castAt(n) == 0 &&
		(p.tokens[n+2].kind == tokenWord || p.tokens[n+2].is(","))
}

// leadsIn reports whether a lead-in may begin with token i, and not "for so many rows".
func (p *parser) leadsIn(i int) bool {
	t := &p.tokens[i]
	return t.kind == tokenWord && leadIns[t.text] && !t.among("cont next now then and also again") &&
		(!t.is("take") || p.anyOf(i+1, i+6, "needle", "needles")) && !(t.is("for", "over") && p.nextRowsAt(i+1)) &&
		(!t.is("to") || p.tokens[i+1].is("close", "have", "finish"))
}

// nextRowsAt reports whether "the next 6 rows" stands at token i.
func (p *parser) nextRowsAt(i int) bool {
	for p.tokens[i].among("the next following foll") {
		i++
	}
	return p.rowsAfter(i)
}

// worksWith are verbs that may be nouns after "with": "with work facing".
var worksWith = []string{"knit", "work", "join", "hold", "place", "sl", "slip", "turn", "leave"}

// breaksLead reports whether a lead-in cannot go on over the token.
func (p *parser) breaksLead(t *token) bool {
	return t.kind == tokenNewline && t.number > 1 || t.kind == tokenEnd || t.is(".", ":", ";")
}

// verbAt reports whether a direction, a label or a row begins at token i.
func (p *parser) verbAt(i int) bool {
	t := &p.tokens[i]
	if t.kind == tokenStar || t.is("[") || t.is("(") && p.startsItem(i+1) {
		return true
	}
	if t.kind != tokenWord {
		return false
	}
	if end, _ := p.fabricRowsEnd(i); end != 0 {
		return true
	}
	_, _, _, counted := split(t.text)
	return directing[t.text] && !leadIns[t.text] && !t.is("end", "ending") || counted || p.startsItem(i) && !t.among("m rib inc st "+
		"lace") ||
		draft.Harmless(t.text) && !t.among("set line work note set") || t.among("three-needle 3-needle work provisionally")
}

// leadSide notes the side on which a lead-in says that the next row is.
func (p *parser) leadSide(from, to int, info *lineInfo) {
	for i := from; i < to; i++ {
		side := p.sideOf(i)
		if side == stitch.SideUnspecified {
			continue
		}
		next := i + 1
		if p.tokens[next].is("side") {
			next++
		}
		if p.tokens[next].is("row", "facing", "rnd") || p.tokens[i-1].is("(") && p.tokens[i-2].row() || p.tokens[from].is("on") {
			info.side = side
		}
	}
}

// everyRowLed is the index after "Knit every row," at token i, before a change that is made in these rows; 0 if that is
// not what stands there.
func (p *parser) everyRowLed(i int) int {
	if p.onlyRows || !p.tokens[i].among("knit purl k p work") {
		return 0
	}
	i++
	if p.tokens[i].is("every", "each", "all") && p.tokens[i+1].row() {
		i += 2
	}
	if !p.tokens[i].is(",") || !p.tokens[i+1].among("inc dec increasing decreasing increase decrease") || p.evenlyIn(i) {
		return 0
	}
	return i + 1
}

// evenlyIn reports whether the change of the sentence at token i is made once, "evenly".
func (p *parser) evenlyIn(i int) bool {
	for end := p.sentenceEnd(i); i < end; i++ {
		if p.tokens[i].is("every", "each") && p.tokens[i+1].row() {
			return false
		}
	}
	return true
}

// sidesApart passes over "working each side separately," before what is done to each of them.
func (p *parser) sidesApart(line *Line) bool {
	end := p.phraseEnd(p.next, apart)
	if end == 0 || !p.tokens[end].is(",") || p.onlyRows {
		return false
	}
	line.info.eachSide = true
	p.passedTo(line, end+1)
	return true
}

var apart = wordings("working each side separately", "work each side separately", "working on each side separately",
	"working both sides separately", "working each shoulder separately", "working each side of neck separately")
