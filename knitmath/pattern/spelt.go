package pattern

import "strings"

// inWords are the numbers that are written out where another was.
var inWords = [...]string{"one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
	"thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"}

// rewritten is a spot with another number, spelt as it is.
func (s *spot) rewritten(n int) string {
	switch {
	case s.often && n == 1:
		return "once"
	case s.often && n == 2:
		return "twice"
	case s.often:
		return numeral(n) + " times"
	case s.word && n > 0 && n <= len(inWords):
		return inWords[n-1]
	}
	return s.head + numeral(n) + s.tail
}

// agreeing is a spot with another number and what is counted, where that has to agree with it:
// "once" for "3 times", "1 st" for "2 sts". next is what follows the spot in the text, taken how
// much of it is replaced too; nothing is if it agrees as it is.
func (s *spot) agreeing(n int, next string) (put string, taken int) {
	if s.head != "" || s.often || n == s.value {
		return "", 0
	}
	between, noun := nounAfter(next)
	switch {
	case noun == "times" && n == 1:
		put = "once" + between
	case noun == "times" && n == 2 && s.word:
		put = "twice" + between
	case n == 1 && singulars[noun] != "":
		put = s.rewritten(n) + between + " " + singulars[noun]
	case s.value == 1 && plurals[noun] != "":
		put = s.rewritten(n) + between + " " + plurals[noun]
	default:
		return "", 0
	}
	return put, len(between) + 1 + len(noun)
}

// nounAfter is the word for what is counted, "sts" or "times", with which a text begins after a
// number, and what stands between, such as " more"; no word if the text does not go on so.
func nounAfter(next string) (between, noun string) {
	for _, word := range [...]string{" more", " further", " additional"} {
		if strings.HasPrefix(next, word+" ") {
			between = word
		}
	}
	rest, ok := strings.CutPrefix(next[len(between):], " ")
	if !ok {
		return between, ""
	}
	noun, _, _ = strings.Cut(rest, " ")
	return between, strings.TrimRight(noun, ".,;:)]}\n\r")
}

var (
	singulars = map[string]string{"sts": "st", "stitches": "stitch", "rows": "row", "rnds": "rnd", "rounds": "round", "repeats": "repeat"}
	plurals   = map[string]string{"st": "sts", "stitch": "stitches", "row": "rows", "rnd": "rnds", "round": "rounds", "repeat": "repeats",
		"time": "times"}
)
