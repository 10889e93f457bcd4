package yardage

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

var _ report.Answer = Estimate{}

// Summary says the answer in words.
func (o Estimate) Summary() string {
	s := "You need " + yarn.LengthWords(o.unit, o.LengthM.Likely) + " of yarn" + o.LengthM.beside(o.unit, yarn.LengthWords)
	if o.MassG != nil {
		s += ", " + yarn.MassWords(o.unit, o.MassG.Likely)
	}
	if o.reserved {
		s += ", reserve included"
	}
	s += "."
	if o.BallCount == nil {
		return s
	}
	figure := "high"
	if o.lot == DyeLotMoreLater {
		figure = "likely"
	}
	s += " Buy " + report.CountOf(*o.BallCount, "balls")
	if o.lot != DyeLotMoreLater && *o.BallCount > max(1, len(o.Colours)) {
		if len(o.Colours) > 0 {
			s += ", each colour"
		}
		s += " of one dye lot"
	}
	for i, c := range o.Colours {
		sep := ", "
		if i == 0 {
			sep = ": "
		}
		s += sep + report.CountOf(*c.BallCount, "balls") + " of " + colourName(c.Name, i)
	}
	return s + ", for the " + figure + " figure."
}

// beside is a range in brackets, for behind its likely figure; nothing where low and high
// read alike.
func (r Range) beside(u measure.DisplayUnit, words func(measure.DisplayUnit, float64) string) string {
	least, most := words(u, r.Low), words(u, r.High)
	if least == most {
		return ""
	}
	return " (" + least + " to " + most + ")"
}

// loopCovers says what the range by loop covers.
func (o Estimate) loopCovers() string {
	ks := loopConstants[o.state]
	s := "loop constants from " + measure.Decimal(ks.Low, 2) + " to " + measure.Decimal(ks.High, 2) + " (" + o.state.String() + ")"
	if o.factors {
		s += ", pattern factors from their low to their high"
	}
	if len(o.Edges) > 0 {
		s += ", edges likewise"
	}
	if o.ranged {
		s += ", rows to a stitch of width from their low to their high"
	}
	if f := o.slack; f.High > f.Low {
		s += ", floats " + measure.Decimal(100*(f.Low-1), 0) + " to " + measure.Decimal(100*(f.High-1), 0) + " % longer than straight"
	}
	if o.offBy > 0 {
		return s + ", a gauge " + measure.Decimal(o.offBy, 2) + " % off either way"
	}
	return s + "; the gauge is taken as exact"
}

// swatchCovers says what the range by swatch covers, its size being off by so many cm; edges
// are in it where metres are known to be grams.
func (o Estimate) swatchCovers(ruler float64, area Range, edges bool) string {
	s := "half a step of the scale either way"
	if ruler > 0 {
		s += ", width and height " + o.unit.Length(ruler) + " off either way"
	}
	if area.Low < area.High {
		s += ", counted pieces of " + measure.Decimal(area.Low, 0) + " to " + measure.Decimal(area.High, 0) + " cm2"
		if o.offBy > 0 {
			s += ", their gauge " + measure.Decimal(o.offBy, 2) + " % off either way"
		}
	}
	if edges && len(o.Edges) > 0 {
		s += ", edges from their low to their high"
	}
	return s + "; nothing else"
}

// Directions say how long a tail to leave: there is nothing else to work.
func (o Estimate) Directions() []string {
	var d []string
	for _, e := range o.Edges {
		if e.TailCm != nil {
			name := ""
			if e.Name != "" {
				name = " of " + e.Name
			}
			d = append(d, "Leave a tail of "+o.unit.Size(*e.TailCm)+" for the cast-on"+name+".")
		}
	}
	return d
}

// Sources says where the figures come from.
func (o Estimate) Sources() []report.Source {
	sources := append([]report.Source{loopCited}, o.state.sources()...)
	if o.garter {
		sources = append(sources, garterCited)
	}
	if o.factors {
		sources = append(sources, factorsCited)
	}
	if len(o.Colours) > 0 {
		switch o.work {
		case ColourWorkSlipped:
			sources = append(sources, slippedCited)
		case ColourWorkUnspecified, ColourWorkStranded:
			sources = append(sources, floatsCited)
		}
	}
	if o.derived {
		sources = append(sources, derivedCited)
	}
	if len(o.Edges) > 0 {
		sources = append(sources, edgesCited)
	}
	if o.fringe {
		sources = append(sources, fringeCited)
	}
	if o.pompoms {
		sources = append(sources, pompomCited)
	}
	if o.BySwatch != nil {
		sources = append(sources, swatchCited)
	}
	return append(sources, reserveCited)
}
