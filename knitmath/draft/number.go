package draft

import "strings"

var small = map[string]int{"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
	"eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18,
	"nineteen": 19}

var tens = map[string]int{"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90}

// Number is a number written out, up to ninety-nine.
func Number(word string) (int, bool) {
	if n, ok := small[word]; ok {
		return n, true
	}
	head, tail, _ := strings.Cut(word, "-")
	n, ok := tens[head]
	if !ok || tail == "" {
		return n, ok
	}
	unit, ok := small[tail]
	return n + unit, ok && unit < 10
}

var ordinals = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "eighth": 8,
	"ninth": 9, "tenth": 10, "eleventh": 11, "twelfth": 12, "other": 2, "alt": 2, "alternate": 2}

// Ordinal is an ordinal written out, up to the twelfth: every other row is every
// second.
func Ordinal(word string) (int, bool) {
	n, ok := ordinals[word]
	return n, ok
}
