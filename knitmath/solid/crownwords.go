package solid

import (
	"math"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Summary says the answer in words.
func (o Crown) Summary() string {
	decreases := 0
	adjusting := ""
	for _, r := range o.Rounds {
		if r.Adjusts {
			adjusting = ", the count being adjusted first"
			continue
		}
		decreases++
	}
	even := "a crown"
	if o.EvenRounds > 0 {
		even = report.CountOf(o.EvenRounds, "rounds") + " even, then a crown"
	}
	return "A hat of " + report.CountOf(o.HatStitches, "stitches") + " (" + o.unit.Size(o.HatCm) + ", " + o.ease() + "), " +
		o.unit.Size(o.TotalCm) + " high: " + even + " of " +
		report.CountOf(o.WedgeCount, "wedges") + " in " + report.CountOf(decreases, "decrease rounds") + " over " +
		report.CountOf(o.CrownRounds, "rounds") + " (" + o.unit.Size(o.CrownCm) + ") to " +
		report.CountOf(o.EndStitches, "stitches") + adjusting + "."
}

// ease is how much wider or narrower than the head the hat is.
func (o Crown) ease() string {
	head := "the head of " + o.unit.Size(o.HeadCm)
	percent := measure.Decimal(math.Abs(100*(o.HatCm/o.HeadCm-1)), 1) + " % "
	switch {
	case percent == "0 % ":
		return "as wide as " + head
	case o.HatCm < o.HeadCm:
		return percent + "below " + head
	}
	return percent + "above " + head
}

// Directions write the hat as a pattern would.
func (o Crown) Directions() []string {
	var d []string
	if o.leftOver > 0 {
		d = append(d, "Note: rounds begin at the centre of the back, where "+report.CountOf(o.leftOver, "stitches")+
			" beyond the last wedge "+report.Are(o.leftOver)+" least seen.")
	}
	d = append(d, "Cast on "+report.CountOf(o.HatStitches, "stitches")+" and join in the round, without twisting.")
	d = report.AppendEven(d, "round", 1, o.EvenRounds)
	if size := o.unit.Size(o.TotalCm - o.CrownCm); o.EvenRounds > 1 && !strings.HasPrefix(size, "0 ") {
		d = append(d, "Note: these are "+size+", the brim included.")
	}
	crown := ClosingPlan{Rounds: o.Rounds, RoundCount: o.TotalRounds}
	return append(append(d, crown.directions(o.EvenRounds+1, 1)...), DrawUp(o.EndStitches))
}

// Where the figures come from.
var (
	easeCited = report.Source{Figure: "ease of -8 %", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: hats of 0.83 to 0.92 of the head they are said to fit, 1 to 2 inches below it"}
	hatHeightCited = report.Source{Figure: "height of the hat, 0.4 of the head, and 0.15 more where it slouches", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	crownShapeCited = report.Source{Figure: "depth and curve of the crown", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: a disc of the hat's circumference, or half a ball; that a crown is the radius of its disc deep agrees with " +
			"Woolly Wormhead, Crown shaping masterclass (2016)"}
	pointCited = report.Source{Figure: "last decrease rounds one after the other", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: the last 2 or 3 decrease rounds on successive rounds, to avoid a point"}
	rhythmCited = report.Source{Figure: "rhythm of the decrease rounds", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: of all rhythms near the curve that of the fewest runs of equal intervals"}
	wedgesCited = report.Source{Figure: "wedges with a decrease each", Citation: "common practice", Status: report.SourceStatusCommonPractice}
)

// Sources says where the figures come from.
func (o Crown) Sources() []report.Source {
	return CitedCare(append([]report.Source{wedgesCited}, o.sources...), o.Notices)
}

// CitedCare adds the standards behind what is said of babies, where it is said.
func CitedCare(list []report.Source, notices []report.Notice) []report.Source {
	for _, n := range notices {
		if n.Reason == BabyCare {
			return append(list, report.Source{Figure: "no cords on what small children wear", Status: report.SourceStatusPublished,
				Citation: "EN 14682, ASTM F1816 and 16 CFR 1120, of clothes; local rules govern"})
		}
	}
	return list
}

func (h *hat) sources(in CrownInput) []report.Source {
	var list []report.Source
	if h.headSource != nil {
		list = append(list, *h.headSource)
	}
	if in.EasePercent == nil {
		list = append(list, easeCited)
	}
	if in.TotalRounds == nil && in.TotalCm == nil {
		list = append(list, hatHeightCited)
	}
	if len(in.Rates) > 0 {
		return list
	}
	list = append(list, crownShapeCited, rhythmCited)
	if h.successive(in.SuccessiveRounds) > 1 {
		list = append(list, pointCited)
	}
	return list
}
