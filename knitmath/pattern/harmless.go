package pattern

import "slices"

// harmlessPhrases are sentences that change no count, by how they begin.
var harmlessPhrases = wordings("do not", "don't", "make sure", "take care", "taking care", "take great care", "work with care",
	"work carefully", "make another", "work the other", "make 2", "make two", "make a second",
	"make the second",
	"make one more", "work second", "work the second", "work other", "knit second", "knit the second", "knit a second",
	"work as follows", "proceed as follows", "continue as follows", "cont as follows", "work in rows", "end of", "from here",
	"this is", "this forms", "these", "there is", "there are no", "rows 1", "turn work", "place marker for", "hold yarn",
	"all sts are", "all stitches are", "first st", "sl markers", "slip markers", "slip all", "read chart",
	"leave sts on needle", "leave sts on the needle", "leave the sts on the needle", "leave all sts on needle",
	"set aside", "set piece aside", "turn piece", "work each side of", "work each side separately", "work both sides of", "knit from the",
	"worked from the", "knit in one piece", "n1 holds", "n2 holds", "n3 holds",
	"needle 1 holds", "needle 2 holds", "knit sts from needle", "knit the sts from needle", "cont in this way throughout",
	"work should", "work will", "work measures", "work now measures", "work is now")

// seeElsewhere are words that send the reader to another place.
var seeElsewhere = wordings("see page", "see pages", "see p", "see diagram", "see drawing", "see photo", "see picture", "see figure",
	"see fig", "see schematic", "see illustration", "please turn over", "turn over", "turn the page", "refer to", "see also", "see notes",
	"see note", "see above", "see below", "see overleaf", "continued on", "continued overleaf", "continued from", "please see")

// sidesTold reports whether "Short side = 80 sts, long side = 100 sts" stands at token i.
func (p *parser) sidesTold(i int) bool {
	from := i
	for p.tokens[i].among("short long each one upper lower left right side edge end top bottom") {
		i++
	}
	return i > from && p.tokens[i-1].is("side", "edge", "end") && p.tokens[i].is("=")
}

// repeatTold reports whether "The lace repeat is worked over 12 sts and 16 rows" stands at token i,
// which tells how large a repeat is.
func (p *parser) repeatTold(i int) bool {
	for n := 0; n < 6 && p.tokens[i].kind == tokenWord; n++ {
		i++
		if p.tokens[i-1].among("repeat motif chart patt pattern") {
			return p.phraseEnd(i, workedOver) != 0
		}
	}
	return false
}

var workedOver = wordings("is worked over", "is over", "has", "is a multiple of", "is", "covers", "consists of")

// piecesTold reports whether a sentence at token i tells on how many stitches pieces are worked before
// their rows are written, "Work front and back on 88 stitches each", or which stitch is counted how,
// "The stitch left on the right needle by binding off is the first of those worked next".
func (p *parser) piecesTold(i int) bool {
	if p.phraseEnd(i, toldOfStitches) != 0 {
		return true
	}
	if !p.tokens[i].is("work") {
		return false
	}
	pieces := 0
	for i++; p.tokens[i].among("the front back both and sleeves pieces"); i++ {
		pieces += bit(!p.tokens[i].is("the", "and"))
	}
	end, _ := p.sizedEnd(i + 1)
	return pieces > 0 && p.tokens[i].is("on") && end != 0 && p.tokens[end].stitches() && p.tokens[end+1].is("each", "and", ",")
}

var toldOfStitches = wordings("the stitch left on the right needle by binding off", "the st left on the right needle by binding off",
	"the stitch left on the right needle after binding off", "the st left on the right needle after binding off",
	"the yo after a turn is made", "the yarn over after a turn is made", "yarn overs after a turn are made",
	"the yos after a turn are made")

// lastRowsAt reports whether "last 2 rows", "the above 2 rows" stands at token i.
func (p *parser) lastRowsAt(i int) bool {
	if p.tokens[i].is("the") {
		i++
	}
	if !p.tokens[i].among("last above first previous foregoing") {
		return false
	}
	end, _ := p.sizedEnd(i + 1)
	return end != 0 && p.tokens[end].row()
}

// phrasesHarmless reports whether a sentence that changes no count begins at token i.
func phrasesHarmless(p *parser, i int) bool {
	if p.phraseEnd(i, seeElsewhere) != 0 || p.zeroAt(i) || p.sidesTold(i) || p.roundBegins(i) != 0 || p.repeatTold(i) || p.piecesTold(i) ||
		p.choiceTold(i, p.sentenceEnd(i)) {
		return true
	}
	if p.tokens[i].among("these those this rows") && !p.tokens[i].row() || p.lastRowsAt(i) { // "These 2 rows form the pattern."
		return p.anyAmong(i, p.sentenceEnd(i), "form forms set sets establish establishes are is make makes")
	}
	return p.phraseEnd(i, harmlessPhrases) != 0 || p.rowsForm(i) || p.pieceAgain(i) ||
		p.tokens[i+2].is("n1") && p.endsAt(p.phraseEnd(i, acrossFirst))
}

// anyAmong reports whether one of several words stands between two tokens.
func (p *parser) anyAmong(i, end int, words string) bool {
	return slices.ContainsFunc(p.tokens[i:max(i, end)], func(t token) bool { return t.among(words) })
}

// rowsForm reports whether "Row 1 forms rib", "Rows 1-4 form the pattern" stands at token i.
func (p *parser) rowsForm(i int) bool {
	if !p.tokens[i].row() || p.tokens[i+1].kind != tokenNumber {
		return false
	}
	return p.tokens[p.rowNumbersEnd(i+1)].among("form forms set sets establish establishes make makes")
}
