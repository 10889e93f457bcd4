package yarn

import (
	"math/big"
	"slices"
	"strconv"
	"strings"
)

// readNotation reads a count as bands, cones and patterns write it:
//
//	28/2 Nm    Nm 28/2    2/28 Nm    30/2 Ne    2/24s worsted    60/2 spun silk
//	R 74 tex/2    37 tex x 2    150 denier    5 run    12 US cut    2-ply 28 Nm
//	NeK 24/2    10/2 perle cotton    2/17 Nm silk    78 dtex f24 x 2
//	400 m/100 g    1,600 yd/lb    100 g = 210 yards    1 000 m/kg
//	34 tex Z600 x 2 S400; R 69.3 tex    R 69.3 tex/2 S400    0,5 tex
//
// Beside is the system where the text says none. What cannot be read is told in
// wrong, with what would be.
func readNotation(text string, beside CountSystem) (w written, wrong string) {
	if strings.Count(text, ";") == 1 {
		return readBoth(text, beside)
	}
	all, left := scan(text)
	if left != "" {
		return w, "has " + strconv.Quote(left) + ", which is not understood; numbers are written as in 28/2 Nm or 37.5 tex"
	}
	if w, wrong, ok := readPutUp(all); ok {
		return w, wrong
	}
	perle := says(all, "perle", "pearl")
	w.twist, all = takeTwists(all)
	all = takeFilaments(all)
	raw := says(all, "silk")
	w.system, all = takeSystem(all)
	if !w.system.known() {
		w.system = beside
	}
	if w.system.known() {
		all = slices.DeleteFunc(all, func(m mark) bool { return slices.Contains(fibreWords, m.word) })
	}
	plies, all := takePlies(all)
	if _, _, ok := readPutUp(all); ok && plies != nil {
		return w, "says how many plies beside a length and a weight; leave the plies out: on a band they are mostly the name of a weight, " +
			"and the length says how thick the yarn is"
	}
	resultant, all := takeResultant(all)
	all = slices.DeleteFunc(all, func(m mark) bool { return slices.Contains(silent, m.word) })
	if wrong := wrongWords(all, w.system, plies); wrong != "" {
		return w, wrong
	}
	if perle && len(all) == 1 {
		return w, "is a size of perle cotton, which is a name and no count; write both numbers, as in 10/2 perle cotton, or what the band " +
			"says, as in 80 m/10 g"
	}
	if resultant {
		w.of = NumberOfWhole
	}
	w, wrong = w.readNumbers(all, plies)
	w = w.readSilk(raw)
	if perle {
		w.other = nil // perle is sold in two plies, behind the count: common practice
	}
	return w, wrong
}

// silent are words and endings that say nothing: 28s, 28's, No. 5, count.
var silent = []string{"s", "no", "nr", "count", "counts", "yarn", "of"}

// fibreWords are what a yarn is of, which says nothing where the system is named beside it.
// Worsted is not here: beside another system it might be either.
var fibreWords = []string{"silk", "wool", "merino", "mohair", "alpaca", "cashmere", "cotton", "linen", "lambswool", "shetland", "tussah",
	"nylon", "polyester", "viscose", "acrylic", "bamboo", "hemp", "ramie", "mercerised", "mercerized"}

// takeFilaments leaves out how many filaments a single has, f and a number, which says how
// soft it is and not how thick.
func takeFilaments(all []mark) []mark {
	for i := 1; i+1 < len(all); i++ {
		if all[i].word == "f" && all[i+1].number != nil {
			return slices.Delete(slices.Clone(all), i, i+2)
		}
	}
	return all
}

// takePlies finds "2-ply" among the marks, 0 when there is none.
func takePlies(all []mark) (*big.Rat, []mark) {
	for i := 1; i < len(all); i++ {
		if all[i-1].number != nil && slices.Contains([]string{"ply", "plies", "fold"}, all[i].word) {
			return all[i-1].number, slices.Delete(slices.Clone(all), i-1, i+1)
		}
	}
	return nil, all
}

// takeResultant finds the R of a resultant count, before its number.
func takeResultant(all []mark) (bool, []mark) {
	for i := 1; i < len(all); i++ {
		if all[i-1].word == "r" && all[i].number != nil {
			return true, slices.Delete(slices.Clone(all), i-1, i)
		}
	}
	return false, all
}

// countAndWords are how many numbers there are among the marks, and the words beside
// them.
func countAndWords(all []mark) (numbers int, words []string) {
	for _, m := range all {
		switch {
		case m.number != nil:
			numbers++
		case m.word != "/" && m.word != "x":
			words = append(words, m.word)
		}
	}
	return numbers, words
}

// wrongWords says what is wrong with the words of a notation.
func wrongWords(all []mark, system CountSystem, plies *big.Rat) string {
	numbers, words := countAndWords(all)
	switch {
	case says(all, "wpi", "wraps"):
		return "is wraps, which are no count: how often a yarn goes round a ruler depends on how lofty it is; ask what the yarn is by its wraps"
	case !system.known() && says(all, "cut", "cuts"):
		return "a cut is three things, 300 yards in the US (Philadelphia), 200 in Galashiels and 100 of glass or asbestos yarn: " +
			"write US cut, Galashiels cut or glass cut"
	case !system.known() && says(all, "silk"):
		return "silk is counted in hanks of 840 yards when spun, and in denier or drams when reeled: write spun silk, denier or dram silk"
	case len(words) > 0:
		return "has " + strconv.Quote(strings.Join(words, " ")) + ", which is not understood; write the number and its system, as in 28/2 Nm"
	case numbers == 0 && plies != nil:
		return "says how many strands there are, or a weight by its British name, but not how thick they are; add a count, as in 2-ply 28 Nm"
	case numbers == 0:
		return "has no number"
	case !system.known():
		return "says no system; write it behind the number, as in 28/2 Nm, 30/2 Ne or 2/24 worsted, or give system"
	case numbers > 2:
		return "has more than a count and a number of plies; of a cabled yarn give the singles and how many there are in all"
	}
	return ""
}

// readNumbers reads a number, or two with a stroke or a cross between them.
func (w written) readNumbers(all []mark, plies *big.Rat) (written, string) {
	for _, m := range all {
		if m.number != nil && !countable(m.number) {
			return w, "has a number that is 0 or that no yarn has; numbers from 0.000001 to 100000000 are read"
		}
	}
	switch {
	case len(all) == 1 && all[0].number != nil:
		w.number, w.plies = all[0].number, 1
		if plies == nil {
			return w, ""
		}
		var ok bool
		if w.plies, ok = wholePlies(plies); !ok {
			return w, notPlies
		}
		return w, ""
	case len(all) == 3 && all[0].number != nil && all[1].word != "" && all[2].number != nil && plies == nil:
		return w.readPair(all[0].number, all[1].word, all[2].number)
	}
	return w, "is not a number, nor a count with its plies, as in 28/2 Nm or 37 tex x 2"
}

const notPlies = "has no number that could be that of the plies: a whole one from 1 to 100"

// readPair reads a count and its plies, in whichever order. Where both numbers may be
// the plies the smaller one is: yarns have more hanks than plies, but for the thickest,
// of which the other reading is kept.
func (w written) readPair(first *big.Rat, sign string, second *big.Rat) (written, string) {
	style := countSystems[w.system].style
	if style == plyTimes && sign == "/" && w.of != NumberOfWhole && w.system != CountSystemTex {
		w.number, w.plies, w.filaments = first, 1, true
		if w.system == CountSystemDenier {
			w.other = w.rangeOfSilk(second)
		}
		return w, ""
	}
	before, plied := wholePlies(first)
	after, plying := wholePlies(second)
	if style == plyTimes { // The count is always first.
		plied = false
	}
	switch {
	case !plied && !plying:
		return w, notPlies
	case plied && (!plying || first.Cmp(second) < 0):
		w.number, w.plies = second, before
	default:
		w.number, w.plies = first, after
	}
	w.other = w.otherReading(sign, before, after, plied && plying)
	return w, ""
}

// rangeOfSilk is the other reading of two numbers in denier that are near to one another:
// reeled silk is never quite even, and is sold by a range, 20/22, of which the middle counts.
// nil where they are not so near. Common practice.
func (w written) rangeOfSilk(end *big.Rat) *written {
	most := new(big.Rat).Mul(w.number, big.NewRat(5, 4))
	if w.number.Cmp(end) >= 0 || end.Cmp(most) > 0 {
		return nil
	}
	middle := new(big.Rat).Add(w.number, end)
	return &written{number: middle.Quo(middle, big.NewRat(2, 1)), system: w.system, plies: 1, ranged: true}
}

// readSilk takes the range where the notation says that it is of silk.
func (w written) readSilk(raw bool) written {
	if raw && w.other != nil && w.other.ranged {
		return *w.other
	}
	return w
}

// otherReading is how else some read the same two numbers; nil where nobody does.
func (w written) otherReading(sign string, before, after int, either bool) *written {
	other := w
	switch {
	case sign == "/" && w.plies > fewPlies && before > 0 && after > 0 && before != after && countSystems[w.system].style != plyTimes,
		either && before != after && max(before, after) <= fewPlies:
		other.number, other.plies = big.NewRat(int64(w.plies), 1), before+after-w.plies
	case w.system == CountSystemTex && sign == "/" && w.of == NumberOfUnspecified: // an R that was left out
		other.of = NumberOfWhole
	default:
		return nil
	}
	return &other
}

// fewPlies is the most plies that are usual. Common practice.
const fewPlies = 12

// wholePlies is a number of plies.
func wholePlies(r *big.Rat) (int, bool) {
	if !r.IsInt() || !r.Num().IsInt64() {
		return 0, false
	}
	n := r.Num().Int64()
	return int(n), n >= 1 && n <= MaxPlies
}

// countable reports whether a number is one that counts may have.
func countable(r *big.Rat) bool {
	f := nearest(r)
	return f >= MinNumber && f <= MaxNumber
}
