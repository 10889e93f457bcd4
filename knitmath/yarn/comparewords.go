package yarn

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Comparison{}

// verdictWords say a verdict.
var verdictWords = [...]string{
	VerdictUnspecified: "The yarns have no measure in common, so that it cannot be told whether the second will do",
	VerdictFits:        "The second yarn will do",
	VerdictNearly:      "The second yarn will nearly do", VerdictNo: "The second yarn will not do as it is"}

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
	switch {
	case o.NeededM == nil:
	case o.Verdict == VerdictUnspecified:
		s += " If it does, you need " + o.needed() + "."
	case o.Verdict < VerdictNo && o.SecondBallCount != nil:
		s += " Buy " + o.needed() + "."
	case o.Verdict < VerdictNo:
		s += " You need " + o.needed() + "."
	}
	return s
}

// needed is how much of the second it takes: balls if they can be counted, metres, and grams
// where it is sold by mass.
func (o Comparison) needed() string {
	metres, strands, mass := LengthWords(o.unit, *o.NeededM), "", ""
	if o.second.strands > 1 {
		strands = " in " + report.CountOf(o.second.strands, "strands")
	}
	if o.SecondBallCount != nil {
		return report.CountOf(*o.SecondBallCount, "balls") + " of it, for " + metres + strands
	}
	if o.NeededG != nil {
		mass = ", " + MassWords(o.unit, *o.NeededG)
	}
	return metres + " of it" + strands + mass
}

// inShort is why an aspect is no fit, for the summary.
func (a AspectResult) inShort() string {
	switch a.Aspect {
	case AspectDrape:
		return "its fabric is likely to hang otherwise"
	case AspectWashing:
		return "it may felt"
	case AspectPlies:
		return "it is plied otherwise"
	case AspectCategory:
		why, _, _ := strings.Cut(a.Why, ", a wide")
		return why
	}
	why, _, _ := strings.Cut(a.Why, ",")
	return why
}

// Directions say what to do before buying.
func (o Comparison) Directions() []string {
	switch {
	case o.Verdict == VerdictUnspecified:
		return []string{"Measure both yarns alike: weigh a length of each, wrap each round a ruler, or knit a swatch of each on one needle."}
	case o.Verdict == VerdictNo && o.contradicts():
		return []string{"Weigh a length of each yarn again, wrap each round a ruler, and knit a swatch of each on one needle: their measures " +
			"contradict one another, so that neither more strands nor fewer are advised by one of them alone."}
	case o.Verdict == VerdictNo && o.thicker:
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
	var sources []report.Source
	if o.ThicknessRatio != nil {
		sources = append(sources, report.Source{Figure: "thickness ratio", Citation: "sqrt of the ratio of tex, of yarns as dense as one another",
			Status: report.SourceStatusOwnDerivation})
	}
	if o.measured() {
		sources = append(sources, report.Source{Figure: "fits if the thicker is at most 5 % thicker than the thinner, nearly if 10 %",
			Citation: "a stitch in 20, two in 20: stitches to a width go with the thickness", Status: report.SourceStatusOwnDerivation})
	}
	for _, s := range slices.Concat(o.first.categoriesCited(), o.second.categoriesCited()) {
		if !slices.Contains(sources, s) {
			sources = append(sources, s)
		}
	}
	if o.first.plies > 0 && o.second.plies > 0 {
		sources = append(sources, report.Source{Figure: "how plies show in the fabric", Citation: "common practice",
			Status: report.SourceStatusCommonPractice})
	}
	if len(o.first.in.Fibres) > 0 && len(o.second.in.Fibres) > 0 {
		sources = append(sources, report.Source{Figure: "drape and washing by fibre", Citation: "common practice",
			Status: report.SourceStatusCommonPractice})
	}
	return sources
}

// measured reports whether the yarns have been compared by a measure of both.
func (o Comparison) measured() bool {
	return len(o.Aspects) > 0 && slices.Contains([]Aspect{AspectThickness, AspectWraps, AspectGauge}, o.Aspects[0].Aspect)
}

// categoriesCited are the sources of categories.
func (y comparedYarn) categoriesCited() []report.Source {
	switch {
	case !y.together.IsZero():
		return []report.Source{spinnersCited, UsualGaugeCited}
	case y.in.Stitches != nil:
		return []report.Source{readCited, reprintedCited}
	}
	return []report.Source{spinnersCited, wrapsCited}
}
