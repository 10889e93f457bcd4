package pattern

import (
	"example.com/knitmath/knitmath/draft"
)

// tells reports whether a sentence that begins with words not known to be harmless tells
// something, and is neither a row nor a direction.
func (p *parser) tells(i, end int) bool {
	t := &p.tokens[i]
	if p.onlyRows && p.startsItem(i) || t.kind == tokenNumber || p.likeRow(i, end) ||
		p.startsItem(i) && !p.told(i, end) || p.directionAhead() ||
		reserved[t.text] && !draft.Manner(t.text) {
		return false
	}
	return end-i >= 2 || draft.Part(t.text) || draft.Front(t.text) || draft.Manner(t.text)
}

// likeRow reports whether a sentence that begins with an unknown word is set like a
// row: the word stands before a comma or a number, and what can be worked follows.
func (p *parser) likeRow(i, end int) bool {
	next := i + 1
	if p.tokens[next].kind == tokenNumber {
		next++
	}
	if !p.tokens[next].is(",") && !p.endsAt(next) || next == i+1 && p.endsAt(next) {
		return false
	}
	for next++; next < end; next++ {
		if p.tokens[next-1].is(",") && p.startsItem(next) {
			return true
		}
	}
	return p.tokens[i+1].kind == tokenNumber
}

// foreign reports whether a sentence has no word at all by which English prose is known:
// it may be an instruction in another language.
func (p *parser) foreign(i, end int) bool {
	words := 0
	for ; i < end; i++ {
		t := &p.tokens[i]
		if t.kind != tokenWord {
			continue
		}
		if draft.English(t.text) || draft.Part(t.text) || draft.Front(t.text) || len(t.text) > 2 && p.notation(t.text) || t.row() ||
			t.stitches() {
			return false
		}
		words++
	}
	return words > 2
}

// tellingWords are the verbs of a sentence that tells and orders nothing.
var tellingWords = wordSet(`is are was were be been being will would should shall can could may might must has have had does do did looks
	look forms form makes make gives give shows show leans lies lie runs run sits means mean grows grow needs need you your you'll i i've
	we they it it's that's there's don't isn't aren't won't can't creates create becomes become happens comes come feels seem seems relaxes
	thanks thank happy enjoy see says say`)

// madeUp are verbs of what is done to a piece that is knit.
var madeUp = wordSet(`close cover dab brush felt glue roll flatten smooth admire wear give decorate finish photograph sort collect gather
	tape label`)

// unknownOrder reports whether a sentence among the rows seems to order something with a
// verb that nobody knows, "Flurble the brim": its first word is none of the language of
// patterns, and nothing in it shows that it only tells.
func (p *parser) unknownOrder(i, end int) bool {
	if !p.began || p.section == sectionFront {
		return false
	}
	if t := &p.tokens[i]; t.kind != tokenWord || madeUp[t.text] || p.ofTheLanguage(t) {
		return false
	}
	object := false
	for n := i; n < end; n++ {
		w := &p.tokens[n]
		if w.kind == tokenWord && tellingWords[w.text] && !(w.is("you") && p.tokens[n-1].is("as", "if") &&
			p.tokens[n+1].among("like wish please prefer want")) {
			return false
		}
		object = object || n > i && (w.among("the these those all each both this a an it them") || w.stitches())
	}
	return object
}

// ofTheLanguage reports whether a word is known: to knitters, to English prose, or to the text.
func (p *parser) ofTheLanguage(t *token) bool {
	word := t.text
	return t.row() || t.stitches() || p.notation(word) || draft.Manner(word) && !steering[word] || draft.English(word) ||
		draft.Part(word) || draft.Front(word) || draft.Fabric(word) || colours[word] || p.patternWord(word)
}

// patternWord reports whether a word is of the name of a stitch pattern of the text.
func (p *parser) patternWord(word string) bool {
	for k := range p.patterns {
		for _, w := range p.patterns[k].words {
			if w == word {
				return true
			}
		}
	}
	return false
}

// told reports whether a sentence that begins with a word that may be worked tells
// about the work, and orders nothing: "Slip the first st of every row", "Knit in the
// round throughout".
func (p *parser) told(i, end int) bool {
	return p.phraseEnd(i, tellings) != 0 && p.alarm(i+2, end, true) == 0
}

var tellings = wordings("slip the first", "sl the first", "sl first", "slip first", "slip all", "sl all", "slip markers", "sl markers",
	"slip sts", "sl sts", "knit the first and last", "knit in the round", "turn work", "turn the work", "turn", "work all", "work edge",
	"slip stitches", "slip marker as", "sl markers as", "slip m as", "sl m as", "knit flat")
