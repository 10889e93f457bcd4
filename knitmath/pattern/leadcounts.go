package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/draft"
)

// leadCounts asks about a lead-in up to a token in which something may change the count, "With 5 sts cast on at each side, knit 10
// rows": it is passed over. What is told of before, "After all decreases are complete,", changes nothing now, unless it says how many.
func (p *parser) leadCounts(end int, info *lineInfo) {
	first := p.peek()
	if p.trying || p.onlyRows || info.only != nil || p.tokens[end].is("until", "till") {
		return
	}
	if p.countInLead(end) {
		return
	}
	if first.is("if") || p.strangeTime(end) {
		p.ask(ReasonUnread, first.to(p.tokens[end-1].span), "not understood: when is that?")
		return
	}
	if numbered, changes := p.changedInLead(end); changes && (numbered || !first.is(timeLeads...)) {
		p.ask(ReasonUnread, first.to(p.tokens[end-1].span), "does this change the count? say it in a row of its own")
	}
}

// timeLeads begin lead-ins that tell when.
var timeLeads = []string{"after", "when", "once"}

// changedInLead reports whether a lead-in up to a token says a number, and whether it speaks of a change of the count. How stitches are
// cast on or bound off, "Using a provisional cast-on, CO 40 sts", is none.
func (p *parser) changedInLead(end int) (numbered, changes bool) {
	before, from := p.peek().is(timeLeads...), p.next
	casts := p.castAt(end) != 0 || p.tokens[end].among("bo bind cast join")
	for i := from + 1; i < end; i++ {
		t := &p.tokens[i]
		p.looked++
		if _, spelt := t.written(); spelt || t.kind == tokenNumber {
			numbered = true
			continue
		}
		manner := t.is("together") && !before || t.is("cast-on", "bind-off", "cast-off") && (casts || !before && !numbered)
		changes = changes || t.kind == tokenWord && !manner && (!casts && alarming(t.text) || p.countsInLead(i, from))
	}
	return numbered, changes
}

// countsInLead reports whether the word at token i of a lead-in from another on speaks of stitches that come or go.
func (p *parser) countsInLead(i, from int) bool {
	return p.tokens[i].is("tog", "picking", "bound") || p.tokens[i].is("held") && p.tokens[i+1].stitches() || p.alarmingStitch(i, from, true)
}

// strangeTime reports whether a lead-in up to a token says when with words none of which is known, "After flurble,".
func (p *parser) strangeTime(end int) bool {
	if !p.peek().is(timeLeads...) {
		return false
	}
	words := 0
	for i := p.next + 1; i < end; i++ {
		switch t := &p.tokens[i]; {
		case t.among(", a an the this that"):
		case t.kind != tokenWord || p.ofTheLanguage(t) || tellingWords[t.text] || leadIns[t.text] || alarming(t.text),
			draft.Harmless(strings.TrimSuffix(t.text, "ing")), directing[strings.TrimSuffix(t.text, "ing")]:
			return false
		default:
			words++
		}
	}
	return words > 0
}

// countInLead compares "Once you have 44 sts," with the stitches that are there, and reports whether a lead-in up to a token is that.
func (p *parser) countInLead(end int) bool {
	save := p.next
	defer func() { p.next = save }()
	if !p.accept("when", "once") || !p.acceptAny(haveNow) {
		return false
	}
	from, n := p.peek().span, p.number()
	if n == nil || !p.peek().stitches() {
		return false
	}
	for p.next++; p.next < end && p.peek().among("rem remain remaining left on the needle needles your ,"); p.next++ {
	}
	if p.next < end {
		return false
	}
	line := Line{ClaimedStitches: without(n)}
	line.info.kind, line.info.claimAt = linePassed, from.to(p.last())
	p.finish(&line, from)
	return true
}

var haveNow = wordings("there are", "you have", "you have reached", "there are only", "you are left with")
