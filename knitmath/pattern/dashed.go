package pattern

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/knitmath/knitmath/draft"
)

// dashed reports whether the dash at hand parts a word that began at start from a count, as
// in "to end—81 sts" and "knit 1 row-38 sts", and is none within a word.
func (s *scanner) dashed(start, size int) bool {
	next, _ := utf8.DecodeRuneInString(s.source[s.at+size:])
	ends := s.at-start < longestEnding && rowEnding[draft.Word(s.source[start:s.at])] && !s.lineStart() // "Row-1"
	if strings.HasPrefix(s.source[s.at:], "—") {
		return unicode.IsDigit(next) || next == '(' || next == '[' || ends
	}
	return unicode.IsDigit(next) && ends
}

// longestEnding is more bytes than any of rowEnding has. What many dashes join is not made a
// word of for each of them.
const longestEnding = 16

// rowEnding are words with which a row ends before its count.
var rowEnding = wordSet(`end around across row rnd round rows rnds rounds even rep sts marker turn once twice times rem
	only sizes size`)

// dashedNumber reports whether numbers of all sizes that end a sentence stand after a dash at
// token i that is none of a range: "to end - 81", "pm for beg of rnd—20 (24, 28)".
func (p *parser) dashedNumber(i int) bool {
	if i > 0 && p.tokens[i-1].kind == tokenNumber && i == p.next && p.tokens[i-2].row() {
		return p.countDashed()
	}
	return i > 0 && p.tokens[i].is("-") && p.bareNumber(i+1) && p.dashedAfter(&p.tokens[i-1], i)
}

// dashedAfter reports whether the numbers after the dash at token i are counts, by the token before it.
func (p *parser) dashedAfter(before *token, i int) bool {
	if before.kind == tokenStar || before.among("] end around across") {
		return true
	}
	_, n := p.sizedEnd(i + 1)
	apart := before.kind == tokenWord && (p.found.source[p.tokens[i].start] != '-' || p.tokens[i].start > before.end)
	labels := before.row() && !p.tokens[max(i-2, 0)].among("of the this new") // "Row - 3"
	return n == p.sizes && apart && !labels && !before.among("size sizes needle needles us page chart step")
}
