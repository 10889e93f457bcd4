package pattern

import (
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.com/knitmath/knitmath/stitch"
)

// Abbreviation is an abbreviation of the caller's own: what it is called, how
// many stitches it takes off the left needle and how many it leaves.
type Abbreviation struct {
	Name           string
	TakesStitches  int
	LeavesStitches int
}

// meaning is what an abbreviation stands for.
type meaning struct {
	op            stitch.Op
	name          string // of what is no operation
	takes, leaves int16
	times         int    // workings: 2 for "yo2"; 0 is 1
	ask           string // what has to be asked, if the count depends on it
	reading       string // which of several readings was taken
	manner        SlipManner
}

func ofOp(op stitch.Op) meaning {
	return meaning{op: op, takes: int16(op.Takes()), leaves: int16(op.Leaves())}
}

func named(name string, takes, leaves int16) meaning {
	return meaning{name: name, takes: takes, leaves: leaves}
}

// isOtherWork tells whether a name stands for work that is no operation.
func isOtherWork(name string) bool {
	for _, w := range otherWork {
		if slices.Contains(w.names, name) {
			return true
		}
	}
	return false
}

// phrase is an abbreviation of several words.
type phrase struct {
	words []string
	meaning
}

// lookUp is what a word stands for: the caller's own first, then the vocabulary,
// then the families with a number in them.
func lookUp(word string, own map[string]meaning) (meaning, bool) {
	if m, ok := own[word]; ok {
		return m, true
	}
	if m, ok := words[word]; ok {
		return m, true
	}
	return family(word)
}

// family reads k4tog, p5tog and their "tbl"; c6f and c6b, cables of six
// stitches; and 2/2 lc. Common practice.
func family(word string) (meaning, bool) {
	if rest, ok := strings.CutPrefix(word, "pm"); ok && len(rest) == 1 && strings.Contains("123456789abcd", rest) {
		return ofOp(stitch.PlaceMarker), true // "pm1", "pmA": a marker by its name
	}
	for _, tail := range [...]string{"tog tbl", "togtbl", "tog-tbl", "tog"} {
		head, ok := strings.CutSuffix(word, tail)
		if !ok {
			continue
		}
		if len(head) >= 2 {
			if n, ok := whole(head[1:]); ok && n >= 2 && n <= MaxTakes {
				return together(word, head[0], n)
			}
		}
		break
	}
	if m, ok := cable(word); ok {
		return m, true
	}
	return crossing(word)
}

// cableHeads is what stands before the number of stitches of a crossing: C6F, T3B, Cr4L; leanings are what stands after it. A
// crossing keeps its stitches. Common practice.
var cableHeads = []string{"cr", "tw", "c", "t"}

// cable is a crossing by its number of stitches.
func cable(word string) (meaning, bool) {
	for _, head := range cableHeads {
		rest, ok := strings.CutPrefix(word, head)
		if !ok {
			continue
		}
		i := 0
		for i < len(rest) && rest[i] >= '0' && rest[i] <= '9' {
			i++
		}
		if n, ok := whole(rest[:i]); ok && n >= 2 && n <= MaxTakes && leanings[rest[i:]] != "" {
			return named(word, int16(n), int16(n)), true
		}
	}
	return meaning{}, false
}

// together is n stitches worked as one, or crossed.
func together(word string, first byte, n int) (meaning, bool) {
	switch {
	case first == 'k' || first == 'p':
		return named(word, int16(n), 1), true
	}
	return meaning{}, false
}

// crossing is a cable by the stitches that cross, such as 2/1 lpc.
func crossing(word string) (meaning, bool) {
	numbers, kind, _ := strings.Cut(word, " ")
	if !crossingWords[kind] {
		return meaning{}, false
	}
	sum, parts := 0, 0
	for part := range strings.SplitSeq(numbers, "/") {
		n, ok := whole(part)
		if parts++; !ok || n < 1 || sum+n > MaxTakes || parts > 3 {
			return meaning{}, false
		}
		sum += n
	}
	return named(word, int16(sum), int16(sum)), parts > 1
}

// crossingWords are the words after the numbers of a crossing: left, right, with
// purl stitches behind, twisted. Common practice.
var crossingWords = map[string]bool{"lc": true, "rc": true, "lpc": true, "rpc": true, "lt": true, "rt": true, "lpt": true, "rpt": true,
	"lkpc": true, "rkpc": true}

// whole reads a number of at most five digits without leading zeros.
func whole(s string) (int, bool) {
	if s == "" || len(s) > 5 || s[0] < '0' || s[0] > '9' || s[0] == '0' && len(s) > 1 {
		return 0, false
	}
	n, err := strconv.Atoi(s)
	return n, err == nil
}

// ownNames are the declared abbreviations by their lower-case names.
func ownNames(own []Abbreviation) map[string]meaning {
	if len(own) == 0 {
		return nil
	}
	m := make(map[string]meaning, len(own))
	for _, a := range own {
		m[strings.ToLower(a.Name)] = named(strings.ToLower(a.Name), int16(a.TakesStitches), int16(a.LeavesStitches))
	}
	return m
}

// declarable reports whether a name can be declared: one word that begins with a
// letter, at most MaxAbbreviationLength characters, with no meaning of its own
// yet. It says what is wrong if not.
func declarable(name string) (string, bool) {
	tokens := scan(name)
	switch {
	case len(tokens) != 2 || tokens[0].kind != tokenWord || int(tokens[0].end) != len(name):
		return "must be one word of letters and digits that begins with a letter", false
	case utf8.RuneCountInString(name) > MaxAbbreviationLength:
		return "has more than " + strconv.Itoa(MaxAbbreviationLength) + " characters", false
	}
	word := strings.ToLower(name)
	if _, open := questions[word]; open {
		return "", true
	}
	if m, known := lookUp(word, nil); known && m.reading == "" {
		return "is known already, and means something else to every other reader", false
	}
	if base, _, tail, ok := split(word); ok && tail == "" {
		return "reads as " + base + " with a number", false
	}
	if reserved[word] {
		return "is a word of the language of patterns", false
	}
	return "", true
}

// reserved are words that have a part in the grammar.
var reserved = map[string]bool{"rep": true, "repeat": true, "to": true, "end": true, "last": true, "until": true, "across": true,
	"around": true, "once": true, "twice": true, "times": true, "time": true, "more": true, "row": true, "rows": true, "rnd": true,
	"rnds": true, "round": true, "rounds": true, "and": true, "then": true, "st": true, "sts": true, "stitch": true,
	"stitches": true, "in": true, "into": true, "tbl": true, "tog": true, "from": true, "rs": true, "ws": true, "kwise": true,
	"pwise": true, "next": true, "x": true}

// split takes "k5", "sl1", "bo4", "p2tbl" apart.
func split(word string) (base string, n int, tail string, ok bool) {
	i := 0
	for i < len(word) && (word[i] < '0' || word[i] > '9') {
		i++
	}
	j := i
	for j < len(word) && word[j] >= '0' && word[j] <= '9' {
		j++
	}
	if i == j {
		return "", 0, "", false
	}
	base, tail = word[:i], word[j:]
	if base == "s" && (word == "s1" || word == "s2") {
		base = "sl"
	}
	switch base {
	case "k", "p", "sl", "bo", "co", "knit", "purl", "slip", "ktbl", "ptbl", "patt", "rib":
	default:
		return "", 0, "", false
	}
	tail = strings.TrimPrefix(tail, "-")
	switch tail { // letters are colours
	case "", "tbl", "tog", "togtbl", "mc", "cc", "a", "b", "c", "d", "e":
	default:
		return "", 0, "", false
	}
	for _, c := range word[i:j] {
		n = min(10*n+int(c-'0'), MaxNumber+1)
	}
	return base, n, tail, true
}

// folded is a name as names are compared: in lower case.
func folded(name string) string { return strings.ToLower(name) }

// namesOf returns a function that tells whether a name is known, with the caller's
// own, and has a count. Operations have no names here.
func namesOf(own map[string]meaning) func(string) bool {
	return func(name string) bool {
		name = folded(name)
		m, ok := lookUp(name, own)
		return !ok && isOtherWork(name) || ok && m.op == 0 && m.ask == "" && m.name == name
	}
}
