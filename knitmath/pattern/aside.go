package pattern

import (
	"strings"
	"unicode"

	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// asideKind is what stands among the steps of a row and is none.
type asideKind uint8

const (
	asideNone  asideKind = iota
	asideRead            // it has been read, or changes nothing
	asideEnds            // the row ends before it: a direction
	asideFault           // it cannot be read, which has been said
)

// aside reads what stands among the steps of a row and is no stitch: a remark, a
// colour, stitches that are put on a holder, yarn that is joined.
func (p *parser) aside(steps *[]Step, inner string) asideKind {
	t := p.peek()
	switch {
	case p.boundIncluded(*steps), p.wrapsClosed(*steps), p.placedAfter(steps):
		return asideRead
	case t.is("(", "[", "-"):
		return p.asideInBrackets(*steps)
	case t.kind != tokenWord:
		return asideNone
	case inner == "" && len(*steps) > 0 && p.heldToldNext():
		return asideEnds
	case p.methodLead(), p.startTold(), p.onTheseOnly(*steps), p.workedAgain(*steps), p.inColour():
		return asideRead
	case p.own[t.text].name != "", p.phraseHere(p.next) && !t.is("sl", "slip", "place"):
		return asideNone
	case p.toldAside(*steps):
		return asideRead
	}
	if kind := p.otherForm(*steps, inner); kind != asideNone {
		return kind
	}
	kind := p.ofStepsBefore(steps)
	if kind == asideNone {
		kind = p.meanwhile(steps, inner)
	}
	if kind == asideNone {
		kind = p.beside()
	}
	if kind == asideNone {
		kind = p.asideByVerb(steps, inner)
	}
	return kind
}

// asideInBrackets passes over a remark in brackets.
func (p *parser) asideInBrackets(steps []Step) asideKind {
	if p.peek().is("(") && p.holesInRow() {
		return asideRead
	}
	if p.peek().is("(") && p.repsRemark(steps) || p.acceptEnd(p.remarkEnd(p.next)) {
		if p.inside == 0 && p.sentenceIn(p.next) && p.startsLine() {
			return asideEnds
		}
		return asideRead
	}
	return asideNone
}

// toldAside passes over words that only tell of the stitches: "do not turn", the "work" of "work
// k2, p2 to end", "at end of row" after stitches that are cast on.
func (p *parser) toldAside(steps []Step) bool {
	if p.peek().is("do") && p.acceptAny(heldTail) || p.acceptAny(inTheirPlace) {
		return true
	}
	if p.peek().is("work") && p.workOnly() {
		p.next++
		p.accept("a", "an")
		return true
	}
	return castsOnLast(steps) && p.acceptAny(atRowEnd) || p.acceptEnd(p.withNeedle(p.next)) || p.acceptEnd(p.gapClosed(p.next))
}

// inTheirPlace leads in what is worked instead of stitches that were put aside.
var inTheirPlace = wordings("in place of these sts", "in place of these", "in place of them", "in place of those on holder",
	"in their place")

// repsRemark passes over "(5 reps of 9 sts)" after as many stitches: how they lie in a repeat.
func (p *parser) repsRemark(steps []Step) bool {
	times, each := p.ahead(1), p.ahead(4)
	n := len(steps)
	if n == 0 || times.kind != tokenNumber || !p.ahead(2).among("reps repeats rep repeat") || !p.ahead(3).is("of") ||
		each.kind != tokenNumber || !p.ahead(5).stitches() || !p.ahead(6).is(")") ||
		!single(steps[n-1].Times, int(times.number)*int(each.number)) {
		return false
	}
	from := p.peek().span
	p.next += 7
	p.passed(from.to(p.last()))
	return true
}

// castsOnLast reports whether stitches were cast on just before.
func castsOnLast(steps []Step) bool {
	n := len(steps)
	return n > 0 && steps[n-1].Operation == stitch.CastOn
}

// beside reads what is told of a marker, of edges that are kept, of stitches for a cable.
func (p *parser) beside() asideKind {
	t := p.peek()
	if t.is("last") && p.ahead(1).is("m", "marker") && p.ahead(2).among("is marks for =") { // "last marker is BOR"
		for !p.endsAt(p.next) && !p.peek().is(",", ";", "(") {
			p.next++
		}
		p.passed(t.span.to(p.last()))
		return asideRead
	}
	if t.among("keeping with maintaining having working knitting") {
		if end := p.edgesKept(p.next); end != 0 {
			p.next = end
			p.passed(t.span.to(p.last()))
			return asideRead
		}
	}
	if t.among("place put leave slip sl transfer") {
		return p.toCable()
	}
	return asideNone
}

// asideByVerb reads an aside that is known by its first word.
func (p *parser) asideByVerb(steps *[]Step, inner string) asideKind {
	atTop := len(*steps) > 0 && inner == ""
	p.fastens = p.fastens || atTop && p.peek().is("fasten")
	switch p.peek().text {
	case "place", "put", "leave", "leaving", "placing", "transfer", "slip", "sl", "slipping", "put,", "return":
		return p.heldInRow(steps)
	case "join", "rejoin", "attach", "drop", "change", "break", "cut", "do", "carry", "fasten", "using", "working", "keeping", "twist",
		"joining", "remove", "removing", "slide", "pull", "turning", "omitting", "note", "hold":
		return p.yarnAside(len(*steps) == 0 && inner == "")
	case "rep", "repeat":
		return asideNone
	}
	switch {
	case atTop && p.rowsOrShaping():
		return asideEnds
	case atTop && tending[p.peek().text]:
		return p.yarnAside(false)
	case len(*steps) > 0 && p.toldBeside():
		return asideRead
	}
	return asideNone
}

// workOnly reports whether "work" only leads in the stitches after it: "work k2, p2 to end".
func (p *parser) workOnly() bool {
	t := p.ahead(1)
	_, _, _, counted := split(t.text)
	switch {
	case t.is("a", "an"):
		return p.phraseHere(p.next+2) || p.notation(p.ahead(2).text) && p.ahead(2).kind == tokenWord
	case t.kind == tokenStar, t.is("alt", "alternately") && p.startsItem(p.next+2), counted && t.kind == tokenWord:
		return p.ribEnd(p.next+1) == 0
	case t.is("[", "("):
		end, _ := p.listEnd(p.next + 1)
		return end == 0 && p.remarkEnd(p.next+1) == 0
	}
	return false
}

// atRowEnd says where stitches are cast on in a row: at its end.
var atRowEnd = wordings("at end of this row", "at end of row", "at end of rnd", "at the end of the row", "at the end of this row",
	"at the end of row", "at end")

// rowsOrShaping reports whether a direction begins here that can be no stitch.
func (p *parser) rowsOrShaping() bool {
	switch t := p.peek(); {
	case t.among("k p knit purl work rib"):
		return (p.rowsAfter(p.next+1) || p.ahead(1).is("even", "straight")) && p.directionAhead()
	case t.among("bo bind cast co sl slip inc dec pm turn place"):
		return false
	case t.among("cont continue proceed divide distribute"):
		return p.directionAhead()
	}
	return false
}

// continues reports whether a row goes on over a line break without a comma: what
// stands before the break cannot end a row, or the next line begins in small letters
// after a line as long as those that are set.
func (p *parser) continues() bool {
	brk := p.next - 1
	if p.tokens[brk].number > 1 || brk == 0 {
		return false
	}
	before, next := &p.tokens[brk-1], p.peek()
	if before.among("to last from rep the next in until and then of first all sl with before "+
		"after on at more over -") || next.among("times sts st more end last rep from twice of to") {
		return true
	}
	if !p.inRow || before.among(". ; : )") || before.column < wrappedAt || next.kind == tokenEnd {
		return false
	}
	c := rune(p.found.source[next.start])
	return (unicode.IsLower(c) || strings.ContainsRune("[(*", c)) &&
		(p.startsItem(p.next) || draft.Manner(next.text) || next.kind == tokenStar)
}

// wrappedAt is the column from which a line is taken to be broken by its setting.
const wrappedAt = 45
