package sock

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
)

// sumToeUp is a heel of gussets worked from the toe up in a sentence.
func (o Heel) sumToeUp(over string) string {
	s := "A heel of gusset and flap, from the toe up, "
	switch o.kind {
	case HeelKindHeart:
		s = "A heel of gussets and " + heelNames[o.kind] + ", from the toe up,"
	case HeelKindSquare:
		s += "without a turn,"
	default:
		s += "turned by short rows down to " + report.CountOf(*o.CentreStitches, "stitches") + ","
	}
	s += over + ": the round grows to " + strconv.Itoa(*o.GreatestRoundStitches) + " in " + report.CountOf(*o.GussetRounds, "rounds") +
		", of which " + strconv.Itoa(*o.GussetIncreaseRounds) + " increase" + ", and comes back to " + strconv.Itoa(o.RoundStitches)
	if o.FlapRows == nil {
		return s + " by the turn" + o.deep() + "."
	}
	return s + " in " + report.CountOf(*o.FlapRows, "flap rows") + o.deep() + "."
}

// directToeUp is the heel step by step.
func (o Heel) directToeUp(d []string) []string {
	first := o.part(HeelPartGusset)[0].Instruction
	d = append(d, "Gussets:", fmt.Sprintf("Round 1: %s (%d stitches).", first.Row.Text(), first.EndStitches))
	if more := *o.GussetIncreaseRounds - 1; more > 0 {
		d = report.AppendEven(d, "round", 2, o.every)
		d = append(d, fmt.Sprintf("Round %d (increase round): k1, M1L, k to 1 st before m, M1R, k1, sm, k to end (%d stitches).",
			1+o.every, first.EndStitches+2))
		if more > 1 {
			d = append(d, "Repeat the increase round "+repeats(0, o.every, more-1)+" ("+report.CountOf(*o.GreatestRoundStitches, "stitches")+").")
		}
	}
	turn := o.part(HeelPartTurn)
	switch o.kind {
	case HeelKindHeart:
		d = append(d, "Turn of the heel:")
		for _, r := range turn[:len(turn)-1] {
			d = append(d, r.line()+".")
		}
		return append(d, unmarked(turn[len(turn)-1].Instruction), "Sole and gussets are as wide as the sole was.")
	case HeelKindRound:
		d = append(d, "Turn of the heel, over the middle of the sole, which the first row comes to over a gusset.",
			shortrow.Technique(o.method)+closedByFlap(o.method))
		last := len(turn) - 1
		for _, r := range turn[:last] {
			d = append(d, r.line()+".")
		}
		d = append(d, "The next goes on over gusset and instep to the end of the round.",
			"Round "+strconv.Itoa(turn[last].RowNumber)+": "+turn[last].Instruction.Row.Text()+".")
	}
	return o.flapToeUp(d)
}

// closedByFlap says how the flap's first row closes the yarn overs of wrong-side turns, which it
// meets from the other side.
func closedByFlap(m shortrow.TurnMethod) string {
	if m != shortrow.TurnMethodYarnOver {
		return ""
	}
	return " The first row of the flap closes those of the wrong side: ssk the stitch before the yo together with it."
}

// flapToeUp is the flap that takes up the gussets.
func (o Heel) flapToeUp(d []string) []string {
	rows := o.part(HeelPartFlap)
	d = append(d, "Heel flap: each row takes up a stitch of the gusset with its last. "+
		"Slip stitches purlwise, with the yarn on the wrong side.")
	told := min(len(rows)-1, 4)
	for _, r := range rows[:told] {
		d = append(d, r.line()+".")
	}
	if more := (len(rows) - 1 - told) / 2; more > 0 {
		d = append(d, "Repeat rows 3 and 4 "+report.Again(more)+" ("+report.CountOf(*o.FlapRows, "rows")+").")
	}
	return append(d, unmarked(rows[len(rows)-1].Instruction)+" The leg begins.")
}
