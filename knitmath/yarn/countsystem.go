package yarn

import "math/big"

// CountSystem is a way to say how thick a yarn is. The direct ones say what a length
// weighs, the others how long a weight is: there a higher number is a finer yarn.
type CountSystem int32

// The systems.
const (
	CountSystemUnspecified CountSystem = iota
	CountSystemTex
	CountSystemDtex
	CountSystemKtex
	CountSystemDenier
	CountSystemMetric
	CountSystemCotton
	CountSystemWorsted
	CountSystemWoollenRun
	CountSystemWoollenCut
	CountSystemLinenLea
	CountSystemSpunSilk
	CountSystemYorkshireSkein
	CountSystemGalashielsCut
	CountSystemWestOfEngland
	CountSystemGlassCut
	CountSystemTypp
	CountSystemYardsPerPound
	CountSystemYardsPerOunce
	CountSystemMetresPer100G
	CountSystemMetresPer50G
	CountSystemJute
	CountSystemSilkDram
)

// lastSystem is the last of them.
const lastSystem = CountSystemSilkDram

// plyStyle is how a trade writes a plied yarn.
type plyStyle int

const (
	plySingles plyStyle = iota // the number of a single, then the plies: "30/2"
	plyFirst                   // the plies first: "2/28"
	plyWhole                   // the number of the finished yarn, then the plies: "60/2"
	plyTimes                   // "37 tex x 2"
	plyNone                    // of the whole yarn, whose plies are not written
)

// countSystem is one row of the table.
type countSystem struct {
	name   string // in words
	unit   string // beside a number
	direct bool
	// A direct count is tex = number x factor, the others are tex = factor / number.
	factor *big.Rat
	rule   string // the same, to read
	style  plyStyle
	cited  *countCited
}

// Pounds and yards are exact. Source: international yard and pound agreement of 1959.
var (
	gramsOfPound = big.NewRat(45_359_237, 100_000)
	gramsOfOunce = new(big.Rat).Quo(gramsOfPound, big.NewRat(16, 1))
	gramsOfDram  = new(big.Rat).Quo(gramsOfPound, big.NewRat(256, 1))
)

// yards are so many in km.
func yards(n int64) *big.Rat { return big.NewRat(n*9_144, 10_000_000) }

// weighing is the tex of a weight in grams of so many km.
func weighing(grams, kilometres *big.Rat) *big.Rat { return new(big.Rat).Quo(grams, kilometres) }

// hanks is an indirect system that counts hanks of so many yards in a pound.
func hanks(name, unit string, hank int64, rule string, style plyStyle, cited *countCited) countSystem {
	return countSystem{name, unit, false, weighing(gramsOfPound, yards(hank)),
		"tex = 1000 x 453.59237 / (" + rule + " x 0.9144 x number)", style, cited}
}

// countSystems are the systems by number.
//
// Source: what a hank is, and the products tex x number, ASTM D2260-03 (2013) for
// cotton 590.541, worsted 885.812, run 310.034, lea 1653.52; ISO 1144 for tex; the
// sources of the others stand beside them.
var countSystems = [...]countSystem{
	CountSystemTex:    {"tex", "tex", true, one, "tex = number", plyTimes, isoCited},
	CountSystemDtex:   {"decitex", "dtex", true, big.NewRat(1, 10), "tex = number / 10", plyTimes, isoCited},
	CountSystemKtex:   {"kilotex", "ktex", true, thousand, "tex = 1000 x number", plyTimes, isoCited},
	CountSystemDenier: {"denier", "den", true, big.NewRat(1, 9), "tex = number / 9", plyTimes, astmCited},
	CountSystemMetric: {"metric count", "Nm", false, thousand, "tex = 1000 / number", plySingles, metricCited},

	CountSystemCotton:         hanks("cotton count", "Ne", 840, "840", plySingles, astmCited),
	CountSystemWorsted:        hanks("worsted count", "Nw", 560, "560", plyFirst, astmCited),
	CountSystemWoollenRun:     hanks("US woollen run", "run", 1600, "1600", plyFirst, astmCited),
	CountSystemWoollenCut:     hanks("US woollen cut (Philadelphia)", "US cut", 300, "300", plyFirst, unitsCited),
	CountSystemLinenLea:       hanks("linen lea", "lea", 300, "300", plySingles, astmCited),
	CountSystemSpunSilk:       hanks("spun silk count", "spun silk", 840, "840", plyWhole, silkCited),
	CountSystemYorkshireSkein: hanks("Yorkshire woollen skein", "Yorkshire skein", 256, "256", plyFirst, tableCited),
	CountSystemGalashielsCut:  hanks("Galashiels woollen cut", "Galashiels cut", 200, "200", plyFirst, rememberedCited),
	CountSystemWestOfEngland:  hanks("West of England snap", "snap", 320, "320", plyFirst, rememberedCited),
	CountSystemGlassCut:       hanks("glass or asbestos cut", "glass cut", 100, "100", plySingles, unitsCited),
	CountSystemTypp:           hanks("thousand yards to the pound", "typp", 1000, "1000", plyNone, unitsCited),
	CountSystemYardsPerPound:  hanks("yards to the pound", "yd/lb", 1, "1", plyNone, definedCited),

	CountSystemYardsPerOunce: {"yards to the ounce", "yd/oz", false, weighing(gramsOfOunce, yards(1)),
		"tex = 1000 x 453.59237 / (16 x 0.9144 x number)", plyNone, definedCited},
	CountSystemMetresPer100G: {"metres to 100 g", "m/100 g", false, big.NewRat(100_000, 1), "tex = 100000 / number", plyNone, definedCited},
	CountSystemMetresPer50G: {"metres to 50 g", "m/50 g", false, big.NewRat(50_000, 1),
		"tex = 50000 / number", plyNone, definedCited},
	CountSystemJute: {"jute count, pounds to the spyndle of 14,400 yards", "lb/spyndle", true, weighing(gramsOfPound, yards(14_400)),
		"tex = 1000 x 453.59237 x number / (14400 x 0.9144)", plyTimes, unitsCited},
	CountSystemSilkDram: {"drams to 1,000 yards of silk", "dram silk", true, weighing(gramsOfDram, yards(1_000)),
		"tex = 453.59237 x number / (256 x 0.9144)", plyTimes, unitsCited},
}

var one = big.NewRat(1, 1)

// known reports whether a number names a system.
func (s CountSystem) known() bool { return s > CountSystemUnspecified && s <= lastSystem }

// Tex is a yarn of a number in the system, which is not 0.
func (s CountSystem) Tex(number *big.Rat) Tex { return Tex{countSystems[s].across(number)} }

// In is the number of a yarn in a system, exactly. A yarn of nothing has the number 0.
func (t Tex) In(s CountSystem) *big.Rat {
	switch {
	case t.IsZero():
		return new(big.Rat)
	case countSystems[s].direct:
		return new(big.Rat).Quo(t.grams, countSystems[s].factor)
	}
	return countSystems[s].across(t.grams)
}

// across is the tex of a number; of an indirect system it is its own way back.
func (c countSystem) across(number *big.Rat) *big.Rat {
	if c.direct {
		return new(big.Rat).Mul(number, c.factor)
	}
	return new(big.Rat).Quo(c.factor, number)
}
