package yarn

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Estimate{}

// Yards and ounces are exact. Source: international yard and pound agreement of
// 1959, 1 yd = 0.9144 m, 1 lb = 453.59237 g; an ounce is a sixteenth of it.
const (
	metresPerYard = 0.9144
	gramsPerOunce = 28.349523125
)

// lengthWords writes metres or yards, whole from 10 up and to a tenth below.
func lengthWords(u measure.DisplayUnit, m float64) string {
	if u == measure.DisplayUnitIn {
		return amount(m/metresPerYard) + " yd"
	}
	return amount(m) + " m"
}

// massWords writes grams or ounces in the same way.
func massWords(u measure.DisplayUnit, g float64) string {
	if u == measure.DisplayUnitIn {
		return amount(g/gramsPerOunce) + " oz"
	}
	return amount(g) + " g"
}

func amount(x float64) string {
	if x < 10 {
		return measure.Decimal(x, 1)
	}
	return measure.Decimal(x, 0)
}

// Summary says the answer in words.
func (o Estimate) Summary() string {
	s := "You need " + lengthWords(o.unit, o.LengthM.Likely) + " of yarn (" + lengthWords(o.unit, o.LengthM.Low) + " to " +
		lengthWords(o.unit, o.LengthM.High) + ")"
	if o.MassG != nil {
		s += ", " + massWords(o.unit, o.MassG.Likely)
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
