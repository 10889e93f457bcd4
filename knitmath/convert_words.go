package knitmath

import "math"

// Summary says the answer in words.
func (o Conversion) Summary() string {
	s := "Knit as written it comes out " + changeWords(o.WidthChangePercent, "wider", "narrower") + " and " +
		changeWords(o.LengthChangePercent, "longer", "shorter") + "."
	if o.FollowIndex != nil {
		size := o.Sizes[*o.FollowIndex]
		s += " Follow "
		if size.Name != "" {
			s += "size " + size.Name
		} else {
			s += "the " + ordinal(*o.FollowIndex+1) + " size"
		}
		s += ": " + o.unit.size(size.WidthCm) + " wide, " + o.unit.difference(size.DifferenceCm) + "."
	}
	if n := len(o.Items); n > 0 {
		s += " " + countOf(n, "counts") + " refitted."
	}
	return s
}

// changeWords is "4.8 % wider", "4.8 % narrower", or "no wider" for no change at all.
func changeWords(percent float64, more, less string) string {
	p := decimal(math.Abs(percent), 1)
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

// Sources says where the figures come from.
func (o Conversion) Sources() []Source {
	sources := []Source{{"change if knit as written", "100 * (pattern gauge / own gauge - 1): a size is a count " +
		"divided by its gauge", SourceStatusOwnDerivation}}
	if len(o.Items) > 0 {
		sources = append(sources, Source{"new counts", "printed count * own gauge / pattern gauge, one exact fraction of " +
			"whole numbers, rounded as the rule says", SourceStatusOwnDerivation})
	}
	if o.FollowIndex != nil {
		sources = append(sources, Source{"size to follow", "printed width * pattern gauge / own gauge, nearest to the " +
			"wanted width; of two equally near, the wider", SourceStatusOwnDerivation})
	}
	return sources
}
