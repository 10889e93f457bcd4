package pattern

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// star passes over one or more stars, which are one token unless they are
// Markdown: a bullet, or a pair that makes the letters between them bold.
func (s *scanner) star(c rune, size int) {
	from := s.here()
	first := c
	for c == first && size > 0 {
		s.advance(size)
		c, size = s.rune()
	}
	if int(from.start) == s.bold && s.bold > 0 || s.bulletStar(from, c) || s.opensBold(from) {
		return
	}
	text := strings.Repeat(string(first), int(s.column-from.column))
	s.put(tokenStar, from, text)
}

// bulletStar reports whether a single star is a bullet: first in its line, before
// a space, and without a second star or a "rep" up to the next line that begins
// with one.
func (s *scanner) bulletStar(from span, next rune) bool {
	if s.column-from.column != 1 || next != ' ' || !s.lineStart() {
		return false
	}
	if n := len(s.tokens); n > 1 && s.tokens[n-2].text == "from" {
		return false // "rep from" at the end of a line
	}
	rest := s.source[s.at:]
	if i := strings.IndexAny(rest, "*∗✱✳＊"); i >= 0 {
		before := strings.TrimRight(rest[:i], " \t")
		if before == "" || before[len(before)-1] != '\n' {
			return false
		}
		rest = before
	}
	s.ahead += len(rest)
	rest = strings.ToLower(rest[:min(len(rest), maxBullet)])
	return !strings.Contains(rest, "rep") && !strings.Contains(rest, "from")
}

// maxBullet is how far a bullet is looked at: some lines of a list.
const maxBullet = 400

// opensBold reports whether stars only make a label bold: there are as many
// before the end of the line, without others between, after or before a colon.
func (s *scanner) opensBold(from span) bool {
	stars := s.source[from.start:s.at]
	line := s.source[s.at:min(len(s.source), s.at+maxBullet)]
	s.ahead += len(line)
	if i := strings.IndexAny(line, "\n\r"); i >= 0 {
		line = line[:i]
	}
	i := strings.Index(line, stars)
	if i < 1 || line[0] == ' ' || line[i-1] == ' ' {
		return false
	}
	rest := strings.TrimLeft(line[i+len(stars):], " ")
	switch last := line[i-1]; {
	case rest == "" && (len(stars) == 2 || !strings.ContainsAny(line[:i], ",;")), strings.HasPrefix(rest, ":"),
		last == ':' && (!strings.HasPrefix(rest, "*") || len(stars) == 2 && s.lineStart()),
		len(stars) == 2 && boldWithin(line[:i], rest), rowCell(line[:i]) && line[0] > '9':
		s.bold = s.at + i
		return true
	}
	return false
}

// boldWithin reports whether letters between two pairs of stars within a line, "**Cast on** 120 sts", are only bold:
// nothing among them is parted by a comma, and what follows does not say how often they are worked.
func boldWithin(text, rest string) bool {
	if strings.ContainsAny(text, ",;*[(") {
		return false
	}
	next, _, _ := strings.Cut(strings.ToLower(strings.TrimLeft(rest, " ,;")), " ")
	next = strings.TrimRight(next, ".,;:)")
	return !starFollowers[next] && (next == "" || !isDigit(rune(next[0])) || isWholly(text))
}

// isWholly reports whether a text is words without numbers, such as "cast on", after which a number is no number of times.
func isWholly(text string) bool { return !strings.ContainsAny(text, "0123456789") }

// starFollowers are words that say how often what stands between stars is worked.
var starFollowers = wordSet("rep repeat to across around twice once thrice until end x from times and then ending")

// lineStart reports whether nothing stands in the line before what comes next.
func (s *scanner) lineStart() bool {
	n := len(s.tokens)
	return n == 0 || s.tokens[n-1].kind == tokenNewline
}

// bullet reports whether a sign at the start of a line only makes it one of a
// list, a heading or a quotation.
func (s *scanner) bullet(c rune, size int) bool {
	switch c {
	case '•', '·':
		return true
	case '-', '+', '>', '#': // a heading may have several
		next, _ := utf8.DecodeRuneInString(strings.TrimLeft(s.source[s.at+size:], string(c)))
		return unicode.IsSpace(next)
	}
	return false
}

// dotted are words that are shortened with a full stop, beside the letters
// of the oldest patterns, "k. 2, p. 2".
var dotted = map[string]bool{"k": true, "p": true, "sl": true, "m": true, "st": true, "sts": true, "beg": true, "rep": true, "rem": true,
	"cont": true, "foll": true, "patt": true, "pat": true, "tog": true, "inc": true, "dec": true, "alt": true, "approx": true, "tbl": true,
	"psso": true, "in": true, "ins": true, "cm": true, "rnd": true, "rnds": true, "rs": true, "ws": true, "no": true, "fwd": true,
	"w": true, "wl": true, "yf": true, "yfwd": true, "yo": true, "pwise": true, "kwise": true, "n": true, "o": true, "incl": true,
	"opp": true, "co": true, "bo": true,
	"meas": true, "yds": true, "oz": true, "st-st": true}

// joinsStitches are words in small letters after which a sentence about stitches goes on.
var joinsStitches = wordSet(`at on to in into of along from rem remain remaining inc dec together down up across for evenly each before
	after over worked have are is also only tog by between around below above`)

// lengthUnit are units of length that are shortened with a full stop, joinsLength words in small
// letters after which a sentence about a length goes on: "2 in. in k1, p1 rib", "8 in. from CO edge".
var (
	lengthUnit  = wordSet("in ins cm mm yd yds")
	joinsLength = wordSet("in of from at long wide deep high tall less more short shorter above below past before after ending and or total")
)

// firstWord is the letters with which a text begins.
func firstWord(text string) string {
	i := 0
	for i < len(text) && text[i] >= 'a' && text[i] <= 'z' {
		i++
	}
	return text[:i]
}

// dottedStitch are those of them that stand before a number without a space, "k.2".
var dottedStitch = map[string]bool{"k": true, "p": true, "sl": true, "m": true, "s": true}

// shortened reports whether a full stop only shortens the word before it: it stands
// before a bracket that closes, or before something that begins no sentence.
func (s *scanner) shortened() bool {
	n := len(s.tokens)
	if n == 0 || s.tokens[n-1].kind != tokenWord || int(s.tokens[n-1].end) != s.at || !dotted[s.tokens[n-1].text] {
		return false
	}
	rest := strings.TrimLeft(s.source[s.at+1:min(len(s.source), s.at+40)], " \t")
	if rest == "" {
		return false
	}
	c, _ := utf8.DecodeRuneInString(rest)
	small, digit := unicode.IsLower(c), unicode.IsDigit(c)
	last := s.tokens[n-1].text
	digit = digit && !(dottedStitch[last] && secondRow(rest))
	switch {
	case strings.ContainsRune(")],;:", c):
		return true
	case s.source[s.at+1] != ' ' && s.source[s.at+1] != '\t':
		return small || digit && dottedStitch[last]
	case endsSentence[last]:
		return goesOnAfter(last, firstWord(rest))
	}
	return small || digit
}

// secondRow reports whether a text begins with "2nd row", which is no number of stitches.
func secondRow(text string) bool {
	rest := strings.TrimLeft(text, "0123456789")
	if len(rest) < 6 || !strings.Contains("st nd rd th", strings.ToLower(rest[:2])) || rest[2] != ' ' {
		return false
	}
	rest = rest[3:]
	return begins(rest, "row") || begins(rest, "rnd") || begins(rest, "round") || begins(rest, "and")
}

// goesOnAfter reports whether a sentence goes on after a shortened word that may end one, by the
// word after it: "2 in. in k1, p1 rib", "3 sts. at each end".
func goesOnAfter(last, next string) bool {
	return (last == "st" || last == "sts") && joinsStitches[next] || lengthUnit[last] && joinsLength[next] || last == "st" && next == "st"
}

// endsSentence are shortened words that also stand at the end of sentences, where small
// letters follow in careless texts.
var endsSentence = map[string]bool{"st": true, "sts": true, "rnd": true, "rnds": true, "cm": true, "in": true, "rs": true, "ws": true}
