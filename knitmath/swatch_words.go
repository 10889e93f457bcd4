package knitmath

// Summary says the answer in words.
func (o ComputedGauge) Summary() string {
	stitches, rows := chosenStatistics(o.StitchesAfter, o.StitchesBefore), chosenStatistics(o.RowsAfter, o.RowsBefore)
	s := ""
	if stitches != nil {
		s = stitches.words("stitches")
	}
	if rows != nil {
		if s != "" {
			s += " and "
		}
		s += rows.words("rows")
	}
	if s == "" {
		return ""
	}
	s += " to " + o.unit.length(o.OverCm) + "."
	if o.Width != nil {
		s += " " + o.Width.sentence("stitches", "wide", o.unit)
	}
	if o.Height != nil {
		s += " " + o.Height.sentence("rows", "tall", o.unit)
	}
	return s
}

// chosenStatistics is the list to knit by: after washing where that was read.
func chosenStatistics(after, before *GaugeStatistics) *GaugeStatistics {
	if after != nil {
		return after
	}
	return before
}

// words is "22.2 ± 0.71 stitches", without the half-width for a single reading.
func (s *GaugeStatistics) words(noun string) string {
	half := ""
	if s.HalfWidth95 != nil {
		half = " ± " + decimal(*s.HalfWidth95, 2)
	}
	return decimal(s.Mean, 2) + half + " " + noun
}

// sentence is "110 stitches: 50 cm wide, at 95 % from 48.5 cm to 51.6 cm."
func (s *SizeConsequence) sentence(noun, direction string, unit DisplayUnit) string {
	text := countOf(s.Count, noun) + ": " + unit.size(s.SizeCm) + " " + direction
	switch {
	case s.SmallestCm != nil && s.LargestCm != nil:
		text += ", at 95 % from " + unit.size(*s.SmallestCm) + " to " + unit.size(*s.LargestCm)
	case s.SmallestCm != nil:
		text += ", at 95 % from " + unit.size(*s.SmallestCm) + " up"
	}
	return text + "."
}

// Sources says where the figures come from.
func (o ComputedGauge) Sources() []Source {
	sources := []Source{
		{"half-width of the 95 % interval", "Student (W. S. Gosset), The probable error of a mean, Biometrika 6 (1908) " +
			"1-25; the distribution summed as in Abramowitz & Stegun, Handbook of Mathematical Functions, 26.7.3-4",
			SourceStatusFromMemory},
		{"outlying reading", "F. E. Grubbs, Technometrics 11 (1969) 1-21, two-sided, 5 %; readings within half a " +
			"stitch of the others are let pass, half a stitch being the usual step of a reading",
			SourceStatusFromMemory},
	}
	if o.WidthChangePercent != nil || o.LengthChangePercent != nil {
		sources = append(sources, Source{"change on washing", "ISO 5077:2007: 100 * (after - before) / before of the " +
			"size, shrinkage negative", SourceStatusPublished})
	}
	if o.Width != nil || o.Height != nil {
		sources = append(sources, Source{"smallest and largest size", "count / (gauge ± half-width)",
			SourceStatusOwnDerivation})
	}
	if len(o.YarnCategories) > 0 {
		sources = append(sources, Source{"yarn weight category", "Craft Yarn Council, Standards & Guidelines, yarn " +
			"weight chart: categories 0 to 3 read on its own page, 4 to 7 in reprints", SourceStatusPublished})
	}
	if o.Needle != nil {
		sources = append(sources, Source{"needle names", o.Needle.citation(), o.Needle.status()})
	}
	return sources
}
