package solid

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// Directions write the closing out, its first round being numbered from.
func (p ClosingPlan) Directions(from int) []string { return p.directions(1, from) }

// directions begin with a later round than the first.
func (p ClosingPlan) directions(first, from int) []string {
	var d []string
	last := first - 1
	even := func(to int) { d = report.AppendEven(d, "round", from+last, from-1+to) }
	for _, r := range p.Rounds {
		even(r.RoundNumber - 1)
		adjusting := ""
		if r.Adjusts {
			adjusting = " (to adjust the count)"
		}
		d = append(d, "Round "+strconv.Itoa(from-1+r.RoundNumber)+adjusting+": "+r.Instruction.Row.Text()+
			" ("+report.CountOf(r.Instruction.EndStitches, "stitches")+").")
		last = r.RoundNumber
	}
	even(p.RoundCount)
	return d
}

// DrawUp closes the last stitches with the yarn. Common practice.
func DrawUp(stitches int) string {
	if stitches == 1 {
		return "Cut the yarn, draw it through the last stitch and fasten off inside."
	}
	return "Cut the yarn, draw it through the remaining " + report.CountOf(stitches, "stitches") +
		" twice, pull up firmly and fasten off inside."
}

// Graft closes two sides of so many stitches each. Common practice.
func Graft(eachSide int) string {
	return "Cut the yarn, leaving enough to graft, and graft the two sides of " + report.CountOf(eachSide, "stitches") +
		" each together, right sides out."
}
