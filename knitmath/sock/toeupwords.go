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
	s += over + ": the round grows to " + strconv.Itoa(*o.GussetStitches) + " in " + report.CountOf(*o.GussetRounds, "rounds") +
		", of which " + strconv.Itoa(*o.GussetIncreaseRounds) + " increase" + ", and comes back to " + strconv.Itoa(o.RoundStitches)
	if o.FlapRows == nil {
		return s + " by the turn" + o.deep() + "."
	}
	return s + " in " + report.CountOf(*o.FlapRows, "flap rows") + o.deep() + "."
}

// directToeUp is the heel step by step.
func (o Heel) directToeUp(d []string) []string {
	gusset := o.part(HeelPartGusset)
	sole := *o.GussetStitches - o.InstepStitches
	d = append(d, fmt.Sprintf("Gusset round 1 (increase round): %s (%d stitches).", gusset[0].Instruction.Row.Text(), gusset[0].Instruction.EndStitches))
	if more := *o.GussetIncreaseRounds - 1; more > 0 {
		d = append(d, "Work the increase round again on every "+report.Ordinal(o.every)+" round "+moreTimes(more)+evenBetween(o.every, more)+
			": k1, M1L, k to 1 st before m, M1R, k1, sm, k to end.")
	}
	d = append(d, fmt.Sprintf("After round %d there are %d stitches: %d of sole and gussets, and %d of the instep.", *o.GussetRounds,
		*o.GussetStitches, sole, o.InstepStitches))
	turn := o.part(HeelPartTurn)
	switch o.kind {
	case HeelKindHeart:
		d = append(d, "Turn of the heel, over sole and gussets together:")
		for _, r := range turn[:len(turn)-1] {
			d = append(d, r.line()+".")
		}
		return append(d, "Next round: k"+strconv.Itoa(o.RoundStitches)+". Sole and heel have "+report.CountOf(o.HeelStitches, "stitches")+" again.")
	case HeelKindRound:
		d = append(d, "Turn of the heel, over the middle "+report.CountOf(o.HeelStitches, "stitches")+" of the sole. "+shortrow.Technique(o.method))
		for _, r := range turn {
			d = append(d, r.line()+".")
		}
		d = append(d, "The last of these goes on over gusset and instep to the end of the round.")
	}
	return o.flapToeUp(d)
}

// flapToeUp is the flap that takes up the gussets.
func (o Heel) flapToeUp(d []string) []string {
	rows := o.part(HeelPartFlap)
	d = append(d, "Heel flap, over the same "+report.CountOf(o.HeelStitches, "stitches")+
		": the decrease at the end of each row takes up a stitch of the gusset. Slip stitches purlwise, with the yarn on the wrong side.")
	told := min(len(rows)-1, 4)
	for _, r := range rows[:told] {
		d = append(d, r.line()+".")
	}
	if more := (len(rows) - 1 - told) / 2; more > 0 {
		d = append(d, "Repeat rows 3 and 4 "+moreTimes(more)+": "+report.CountOf(*o.FlapRows, "rows")+".")
	}
	return append(d, "Next round: k"+strconv.Itoa(o.RoundStitches)+". The gussets are taken up, and the leg begins.")
}
