package yoke

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// raiseNotice says which way a rise went that is not a whole number of pairs.
func raiseNotice(raise *BackRaise, plan *BackRaisePlan) []report.Notice {
	if plan == nil || plan.AskedRiseRows == float64(plan.RiseRows) {
		return nil
	}
	return []report.Notice{shortrow.RiseNotice(riseField(raise), plan.AskedRiseRows, plan.RiseRows)}
}

// directions writes the raise as a pattern would.
func (p *BackRaisePlan) directions() []string {
	first := strconv.Itoa(p.FirstRoundNumber)
	d := []string{"Note: in round " + first + " the back is raised, its middle by " + report.CountOf(p.RiseRows, "rows") +
		", by short rows on the first " + strconv.Itoa(p.BackStitches) + " of " + report.CountOf(p.Stitches, "stitches") +
		". The last of them goes on to the end of the round, and the round after it closes the gaps of the wrong side.", p.technique()}
	last := len(p.Rows) - 1
	for _, r := range p.Rows[:last] {
		side := " (right side): "
		if r.Side == stitch.WrongSide {
			side = " (wrong side): "
		}
		d = append(d, "Short row "+strconv.Itoa(r.RowNumber)+side+r.Instruction.Row.Text()+".")
	}
	return append(d, "Round "+strconv.Itoa(p.FirstRoundNumber+1)+": "+p.Rows[last].Instruction.Row.Text()+".")
}

// technique says what the words of the turns mean. A yarn over of the wrong side
// that the round after meets from the right side lies after its stitch, and is
// closed another way than in the short rows.
func (p *BackRaisePlan) technique() string {
	s := shortrow.Technique(p.method)
	if p.method == shortrow.TurnMethodYarnOver {
		s += " Round " + strconv.Itoa(p.FirstRoundNumber+raiseRounds-1) + " closes those that the wrong side has left: " +
			"ssk there takes the stitch beyond the turn together with the yo after it."
	}
	return s
}
