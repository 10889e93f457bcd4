package yarn

import (
	"math/big"
	"regexp"
	"strings"
)

// A mark is a piece of a notation: a number, a word, or a sign between numbers.
type mark struct {
	number *big.Rat
	// thousands is that the point of a number may be of thousands, as some write them: three
	// digits behind it, at most three before, and the last a 0, which hardly anybody writes
	// of a part.
	thousands bool
	word      string // in lower case; or one of the signs / x :
}

// marks are what notations are made of: numbers with a point or a decimal comma, or with
// commas or spaces between groups of three digits; words; the strokes and crosses between
// numbers. A comma before three digits is of thousands, but for 0,125.
var marks = regexp.MustCompile(`[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?|[1-9]\d{0,2}(?:[ \x{a0}\x{202f}]\d{3})+(?:[.,]\d+)?|\d+,\d+|\d*\.?\d+|` +
	`\pL+|[/×*:=]`)

// spaced are the spaces that stand between thousands.
var spaced = strings.NewReplacer(" ", "", "\u00a0", "", "\u202f", "")

// decimalComma is a number with one; groups of three are thousands.
var decimalComma = regexp.MustCompile(`^(?:0|\d+),(?:\d{1,2}|\d{4,})$|^0\d*,\d+$`)

// between is what may stand between marks without saying anything. A comma does so
// before a space; a minus would be lost.
var between = regexp.MustCompile(`^(?:[\s.'’()]|,\s)*$`)

// joined is the hyphen of "2-ply".
var joined = regexp.MustCompile(`([\pL\d])-(\pL)`)

// scan cuts a notation into its marks. What is left over is the first that was not
// understood.
func scan(text string) (found []mark, left string) {
	if strings.Contains(text, "-") {
		text = joined.ReplaceAllString(text, "$1 $2")
	}
	end := 0
	for _, at := range marks.FindAllStringIndex(text, -1) {
		if gap := text[end:at[0]]; gap != "" && gap != " " && !between.MatchString(gap) {
			return nil, strings.TrimSpace(gap)
		}
		end = at[1]
		found = append(found, markOf(text[at[0]:at[1]]))
	}
	if rest := text[end:]; !between.MatchString(rest) {
		return nil, strings.TrimSpace(rest)
	}
	return found, ""
}

func markOf(s string) mark {
	if c := s[0]; c == '.' || c >= '0' && c <= '9' {
		if s = spaced.Replace(s); decimalComma.MatchString(s) {
			s = strings.Replace(s, ",", ".", 1)
		}
		whole, part, _ := strings.Cut(s, ".")
		thousands := len(whole) >= 1 && len(whole) <= 3 && len(part) == 3 && part[2] == '0'
		plain := strings.ReplaceAll(s, ",", "")
		if n := shortDecimal([]byte(plain)); n != nil {
			return mark{number: n, thousands: thousands}
		}
		if n, ok := new(big.Rat).SetString(plain); ok {
			return mark{number: n, thousands: thousands}
		}
	}
	switch s = strings.ToLower(s); s {
	case "×", "*":
		s = "x"
	case ":", "=":
		s = "="
	}
	return mark{word: s}
}
