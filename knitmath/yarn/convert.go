package yarn

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A ConvertInput asks for a count in other systems. It mirrors ConvertYarnCountRequest.
type ConvertInput struct {
	Count       *Count
	Systems     []CountSystem
	DisplayUnit measure.DisplayUnit
}

// MaxSystems is the most systems that may be asked for: all of them.
const MaxSystems = int(lastSystem)

// A CountInSystem is a yarn in one system.
type CountInSystem struct {
	System       CountSystem
	Number       float64
	SingleNumber float64
	Notation     string
	Rule         string
}

// A Conversion is the answer to ConvertInput.
type Conversion struct {
	Tex           float64
	SingleTex     float64
	Plies         int
	System        CountSystem
	MetresPer100G float64
	Counts        []CountInSystem
	Notices       []report.Notice

	unit measure.DisplayUnit
	yarn Thickness
}

// ConvertYarnCount turns a count into other systems:
//
//	direct:    tex = number * grams / kilometres
//	indirect:  tex = grams / (number * kilometres)
//	plied:     tex = plies * single's tex / (1 - contraction)
//
// All of it is exact, in rational numbers: the number asked with is the decimal that was
// written, yards and pounds are exact, and only what is answered is rounded, to the
// nearest float and in words to four figures, halves up.
func ConvertYarnCount(in ConvertInput) (Conversion, error) {
	var c fault.Checks
	yarn, _ := VetCount(&c, "count", in.Count)
	c.Items("", "systems", len(in.Systems), MaxSystems)
	for i, s := range in.Systems[:min(len(in.Systems), MaxSystems)] {
		fault.RequiredEnum(&c, "", fault.Index("systems", i), s, lastSystem)
	}
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if err := c.Err(); err != nil {
		return Conversion{}, err
	}
	systems := in.Systems
	if len(systems) == 0 {
		systems = everyday
	}
	whole := yarn.Tex.numbers()
	one := whole
	if yarn.Plies > 1 {
		one = yarn.Single.numbers()
	}
	out := Conversion{Tex: whole.in(CountSystemTex), SingleTex: one.in(CountSystemTex), Plies: yarn.Plies, System: yarn.System,
		MetresPer100G: whole.in(CountSystemMetresPer100G), unit: in.DisplayUnit, yarn: yarn,
		Counts: make([]CountInSystem, len(systems))}
	for i, s := range systems {
		number := whole.in(s)
		single := number
		if yarn.Plies > 1 {
			single = one.in(s)
		}
		out.Counts[i] = CountInSystem{System: s, Number: number, SingleNumber: single,
			Notation: yarn.notation(s, number, single), Rule: countSystems[s].rule}
	}
	out.Notices = yarn.remarks("count")
	return out, nil
}

// everyday are the systems that are answered in unless others are asked for: those
// that yarn for hand knitting, spinning and weaving is sold by.
var everyday = []CountSystem{CountSystemTex, CountSystemDtex, CountSystemDenier, CountSystemMetric, CountSystemCotton,
	CountSystemWorsted, CountSystemWoollenRun, CountSystemWoollenCut, CountSystemLinenLea, CountSystemYardsPerPound,
	CountSystemMetresPer100G, CountSystemMetresPer50G}

// AllSystems are all systems, in the order of their numbers.
func AllSystems() []CountSystem {
	all := make([]CountSystem, lastSystem)
	for i := range all {
		all[i] = CountSystem(i + 1)
	}
	return all
}

// Cost is the price of a conversion: three steps for each system.
func (in ConvertInput) Cost() int { return 10 + 3*int(lastSystem) }
