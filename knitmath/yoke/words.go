package yoke

import (
	"fmt"
	"sort"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// Directions write the yoke as a pattern would.
func (o Circular) Directions() []string {
	d := append(holdUnderarms(o.UnderarmStitches), o.joinDirections()...)
	last := 0
	for _, w := range o.work() {
		d = report.AppendEven(d, "round", last+1, w.first-1)
		d = append(d, w.text...)
		last = w.last
	}
	d = report.AppendEven(d, "round", last+1, o.DepthRounds)
	return append(d, finishing(o.UnderarmStitches)...)
}

// holdUnderarms is what is done before the joining.
func holdUnderarms(stitches int) []string {
	if stitches == 0 {
		return nil
	}
	return []string{"Place " + report.CountOf(stitches, "stitches") +
		" on hold at each underarm: of the body at both sides, and of each sleeve."}
}

// finishing is what becomes of the neck, and of the stitches on hold. A neck is bound off
// loosely because it goes over a head. Common practice.
func finishing(underarm int) []string {
	d := []string{"Go on with the neckband, or bind off loosely."}
	if underarm > 0 {
		d = append(d, "Graft the "+report.CountOf(underarm, "stitches")+" on hold of the body to those of the sleeve at each underarm.")
	}
	return d
}

// task is rounds that are not worked even, with what to do in them.
type task struct {
	first, last int
	text        []string
}

// work lists what is not worked even, from the join up.
func (o Circular) work() []task {
	list := make([]task, 0, len(o.Rounds)+len(o.Bands)+1)
	for _, r := range o.Rounds {
		adjusting := ""
		if r.Adjusts {
			adjusting = ", to adjust the count"
		}
		list = append(list, task{r.RoundNumber, r.RoundNumber, []string{report.Rows("round", r.RoundNumber, r.RoundNumber) + adjusting + ": " +
			r.Instruction.Row.Text() + " (" + report.CountOf(r.EndStitches, "stitches") + ")."}})
	}
	for i, b := range o.Bands {
		list = append(list, task{b.FirstRoundNumber, b.LastRoundNumber, []string{fmt.Sprintf("%s: band %d on %s, %s of %d.",
			report.Rows("round", b.FirstRoundNumber, b.LastRoundNumber), i+1, report.CountOf(b.Stitches, "stitches"),
			report.CountOf(b.RepeatCount, "repeats"), b.Stitches/b.RepeatCount)}})
	}
	if r := o.BackRaise; r != nil {
		list = append(list, task{r.FirstRoundNumber, r.FirstRoundNumber + raiseRounds - 1, r.directions()})
	}
	sort.SliceStable(list, func(i, j int) bool { return list[i].first < list[j].first })
	return list
}

// Summary says the answer in words.
func (o Circular) Summary() string {
	adjusting, changes := "", len(o.Rounds)
	if changes > 0 && o.Rounds[0].Adjusts {
		adjusting, changes = ", the count being adjusted first", changes-1
	}
	rounds := report.CountOf(changes, "decrease rounds")
	if len(o.Bands) > 0 {
		rounds = report.CountOf(changes, "changes") + " of the count around " + report.CountOf(len(o.Bands), "bands") +
			" of pattern"
	}
	return "Join " + report.CountOf(o.JoinStitches, "stitches") + " (" + o.unit.Size(o.JoinCm) + ") and decrease to " +
		strconv.Itoa(o.NeckStitches) + " (" + o.unit.Size(o.NeckCm) + ") over " + report.CountOf(o.DepthRounds, "rounds") +
		" (" + o.unit.Size(o.DepthCm) + "), in " + rounds + o.mostTakenWords() + adjusting + "."
}

// Sources says where the figures come from.
func (o Circular) Sources() []report.Source {
	sources := []report.Source{
		percentageCited(percentageFigures + "; rounds at 1/2, 3/4 and the end"),
		scalingCited, easiestCited, coneSpacingCited, steepnessCited, spreadCited("places of the decreases"),
	}
	if len(o.Bands) > 0 {
		sources = append(sources, bandsCited)
	}
	if o.BackRaise != nil {
		sources = append(sources, raiseCited...)
	}
	return sources
}
