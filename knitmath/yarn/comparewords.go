package yarn

import (
	"strings"

	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Comparison{}

// verdictWords say a verdict.
var verdictWords = [...]string{VerdictUnspecified: "The yarns could not be compared", VerdictFits: "The second yarn will do",
	VerdictNearly: "The second yarn will nearly do", VerdictNo: "The second yarn will not do as it is"}

// Summary says the verdict with what it rests on, and the balls.
func (o Comparison) Summary() string {
	s := verdictWords[o.Verdict]
	for _, a := range o.Aspects {
		if a.Verdict == o.Verdict && a.Verdict > VerdictFits {
			s += ": " + a.inShort()
			break
		}
	}
	s += "."
	if o.SecondBallCount != nil && o.Verdict < VerdictNo {
		s += " Buy " + report.CountOf(*o.SecondBallCount, "balls") + " of it, for " + LengthWords(o.unit, *o.NeededM) + "."
	}
	return s
}

// inShort is why an aspect is no fit, for the summary.
func (a AspectResult) inShort() string {
	switch a.Aspect {
	case AspectDrape:
		return "its fabric is likely to hang otherwise"
	case AspectWashing:
		return "it may felt"
	}
	why, _, _ := strings.Cut(a.Why, ",")
	return why
}

// Directions say what to do before buying.
func (o Comparison) Directions() []string {
	switch {
	case o.Verdict == VerdictNo && o.ThicknessRatio > 1:
		return []string{"Look for a thinner yarn, hold fewer strands together if there are several, or recount the pattern at the gauge " +
			"that the second yarn likes."}
	case o.Verdict == VerdictNo:
		return []string{"Hold more strands together, or recount the pattern at the gauge that the second yarn likes."}
	}
	return []string{"Knit a swatch of the second yarn to the pattern's gauge, wash it as the garment will be washed, and let it hang " +
		"before you buy for all."}
}

// Sources says where the figures come from.
func (o Comparison) Sources() []report.Source {
	sources := []report.Source{
		{Figure: "thickness ratio", Citation: "sqrt of the ratio of tex, of yarns as dense as one another",
			Status: report.SourceStatusOwnDerivation},
		{Figure: "fits if the thicker is at most 5 % thicker than the thinner, nearly if 10 %",
			Citation: "a stitch in 20, two in 20: stitches to a width go with the thickness",
			Status:   report.SourceStatusOwnDerivation},
		spinnersCited, UsualGaugeCited,
	}
	if len(o.Aspects) > 2 {
		sources = append(sources, report.Source{Figure: "drape and washing by fibre", Citation: "common practice",
			Status: report.SourceStatusCommonPractice})
	}
	return sources
}
