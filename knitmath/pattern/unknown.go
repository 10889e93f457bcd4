package pattern

import (
	"strings"
	"unicode"
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

// plainWords are short words of the language that nobody abbreviates to.
var plainWords = map[string]bool{"the": true, "all": true, "in": true, "for": true, "back": true, "on": true, "at": true, "of": true,
	"a": true, "as": true, "is": true, "it": true, "an": true, "by": true, "or": true, "if": true, "be": true, "no": true, "not": true,
	"so": true, "up": true, "off": true, "out": true, "with": true, "this": true, "that": true, "your": true, "you": true, "each": true,
	"only": true, "when": true, "side": true, "into": true, "onto": true, "over": true, "down": true, "both": true, "loop": true}
