package pattern

import (
	"unicode/utf8"
)

type tokenKind uint8

const (
	tokenEnd     tokenKind = iota
	tokenNewline           // one for any number of line breaks, of which number says
	tokenWord              // letters, and what may stand within a word
	tokenNumber            // digits
	tokenStar              // one or more stars
	tokenMark              // any other single character
)

// token is one word, number or mark. text is in lower case and plain signs.
type token struct {
	text string
	span
	number int32 // of a tokenNumber; above MaxNumber when it is too large or not whole; of a tokenNewline, how many
	kind   tokenKind
}

// scan cuts a text into tokens; the last is tokenEnd. Any bytes are allowed.
func scan(source string) []token { return scanned(source, nil, 0).tokens }

// scanned is the scanner that has done so, after so many line breaks that are not in the text,
// into room if that suffices.
func scanned(source string, room []token, breaks int) *scanner {
	s := &scanner{source: source, line: 1, column: 1, tokens: room[:0]}
	if likely := breaks + likelyTokens(source) + 1 + beyond; cap(room) < likely {
		s.tokens = make([]token, 0, likely+likely/16) // with a correction a text is a little longer
	}
	for range breaks {
		s.tokens = append(s.tokens, token{kind: tokenNewline, span: s.here(), number: 2})
	}
	for s.at < len(source) {
		s.token()
	}
	s.put(tokenEnd, s.here(), "")
	return s
}

// likelyTokens is about how many tokens a text has: its marks, and where its words and its
// numbers begin. Room for a token for each byte would be eight times as much as most need.
func likelyTokens(source string) int {
	n := 0
	before := byte(' ')
	for i := range len(source) {
		kind := source[i]
		switch {
		case kind == ' ':
		case kind >= '0' && kind <= '9':
			kind = '0'
		case kind >= 'A' && kind <= 'Z' || kind >= 'a' && kind <= 'z' || kind >= utf8.RuneSelf:
			kind = 'a'
		default:
			n++
			before = ' '
			continue
		}
		if kind != before && kind != ' ' {
			n++
		}
		before = kind
	}
	return n
}

// beyond is how many more ends a parser has after the last token, so that it may look
// ahead without asking whether there is anything.
const beyond = 12

// leading is how many line breaks a parser has before the first token: it may look back
// likewise, and no word of the text stands at index 0, which stands for nowhere.
const leading = 2

// padded is the tokens of a text with line breaks before the first and more ends after the last.
func padded(source string, room []token) []token {
	tokens := unwrapped(source, scanned(source, room, leading).tokens)
	for range beyond {
		tokens = append(tokens, tokens[len(tokens)-1])
	}
	return tokens
}
