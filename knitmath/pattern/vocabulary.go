package pattern

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// words and phrases are the vocabulary: every operation of package stitch under
// its abbreviation, and what follows here. Common practice, and the list in
// testdata/stitch/abbreviations.csv.
var words, phrases = vocabulary()

func vocabulary() (map[string]meaning, map[string][]phrase) {
	v := lexicon{map[string]meaning{}, map[string][]phrase{}}
	for _, op := range stitch.Ops() {
		v.put(strings.ToLower(op.Abbr()), ofOp(op))
	}
	for abbr, op := range otherNames {
		v.put(abbr, ofOp(op))
	}
	for _, w := range otherWork {
		for _, name := range w.names {
			v.put(name, named(name, w.takes, w.leaves))
		}
	}
	for abbr, question := range questions {
		v.put(abbr, meaning{ask: question})
	}
	for abbr, manner := range map[string]SlipManner{"sl1k": SlipMannerKwise, "sl1p": SlipMannerPwise} {
		m := ofOp(stitch.Slip)
		m.manner = manner
		v.put(abbr, m)
	}
	v.yarnOvers()
	v.changes()
	for _, r := range readAs {
		for _, abbr := range r.abbrs {
			m := named(abbr, r.takes, r.leaves)
			m.reading = r.reading
			v.put(abbr, m)
		}
	}
	for _, abbr := range []string{"patt", "rib", "cont", "continue", "pattern"} {
		v.words[abbr] = named("work", 1, 1)
	}
	return v.words, v.phrases
}

// lexicon is the vocabulary while it is put together.
type lexicon struct {
	words   map[string]meaning
	phrases map[string][]phrase
}

// put adds an abbreviation, if it is not known yet, or a phrase.
func (v *lexicon) put(abbr string, m meaning) {
	parts := strings.Fields(abbr)
	if len(parts) == 1 {
		if _, known := v.words[abbr]; !known {
			v.words[abbr] = m
		}
		return
	}
	list := v.phrases[parts[0]]
	i := 0
	for i < len(list) && len(list[i].words) >= len(parts) { // longest first
		i++
	}
	v.phrases[parts[0]] = slices.Insert(list, i, phrase{parts, m})
}

// yarnOvers adds those that are worked twice, and what may be one or only where the yarn goes.
func (v *lexicon) yarnOvers() {
	double := ofOp(stitch.YO)
	double.times = 2
	for _, abbr := range []string{"yo2", "dyo", "double yo", "double yarn over", "2yo", "y2rn", "yrn2", "y2o", "yo x 2", "yo2x"} {
		v.put(abbr, double)
	}
	fwd := ofOp(stitch.YO)
	fwd.reading = "yfwd is read as a yarn over; where the yarn only comes to the front, write wyif"
	v.words["yfwd"] = fwd
	v.words["yf"] = meaning{ask: questions["yf"]}
}

// changes adds increases and decreases that are not named, or whose lean is not.
func (v *lexicon) changes() {
	for _, open := range []string{"m1", "m1p"} {
		m := v.words[open]
		left, right := open[:2]+"l"+open[2:], open[:2]+"r"+open[2:]
		m.reading = open + " leans either way: the count is the same; write " + left + " or " + right + " to say which"
		v.words[open] = m
	}
	for abbr, m := range map[string]meaning{"inc": named("inc", 1, 2), "dec": named("dec", 2, 1)} {
		m.reading = changeReadings[abbr]
		v.words[abbr] = m
		for _, one := range []string{" 1", " 1 st", " one", " one st"} {
			v.put(abbr+one, m)
		}
	}
}

// readAs are abbreviations that are taken for something, which is said.
var readAs = []struct {
	abbrs         []string
	takes, leaves int16
	reading       string
}{
	{[]string{"brlsl dec", "brrsl dec", "brsl dec"}, 3, 1,
		"read as a decrease of two stitches, each with its yarn over: three become one"},
	{[]string{"k2togb", "p2togb"}, 2, 1,
		"read as two together through the back loops: two stitches become one either way"},
	{[]string{"drop next st", "drop the next st", "drop 1 st", "drop next st off needle", "drop the next st off the needle",
		"drop next st off the needle", "let next st drop", "drop 1 st off needle", "drop 1 st off the needle", "drop the next stitch"}, 1, 0,
		"a stitch that is dropped is read as one that is gone from the count"},
	{[]string{"k1b"}, 1, 1,
		"k1b is knit one in the row below with some publishers and knit one through the back loop (k1 tbl) with others: " +
			"one stitch either way"},
}

// otherNames are other ways to write an operation.
var otherNames = map[string]stitch.Op{
	"knit": stitch.Knit, "purl": stitch.Purl, "slip": stitch.Slip, "sl st": stitch.Slip,
	"ktbl": stitch.KnitTbl, "ptbl": stitch.PurlTbl,
	"k-tbl": stitch.KnitTbl, "p-tbl": stitch.PurlTbl, "k1-tbl": stitch.KnitTbl, "p1-tbl": stitch.PurlTbl,
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
	"ds": stitch.MakeDouble, "k ds": stitch.KnitDouble, "p ds": stitch.PurlDouble, "knit ds": stitch.KnitDouble, "purl ds": stitch.PurlDouble,
	"k1 ds": stitch.KnitDouble, "p1 ds": stitch.PurlDouble, "mds": stitch.MakeDouble, "make double stitch": stitch.MakeDouble,
	"make double st": stitch.MakeDouble, "make a double stitch": stitch.MakeDouble, "make a double st": stitch.MakeDouble,
	"make a ds":        stitch.MakeDouble,
	"k1 tog with wrap": stitch.KnitWrapped, "k1 tog with the wrap": stitch.KnitWrapped,
	"p1 tog with wrap": stitch.PurlWrapped, "p1 tog with the wrap": stitch.PurlWrapped,
	"m1-l": stitch.M1L, "m1-r": stitch.M1R, "m1lk": stitch.M1L, "m1k": stitch.M1, "m1-p": stitch.M1P, "make 1": stitch.M1, "m 1": stitch.M1,
	"make one": stitch.M1, "make 1 left": stitch.M1L,
	"make 1 right": stitch.M1R, "m1 left": stitch.M1L, "m1 right": stitch.M1R, "m1 l": stitch.M1L, "m1 r": stitch.M1R,
	"kf&b": stitch.KFB, "k1f&b": stitch.KFB, "k1fb": stitch.KFB, "kfandb": stitch.KFB, "pf&b": stitch.PFB, "p1f&b": stitch.PFB,
	"p1fb":         stitch.PFB,
	"yarn forward": stitch.YO, "yarn fwd": stitch.YO, "wrn": stitch.YO, "wool round needle": stitch.YO, "y o": stitch.YO, "y/o": stitch.YO,
	"yo's": stitch.YO, "yfrn": stitch.YO,
	"w fwd": stitch.YO, "w fd": stitch.YO, "wool fwd": stitch.YO, "wl fd": stitch.YO,
	"wool forward": stitch.YO, "wl fwd": stitch.YO, "wfwd": stitch.YO, "yf rn": stitch.YO, "yarn-over": stitch.YO, "yarnover": stitch.YO,
	"k2tog-r": stitch.K2tog, "slip slip knit": stitch.SSK, "skpsso": stitch.SKP, "sl1 k1 psso": stitch.SKP, "s1k1psso": stitch.SKP,
	"sl-k-psso":    stitch.SKP,
	"sl 1-k1-psso": stitch.SKP, "s2kpo": stitch.CDD, "sl2kp": stitch.CDD, "sl2kpo": stitch.CDD, "s2k": stitch.CDD,
	"sl 1-k2tog-psso": stitch.SK2P,
	"w+t":             stitch.WrapTurn, "wrap next st & turn": stitch.WrapTurn, "wrap st and turn": stitch.WrapTurn,
	"wrap next st, turn": stitch.WrapTurn,
	"marker":             stitch.PlaceMarker, "sm.": stitch.SlipMarker, "slm": stitch.SlipMarker, "slip the marker": stitch.SlipMarker,
	"sl mkr":         stitch.SlipMarker,
	"place a marker": stitch.PlaceMarker, "place a second marker": stitch.PlaceMarker, "place second marker": stitch.PlaceMarker,
	"place another marker": stitch.PlaceMarker, "place a third marker": stitch.PlaceMarker, "place second m": stitch.PlaceMarker,
	"yfd": stitch.YO, "pmk": stitch.PlaceMarker, "plm": stitch.PlaceMarker, "slip mkr": stitch.SlipMarker,
	"slip next m":   stitch.SlipMarker,
	"pick up and k": stitch.PickUp, "pick up & k": stitch.PickUp, "pick up and purl": stitch.PickUp, "pick up & knit": stitch.PickUp,
	"m1pl": stitch.M1LP, "m1pr": stitch.M1RP, "thread over": stitch.YO, "put thread over": stitch.YO, "throw thread over": stitch.YO,
	"slip and bind": stitch.SKP, "narrow": stitch.K2tog, "backward loop co": stitch.CastOn,
	"backward-loop co": stitch.CastOn, "backwards loop co": stitch.CastOn, "make backward loop": stitch.CastOn, "cable co": stitch.CastOn,
	"make one left": stitch.M1L, "make one right": stitch.M1R,
	"centered double decrease": stitch.CDD, "centred double decrease": stitch.CDD, "central double decrease": stitch.CDD,
	"centered double dec": stitch.CDD, "centred double dec": stitch.CDD, "central double dec": stitch.CDD,
}

// otherWork is what has a count but is no operation, by how many stitches of the row
// below it takes and how many it leaves. "work" is in pattern, whatever that is.
var otherWork = []struct {
	takes, leaves int16
	names         []string
}{
	{1, 1, []string{"work", "sl1yo", "sl1-yo", "syo", "yfsl1yo", "sl1yof", "yf-sl1yo", "yfsl1yof", "brk", "brk1", "brp",
		"brp1", "bark", "burp", "sl 1 yo", "k1b in row below", "k 1 below", "k1 below", "k1-b", "p1b",
		"p1 below", "kb1", "pb1", "k1 wrapping yarn twice", "k1 wrapping yarn twice around needle", "k1 wrapping twice",
		"k1 elongated"}},
	{0, 0, []string{"rm", "yb", "wyif", "wyib", "drop extra wrap", "bring yarn forward", "wyf", "wyb", "ytf", "ytb", "ybk",
		"yarn forward between needles", "bring the yarn forward", "remove marker", "remove m", "remove markers",
		"remove bor marker", "slip bor marker", "rm m", "sl bor marker", "sl bor m", "remove the marker", "remove bor m",
		"replace marker", "replace m"}},
	{2, 2, []string{"lt", "rt", "tw2", "tw2l", "tw2r", "twist 2", "cr2"}},
	{4, 4, []string{"fc", "bc"}},
	{0, -2, []string{"p2sso"}},
	{0, -1, []string{holdWorked, "psso"}},
	{0, 1, []string{"kll", "krl", "byo", pickedUp, takenUp, "rli", "lli", "m1bl", "m1f", "m1b", "krli", "klli", "rlinc",
		"llinc", "inc1r", "inc 1 right", "inc 1 left"}},
	{1, 0, []string{"hold", "drop yo"}},
	{1, 2, []string{"incl", "kbf"}},
	{1, 3, []string{"kyok", "kfbf", "pfbf", "brkyobrk", "brpyobrp"}},
	{1, 4, []string{"kfbfb"}},
	{1, 5, []string{"br4st inc", "brkyobrkyobrk"}},
	{2, 1, []string{"ksp", "k2tog tbl", "p2tog tbl", "brk2tog", "brssk", "brp2tog", "k2tog-tbl", "k2togtbl", "p2togtbl", "k2tog-b", "p2tog-b",
		"p2tog-tbl", "k2 tog tbl", "work 2 tog", "sppo"}},
	{3, 1, []string{"sspp2", "k3tog tbl", "p3tog tbl", "brksl dec", "work 3 tog", "sssk", "dd", "s2pp"}},
}

// changeReadings is how a change is taken that is not named.
var changeReadings = map[string]string{
	"inc": "inc is read as one stitch made into two (kfb); in a row that only fits so, as a stitch made between two",
	"dec": "dec is read as two stitches worked as one",
}

// questions are abbreviations whose count depends on what is meant.
var questions = map[string]string{
	"m":   "m is metre or marker: write sm to slip a marker, pm to place one",
	"yf":  "yf is yarn to front (no stitch) or a yarn over (one stitch): write wyif or yo, or declare yf",
	"lc":  "how many stitches cross? write 2/2 lc or c4f, or declare lc",
	"rc":  "how many stitches cross? write 2/2 rc or c4b, or declare rc",
	"lpc": "how many stitches cross? write 2/1 lpc, or declare lpc",
	"rpc": "how many stitches cross? write 2/1 rpc, or declare rpc",
	"mb":  "a bobble usually ends with the stitch it began with, but not always: declare mb",
}
