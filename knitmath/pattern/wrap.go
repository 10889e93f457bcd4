package pattern

import (
	"strings"
	"unicode"
)

// wordSet makes a set of words.
func wordSet(text string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(text) {
		m[w] = true
	}
	return m
}

// Words at a line break that only the setting of the text has made: before it a word
// that ends no sentence, or after it one that begins none.
var (
	wrapBefore = wordSet(`to last from rep repeat the next in until and then of with for at on a an every each foll following place using or by
		row rnd round rows rnds than into onto over rem remaining more these those first both beg beginning ending all evenly as`)
	wrapAfter = wordSet(`times sts st stitches more of end last from rnd rnds rows row round rounds needle needles cm mm inches inch the
		and or to
		across until rem remaining for on at before after marker markers m tog together loosely evenly twice once foll following using by total
		beg
		other alt sides side edge edges holder in each every into onto over bef rep facing shaping`)
)

// unwrapped leaves out the line breaks that only the setting has made.
func unwrapped(source string, tokens []token) []token {
	out := tokens[:0]
	for i := range tokens {
		t := tokens[i]
		if t.kind == tokenNewline && t.number == 1 && i > 0 && i+1 < len(tokens) && wraps(source, &tokens[i+1], out) {
			continue
		}
		if n := len(out); n > 0 && t.is("-") && out[n-1].is(".") && out[n-1].end == t.start {
			continue // "Heel.—Cast on" of older booklets
		}
		out = append(out, t)
	}
	return out
}

// wraps reports whether a text goes on with a token after a line break.
func wraps(source string, next *token, before []token) bool {
	n := len(before)
	if n == 0 {
		return false
	}
	last := &before[n-1]
	switch {
	case next.kind == tokenStar && last.is("from"), inList(next, before):
		return true
	case !mayGoOn(source, next, last):
		return false
	case last.kind == tokenWord && wrapBefore[last.text] && (next.kind == tokenWord || !last.is("all", "rep", "evenly")):
		return n > 2 && before[n-2].kind != tokenNewline
	}
	return next.kind == tokenWord && wrapAfter[next.text] && !last.is(",") && n > 1 && !(next.row() && endsDigit(source, next))
}

// mayGoOn reports whether a sentence may go on from one token to the next: to a number or a word
// in small letters, from what ends none.
func mayGoOn(source string, next, last *token) bool {
	if next.kind == tokenWord && !unicode.IsLower(rune(source[next.start])) || next.kind != tokenWord && next.kind != tokenNumber {
		return false
	}
	if _, _, _, counted := split(next.text); (counted || directing[next.text]) && last.row() { // "in round", and what is worked below
		return false
	}
	return last.kind == tokenWord || last.kind == tokenNumber || last.is(",", ")", "]")
}

// inList reports whether a list of numbers, "80 (88, 96)", goes on after a line break.
func inList(next *token, before []token) bool {
	n := len(before)
	last := &before[n-1]
	switch {
	case next.is("(", "["):
		return last.kind == tokenNumber && n > 1 && (before[n-2].kind == tokenWord || before[n-2].is("."))
	case next.kind != tokenNumber || !last.is(",", "(", ":") || n < 3:
		return false
	}
	for i := n - 1; i >= max(n-2*MaxSizes, 1); i-- {
		switch t := &before[i]; {
		case t.is("(", "["):
			return before[i-1].kind == tokenNumber || before[i-1].kind == tokenWord
		case t.kind != tokenNumber && !t.is(",", ":", "-"):
			return false
		}
	}
	return false
}

// endsDigit reports whether a number follows a word: "row 1" begins a line.
func endsDigit(source string, t *token) bool {
	rest := strings.TrimLeft(source[t.end:], " ")
	return rest != "" && rest[0] >= '0' && rest[0] <= '9'
}
