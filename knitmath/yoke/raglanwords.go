package yoke

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// describe says how a decrease round of one kind is worked, in words that hold
// for all of them.
func (r raglan) describe(kind raglanKind) string {
	var usual []string
	for p, name := range [...]string{"the back", "the front", "each sleeve"} {
		if kind.parts[p] && (p != sleevePart || kind.last == 0) {
			usual = append(usual, name)
		}
	}
	var b strings.Builder
	if len(usual) > 0 {
		b.WriteString("In " + report.Listed(usual) + ": ssk, knit to the last 2 stitches before the next " + r.landmark() + ", k2tog. ")
	}
	switch kind.last {
	case 2:
		b.WriteString("At each sleeve: remove the markers at its two ends, ssk the last stitch of the line before it with its first stitch, " +
			"k2tog its second stitch with the first stitch of the line after it, so that the lines meet. ")
	case 3:
		b.WriteString("In each sleeve: CDD on its three stitches. ")
	}
	b.WriteString("Knit all other stitches.")
	return b.String()
}

// landmark is where a part ends: a line that has no stitches is only a marker.
func (r raglan) landmark() string {
	if r.line == 0 {
		return "marker"
	}
	return "line"
}

// Directions write the raglan as a pattern would.
func (o Raglan) Directions() []string { return o.directions }

// directions writes the raglan as a pattern would.
func (r raglan) directions(o Raglan, plan decreaseRounds, kinds []raglanKind) []string {
	d := holdUnderarms(o.UnderarmStitches)
	line := ", line " + strconv.Itoa(r.line)
	if r.line == 0 {
		line = ", marker"
	}
	d = append(d, fmt.Sprintf("Join body and sleeves in the round: %s. From the beginning of the round, left and right as worn: "+
		"back %d%s, left sleeve %d%s, front %d%s, right sleeve %d%s.", report.CountOf(o.JoinStitches, "stitches"),
		o.Back.StartStitches, line, o.Sleeve.StartStitches, line, o.Front.StartStitches, line, o.Sleeve.StartStitches, line))
	if r.line > 0 {
		d = append(d, "The round begins with the first stitch of the back, after the line between right sleeve and back. "+
			"Place a marker on each side of every line, and knit the lines' stitches in every round.")
	} else {
		d = append(d, "The round begins with the first stitch of the back, at the marker between right sleeve and back.")
	}
	names := plan.names(kinds)
	for i, in := range o.Instructions {
		d = append(d, fmt.Sprintf("%s, %s fewer. %s", capital(names[i]),
			report.CountOf(in.Instruction.StartStitches-in.Instruction.EndStitches, "stitches"), in.Description))
	}
	d = append(d, o.whenDirections(plan, names)...)
	if len(o.Instructions) > 0 {
		d = append(d, "Knit all other rounds.")
	}
	lines := ""
	if r.line > 0 {
		lines = ", four lines of " + strconv.Itoa(r.line)
	}
	d = append(d, fmt.Sprintf("After round %d there are %s: back %d, front %d, each sleeve %d%s.", o.DepthRounds,
		report.CountOf(o.NeckStitches, "stitches"), o.Back.EndStitches, o.Front.EndStitches, o.Sleeve.EndStitches, lines))
	d = append(d, "Remove all markers but that of the beginning of the round.")
	return append(d, finishing(o.UnderarmStitches)...)
}

// capital is a name at the beginning of a sentence.
func capital(name string) string { return strings.ToUpper(name[:1]) + name[1:] }

// roundsOf are the rounds in which an instruction is worked.
func (o Raglan) roundsOf(number int) []int {
	var rounds []int
	for _, r := range o.Rounds {
		if r.InstructionNumber == number {
			rounds = append(rounds, r.RoundNumber)
		}
	}
	return rounds
}

// roundList writes ascending round numbers: "round 3", "rounds 3, 7", "every 2nd
// round from 2 to 20, rounds 23, 26". Three or more at equal distances are taken
// together.
func roundList(rounds []int) string {
	var parts []string
	var single []string
	flush := func() {
		switch len(single) {
		case 0:
			return
		case 1:
			parts = append(parts, "round "+single[0])
		default:
			parts = append(parts, "rounds "+strings.Join(single, ", "))
		}
		single = nil
	}
	for i := 0; i < len(rounds); {
		end := i + 1
		for end+1 < len(rounds) && rounds[end+1]-rounds[end] == rounds[i+1]-rounds[i] {
			end++
		}
		if end-i < 2 {
			single = append(single, strconv.Itoa(rounds[i]))
			i++
			continue
		}
		flush()
		every := "every round"
		if gap := rounds[i+1] - rounds[i]; gap > 1 {
			every = "every " + report.Ordinal(gap) + " round"
		}
		parts = append(parts, every+" from "+strconv.Itoa(rounds[i])+" to "+strconv.Itoa(rounds[end]))
		i = end + 1
	}
	flush()
	return strings.Join(parts, ", ")
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
	back, front, sleeve := report.Times(o.Back.DecreaseRounds), report.Times(o.Front.DecreaseRounds), report.Times(o.Sleeve.DecreaseRounds)
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
