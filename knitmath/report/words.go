package report

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// CountOf is a count with its noun, which is given in the plural: "1 stitch",
// "2 stitches", "1 row".
func CountOf(n int, plural string) string {
	if n == 1 {
		return "1 " + singular(plural)
	}
	return strconv.Itoa(n) + " " + plural
}

// AmountOf is a number already written, with its noun in the plural: "1 stitch",
// "0.5 stitches".
func AmountOf(number, plural string) string {
	if number == "1" {
		return CountOf(1, plural)
	}
	return number + " " + plural
}

// Listed joins words: "a", "a and b", "a, b and c".
func Listed(words []string) string {
	last := len(words) - 1
	if last < 1 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

// Sentence is a text with the capital letter that begins a sentence.
func Sentence(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 || first == utf8.RuneError {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}

// Are is the verb of a count: "is" of 1, "are" of any other.
func Are(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// singular undoes the two plurals that the trade's nouns form.
func singular(plural string) string {
	if s, ok := strings.CutSuffix(plural, "ches"); ok {
		return s + "ch"
	}
	if s, ok := strings.CutSuffix(plural, "plies"); ok {
		return s + "ply"
	}
	return strings.TrimSuffix(plural, "s")
}

// Ordinal is "1st", "2nd", "3rd", "4th", "11th", "21st".
func Ordinal(n int) string {
	suffix := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			suffix = "st"
		case 2:
			suffix = "nd"
		case 3:
			suffix = "rd"
		}
	}
	return strconv.Itoa(n) + suffix
}

// Again is how many times more in words, which do not run together with a number before them: "once more", "another 12 times".
func Again(n int) string {
	if n < 3 {
		return Times(n) + " more"
	}
	return "another " + Times(n)
}

// Times is "once", "twice", "3 times".
func Times(n int) string {
	switch n {
	case 1:
		return "once"
	case 2:
		return "twice"
	}
	return strconv.Itoa(n) + " times"
}
