package pattern

import (
	"slices"
	"strings"
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// sized is "88 (96, 104)", one number where all sizes have the same, "?" for one that is
// not known, "" where none is.
func sized(numbers []int) string {
	if len(numbers) == 0 || slices.Max(numbers) < 0 {
		return ""
	}
	same := !slices.ContainsFunc(numbers, func(n int) bool { return n != numbers[0] })
	if same {
		return numeral(numbers[0])
	}
	var b strings.Builder
	for i, n := range numbers {
		switch i {
		case 0:
		case 1:
			b.WriteString(" (")
		default:
			b.WriteString(", ")
		}
		if n < 0 {
			b.WriteString("?")
		} else {
			b.WriteString(numeral(n))
		}
	}
	b.WriteString(")")
	return b.String()
}

// shown is a line of a text as it can be printed: tabs are spaces, and what cannot be seen
// is left out.
func shown(text string) string {
	text = strings.Map(func(c rune) rune {
		switch {
		case c == '\t' || unicode.IsSpace(c):
			return ' '
		case draft.Invisible(c) || unicode.IsControl(c):
			return -1
		}
		return c
	}, strings.ToValidUTF8(text, "\uFFFD"))
	return strings.TrimRight(text, " ")
}

// wrapped is a text in lines of at most so many characters, broken between words where
// there are any.
func wrapped(text string, width int) []string {
	var out []string
	rest := []rune(text)
	for len(rest) > width {
		cut := width
		for cut > width/2 && rest[cut] != ' ' {
			cut--
		}
		if rest[cut] != ' ' {
			cut = width
		}
		out = append(out, strings.TrimRight(string(rest[:cut]), " "))
		rest = rest[cut:]
		for len(rest) > 0 && rest[0] == ' ' {
			rest = rest[1:]
		}
	}
	if len(rest) > 0 {
		out = append(out, string(rest))
	}
	return out
}

func left(text string, width int) string {
	return text + strings.Repeat(" ", max(width-len([]rune(text)), 0))
}

func right(text string, width int) string {
	return strings.Repeat(" ", max(width-len([]rune(text)), 0)) + text
}
