package yoke

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// Directions write the yoke as a pattern would.
func (o Circular) Directions() []string {
	d := holdUnderarms(o.UnderarmStitches)
	join := "Join body and sleeves in the round: " + report.CountOf(o.JoinStitches, "stitches") + "."
	if r := o.BackRaise; r != nil {
		join += " Let the rounds begin " + report.CountOf(r.BeginBeforeCentreStitches, "stitches") +
			" before the centre of the back, at its right edge as worn."
	}
	d = append(d, join)
	last := 0
	for _, w := range o.work() {
		d = append(d, plainRounds(last+1, w.first-1)...)
		d = append(d, w.text...)
		last = w.last
	}
	return append(d, plainRounds(last+1, o.DepthRounds)...)
}

// holdUnderarms is what is done before the joining.
func holdUnderarms(stitches int) []string {
	if stitches == 0 {
		return nil
	}
	return []string{"Hold " + report.CountOf(stitches, "stitches") + " at each underarm: of the body at both sides, and of each sleeve."}
}

// task is rounds that are not plain, with what to do in them.
type task struct {
	first, last int
	text        []string
}

// work lists what is not plain, from the join up.
func (o Circular) work() []task {
	var list []task
	for _, r := range o.DecreaseRounds {
		list = append(list, task{r.RoundNumber, r.RoundNumber, []string{roundRange(r.RoundNumber, r.RoundNumber) + ": " +
			r.Instruction.Row.Text() + " (" + report.CountOf(r.EndStitches, "stitches") + ")."}})
	}
	for i, b := range o.Bands {
		list = append(list, task{b.FirstRoundNumber, b.LastRoundNumber, []string{fmt.Sprintf("%s: band %d on %s, %s of %d.",
			roundRange(b.FirstRoundNumber, b.LastRoundNumber), i+1, report.CountOf(b.Stitches, "stitches"),
			report.CountOf(b.RepeatCount, "repeats"), b.Stitches/b.RepeatCount)}})
	}
	if r := o.BackRaise; r != nil {
		list = append(list, task{r.FirstRoundNumber, r.FirstRoundNumber + raiseRounds - 1, r.directions()})
	}
	slices.SortFunc(list, func(a, b task) int { return a.first - b.first })
	return list
}

// plainRounds is "Rounds 3-7: knit.", or nothing when there are none.
func plainRounds(from, to int) []string {
	if from > to {
		return nil
	}
	return []string{roundRange(from, to) + ": knit."}
}

// roundRange is "Rounds 3-7" or "Round 3".
func roundRange(from, to int) string {
	if from == to {
		return "Round " + strconv.Itoa(from)
	}
	return "Rounds " + strconv.Itoa(from) + "-" + strconv.Itoa(to)
}

// Summary says the answer in words.
func (o Circular) Summary() string {
	rounds := report.CountOf(len(o.DecreaseRounds), "decrease rounds")
	if len(o.Bands) > 0 {
		rounds = report.CountOf(len(o.DecreaseRounds), "changes") + " of the count around " + report.CountOf(len(o.Bands), "bands") +
			" of pattern"
	}
	return "Join " + report.CountOf(o.JoinStitches, "stitches") + " (" + o.unit.Size(o.JoinCm) + ") and narrow them to " +
		strconv.Itoa(o.NeckStitches) + " (" + o.unit.Size(o.NeckCm) + ") over " + report.CountOf(o.DepthRounds, "rounds") +
		" (" + o.unit.Size(o.DepthCm) + "), in " + rounds + "."
}

// Sources says where the figures come from.
func (o Circular) Sources() []report.Source {
	sources := []report.Source{
		percentageCited(percentageFigures + "; rounds at 1/2, 3/4 and the end"),
		scalingCited, coneSpacingCited, steepnessCited, spreadCited("places of the decreases"),
	}
	if len(o.Bands) > 0 {
		sources = append(sources, bandsCited)
	}
	if o.BackRaise != nil {
		sources = append(sources, raiseCited...)
	}
	return sources
}
