package pattern

import (
	"example.com/knitmath/knitmath/draft"
)

// alarm is the first token of a sentence of prose that might change a count, 0 if
// there is none. known says that the sentence is about yarn or needles.
func (p *parser) alarm(from, end int, known bool) int {
	calm := false
	for i := from; i < end; i++ {
		t := &p.tokens[i]
		p.looked++
		switch {
		case t.is("=") && p.began && p.countEndsAt(i):
			return i
		case t.among("gauge tension multiple mult = equals pattern chart measure measures measuring"):
			calm = true
		case t.kind == tokenStar:
			return i
		case t.kind == tokenNumber:
			if !calm && p.countsHere(from, i, end) {
				return i
			}
		case t.kind != tokenWord:
		case alarming(t.text), p.misspelt(i), i == from && t.among("foll following alt alternate every next"):
			return max(i, 1)
		case p.alarmingStitch(i, from, known):
			return i
		}
	}
	return 0
}

// countsHere reports whether the number at token i is of stitches or rows, or ends a sentence that speaks of how many there are,
// and is no row's, "round 8".
func (p *parser) countsHere(from, i, end int) bool {
	to, _ := p.sizedEnd(i)
	return to != 0 && (p.tokens[to].stitches() || p.tokens[to].row() || p.ofPart(to) != 0 ||
		to == end && p.began && !p.anyOf(max(from, i-3), i, "round", "rounds", "row", "rows") &&
			p.anyOf(from, i, "count", "total", "number", "sts", "stitches"))
}

// countEndsAt reports whether "= 276 stitches" at token i ends its sentence.
func (p *parser) countEndsAt(i int) bool {
	to, _ := p.sizedEnd(i + 1)
	return to != 0 && p.tokens[to].stitches() && p.endsAt(to+1)
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
	case i == from, p.tokens[i-1].among(", ; then and : - time"):
		return !known && (t.among("knit purl k p work") || m.ask != "")
	}
	return false
}
