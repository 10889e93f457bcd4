package gauge

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

var _, _ report.Answer = CastOn{}, Conversion{}

// Summary says the answer in words.
func (o Conversion) Summary() string {
	s := "Knit as written it comes out " + changeWords(o.WidthChangePercent, "wider", "narrower") + " and " +
		changeWords(o.LengthChangePercent, "longer", "shorter") + "."
	if o.FollowSizeNumber != nil {
		size := o.Sizes[*o.FollowSizeNumber-1]
		s += " Follow "
		if size.Name != "" {
			s += "size " + size.Name
		} else {
			s += "the " + report.Ordinal(*o.FollowSizeNumber) + " size"
		}
		s += ": " + o.unit.Size(size.WidthCm) + " wide, " + o.unit.Difference(size.DifferenceCm) + "."
	}
	if n := len(o.Items); n > 0 {
		s += " " + report.CountOf(n, "counts") + " refitted."
	}
	return s
}

// changeWords is "4.8 % wider", "4.8 % narrower", or "no wider" for no change at all.
func changeWords(percent float64, more, less string) string {
	p := measure.Decimal(math.Abs(percent), 1)
	switch {
	case percent == 0:
		return "no " + more
	case p == "0":
		p = "less than 0.05"
	}
	if percent > 0 {
		return p + " % " + more
	}
	return p + " % " + less
}

// Directions are empty: there is nothing to work.
func (Conversion) Directions() []string { return nil }

// Sources says where the figures come from.
func (o Conversion) Sources() []report.Source {
	sources := []report.Source{changeCited}
	if len(o.Items) > 0 {
		sources = append(sources, convertedCited)
	}
	if o.FollowSizeNumber != nil {
		sources = append(sources, followCited)
	}
	return sources
}
