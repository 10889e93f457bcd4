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
		than into onto over rem remaining more these those first both beg beginning ending all evenly as`)
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
		out = append(out, t)
	}
	return out
}

// wraps reports whether a text goes on with a token after a line break.
func wraps(source string, next *token, before []token) bool {
	if next.kind != tokenWord && next.kind != tokenNumber || len(before) == 0 {
		return false
	}
	last := &before[len(before)-1]
	c := rune(source[next.start])
	if !unicode.IsLower(c) && next.kind == tokenWord || last.kind != tokenWord && last.kind != tokenNumber && !last.is(",", ")", "]") {
		return false
	}
	if last.kind == tokenWord && wrapBefore[last.text] && (next.kind == tokenWord || !last.is("all", "rep", "evenly")) {
		return len(before) > 2 && before[len(before)-2].kind != tokenNewline
	}
	return next.kind == tokenWord && wrapAfter[next.text] && !last.is(",") && len(before) > 1 &&
		!(next.row() && endsDigit(source, next))
}

// endsDigit reports whether a number follows a word: "row 1" begins a line.
func endsDigit(source string, t *token) bool {
	rest := strings.TrimLeft(source[t.end:], " ")
	return rest != "" && rest[0] >= '0' && rest[0] <= '9'
}
