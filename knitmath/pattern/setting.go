package pattern

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// hyphenated passes over a hyphen at the end of a line and the break after it, where the
// next line goes on in small letters: "re-" and "peat" are one word.
func (s *scanner) hyphenated() bool {
	rest := s.source[s.at:]
	n := 1
	if strings.HasPrefix(rest[n:], "\r") {
		n++
	}
	if !strings.HasPrefix(rest[n:], "\n") {
		return false
	}
	n++
	if c, _ := utf8.DecodeRuneInString(rest[n:]); !unicode.IsLower(c) {
		return false
	}
	s.at += n
	s.line++
	s.column = 1
	return true
}

// unhyphened is a word without what only the setting of its line and the dots of its
// letters put in.
func unhyphened(word string) string {
	if !strings.ContainsAny(word, "\n.") {
		return word
	}
	word = strings.ReplaceAll(word, "-\r\n", "")
	word = strings.ReplaceAll(word, "-\n", "")
	return strings.ReplaceAll(word, ".", "")
}

// initials reports whether a full stop stands between the letters of "y.o." and
// "p.s.s.o.", which are one word: after one letter alone, before one letter alone.
func (s *scanner) initials() bool {
	before, after := s.source[:s.at], s.source[s.at+1:]
	if len(after) < 2 || len(before) < 1 || !letter(before[len(before)-1]) || len(before) > 1 && letter(before[len(before)-2]) {
		return false
	}
	return letter(after[0]) && after[1] == '.'
}

func letter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }

// escaped reports whether a backslash only says that the sign after it is meant as it
// stands, as in Markdown.
func (s *scanner) escaped() bool {
	return s.at+1 < len(s.source) && strings.ContainsRune("*_[]()#-.+!`", rune(s.source[s.at+1]))
}

// maxMarkup is how long a tag may be.
const maxMarkup = 24

// markup passes over a tag such as "<b>" or "</td>", and over "&nbsp;".
func (s *scanner) markup(from span, c rune, size int) {
	rest := s.source[s.at:min(len(s.source), s.at+maxMarkup)]
	if c == '<' {
		if i := strings.IndexByte(rest, '>'); i > 1 && (letter(rest[1]) || rest[1] == '/') {
			for range i + 1 {
				s.advance(1)
			}
			return
		}
	}
	if i := strings.IndexByte(rest, ';'); c == '&' && i > 2 && i < 8 &&
		strings.Trim(strings.ToLower(rest[1:i]), "abcdefghijklmnopqrstuvwxyz") == "" {
		for range i + 1 {
			s.advance(1)
		}
		return
	}
	if s.advance(size); c == '&' && strings.HasPrefix(s.source[s.at:], " ") {
		s.put(tokenWord, from, "and")
		return
	}
	s.put(tokenMark, from, string(c))
}

// listNumber passes over the number of a list at the start of a line, "2) ", and "2. "
// before what is no row; before "row" it makes it an ordinal, as "2nd" is.
func (s *scanner) listNumber() bool {
	i := s.digitsEnd()
	if i-s.at > 2 || i+2 >= len(s.source) || s.source[i] != ')' && s.source[i] != '.' && s.source[i] != ':' || s.source[i+1] != ' ' {
		return false
	}
	if n := len(s.tokens); s.source[i] == ':' && n > 1 && s.tokens[n-2].row() { // "Row" at the end of the line before
		return false
	}
	rest := strings.TrimLeft(s.source[i+1:], " *_")
	if s.source[i] == '.' && ordinalRow(rest) {
		from := s.here()
		n := s.number1(i)
		s.put(tokenNumber, from, s.source[from.start:s.at])
		s.tokens[len(s.tokens)-1].number = n
		from = s.here()
		s.advance(1)
		s.put(tokenWord, from, "th")
		return true
	}
	if c, _ := utf8.DecodeRuneInString(rest); !unicode.IsUpper(c) || len(rest) > 3 && begins(rest, "sts") {
		return false
	}
	s.skipTo(i + 1)
	return true
}

// ordinalRow reports whether "Row:" or "rnd -" stands after a number with a full stop: it is that of
// the row.
func ordinalRow(rest string) bool {
	if !begins(rest, "row") && !begins(rest, "rnd") && !begins(rest, "round") {
		return false
	}
	next := strings.TrimLeft(rest, "rRoOwWuUnNdDsS")
	return next != "" && strings.ContainsRune(":.-", rune(next[0]))
}

// digitsEnd is the index after the digits at hand.
func (s *scanner) digitsEnd() int {
	i := s.at
	for i < len(s.source) && s.source[i] >= '0' && s.source[i] <= '9' {
		i++
	}
	return i
}

// skipTo passes over plain signs up to an index.
func (s *scanner) skipTo(i int) {
	for s.at < i {
		s.advance(1)
	}
}

// number1 passes over the digits up to a place.
func (s *scanner) number1(to int) int32 {
	n := int32(0)
	for s.at < to {
		n = 10*n + int32(s.source[s.at]-'0')
		s.advance(1)
	}
	return n
}

// knitUp makes "knit up 20 sts", as older booklets and British ones say, "pick up 20 sts".
func (s *scanner) knitUp() {
	if n := len(s.tokens) - 3; n >= 0 && s.tokens[n+1].is("up") && s.tokens[n].is("knit", "k") {
		s.tokens[n].text = "pick"
	}
}

// roundShort makes "rd" a round where it is no ending of a number, as in "3rd".
func (s *scanner) roundShort() {
	n := len(s.tokens)
	last := &s.tokens[n-1]
	if last.text != "rd" && last.text != "rds" || n > 1 && s.tokens[n-2].kind == tokenNumber && s.tokens[n-2].end == last.start {
		return
	}
	last.text = map[string]string{"rd": "rnd", "rds": "rnds"}[last.text]
}

// mixed passes over a whole number and a fraction, "3 1/4", of which a length is made.
func (s *scanner) mixed() bool {
	i := s.digitsEnd()
	rest := s.source[i:min(len(s.source), i+10)]
	if i == s.at || !fractionOf(rest) || crossingOf(rest) {
		return false
	}
	s.skipTo(i + 4)
	return true
}

// fractionOf reports whether a text begins with a space and a fraction of a unit, " 1/4", and not with numbers for two sizes or
// more: "Rep Rnds 1-8 2/3/4 times", "1-8 2/3 more times".
func fractionOf(rest string) bool {
	return len(rest) >= 4 && rest[0] == ' ' && rest[1] >= '1' && rest[1] < rest[3] && rest[2] == '/' && strings.Contains("2348", rest[3:4]) &&
		(len(rest) == 4 || (rest[4] < '/' || rest[4] > '9')) && !strings.HasPrefix(rest[4:], " more") && !strings.HasPrefix(rest[4:], " time")
}

// crossingOf reports whether what looks like a fraction is that of a cable, " 1/2 LC".
func crossingOf(rest string) bool {
	return len(rest) > 5 && rest[4] == ' ' && (rest[5]|0x20 == 'l' || rest[5]|0x20 == 'r')
}
