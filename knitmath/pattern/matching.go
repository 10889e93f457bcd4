package pattern

import "example.com/knitmath/knitmath/draft"

// matching asks about a direction that refers to another part of the text: "work to
// match left front, reversing shaping". What it comes to is written nowhere.
func (p *parser) matching(line *Line) bool {
	end, far := p.toBeMatched()
	hit := p.next
	for hit < far && !p.refersAt(hit) {
		if p.tokens[hit].row() && p.tokens[hit+1].kind == tokenNumber {
			return false
		}
		hit++
	}
	if hit >= far || p.another(hit, end) {
		return false
	}
	from := p.peek().span
	p.next = end
	p.ask(ReasonUnread, from.to(p.last()), "what another part of the text does is not followed here: write the rows, for this side too")
	line.info.kind, line.info.matches = lineUnread, true
	return true
}

// refersAt reports whether token i, of a direction that comes next, refers to another part:
// "reversing", "to match", "as for", "as the left", "same as".
func (p *parser) refersAt(i int) bool {
	t, then, after, verb := &p.tokens[i], &p.tokens[i+1], &p.tokens[i+2], p.peek()
	switch {
	case t.is("reversing", "reverse"):
		return !then.is("st", "stockinette", "stocking")
	case t.is("to"):
		return then.is("match", "correspond") && !p.rowsCounted(p.next, i)
	case t.is("as") && then.is("for"):
		return !after.row() && !p.rowsOfFabric(p.next, i) && verb.among("work cont complete finish shape knit make rep as")
	case t.is("as"):
		return then.is("the") && after.among("first other left right front back") && verb.is("work", "make", "knit")
	case t.is("same"):
		return then.is("as", "way") && !p.tokens[i-1].among("measures measure meas measuring the") &&
			verb.among("work complete finish shape continue cont")
	}
	return false
}

// rowsCounted reports whether "knit 30 rows" stands before token end of a clause, of which the number says what "to
// match" would.
func (p *parser) rowsCounted(i, end int) bool {
	for ; i < end-1; i++ {
		if to, _ := p.sizedEnd(i); to == end-1 && p.tokens[to].row() {
			return true
		}
	}
	return false
}

// rowsOfFabric reports whether "16 rows in ribbing" stands between two tokens: what is like another
// part is said.
func (p *parser) rowsOfFabric(i, end int) bool {
	if p.tokens[i+1].is("in") && p.fabricEnd(i+2) == end || p.tokens[i].is("rib") {
		return true // "work in rib as for back for 5 cm"
	}
	counted := false
	for ; i < end; i++ {
		to, _ := p.sizedEnd(i)
		counted = counted || to != 0 && to < end && p.tokens[to].row()
		if counted && draft.Fabric(p.tokens[i].text) {
			return true
		}
	}
	return false
}

// aheadForMatch is how far beyond the beginning of a further clause of a sentence another
// part is looked for: the first clause has looked through the whole of it.
const aheadForMatch = 40

// toBeMatched is where the sentence ends, and how far of it is to be looked through.
func (p *parser) toBeMatched() (end, far int) {
	if p.next < p.matched[0] || p.next >= p.matched[1] {
		end = p.sentenceEnd(p.next)
		p.matched = [2]int{p.next, end}
		return end, end
	}
	end = p.matched[1]
	return end, min(end, p.next+aheadForMatch)
}

// another reports whether a second piece is to be made like the first, which changes no
// count of this one.
func (p *parser) another(hit, end int) bool {
	second := false
	for i := p.next; i < hit; i++ {
		second = second || p.tokens[i].among("second other 2nd another")
	}
	for i := hit; i < end; i++ {
		if p.tokens[i].among("reversing reverse shaping shapings which") {
			return false
		}
	}
	return second && p.peek().is("make", "work", "knit")
}
