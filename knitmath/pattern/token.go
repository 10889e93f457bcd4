package pattern

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

type tokenKind uint8

const (
	tokenEnd     tokenKind = iota
	tokenNewline           // one for any number of line breaks
	tokenWord              // letters, and what may stand within a word
	tokenNumber            // digits
	tokenStar              // one or more stars
	tokenMark              // any other single character
)

// token is one word, number or mark. text is in lower case.
type token struct {
	text string
	span
	number int32 // of a tokenNumber; above MaxNumber when it is too large or not whole
	kind   tokenKind
}

// scan cuts a text into tokens; the last is tokenEnd. Any bytes are allowed.
func scan(source string) []token {
	s := scanner{source: source, line: 1, column: 1}
	s.tokens = make([]token, 0, len(source)/3+2)
	for s.at < len(source) {
		s.token()
	}
	s.put(tokenEnd, s.here(), "")
	return s.tokens
}

type scanner struct {
	source       string
	at           int
	line, column int32
	tokens       []token
}

func (s *scanner) here() span {
	return span{int32(s.at), int32(s.at), s.line, s.column}
}

func (s *scanner) put(kind tokenKind, from span, text string) {
	from.end = int32(s.at)
	if len(s.tokens) == cap(s.tokens) { // at once to the most there can be
		s.tokens = append(make([]token, 0, len(s.source)+1), s.tokens...)
	}
	s.tokens = append(s.tokens, token{kind: kind, text: text, span: from})
}

// rune is the character at hand, and its length.
func (s *scanner) rune() (rune, int) {
	if s.at >= len(s.source) {
		return 0, 0
	}
	if c := s.source[s.at]; c < utf8.RuneSelf {
		return rune(c), 1
	}
	return utf8.DecodeRuneInString(s.source[s.at:])
}

func (s *scanner) advance(size int) {
	s.at += size
	s.column++
}

func (s *scanner) token() {
	c, size := s.rune()
	from := s.here()
	switch {
	case c == '\n' || c == '\r':
		s.newline(c)
	case unicode.IsSpace(c):
		s.advance(size)
	case unicode.IsLetter(c):
		s.word()
		s.put(tokenWord, from, strings.ToLower(s.source[from.start:s.at]))
	case c >= '0' && c <= '9':
		n := s.number()
		s.put(tokenNumber, from, s.source[from.start:s.at])
		s.tokens[len(s.tokens)-1].number = n
	case c == '*':
		for c == '*' {
			s.advance(1)
			c, _ = s.rune()
		}
		s.put(tokenStar, from, s.source[from.start:s.at])
	default:
		s.advance(size)
		text := s.source[from.start:s.at]
		if c == '–' || c == '—' || c == '−' {
			text = "-"
		}
		s.put(tokenMark, from, text)
	}
}

// newline passes over a line break, of which several are one token.
func (s *scanner) newline(c rune) {
	from := s.here()
	s.at++
	if c == '\r' && s.at < len(s.source) && s.source[s.at] == '\n' {
		s.at++
	}
	s.line++
	s.column = 1
	if n := len(s.tokens); n > 0 && s.tokens[n-1].kind != tokenNewline {
		s.put(tokenNewline, from, "")
	}
}

// word passes over a word: letters and digits, and an apostrophe, hyphen,
// ampersand or stroke between two of them.
func (s *scanner) word() {
	for {
		c, size := s.rune()
		switch {
		case size == 0:
			return
		case unicode.IsLetter(c) || c >= '0' && c <= '9':
			s.advance(size)
		case c == '\'' || c == '’' || c == '-' || c == '&' || c == '/':
			next, _ := utf8.DecodeRuneInString(s.source[s.at+size:])
			if !unicode.IsLetter(next) && (c != '-' || next < '0' || next > '9') {
				return
			}
			s.advance(size)
		default:
			return
		}
	}
}

// number passes over digits. A decimal fraction is one number, too large to be
// used as a count.
func (s *scanner) number() int32 {
	n := int32(0)
	for digit := range 2 {
		for {
			c, _ := s.rune()
			if c < '0' || c > '9' {
				break
			}
			n = min(10*n+(c-'0'), MaxNumber+1)
			s.advance(1)
		}
		if digit == 1 || s.at+1 >= len(s.source) || s.source[s.at] != '.' || s.source[s.at+1] < '0' || s.source[s.at+1] > '9' {
			return n
		}
		s.advance(1)
		n = MaxNumber + 1
	}
	return MaxNumber + 1
}
