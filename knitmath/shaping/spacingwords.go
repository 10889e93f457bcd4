package shaping

import (
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
	low, high := -1, -1
	for _, g := range o.Gaps {
		if low < 0 || g.Stitches < low {
			low = g.Stitches
		}
		high = max(high, g.Stitches)
	}
	switch {
	case low < 0:
	case low == high:
		b.WriteString(report.CountOf(low, "stitches") + " between changes.")
	default:
		b.WriteString(strconv.Itoa(low) + " or " + report.CountOf(high, "stitches") + " between changes.")
	}
	return strings.TrimSpace(b.String())
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
