package yarn

import (
	"math"

	"example.com/knitmath/knitmath/fault"
)

// Fibre is what a yarn is made of.
type Fibre int32

// The fibres.
const (
	FibreUnspecified Fibre = iota
	FibreWool
	FibreWashableWool // treated so that it does not felt
	FibreAlpaca
	FibreMohair
	FibreCashmere
	FibreSilk
	FibreCotton
	FibreLinen
	FibreViscose // bamboo, lyocell and their like
	FibreAcrylic
	FibreNylon
	FibrePolyester
	FibreOther
)

// A FibreShare is a part of a yarn's composition.
type FibreShare struct {
	Fibre   Fibre
	Percent float64
}

// MaxFibres is the most fibres of one yarn.
const MaxFibres = 10

// family is how a fibre behaves in a fabric.
type family int

const (
	springy   family = iota // wool and its like: gives and comes back
	slippery                // alpaca, mohair, cashmere, silk: hangs, blooms or shines
	heavy                   // plants: hangs, does not come back
	synthetic               // light, does not take a shape by wetting
	unknown
)

// families are common practice, in words of the trade.
var families = [...]family{
	FibreUnspecified: unknown, FibreWool: springy, FibreWashableWool: springy,
	FibreAlpaca: slippery, FibreMohair: slippery, FibreCashmere: slippery, FibreSilk: slippery,
	FibreCotton: heavy, FibreLinen: heavy, FibreViscose: heavy,
	FibreAcrylic: synthetic, FibreNylon: synthetic, FibrePolyester: synthetic, FibreOther: unknown,
}

var familyWords = [...]string{springy: "springs back", slippery: "hangs and slips more than wool",
	heavy:     "is heavy, hangs, and lets ribs pull in less",
	synthetic: "keeps its shape and is not set by wetting", unknown: "is not known here"}

// felts reports whether a fibre felts when it is washed hot or rubbed.
func (f Fibre) felts() bool {
	return f == FibreWool || f == FibreAlpaca || f == FibreMohair || f == FibreCashmere
}

// most is the family that most of a yarn is of; unknown without a composition.
func most(shares []FibreShare) family {
	var percent [unknown + 1]float64
	for _, s := range shares {
		percent[families[s.Fibre]] += s.Percent
	}
	best := unknown
	for f := range percent {
		if percent[f] > percent[best] {
			best = family(f)
		}
	}
	return best
}

// felting reports whether enough of a yarn felts that the fabric will.
func felting(shares []FibreShare) bool {
	percent := 0.0
	for _, s := range shares {
		if s.Fibre.felts() {
			percent += s.Percent
		}
	}
	return percent >= feltingPercent
}

// feltingPercent is the share from which a blend is treated as one that felts: with less
// the other fibres hold it open. Common practice, on the careful side.
const feltingPercent = 30

// vetFibres checks a composition that may be absent.
func vetFibres(c *fault.Checks, field string, shares []FibreShare) {
	c.Items("", field, len(shares), MaxFibres)
	sum := 0.0
	for i, s := range shares[:min(len(shares), MaxFibres)] {
		at := fault.Index(field, i)
		fault.RequiredEnum(c, at, "fibre", s.Fibre, FibreOther)
		c.RequiredNumber(at, "percent", s.Percent, 0.01, 100)
		sum += s.Percent
	}
	if len(shares) > 0 && c.Sound(field) && math.Abs(sum-100) > 1 {
		c.Infeasible("the shares do not make 100 %, to within 1", field)
	}
}
