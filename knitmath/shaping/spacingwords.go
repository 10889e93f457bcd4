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
	slices.Sort(gaps)
	switch gaps = slices.Compact(gaps); {
	case len(gaps) == 1 && gaps[0] == 0:
		b.WriteString("The changes follow one after another.")
	case len(gaps) == 1:
		b.WriteString(report.CountOf(gaps[0], "stitches") + " between changes.")
	case len(gaps) == 2:
		b.WriteString(strconv.Itoa(gaps[0]) + " or " + report.CountOf(gaps[1], "stitches") + " between changes.")
	default:
		b.WriteString(strconv.Itoa(gaps[0]) + " to " + report.CountOf(gaps[len(gaps)-1], "stitches") + " between changes.")
	}
	return b.String()
}

// between is the gaps between two changes, each length once or more. In the round
// one of them lies across the beginning; a lone change has none.
func (o EvenSpacing) between() []int {
	if o.ChangeCount < 2 {
		return nil
	}
	var gaps []int
	for i, g := range o.Gaps {
		if i == 0 && o.round && !o.split() {
			// Each gap is before its change, so that the first is a part of that across.
			gaps = append(gaps, g.Stitches+o.LastGapStitches)
			if g.Times == 1 {
				continue
			}
		}
		gaps = append(gaps, g.Stitches)
	}
	if o.split() {
		gaps = append(gaps, o.FirstGapStitches+o.LastGapStitches)
	}
	return gaps
}

// Directions write the row as a pattern would.
func (o EvenSpacing) Directions() []string {
	change := "Increase "
	if o.Operation.Net() < 0 {
		change = "Decrease "
	}
	row := change + noun(o.round) + ": " + o.Instruction.Row.Text() + " (" +
		report.CountOf(o.Instruction.EndStitches, "stitches") + ")."
	directions := []string{row}
	if o.split() {
		directions = []string{"The round begins where its two halves meet, in the middle of the front or at a side, say.", row}
	}
	if o.bar > 0 {
		directions = append(directions, o.Operation.Abbr()+" leaves its bar on the second stitch: placed so, the bars are symmetrical.")
	}
	return directions
}
