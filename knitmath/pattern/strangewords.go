package pattern

import (
	"strings"
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// strangeWords are the clauses of a text with two words or more that nobody knows, "flurb the wibble": whatever they are taken for,
// a heading, a remark, the label of a row, they may have said more.
func (p *parser) strangeWords() []span {
	var out []span
	known := map[string]bool{}
	var from, to span
	words := 0
	end := func() {
		if words > 1 && len(out) < maxStrange {
			out = append(out, from.to(to))
		}
		words = 0
	}
	for i := range p.tokens[:len(p.tokens)-1] {
		t := &p.tokens[i]
		if t.kind != tokenWord {
			if t.kind == tokenNewline || t.among(". ; : , ( ) [ ]") {
				end()
			}
			continue
		}
		familiar, seen := known[t.text]
		if !seen {
			familiar = p.familiar(t)
			known[t.text] = familiar
		}
		if familiar || unicode.IsUpper(rune(p.found.source[t.start])) && words == 0 && !p.beginsClause(i) { // a name
			continue
		}
		if words == 0 {
			from = t.span
		}
		words, to = words+1, t.span
	}
	end()
	return out
}

// maxStrange is how many of them are kept.
const maxStrange = 50

// familiar reports whether a word is known: of knitters, of prose, or of how often and where something is done.
func (p *parser) familiar(t *token) bool {
	word := t.text
	return len(word) < 4 || commonWords[word] || p.ofTheLanguage(t) ||
		madeUp[word] || tellingWords[word] || steering[word] || reserved[word] ||
		plainWords[word] || rowNames[word] || alarming(word) || draft.Harmless(word) || t.howMany() != 0 || strings.Contains(word, "-")
}

// beginsClause reports whether token i is the first of its clause.
func (p *parser) beginsClause(i int) bool { return i == 0 || p.tokens[i-1].kind != tokenWord }

// commonWords are words of place, time and manner that pattern prose is full of.
var commonWords = wordSet(`along lower upper corner corners inner outer around across between behind every below above repeated repeats
	working worked keeping placing leaving beginning finishing centre chart charts diagonal short long time times more again twice another
	next last first right left other pattern patterns border borders stripe stripes colour colours light dark yarn needle section sections
	establish raglan line lines mark marking`)
