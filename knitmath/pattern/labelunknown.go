package pattern

import "strings"

// labelUnknown says of a row that is called by a word nobody knows, and the text nowhere else, that it is worked where it stands:
// "flurble row: K20".
func (p *parser) labelUnknown(i, end int) {
	for ; i < end; i++ {
		if t := &p.tokens[i]; t.kind == tokenWord && len(t.text) > 1 && t.howMany() == 0 && !p.calledSo(t) && p.onlyHere(t) {
			p.reading(t.span, "no word for a row that is known: worked as the row that comes next")
		}
	}
}

// calledSo reports whether rows are called by a word: one of the language, or of what such a row is for.
func (p *parser) calledSo(t *token) bool {
	return rowNames[t.text] || strings.HasSuffix(t.text, "ing") || ruleWord(t) || p.ofTheLanguage(t)
}

// rowNames are words for what a row is for; common practice.
var rowNames = wordSet(`set-up setup buttonhole eyelet increase decrease foundation short division divide ridge picot tuck welt
	bobble hem fold transition marker setup-row base plain beaded elongated crossing cross`)

// onlyHere reports whether a word stands in one place of the text alone.
func (p *parser) onlyHere(word *token) bool {
	n := 0
	for i := range p.tokens {
		if p.tokens[i].text == word.text {
			n++
		}
	}
	p.looked += len(p.tokens)
	return n < 2
}
