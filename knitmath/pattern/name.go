package pattern

import (
	"strconv"
	"strings"

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

// phrase is an abbreviation of several words.
type phrase struct {
	words []string
	meaning
}

// words and phrases are the vocabulary: every operation of package stitch under
// its abbreviation, and what follows here. Common practice, and the list in
// testdata/stitch/abbreviations.csv.
var words, phrases = vocabulary()

func vocabulary() (map[string]meaning, map[string][]phrase) {
	w, ph := map[string]meaning{}, map[string][]phrase{}
	put := func(abbr string, m meaning) {
		parts := strings.Fields(abbr)
		if len(parts) == 1 {
			if _, known := w[abbr]; !known {
				w[abbr] = m
			}
			return
		}
		list := ph[parts[0]]
		i := 0
		for i < len(list) && len(list[i].words) >= len(parts) { // longest first
			i++
		}
		list = append(list, phrase{})
		copy(list[i+1:], list[i:])
		list[i] = phrase{parts, m}
		ph[parts[0]] = list
	}
	for _, op := range stitch.Ops() {
		put(strings.ToLower(op.Abbr()), ofOp(op))
	}
	for abbr, op := range otherNames {
		put(abbr, ofOp(op))
	}
	for _, n := range otherWork {
		put(n.name, n)
	}
	for abbr, question := range questions {
		put(abbr, meaning{ask: question})
	}
	for abbr, manner := range map[string]SlipManner{"sl1k": SlipMannerKwise, "sl1p": SlipMannerPwise} {
		m := ofOp(stitch.Slip)
		m.manner = manner
		put(abbr, m)
	}
	double := ofOp(stitch.YO)
	double.times = 2
	put("yo2", double)
	for _, open := range []string{"m1", "m1p"} {
		m := w[open]
		left, right := open[:2]+"l"+open[2:], open[:2]+"r"+open[2:]
		m.reading = open + " leans either way: the count is the same; write " + left + " or " + right + " to say which"
		w[open] = m
	}
	m := named("k1b", 1, 1)
	m.reading = "k1b is knit one in the row below with some publishers and knit one through the back loop (k1 tbl) with others: " +
		"one stitch either way"
	put("k1b", m)
	return w, ph
}

// otherNames are other ways to write an operation.
var otherNames = map[string]stitch.Op{
	"knit": stitch.Knit, "purl": stitch.Purl, "slip": stitch.Slip, "sl st": stitch.Slip,
	"ktbl": stitch.KnitTbl, "ptbl": stitch.PurlTbl,
	"knit tbl": stitch.KnitTbl, "purl tbl": stitch.PurlTbl,
	"s2kp": stitch.CDD, "s2kp2": stitch.CDD, "sl2-k1-p2sso": stitch.CDD, "sl2-k1-psso": stitch.CDD, "sl2k1p2sso": stitch.CDD,
	"sl1-k1-psso": stitch.SKP, "sl1k1psso": stitch.SKP, "skpo": stitch.SKP,
	"sl1-k2tog-psso": stitch.SK2P, "sl1k2togpsso": stitch.SK2P, "sk2po": stitch.SK2P,
	"yarn over": stitch.YO, "yon": stitch.YO, "yrn": stitch.YO, "yarn round needle": stitch.YO, "yarn over needle": stitch.YO,
	"cast on": stitch.CastOn, "bind off": stitch.BindOff, "cast off": stitch.BindOff,
	"place marker": stitch.PlaceMarker, "place m": stitch.PlaceMarker,
	"slip marker": stitch.SlipMarker, "sl m": stitch.SlipMarker, "slip m": stitch.SlipMarker, "sl marker": stitch.SlipMarker,
	"turn work": stitch.Turn, "turn the work": stitch.Turn,
	"wrap and turn": stitch.WrapTurn, "wrap & turn": stitch.WrapTurn, "wrap next st and turn": stitch.WrapTurn,
	"w & t": stitch.WrapTurn, "w and t": stitch.WrapTurn, "w t": stitch.WrapTurn,
	"k1 ds": stitch.KnitDouble, "p1 ds": stitch.PurlDouble, "mds": stitch.MakeDouble, "make double stitch": stitch.MakeDouble,
	"k1 tog with wrap": stitch.KnitWrapped, "k1 tog with the wrap": stitch.KnitWrapped,
	"p1 tog with wrap": stitch.PurlWrapped, "p1 tog with the wrap": stitch.PurlWrapped,
	"make one left": stitch.M1L, "make one right": stitch.M1R,
}

// otherWork is what has a count but is no operation.
var otherWork = []meaning{
	named("work", 1, 1), // in pattern, whatever it is
	named("kll", 0, 1), named("krl", 0, 1),
	named("lt", 2, 2), named("rt", 2, 2),
	named("ksp", 2, 1), named("sspp2", 3, 1),
	named("byo", 0, 1), named("kyok", 1, 3), named("kfbf", 1, 3),
	named("k2tog tbl", 2, 1), named("p2tog tbl", 2, 1), named("k3tog tbl", 3, 1), named("p3tog tbl", 3, 1),
	named("rm", 0, 0), named("yb", 0, 0), named("wyif", 0, 0), named("wyib", 0, 0),
	named("psso", 0, -1), named("p2sso", 0, -2),
}

// questions are abbreviations whose count depends on what is meant.
var questions = map[string]string{
	"inc":  "an increase takes no stitch (m1l, m1r, yo) or one (kfb, pfb): name it, or declare inc",
	"dec":  "a decrease may be k2tog, ssk, p2tog or a double one: name it, or declare dec",
	"m":    "m is metre or marker: write sm to slip a marker, pm to place one",
	"yf":   "yf is yarn to front (no stitch) or a yarn over (one stitch): write wyif or yo, or declare yf",
	"yfwd": "yfwd is yarn to front (no stitch) or a yarn over (one stitch): write wyif or yo, or declare yfwd",
	"lc":   "how many stitches cross? write 2/2 lc or c4f, or declare lc",
	"rc":   "how many stitches cross? write 2/2 rc or c4b, or declare rc",
	"lpc":  "how many stitches cross? write 2/1 lpc, or declare lpc",
	"rpc":  "how many stitches cross? write 2/1 rpc, or declare rpc",
	"mb":   "a bobble usually ends with the stitch it began with, but not always: declare mb",
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
	for _, tail := range [...]string{"tog tbl", "tog", "f", "b"} {
		head, ok := strings.CutSuffix(word, tail)
		if !ok {
			continue
		}
		if len(head) >= 2 {
			if n, ok := whole(head[1:]); ok && n >= 2 && n <= MaxTakes {
				return together(word, head[0], n, len(tail) > 1)
			}
		}
		break
	}
	return crossing(word)
}

// together is n stitches worked as one, or crossed.
func together(word string, first byte, n int, asOne bool) (meaning, bool) {
	switch {
	case asOne && (first == 'k' || first == 'p'):
		return named(word, int16(n), 1), true
	case !asOne && first == 'c' && n%2 == 0:
		return named(word, int16(n), int16(n)), true
	}
	return meaning{}, false
}

// crossing is a cable by the stitches that cross, such as 2/1 lpc.
func crossing(word string) (meaning, bool) {
	over, rest, _ := strings.Cut(word, "/")
	under, kind, _ := strings.Cut(rest, " ")
	a, okA := whole(over)
	b, okB := whole(under)
	switch kind {
	case "lc", "rc", "lpc", "rpc":
		if okA && okB && a >= 1 && b >= 1 && a+b <= MaxTakes {
			return named(word, int16(a+b), int16(a+b)), true
		}
	}
	return meaning{}, false
}

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
// letter, at most MaxAbbreviationLength characters. It says what is wrong if not.
func declarable(name string) (string, bool) {
	tokens := scan(name)
	switch {
	case name == "":
		return "is empty", false
	case len(tokens) != 2 || tokens[0].kind != tokenWord || int(tokens[0].end) != len(name):
		return "must be one word of letters and digits that begins with a letter", false
	case len([]rune(name)) > MaxAbbreviationLength:
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
	switch base {
	case "k", "p", "sl", "bo", "co", "knit", "purl", "slip", "ktbl", "ptbl":
	default:
		return "", 0, "", false
	}
	switch tail {
	case "", "tbl", "tog":
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
func namesOf(own []Abbreviation) func(string) bool {
	mine := ownNames(own)
	return func(name string) bool {
		name = folded(name)
		m, ok := lookUp(name, mine)
		if !ok {
			for _, n := range otherWork {
				if n.name == name {
					return true
				}
			}
		}
		return ok && m.op == 0 && m.ask == "" && m.name == name
	}
}
