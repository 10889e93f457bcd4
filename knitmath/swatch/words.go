package swatch

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

var _ report.Answer = Result{}

// Summary says the answer in words.
func (o Result) Summary() string {
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
	s += " to " + o.unit.Length(o.OverCm) + "."
	if o.Width != nil {
		s += " " + o.Width.sentence("stitches", "wide", o.unit)
	}
	if o.Height != nil {
		s += " " + o.Height.sentence("rows", "tall", o.unit)
	}
	return s
}

// chosenStatistics is the list to knit by: after washing where that was read.
func chosenStatistics(after, before *Statistics) *Statistics {
	if after != nil {
		return after
	}
	return before
}

// words is "22.2 ± 0.71 stitches", without the half-width for a single reading.
func (s *Statistics) words(noun string) string {
	half := ""
	if s.HalfWidth95 != nil {
		half = " ± " + measure.Decimal(*s.HalfWidth95, 2)
	}
	return measure.Decimal(s.Mean, 2) + half + " " + noun
}

// sentence is "110 stitches: 50 cm wide, at 95 % from 48.5 cm to 51.6 cm."
func (s *SizeConsequence) sentence(noun, direction string, unit measure.DisplayUnit) string {
	text := report.CountOf(s.Count, noun) + ": " + unit.Size(s.SizeCm) + " " + direction
	switch {
	case s.SmallestCm != nil && s.LargestCm != nil:
		text += ", at 95 % from " + unit.Size(*s.SmallestCm) + " to " + unit.Size(*s.LargestCm)
	case s.SmallestCm != nil:
		text += ", at 95 % from " + unit.Size(*s.SmallestCm) + " up"
	}
	return text + "."
}

// Directions are empty: there is nothing to work.
func (Result) Directions() []string { return nil }

// Sources says where the figures come from.
func (o Result) Sources() []report.Source {
	sources := []report.Source{studentCited, grubbsCited}
	if o.WidthChangePercent != nil || o.LengthChangePercent != nil {
		sources = append(sources, washingCited)
	}
	if o.Width != nil || o.Height != nil {
		sources = append(sources, consequenceCited)
	}
	if len(o.YarnCategories) > 0 {
		sources = append(sources, yarn.CategoriesCited(o.YarnCategories)...)
	}
	if o.Needle != nil {
		sources = append(sources, o.Needle.source())
	}
	return sources
}
