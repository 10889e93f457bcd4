package yoke

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Directions write the raglan as a pattern would.
func (o Raglan) Directions() []string { return o.directions }

// directions writes the raglan as a pattern would.
func (r raglan) directions(o Raglan, plan decreaseRounds, kinds []raglanKind) []string {
	var d report.Lines
	holdUnderarms(&d, o.UnderarmStitches)
	line := ", line " + strconv.Itoa(r.line)
	if r.line == 0 {
		line = ", marker"
	}
	d.End(fmt.Sprintf("Join body and sleeves in the round: %s. From the beginning of the round, left and right as worn: "+
		"back %d%s, left sleeve %d%s, front %d%s, right sleeve %d%s.", report.CountOf(o.JoinStitches, "stitches"),
		o.Back.StartStitches, line, o.Sleeve.StartStitches, line, o.Front.StartStitches, line, o.Sleeve.StartStitches, line))
	begins := "The round begins with the first stitch of the back, at a marker. "
	if r.line > 0 {
		always := ""
		if o.Sleeve.EndStitches == 0 {
			always = " until they meet"
		}
		d.End(begins + "The lines lie on the sleeves' side of the markers, and their stitches are knit in every round" + always + ".")
	} else {
		d.End(begins + "The other markers lie between the parts.")
	}
	for _, line := range r.roundDirections(o, plan, kinds) {
		d.End(line)
	}
	d.End(fmt.Sprintf("From the beginning of the round there are left: back %d%s, left sleeve %d%s, front %d%s, right sleeve %d%s.",
		o.Back.EndStitches, line, o.Sleeve.EndStitches, line, o.Front.EndStitches, line, o.Sleeve.EndStitches, line))
	d.End("Remove all markers but that of the beginning of the round.")
	finishing(&d, o.UnderarmStitches)
	return d.Strings()
}

// Summary says the answer in words.
func (o Raglan) Summary() string {
	lines := "four lines of " + report.CountOf(o.LineStitches, "stitches")
	if o.LineStitches == 0 {
		lines = "four markers"
	}
	return "Join " + report.CountOf(o.JoinStitches, "stitches") + " (" + o.unit.Size(o.JoinCm) + ") at " + lines +
		" and decrease to " + strconv.Itoa(o.NeckStitches) + " (" + o.unit.Size(o.NeckCm) +
		") over " + report.CountOf(o.DepthRounds, "rounds") + " (" + o.unit.Size(o.DepthCm) + "): " + o.decreasesWords() +
		", two stitches each time, and no edge is more than " +
		report.AmountOf(measure.Decimal(o.GreatestDepartureStitches, 2), "stitches") + " from a straight line."
}

// decreasesWords say how often the parts decrease. Those that do so alike are told together.
func (o Raglan) decreasesWords() string {
	often := func(rounds int) string {
		if rounds == 0 {
			return "not at all"
		}
		return report.Times(rounds)
	}
	back, front, sleeve := often(o.Back.DecreaseRounds), often(o.Front.DecreaseRounds), often(o.Sleeve.DecreaseRounds)
	switch {
	case back == front && front == sleeve:
		return "back, front and each sleeve decrease " + back
	case back == front:
		return "back and front decrease " + back + ", each sleeve " + sleeve
	}
	return "the back decreases " + back + ", the front " + front + ", each sleeve " + sleeve
}

// Sources says where the figures come from.
func (Raglan) Sources() []report.Source {
	return []report.Source{
		percentageCited(percentageFigures),
		raglanLinesCited, raglanRoundsCited, raglanSteepnessCited,
	}
}

// raglanLinesCited is the source of the lines.
var raglanLinesCited = report.Source{Figure: "lines of two stitches, one decrease on each side of a line, leaning along it",
	Citation: "common practice", Status: report.SourceStatusCommonPractice}

// raglanRoundsCited is the source of the rounds that decrease.
var raglanRoundsCited = report.Source{Figure: "rounds of the decreases, departures and effort", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: of the plans in which each part decreases at one run of intervals or two, and only where those that " +
		"decrease more often do too, the one with the least to remember"}

// raglanSteepnessCited is the source of a raglan's steepness.
var raglanSteepnessCited = report.Source{Figure: "steepness", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: four flat pieces lie flat when the angles between their edges add up to a full turn"}
