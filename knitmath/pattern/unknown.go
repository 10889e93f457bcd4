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
var plainWords = map[string]bool{"the": true, "all": true, "in": true, "for": true, "back": true, "on": true, "at": true, "of": true,
	"a": true, "as": true, "is": true, "it": true, "an": true, "by": true, "or": true, "if": true, "be": true, "no": true, "not": true,
	"so": true, "up": true, "off": true, "out": true, "with": true, "this": true, "that": true, "your": true, "you": true, "each": true,
	"only": true, "when": true, "side": true, "into": true, "onto": true, "over": true, "down": true, "both": true, "loop": true}
