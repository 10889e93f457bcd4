package pattern

import "example.com/knitmath/knitmath/stitch"

// castAt is the index of the number of "CO 96 sts" at token i; 0 if there is none.
func (p *parser) castAt(i int) int {
	for p.tokens[i].is("provisionally", "loosely") {
		i++
	}
	words := p.castWords(i)
	if words == 0 {
		return 0
	}
	if i += words; !p.began && p.tokens[i].is(":") {
		i++
	}
	for p.tokens[i].among("loosely provisionally a total of another additional an on and knit") {
		i++
	}
	if end, _ := p.sizedEnd(i); end == 0 {
		return 0
	}
	return i
}

// castWords is how many words "cast on" at token i is; 0 if it does not stand there.
func (p *parser) castWords(i int) int {
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch {
	case t.is("co"):
		return 1
	case t.is("cast", "cable-cast", "loop-cast") && then.is("on"):
		return 2
	case p.began:
		return 0
	case t.is("set") && then.is("up", "on"): // of old booklets
		return 2
	case t.is("cast-on") && (then.is(":") || then.kind == tokenNumber): // "Cast-on: 9 stitches"
		return 1
	case t.is("cast") && then.kind == tokenNumber && p.tokens[i+2].stitches() && p.tokens[i+3].is("on"):
		return 1 // "cast 120 stitches on four needles"
	}
	return 0
}

// castingOn reads "CO 96 (104, 112) sts", and "CO 4 sts at beg of next 2 rows". A
// number of stitches with more of a row after it is a row.
func (p *parser) castingOn(line *Line) bool {
	info := &line.info
	number := p.castAt(p.next)
	if number == 0 {
		return false
	}
	info.adds = p.turnedBefore(p.next) || p.anyOf(p.next, number, "another", "additional")
	end, _ := p.sizedEnd(number)
	if p.tokens[end].is("more", "additional", "further") {
		info.adds = true
		end++
	}
	named := p.tokens[end].stitches()
	if named {
		end++
	}
	info.op = stitch.CastOn
	if p.edgeRowsAt(p.namedEdge(end)) {
		p.next = number
		info.kind = lineBeginning
		return p.edges(line)
	}
	if !named && !p.castOnUnnamed(end) || p.rowGoesOn(end) || p.began && p.rowGoesOn(p.whereCastOn(end)) {
		return false
	}
	from := p.peek().span
	p.next = number
	if p.led.factor == 1 && p.ledEdges(line) {
		return true
	}
	p.castOnCount(info, from)
	return true
}

// castOnUnnamed reports whether a number without "sts", which ends at a token, is that of the
// cast-on with which a piece begins: "CO 96 and join".
func (p *parser) castOnUnnamed(end int) bool {
	return !p.began && !p.onlyRows && (p.endsAt(end) || p.tokens[end].among("and , loosely using with for"))
}

// castOnCount reads how many stitches are cast on, and where.
func (p *parser) castOnCount(info *lineInfo, from span) {
	n := p.number()
	if n == nil {
		info.kind = lineUnread
		return
	}
	p.accept("more", "additional", "further")
	p.acceptAmong("st sts stitch stitches")
	p.accept("provisionally")
	info.kind, info.counts = lineCastOn, without(n)
	if p.led.factor == 2 && p.ledShaped(info, from, info.counts, 1) {
		return
	}
	p.castAtEnds(info, from)
	if info.kind != lineCastOn {
		return
	}
	if needles := p.onEachOf(); needles > 0 {
		p.laysEach(info.counts, needles)
		info.counts = p.timesEach(info.counts, needles)
	} else {
		p.eachNeedle(info.counts)
	}
	if !p.castBetweenMarkers(info) {
		p.castForMore(info)
	}
	p.multipleOf(info)
	info.adds = info.adds || p.addsAfter()
	if p.peek().is("at", "onto", "on") {
		p.acceptEnd(p.needlePlace(p.next))
	}
}

// castBetweenMarkers reads "for front, pm, 10 sts for sleeve, pm, 30 sts for back" after the first
// number of stitches: all of them are cast on, with markers between them.
func (p *parser) castBetweenMarkers(info *lineInfo) bool {
	save, found := p.next, p.found.mark()
	sum, marked := info.counts, [][]int(nil)
	for p.forWhich(); p.markerBetween(); p.forWhich() {
		before := sum
		p.accept("cast", "co")
		p.accept("on")
		end, _ := p.sizedEnd(p.next)
		if end == 0 || !p.tokens[end].stitches() {
			break
		}
		n := p.number()
		if n == nil {
			break
		}
		p.acceptAmong("st sts stitch stitches")
		sum, marked = added(sum, without(n), p.sizes), append(marked, before)
		save, found = p.next, p.found.mark()
	}
	p.next = save
	p.found.rewind(found)
	if marked == nil || len(marked) > maxMarks {
		return false
	}
	info.counts, info.marked = sum, marked
	p.forWhich()
	return true
}

// markerBetween passes over ", pm," or ", place marker and".
func (p *parser) markerBetween() bool {
	p.accept(",", ";")
	if !p.accept("pm") {
		if !p.accept("place") || !p.marker() {
			return false
		}
	}
	return p.accept(",", ";", "and")
}

// multipleOf reads "(multiple of 6 sts plus 2)" after a number of stitches.
func (p *parser) multipleOf(info *lineInfo) {
	save := p.next
	if !p.accept("(") || !p.accept("a", "multiple", "mult") {
		p.next = save
		return
	}
	p.accept("multiple", "mult")
	p.accept("of")
	t := p.peek()
	if t.kind != tokenNumber || t.number < 1 || t.number > MaxNumber {
		p.next = save
		return
	}
	info.multiple = int(t.number)
	p.next++
	p.accept("st", "sts", "stitches")
	if p.accept("+", "plus") && p.peek().kind == tokenNumber {
		info.plus = int(min(p.peek().number, MaxNumber))
		p.next++
	}
	p.acceptAmong("st sts stitches more")
	if !p.accept(")") {
		info.multiple, p.next = 0, save
	}
}

// rowGoesOn reports whether stitches follow a comma at token i, so that what comes
// before it is the beginning of a row.
func (p *parser) rowGoesOn(i int) bool {
	if !p.tokens[i].is(",", "then", "and") {
		return false
	}
	for p.tokens[i].is(",", "then", "and") {
		i++
	}
	t := &p.tokens[i]
	_, _, _, counted := split(t.text)
	if t.among("k knit p purl work patt") && p.rowsAfter(i+1) {
		return false
	}
	m, known := lookUp(t.text, p.own)
	stitch := counted || known && m.takes > 0 || t.is("[", "(", "{") && p.remarkEnd(i) == 0 || t.kind == tokenStar
	return stitch && (p.began || p.inRow || !p.tokens[i-2].stitches()) || p.inRow && p.startsItem(i)
}

// whereCastOn is the token after "for underarm", "at the underarm", "over the gap" and the like
// at token i, which say where in a row stitches are cast on; i itself where there is nothing
// of the kind.
func (p *parser) whereCastOn(i int) int {
	if end := p.methodEnd(i); end != 0 {
		i = end
	}
	if !p.tokens[i].among("for at over in") {
		return i
	}
	save := p.next
	defer func() { p.next = save }()
	p.next = i
	if !p.acceptAny(castOnManner) {
		p.forPart()
	}
	return p.next
}

// rowsAfter reports whether a number of rows stands at token i.
func (p *parser) rowsAfter(i int) bool {
	end, _ := p.sizedEnd(i)
	return end != 0 && (p.tokens[end].row() || p.tokens[end+1].row())
}

// addsAfter reports whether the rest of the sentence says that stitches are cast on
// beside those that are there.
func (p *parser) addsAfter() bool {
	for i := p.next; !p.endsAt(i) && i < p.next+16; i++ {
		if p.tokens[i].among("underarm gap underarms bound-off between") ||
			p.given && p.tokens[i].is("needle") && p.tokens[i-1].among("left lh left-hand right working") ||
			p.given && p.tokens[i].is("needle") && p.anyOf(p.next, i, "beg", "beginning", "start", "end") ||
			p.tokens[i].among("end beg beginning side") && (p.tokens[i-1].is("at", "the", "each") || p.tokens[i-1].is("this", "same")) {
			return true
		}
	}
	return false
}

// beginningAt reports whether "at beg of" stands at token i.
func (p *parser) beginningAt(i int) bool {
	if p.tokens[i].among("in loosely knitwise purlwise") {
		for n := 0; n < 3 && !p.tokens[i].is("at"); n++ {
			i++
		}
	}
	if p.tokens[i].is("beg", "beginning") && p.tokens[i-1].stitches() {
		return p.tokens[i+1].among("of next foll following every") // "BO 4 sts beg next 2 rows"
	}
	if !p.tokens[i].is("at", "on") {
		return false
	}
	i++
	if p.tokens[i].is("the", "each") {
		i++
	}
	return p.tokens[i].among("beg beginning start armhole neck") && (!p.tokens[i].is("armhole", "neck") || p.tokens[i+1].is("edge") &&
		p.tokens[i+2].is("of", "on"))
}

// edgeRowsAt reports whether "at beg of", "at the end of next" stands at token i.
func (p *parser) edgeRowsAt(i int) bool {
	return p.beginningAt(i) && p.needlePlace(i) == 0 || p.tokens[i].is("at") && p.phraseEnd(i, endsOfNext) != 0
}

// needlePlace is the index after "at the beginning of the left needle" at token i; 0 if that is not what stands there.
func (p *parser) needlePlace(i int) int {
	for i++; p.tokens[i].among("the beg beginning start end of left lh left-hand same working"); i++ {
	}
	if !p.tokens[i].is("needle") {
		return 0
	}
	return i + 1
}

// namedEdge is the index after "at the neck edge", "for left sleeve" at token i, before it is said of which rows the
// beginning or the end is meant; i if that is not what stands there.
func (p *parser) namedEdge(i int) int {
	if !p.tokens[i].is("at", "for", "on") {
		return i
	}
	end := i + 1
	for p.tokens[end].among("the each left right first second front back neck neckline armhole side shoulder " +
		"sleeve underarm cap band hood edge of") {
		end++
	}
	if !p.edgeRowsAt(end) {
		return i
	}
	return end
}

// endsOfNext are where stitches are cast on in several rows: after each of them, and not before.
var endsOfNext = wordings("at end of next", "at the end of next", "at the end of the next", "at end of the next", "at end of each of next",
	"at end of each of the next", "at the end of each of the next")

// castForMore reads "for the left sole and 30 sts for the right sole" after a number of stitches that
// are cast on: all of them together.
func (p *parser) castForMore(info *lineInfo) {
	save, found := p.next, p.found.mark()
	for p.forWhich() && p.accept(",", "and") {
		p.accept("and")
		end, _ := p.sizedEnd(p.next)
		if end == 0 || !p.tokens[end].stitches() || !p.tokens[end+1].is("for") {
			break
		}
		more := p.number()
		if more == nil {
			break
		}
		p.acceptAmong("st sts stitch stitches")
		info.counts = added(info.counts, without(more), p.sizes)
		save, found = p.next, p.found.mark()
	}
	p.next = save
	p.found.rewind(found)
	p.forWhich()
}

// forWhich passes over "for the left sole", up to an "and" or what ends the clause.
func (p *parser) forWhich() bool {
	if !p.peek().is("for") {
		return false
	}
	i := p.next + 1
	for n := 0; n < 5 && p.tokens[i].kind == tokenWord && !p.tokens[i].is("and") && !p.endsAt(i); n++ {
		if t := &p.tokens[i]; alarming(t.text) || t.stitches() || t.row() {
			return false
		}
		i++
	}
	if i == p.next+1 || !p.clauseStopsAt(i) {
		return false
	}
	p.next = i
	return true
}
