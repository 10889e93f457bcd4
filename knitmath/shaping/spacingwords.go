package shaping

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Summary says the answer in words.
func (o EvenSpacing) Summary() string {
	verb := "Increase"
	if o.Operation.Net() < 0 {
		verb = "Decrease"
	}
	change := measure.Abs(o.Instruction.EndStitches - o.Instruction.StartStitches)
	var b strings.Builder
	b.WriteString(verb + " " + report.CountOf(change, "stitches") + " evenly across one " + noun(o.round) + ", from " +
		strconv.Itoa(o.Instruction.StartStitches) + " to " + strconv.Itoa(o.Instruction.EndStitches) + ". ")
	gaps := o.between()
	if len(gaps) == 0 {
		return strings.TrimSpace(b.String())
	}
	switch low, high := slices.Min(gaps), slices.Max(gaps); {
	case high == 0:
		b.WriteString("The changes follow one after another.")
	case low == high:
		b.WriteString(report.CountOf(low, "stitches") + " between changes.")
	default:
		b.WriteString(strconv.Itoa(low) + " or " + report.CountOf(high, "stitches") + " between changes.")
	}
	return b.String()
}

// between is the gaps between two changes, each length once or more. In the round
// one of them may lie across the beginning; a lone change has none.
func (o EvenSpacing) between() []int {
	if o.ChangeCount < 2 {
		return nil
	}
	var gaps []int
	for _, g := range o.Gaps {
		gaps = append(gaps, g.Stitches)
	}
	if across := o.FirstGapStitches + o.LastGapStitches; o.round && across > 0 {
		gaps = append(gaps, across)
	}
	return gaps
}

// Directions write the row as a pattern would.
func (o EvenSpacing) Directions() []string {
	change := "Increase "
	if o.Operation.Net() < 0 {
		change = "Decrease "
	}
	return []string{change + noun(o.round) + ": " + o.Instruction.Row.Text() + " (" +
		report.CountOf(o.Instruction.EndStitches, "stitches") + ")."}
}
