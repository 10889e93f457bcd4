package yardage

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

var _ report.Answer = Estimate{}

// Summary says the answer in words.
func (o Estimate) Summary() string {
	s := "You need " + yarn.LengthWords(o.unit, o.LengthM.Likely) + " of yarn (" + yarn.LengthWords(o.unit, o.LengthM.Low) + " to " +
		yarn.LengthWords(o.unit, o.LengthM.High) + ")"
	if o.MassG != nil {
		s += ", " + yarn.MassWords(o.unit, o.MassG.Likely)
	}
	s += ", reserve included."
	if o.BallCount == nil {
		return s
	}
	figure := "high"
	if o.lot == DyeLotMoreLater {
		figure = "likely"
	}
	s += " Buy " + report.CountOf(*o.BallCount, "balls")
	for i, c := range o.Colours {
		sep := ", "
		if i == 0 {
			sep = ": "
		}
		name := c.Name
		if name == "" {
			name = "the " + report.Ordinal(i+1) + " colour"
		}
		s += sep + report.CountOf(*c.BallCount, "balls") + " of " + name
	}
	return s + ", for the " + figure + " figure."
}

// loopCovers says what the range by loop covers.
func (o Estimate) loopCovers() string {
	ks := loopConstants[o.state]
	s := "loop constants from " + measure.Decimal(ks.Low, 2) + " to " + measure.Decimal(ks.High, 2) + " (" + o.state.String() + ")"
	if o.factors {
		s += ", pattern factors from their low to their high"
	}
	return s + "; not the knitter's own gauge, nor floats that are not drawn straight"
}

// Directions are empty: there is nothing to work.
func (Estimate) Directions() []string { return nil }

// Sources says where the figures come from.
func (o Estimate) Sources() []report.Source {
	sources := append([]report.Source{loopCited}, o.state.sources()...)
	if o.factors {
		sources = append(sources, factorsCited)
	}
	if len(o.Colours) > 0 {
		sources = append(sources, floatsCited)
	}
	if o.BySwatch != nil {
		sources = append(sources, swatchCited)
	}
	return append(sources, reserveCited)
}
