package pattern

import (
	"slices"
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
	case t.is("(") && p.repsRemark(*steps):
		return asideRead
	case t.is("(", "[") && p.remarkEnd(p.next) != 0:
		p.next = p.remarkEnd(p.next)
		return asideRead
	case t.kind != tokenWord:
		return asideNone
	case p.methodLead(), p.startTold(), p.onTheseOnly(*steps):
		return asideRead
	case p.workedAgain(*steps):
		return asideRead
	case p.colourEnd(p.next) != 0:
		p.next = p.colourEnd(p.next)
		return asideRead
	case p.own[t.text].name != "", p.phraseHere(p.next) && !t.is("sl", "slip", "place"):
		return asideNone
	case t.is("work") && p.workOnly():
		p.next++
		return asideRead
	case castsOnLast(*steps) && p.acceptAny(atRowEnd):
		return asideRead
	}
	if kind := p.otherForm(*steps, inner); kind != asideNone {
		return kind
	}
	kind := p.alternately(steps)
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

// repsRemark passes over "(5 reps of 9 sts)" after as many stitches: how they lie in a repeat.
func (p *parser) repsRemark(steps []Step) bool {
	times, each := p.ahead(1), p.ahead(4)
	n := len(steps)
	if n == 0 || times.kind != tokenNumber || !p.ahead(2).is("reps", "repeats", "rep", "repeat") || !p.ahead(3).is("of") ||
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
	if t.is("last") && p.ahead(1).is("m", "marker") && p.ahead(2).is("is", "marks", "for", "=") { // "last marker is BOR"
		for !p.endsAt(p.next) && !p.peek().is(",", ";", "(") {
			p.next++
		}
		p.passed(t.span.to(p.last()))
		return asideRead
	}
	if t.is("keeping", "with", "maintaining", "having", "working", "knitting") {
		if end := p.edgesKept(p.next); end != 0 {
			p.next = end
			p.passed(t.span.to(p.last()))
			return asideRead
		}
	}
	if t.is("place", "put", "leave", "slip", "sl", "transfer") {
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
		"joining", "remove", "slide", "pull", "turning", "omitting", "note", "hold":
		return p.yarnAside(len(*steps) == 0 && inner == "")
	case "rep", "repeat":
		return asideNone
	}
	if atTop && p.rowsOrShaping() {
		return asideEnds
	}
	return asideNone
}

// workOnly reports whether "work" only leads in the stitches after it: "work k2, p2 to end".
func (p *parser) workOnly() bool {
	t := p.ahead(1)
	_, _, _, counted := split(t.text)
	switch {
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
	case t.is("k", "p", "knit", "purl", "work", "rib"):
		return (p.rowsAfter(p.next+1) || p.ahead(1).is("even", "straight")) && p.directionAhead()
	case t.is("bo", "bind", "cast", "co", "sl", "slip", "inc", "dec", "pm", "turn", "place"):
		return false
	case t.is("cont", "continue", "proceed", "divide", "distribute"):
		return p.directionAhead()
	}
	return false
}

// heldInRow reads "place next 20 sts on holder" within a row, and "leaving rem 38 sts on
// a holder" after its turn.
func (p *parser) heldInRow(steps *[]Step) asideKind {
	from := p.peek().span
	save, found := p.next, p.found.mark()
	var line Line
	first := p.peek().text
	if !p.holding(&line) || line.info.kind != lineHold {
		p.next = save
		p.found.rewind(found)
		if first == "place" || first == "slip" || first == "sl" {
			return asideNone
		}
		if first == "leaving" || first == "placing" || first == "leave" || first == "put" || first == "slipping" {
			return p.unworkedAside(steps, from)
		}
		return asideNone
	}
	if n := len(*steps); first == "leaving" && line.info.whole == wholeRest && n > 0 && !(*steps)[n-1].stretch() &&
		!(*steps)[n-1].Operation.EndsRow() && !p.onlyRows {
		*steps = append(*steps, Step{Operation: stitch.Turn, Times: one, at: from}) // it is turned before them
	}
	if n := len(*steps); n > 0 && (*steps)[n-1].Operation.EndsRow() {
		p.rest = unworkedRest{held: true, count: line.info.counts}
		return asideRead
	}
	s := Step{Name: "hold", takes: 1, Times: line.info.counts, at: from.to(p.last())}
	switch {
	case line.info.worked && len(*steps) > 0 && !(line.info.whole == wholeThese && leaveJust(*steps, s.Times)):
		if !p.heldBack(&s, *steps) {
			return asideFault
		}
	case line.info.counts == nil:
		s.RemainingStitches = toEnd
	}
	*steps = append(*steps, s)
	return asideRead
}

// leaveJust reports whether steps stop before so many stitches: "to last 4 sts, place these 4
// sts on a safety pin" is about those that have not been worked.
func leaveJust(steps []Step, n []int) bool {
	last := steps[len(steps)-1].RemainingStitches
	return n != nil && last != nil && slices.Equal(tidy(slices.Clone(last)), tidy(slices.Clone(n)))
}

// unworkedAside passes over "leaving rem 38 sts unworked".
func (p *parser) unworkedAside(steps *[]Step, from span) asideKind {
	p.next++
	n, all, _, ok := p.someStitches()
	if ok && p.accept("unworked", "unknit") {
		k := len(*steps)
		switch {
		case k > 0 && (*steps)[k-1].Operation.EndsRow():
			return asideRead
		case k > 0 && n != nil && !(*steps)[k-1].stretch() && !p.onlyRows: // it is turned before them
			*steps = append(*steps, Step{Operation: stitch.Turn, Times: one, at: from})
			p.rest = unworkedRest{held: true, count: n}
			if p.accept("for") {
				p.accept("the")
				p.accept("instep", "heel", "front", "back", "thumb")
			}
			return asideRead
		}
	}
	if k := len(*steps); ok && k > 0 && (*steps)[k-1].Operation.EndsRow() && (n != nil || all) && !p.peek().is("on", "onto", "for") {
		return asideRead // they stay where they are
	}
	p.ask(ReasonUnread, from.to(p.last()), "what happens to these stitches?")
	return asideFault
}

// yarnAside passes over what is done with yarn and needles among stitches, up to a comma
// or to the next stitch.
func (p *parser) yarnAside(first bool) asideKind {
	from := p.peek().span
	verb := p.peek()
	if verb.is("join") && first {
		return asideNone
	}
	if verb.is("remove") && p.markerNext() {
		return asideNone
	}
	if verb.is("hold") && !p.ahead(1).is("yarn") {
		return asideNone
	}
	p.next++
	for n := 0; n < 14; n++ {
		t := p.peek()
		switch {
		case p.endsAt(p.next) || t.is(",", ";", ")", "]") || t.kind == tokenStar || t.kind == tokenMark && p.claimAhead():
			p.passed(from.to(p.last()))
			return asideRead
		case t.is("and", "then") && (p.startsItem(p.next+1) || p.directionAt(p.next+1)):
			p.passed(from.to(p.last()))
			return asideRead
		case t.kind == tokenWord && (alarming(t.text) || p.alarmingStitch(p.next, p.next, true)), t.kind == tokenNumber && !p.measured(p.next) &&
			!p.ordinalYarn():
			p.ask(ReasonUnread, from.to(t.span), "not understood here, and it may change the count")
			return asideFault
		}
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "not understood here, and it may change the count")
	return asideFault
}

// ordinalYarn reports whether "2nd ball" comes next.
func (p *parser) ordinalYarn() bool {
	return p.ordinalEnd(p.next) != 0 || p.tokens[p.next-1].is("ball", "needle", "needles", "size", "us")
}

// markerNext reports whether a marker is to be removed.
func (p *parser) markerNext() bool {
	for n := 1; n < 4; n++ {
		if p.ahead(n).is("m", "marker", "markers") {
			return true
		}
	}
	return false
}

// colourEnd is the index after a colour that stitches are worked in, at token i: "MC",
// "with A", "in CC", "using B"; 0 if there is none.
func (p *parser) colourEnd(i int) int {
	with := p.tokens[i].is("with", "in", "using", "w")
	if with {
		i++
		if p.tokens[i].is("yarn", "color", "colour", "col", "shade") {
			i++
		}
	}
	t := &p.tokens[i]
	switch {
	case t.is("mc", "cc", "cc1", "cc2", "c1", "c2", "c3", "mc,"):
	case t.is("a") && p.found.source[t.start] == 'a' && p.tokens[i+1].kind == tokenWord: // "with a border"
		return 0
	case t.is("a", "b", "c", "d", "e", "f") && !p.tokens[i+1].is("st", "stitch", "k", "total"):
	case with && t.kind == tokenWord && colours[t.text]:
	case t.kind == tokenWord && colours[t.text] && !p.notation(t.text):
	default:
		return 0
	}
	if !with {
		if _, mine := p.own[t.text]; mine {
			return 0
		}
	}
	return i + 1
}

// colours are yarn colours as patterns name them.
var colours = map[string]bool{"red": true, "blue": true, "green": true, "white": true, "black": true, "grey": true, "gray": true,
	"yellow": true, "natural": true, "cream": true, "brown": true, "pink": true, "purple": true, "orange": true, "navy": true, "main": true,
	"contrast": true, "light": true, "dark": true}

// continues reports whether a row goes on over a line break without a comma: what
// stands before the break cannot end a row, or the next line begins in small letters
// after a line as long as those that are set.
func (p *parser) continues() bool {
	brk := p.next - 1
	if p.tokens[brk].number > 1 || brk == 0 {
		return false
	}
	before, next := &p.tokens[brk-1], p.peek()
	if before.is("to", "last", "from", "rep", "the", "next", "in", "until", "and", "then", "of", "first", "all", "k", "p", "sl", "with",
		"before",
		"after", "on", "at", "more", "over", "-") && !before.is("k", "p") || next.is("times", "sts", "st", "more", "end", "last", "rep", "from",
		"twice", "of", "to") {
		return true
	}
	if before.is(".", ";", ":", ")") || before.column < wrappedAt || next.kind == tokenEnd {
		return false
	}
	c := rune(p.found.source[next.start])
	return p.inRow && (unicode.IsLower(c) || c == '[' || c == '(' || c == '*') && (p.startsItem(p.next) || draft.Manner(next.text) ||
		next.kind == tokenStar)
}

// wrappedAt is the column from which a line is taken to be broken by its setting.
const wrappedAt = 45
