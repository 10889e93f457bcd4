package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

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
	"inc":  "an increase takes no stitch (M1L, M1R, yo) or one (kfb, pfb): name it, or declare inc",
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
