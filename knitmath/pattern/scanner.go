package pattern

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/knitmath/knitmath/draft"
)

type scanner struct {
	source       string
	at           int
	line, column int32
	tokens       []token
	ahead        int // bytes looked at beyond the sign at hand, where they may be many
	bold         int // where the second of two stars that only make letters bold stands
}

func (s *scanner) here() span {
	return span{int32(s.at), int32(s.at), s.line, s.column}
}

func (s *scanner) put(kind tokenKind, from span, text string) {
	from.end = int32(s.at)
	if len(s.tokens) == cap(s.tokens) { // at once to the most there can be
		s.tokens = append(make([]token, 0, leading+len(s.source)+1+beyond), s.tokens...)
	}
	s.tokens = append(s.tokens, token{kind: kind, text: text, span: from})
}

// rune is the character at hand in plain signs, and its length. What is not seen
// is passed over.
func (s *scanner) rune() (rune, int) {
	for s.at < len(s.source) {
		if c := s.source[s.at]; c < utf8.RuneSelf {
			return rune(c), 1
		}
		c, size := utf8.DecodeRuneInString(s.source[s.at:])
		if !draft.Invisible(c) {
			return draft.Plain(c), size
		}
		s.advance(size)
	}
	return 0, 0
}

func (s *scanner) advance(size int) {
	s.at += size
	s.column++
}

func (s *scanner) token() {
	c, size := s.rune()
	from := s.here()
	switch {
	case size == 0:
	case c == '\n' || c == '\r' || c == '\u2028' || c == '\u2029':
		s.newline(c, size)
	case unicode.IsSpace(c) || c == '_' || c == '`':
		s.advance(size)
	case unicode.IsLetter(c):
		s.spelled(from)
	case isDigit(c) && s.lineStart() && s.listNumber():
	case isDigit(c) || draft.Fraction(c):
		n := s.number()
		s.put(tokenNumber, from, draft.Word(s.source[from.start:s.at]))
		s.tokens[len(s.tokens)-1].number = n
		s.knitUp()
	default:
		s.mark(from, c, size)
	}
}

// spelled reads a word.
func (s *scanner) spelled(from span) {
	s.word()
	s.rowNumber(from)
	from = s.rowHyphened(from)
	s.stockingDotted(from)
	word := draft.Word(unhyphened(s.source[from.start:s.at]))
	if word == "st.-st" {
		word = "st-st"
	}
	if s.rowAgain(word) {
		return
	}
	if s.thatIs(word) {
		word = "that"
	}
	if usual, other := spellings[word]; other {
		word = usual
	}
	if rest := s.source[s.at:]; word == "w" && len(rest) > 1 && rest[0] == '/' && rest[1] == ' ' { // "w/ MC"
		s.skipTo(s.at + 1)
		word = "with"
	}
	if word == "no" && s.numberSign() {
		return
	}
	if s.rowLettered(word) {
		word = "row"
	}
	s.put(tokenWord, from, word)
	s.roundShort()
	s.newStitches()
	if last := &s.tokens[len(s.tokens)-1]; last.text == "c/o" || last.text == "b/o" {
		last.text = last.text[:1] + "o"
	}
}

// spellings are words that are spelt in other ways too: the usual one of each.
var spellings = map[string]string{"ea": "each", "upon": "on", "purlways": "purlwise", "knitways": "knitwise", "purlway": "purlwise",
	"pways": "purlwise", "kways": "knitwise", "pw": "pwise", "kw": "kwise", "wf": "yf", "wlfwd": "yfwd", "w/o": "without",
	"inc'ing": "increasing",
	"inc'g":   "increasing", "dec'ing": "decreasing", "dec'g": "decreasing", "thro": "through", "thru": "through"}

// stockingDotted goes on after the "st" of "st.-st", as older booklets shorten stocking stitch, the "g" of "g.st" and the "y" of
// "y.fwd".
func (s *scanner) stockingDotted(from span) {
	if rest := s.source[s.at:]; strings.EqualFold(s.source[from.start:s.at], "g") && begins(rest, ".st") &&
		!(len(rest) > 3 && letter(rest[3])) {
		s.skipTo(s.at + len(".st"))
		if len(rest) > 5 && rest[3:5] == ". " && rest[5] >= 'a' && rest[5] <= 'z' {
			s.skipTo(s.at + 1) // it ends no sentence
		}
	}
	if wool := strings.ToLower(s.source[from.start:s.at]); (wool == "y" || wool == "w" || wool == "wl") && begins(s.source[s.at:], ".fwd") {
		s.skipTo(s.at + len(".fwd"))
	}
	if strings.EqualFold(s.source[from.start:s.at], "st") && begins(s.source[s.at:], ".-st") {
		s.skipTo(s.at + len(".-st"))
	}
}

// mark reads what is neither a word nor a number.
func (s *scanner) mark(from span, c rune, size int) {
	switch {
	case c == '*' || c == '†' || c == '‡':
		s.star(c, size)
	case s.namesRow(from, c):
	case c == '<' || c == '&':
		s.markup(from, c, size)
	case c == '°':
		s.advance(size)
		s.put(tokenWord, from, "degrees")
	case s.arrowToCount(c, size):
		s.put(tokenMark, from, "=")
	case s.unread(c, size):
		s.advance(size)
	default:
		if s.advance(size); c == '!' { // "don't twist!" ends a sentence, too
			c = '.'
		}
		s.put(tokenMark, from, string(c))
		if c == ':' {
			s.colonDashes()
		}
	}
}

// unread reports whether a sign stands for nothing: a bullet, a tick, a picture, what shortens a word.
func (s *scanner) unread(c rune, size int) bool {
	return c == '.' && s.shortened() || c == '\\' && s.escaped() || s.lineStart() && s.bullet(c, size) || s.frame(c) ||
		strings.ContainsRune(tickMarks, c) || c >= firstEmoji
}

// colonDashes passes over the dashes of ":-" and ":--" of older booklets.
func (s *scanner) colonDashes() {
	at, column := s.at, s.column
	for {
		c, size := s.rune()
		switch {
		case c == '-':
			s.advance(size)
			continue
		case size != 0 && !unicode.IsSpace(c):
			s.at, s.column = at, column
		}
		return
	}
}

// arrowToCount passes over an arrow before a count, "[k9, k2tog] x 6 -> 60", which says what it comes to.
func (s *scanner) arrowToCount(c rune, size int) bool {
	rest := s.source[s.at+size:]
	if (c == '-' || c == '=') && strings.HasPrefix(rest, ">") {
		size, rest = size+1, rest[1:]
	} else if c != '→' {
		return false
	}
	rest = strings.TrimLeft(rest[:min(len(rest), 8)], " ([")
	if rest == "" || !isDigit(rune(rest[0])) || s.lineStart() {
		return false
	}
	s.skipTo(s.at + size)
	return true
}

// tickMarks are ticks and arrows beside a row, and what is drawn beside words.
const tickMarks = "…✓✔→←☐☑✅✨❤⭐⚠♥♡➡\ufe0f\u200d"

// firstEmoji begins the blocks of Unicode that hold little pictures; no sign of a chart is among them.
const firstEmoji = 0x1f000

func isDigit(c rune) bool { return c >= '0' && c <= '9' }

// newline passes over a line break, of which several are one token.
func (s *scanner) newline(c rune, size int) {
	from := s.here()
	s.at += size
	if c == '\r' && s.at < len(s.source) && s.source[s.at] == '\n' {
		s.at++
	}
	s.line++
	s.column = 1
	switch n := len(s.tokens); {
	case n == 0:
	case s.tokens[n-1].kind == tokenNewline:
		s.tokens[n-1].number++
	default:
		s.put(tokenNewline, from, "")
		s.tokens[n].number = 1
	}
}

// word passes over a word: letters and digits, and an apostrophe, hyphen,
// ampersand or stroke between two of them.
func (s *scanner) word() {
	start := s.at
	for {
		c, size := s.rune()
		switch {
		case size == 0:
			return
		case unicode.IsLetter(c) || isDigit(c):
			s.advance(size)
		case c == '-' && s.hyphenated():
		case c == '-' && (s.sizesBegin(start) || s.passedOverNext(start) || s.ordinalsFrom(start, size)):
			return
		case c == '-' && s.dashed(start, size):
			return
		case c == '.' && s.initials(), s.joinsLetters(c, size):
			s.advance(size)
		default:
			return
		}
	}
}

// sizesBegin reports whether the sign at hand stands between the numbers of sizes after a stitch, "k23-25-27".
func (s *scanner) sizesBegin(start int) bool {
	n := start + 1
	for n < s.at && isDigit(rune(s.source[n])) {
		n++
	}
	counted := n == s.at && n > start+1 && strings.IndexByte("kKpP", s.source[start]) >= 0
	return counted && s.at+1 < len(s.source) && isDigit(rune(s.source[s.at+1]))
}

// ordinalsFrom reports whether the dash at hand stands between two ordinals, "5th-8th rows".
func (s *scanner) ordinalsFrom(start, size int) bool {
	next := s.at + size
	return start > 0 && isDigit(rune(s.source[start-1])) && s.at-start == len("th") && next < len(s.source) && isDigit(rune(s.source[next]))
}

// passedOverNext reports whether the dash at hand stands in "k2tog-psso", of "sl 1-k2tog-psso", where the number before
// it begins another word.
func (s *scanner) passedOverNext(start int) bool {
	worked := strings.ToLower(s.source[start:min(s.at, start+longestEnding)])
	return (worked == "k2tog" || worked == "k1") && (begins(s.source[s.at+1:], "psso") || begins(s.source[s.at+1:], "p2sso"))
}

// joinsLetters reports whether the sign at hand stands within a word: before a letter, and a hyphen
// before a digit too.
func (s *scanner) joinsLetters(c rune, size int) bool {
	if c != '\'' && c != '-' && c != '&' && c != '/' {
		return false
	}
	next, _ := utf8.DecodeRuneInString(s.source[s.at+size:])
	return unicode.IsLetter(next) || c == '-' && isDigit(next)
}

// rowNumber takes the number off "Row1", "Rnd12-14" and, where a line begins or a number of a row
// stands before, "R1".
func (s *scanner) rowNumber(from span) {
	word := draft.Word(s.source[from.start:s.at])
	for _, head := range [...]string{"rows", "row", "rnds", "rnd", "round", "sr", "r"} {
		rest, ok := strings.CutPrefix(word, head)
		if !ok || rest == "" || !isDigit(rune(rest[0])) || !begins(s.source[from.start:], head) ||
			(head == "r" || head == "sr") && !s.sentenceStart(len(s.tokens)) && !s.afterRowNumber() && !s.rowsNamedNext(len(s.tokens)) {
			continue
		}
		s.at, s.column = int(from.start)+len(head), from.column+int32(len(head))
		return
	}
}

// sentenceStart reports whether the n-th token is the first of its line, or of a sentence within it.
func (s *scanner) sentenceStart(n int) bool {
	return n == 0 || s.tokens[n-1].kind == tokenNewline || s.tokens[n-1].is(".")
}

// number passes over digits. A fraction is one number, too large to be used as a
// count.
func (s *scanner) number() int32 {
	n := int32(0)
	if s.mixed() {
		return MaxNumber + 1
	}
	for digit := range 2 {
		for {
			c, size := s.rune()
			if draft.Fraction(c) {
				s.advance(size)
				return MaxNumber + 1
			}
			if c < '0' || c > '9' {
				break
			}
			n = min(10*n+(c-'0'), MaxNumber+1)
			s.advance(size)
		}
		if digit == 1 || s.at+1 >= len(s.source) || s.source[s.at] != '.' || s.source[s.at+1] < '0' || s.source[s.at+1] > '9' {
			return n
		}
		s.advance(1)
		n = MaxNumber + 1
	}
	return MaxNumber + 1
}
