package yarn

import (
	"math/big"
	"slices"
)

// lengthUnits and massUnits are the units of a band, in metres and in grams.
var (
	metre       = one
	yard        = big.NewRat(9_144, 10_000)
	lengthUnits = map[string]*big.Rat{
		"m": metre, "metre": metre, "metres": metre, "meter": metre, "meters": metre, "km": thousand,
		"yd": yard, "yds": yard, "yard": yard, "yards": yard,
	}
	massUnits = map[string]*big.Rat{
		"g": one, "gr": one, "gram": one, "grams": one, "gramme": one, "grammes": one, "kg": thousand,
		"oz": gramsOfOunce, "ounce": gramsOfOunce, "ounces": gramsOfOunce,
		"lb": gramsOfPound, "lbs": gramsOfPound, "pound": gramsOfPound, "pounds": gramsOfPound,
	}
)

// linking are the words between a length and a weight.
var linking = []string{"/", "=", "per", "to", "in", "a"}

// bandAmount is a number with its unit.
type bandAmount struct {
	number    *big.Rat
	unit      string
	thousands bool
}

// takeAmounts reads the marks as two amounts and the words that link them; ok is false
// where they are anything else. A unit without a number is one of it.
func takeAmounts(all []mark) (found []bandAmount, ok bool) {
	if len(all) == 2 && all[0].number != nil && all[1].word == "ypp" {
		return []bandAmount{{all[0].number, "yd", all[0].thousands}, {one, "lb", false}}, true
	}
	var number *big.Rat
	thousands := false
	for _, m := range all {
		switch {
		case m.number != nil && number == nil:
			number, thousands = m.number, m.thousands
		case lengthUnits[m.word] != nil || massUnits[m.word] != nil:
			if number == nil {
				number = one
			}
			found, number, thousands = append(found, bandAmount{number, m.word, thousands}), nil, false
		case number != nil || !slices.Contains(linking, m.word):
			return nil, false
		}
	}
	return found, len(found) == 2 && number == nil
}

// readPutUp reads a length with a weight, in either order: 400 m/100 g, 1600 yd/lb. It
// is not ok where the marks are no such two amounts.
func readPutUp(all []mark) (w written, wrong string, ok bool) {
	found, ok := takeAmounts(all)
	if !ok {
		return w, "", false
	}
	long, heavy := found[0], found[1]
	if massUnits[long.unit] != nil {
		long, heavy = heavy, long
	}
	if lengthUnits[long.unit] == nil || massUnits[heavy.unit] == nil {
		return w, "", false
	}
	metres := new(big.Rat).Mul(long.number, lengthUnits[long.unit])
	grams := new(big.Rat).Mul(heavy.number, massUnits[heavy.unit])
	if metres.Sign() == 0 || grams.Sign() == 0 {
		return w, "has a length or a weight of 0", true
	}
	w = written{system: bandSystem(lengthUnits[long.unit] == yard, massUnits[heavy.unit] == gramsOfOunce, grams.Cmp(fifty) == 0), plies: 1}
	w.number = TexOf(new(big.Rat).Quo(metres, grams)).In(w.system)
	if tex := TexOf(new(big.Rat).Quo(metres, grams)).Float(); (long.thousands || heavy.thousands) && (tex > thickestBand || tex < finestTex) {
		return w, "has a point before three digits, which some write for thousands, and as a decimal point would make it " +
			significant(tex) + " tex; write 1600 for thousands, and 1.6 for a part", true
	}
	if !countable(w.number) {
		return w, "is thicker or finer than any yarn", true
	}
	return w, "", true
}

// thickestBand is beyond what bands are printed of, 10 m to 100 g. Common practice.
const thickestBand = 10_000.0

var fifty = big.NewRat(50, 1)

// bandSystem is the system that a band's units are nearest to.
func bandSystem(yards, ounces, of50 bool) CountSystem {
	switch {
	case yards && ounces:
		return CountSystemYardsPerOunce
	case yards:
		return CountSystemYardsPerPound
	case of50:
		return CountSystemMetresPer50G
	}
	return CountSystemMetresPer100G
}
