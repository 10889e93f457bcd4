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
	between := ""
	for _, word := range [...]string{" more", " further", " additional"} {
		if strings.HasPrefix(next, word+" ") {
			between = word
		}
	}
	noun, _, _ := strings.Cut(strings.TrimPrefix(next[len(between):], " "), " ")
	noun = strings.TrimRight(noun, ".,;:)]}\n\r")
	taken = len(between) + 1 + len(noun)
	if !strings.HasPrefix(next[len(between):], " ") {
		return "", 0
	}
	switch {
	case noun == "times" && n == 1:
		return "once" + between, taken
	case noun == "times" && n == 2 && s.word:
		return "twice" + between, taken
	case n == 1 && singulars[noun] != "":
		return s.rewritten(n) + between + " " + singulars[noun], taken
	case s.value == 1 && plurals[noun] != "":
		return s.rewritten(n) + between + " " + plurals[noun], taken
	}
	return "", 0
}

var (
	singulars = map[string]string{"sts": "st", "stitches": "stitch", "rows": "row", "rnds": "rnd", "rounds": "round", "repeats": "repeat"}
	plurals   = map[string]string{"st": "sts", "stitch": "stitches", "row": "rows", "rnd": "rnds", "round": "rounds", "repeat": "repeats",
		"time": "times"}
)
