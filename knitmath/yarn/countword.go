package yarn

import (
	"slices"
	"strings"
)

// countWords are the words of the systems as notations have them, those of several
// words first. "Cut" alone and "silk" alone are not here: each is several things.
var countWords = []countWord{
	words("west of england snap", CountSystemWestOfEngland),
	words("yorkshire skein", CountSystemYorkshireSkein), words("yorkshire skeins", CountSystemYorkshireSkein),
	words("philadelphia cut", CountSystemWoollenCut), words("us cut", CountSystemWoollenCut), words("american cut", CountSystemWoollenCut),
	words("galashiels cut", CountSystemGalashielsCut), words("glass cut", CountSystemGlassCut), words("asbestos cut", CountSystemGlassCut),
	words("us run", CountSystemWoollenRun), words("american run", CountSystemWoollenRun), words("woollen run", CountSystemWoollenRun),
	words("woolen run", CountSystemWoollenRun), words("linen lea", CountSystemLinenLea), words("spun silk", CountSystemSpunSilk),
	words("dram silk", CountSystemSilkDram), words("lb / spyndle", CountSystemJute), words("lb / spindle", CountSystemJute),
	words("perle cotton", CountSystemCotton), words("pearl cotton", CountSystemCotton),
	words("tex", CountSystemTex), words("dtex", CountSystemDtex), words("decitex", CountSystemDtex),
	words("ktex", CountSystemKtex), words("kilotex", CountSystemKtex),
	words("den", CountSystemDenier), words("denier", CountSystemDenier),
	words("nm", CountSystemMetric), words("metric", CountSystemMetric),
	words("ne", CountSystemCotton), words("nec", CountSystemCotton), words("neb", CountSystemCotton), words("cotton", CountSystemCotton),
	words("nw", CountSystemWorsted), words("nek", CountSystemWorsted), words("worsted", CountSystemWorsted),
	words("run", CountSystemWoollenRun), words("lea", CountSystemLinenLea), words("leas", CountSystemLinenLea),
	words("nel", CountSystemLinenLea),
	words("linen", CountSystemLinenLea), words("snap", CountSystemWestOfEngland), words("typp", CountSystemTypp),
	words("jute", CountSystemJute),
}

// A countWord is what a notation calls a system.
type countWord struct {
	words  []string
	system CountSystem
}

func words(said string, s CountSystem) countWord { return countWord{strings.Fields(said), s} }

// takeSystem finds the words of a system among the marks and gives the others.
func takeSystem(all []mark) (CountSystem, []mark) {
	for _, w := range countWords {
		for i := 0; i+len(w.words) <= len(all); i++ {
			if sayAt(all[i:], w.words) {
				return w.system, slices.Delete(slices.Clone(all), i, i+len(w.words))
			}
		}
	}
	return CountSystemUnspecified, all
}

// sayAt reports whether marks begin with words.
func sayAt(all []mark, words []string) bool {
	for i, w := range words {
		if all[i].word != w {
			return false
		}
	}
	return true
}

// says reports whether one of some words stands among the marks.
func says(all []mark, words ...string) bool {
	return slices.ContainsFunc(all, func(m mark) bool { return m.word != "" && slices.Contains(words, m.word) })
}
