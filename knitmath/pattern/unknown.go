package pattern

import (
	"strings"
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// abbreviated reports whether a word that is not known looks like an abbreviation, which
// can be declared: it is short, has a digit, no vowel, or two capitals. Any other is a
// word of a language, and who wrote it has to say it in other words.
func (p *parser) abbreviated(t *token) bool {
	written := p.found.source[t.start:t.end]
	capitals, letters := 0, 0
	for _, c := range written {
		switch {
		case unicode.IsDigit(c):
			return true
		case unicode.IsUpper(c):
			capitals++
		}
		letters++
	}
	if plainWords[t.text] {
		return false
	}
	// A word in a line of capitals has none of its own.
	if capitals > 1 && capitals <= 4 || letters <= 4 {
		return true
	}
	return !strings.ContainsAny(t.text, "aeiouy")
}

// askProse asks about a sentence from token i to the next, in which the word bad may change a count.
func (p *parser) askProse(i, bad int) {
	if to := p.strangeLead(i, bad); to != 0 {
		p.ask(ReasonUnread, p.tokens[i].to(p.tokens[to-1].span), "not understood")
		return
	}
	p.ask(ReasonUnread, p.tokens[max(bad, i)].to(p.last()), "what is to be done here? it may change the count, and cannot be read")
}

// strangeLead is the index after a word that nobody knows before what is worked, "rwo 1 (rs): k20"; 0
// if what is worked does not follow it at once.
func (p *parser) strangeLead(i, worked int) int {
	t := &p.tokens[i]
	if t.kind != tokenWord || worked <= i || !p.startsItem(worked) || draft.Harmless(t.text) {
		return 0
	}
	to := i + 1
	if p.tokens[to].kind == tokenNumber {
		to++
	}
	end := to
	if p.tokens[end].is("(") && p.tokens[end+2].is(")") {
		end += 3
	}
	if p.tokens[end].is(":", ".", "-") {
		end++
	}
	if end != worked {
		return 0
	}
	return to
}

// plainWords are short words of the language that nobody abbreviates to.
var plainWords = wordSet(`the all in for back on at of a as is it an by or if be no not so up off out with this that your you each only when
	side into onto over down both loop from held even then than them they same next last left rest part more once here
	turn edge body neck toe leg heel hem cuff foot hand palm yarn knot knit purl work row rows one two four five six
	nine ten end ends and are was were has have had do does make made take keep hold pass lift slip draw cut any few
	most much many some such also just like now how too very we our us its his her he she who what done must may can
	will now new old use used long wide wool size tip top half skip join sew seam trim lap pin lay fold pull push give
	gap stop mark less well till upon but out away`)
