package yoke

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
)

// raiseRound is the first of two even rounds in succession for the raise: the
// nearest to the join below all bands, or the nearest to the neck above them.
// Without bands, below all decrease rounds, or the nearest to the neck. It is 0
// when there are none.
func (y *circular) raiseRound(place RaisePlace) int {
	busy := make([]bool, y.rounds+raiseRounds)
	for _, s := range y.changes {
		busy[s.round] = true
	}
	from, to := 1, y.rounds
	switch {
	case place == RaisePlaceBeforeBands && len(y.bands) > 0:
		to = y.bands[0].FirstRoundNumber - 1
	case place == RaisePlaceBeforeBands:
		to = y.firstDecrease() - 1
	case len(y.bands) > 0:
		from = y.bands[len(y.bands)-1].LastRoundNumber + 1
	}
	found := 0
	for r := from; r+1 <= to; r++ {
		if !busy[r] && !busy[r+1] {
			if found = r; place == RaisePlaceBeforeBands {
				break
			}
		}
	}
	return found
}

// firstDecrease is the lowest round that changes the count, but for one that adjusts it.
func (y *circular) firstDecrease() int {
	if first := y.changes[0]; !first.adjusts || len(y.changes) == 1 {
		return first.round
	}
	return y.changes[1].round
}

// refuseRaise refuses a raise for which there is no room, and offers another place for it, or room below
// the bands, if the planner plans that. Deeper yokes and other numbers of decrease rounds are
// looked for where the refusal is told.
func refuseRaise(c *fault.Checks, y *circular, in CircularInput) {
	before := in.BackRaise.Place == RaisePlaceBeforeBands
	others := in.otherRaises(y)
	switch {
	case len(y.bands) > 0 && before:
		c.Infeasible("the raise takes two even rounds below the first band beside the change of count"+wouldDo(others),
			"bands[0].even_before_rounds", "back_raise.place")
		return
	case len(y.bands) > 0:
		c.Infeasible("the raise takes two even rounds in succession above the last band"+wouldDo(others), y.depthField, "back_raise.place")
		return
	}
	detail := "the raise takes two even rounds in succession"
	if before {
		detail = "the raise takes two even rounds below the first decrease round"
	}
	fields := []string{y.depthField, "back_raise.place"}
	if in.DecreaseRounds != nil {
		fields = append(fields, "decrease_rounds")
	}
	c.Infeasible(detail+wouldDo(others), fields...)
}

// otherRaises are what else would make room for a raise, each asked of the planner.
func (in CircularInput) otherRaises(y *circular) (words []string) {
	if y.tried || in.tooDearToTry() {
		return nil
	}
	try := func(other CircularInput, text string) {
		if _, err := other.settled(true); err == nil {
			words = append(words, text)
		}
	}
	if len(in.Bands) > 0 && in.BackRaise.Place == RaisePlaceBeforeBands {
		wider := in
		wider.Bands = slices.Clone(in.Bands)
		wider.Bands[0].EvenBeforeRounds = new(evenForRaise)
		try(wider, "three even rounds there")
	}
	raise, where := *in.BackRaise, ""
	switch {
	case raise.Place == RaisePlaceAfterBands && len(in.Bands) > 0:
		raise.Place, where = RaisePlaceBeforeBands, "a place before the bands"
	case raise.Place == RaisePlaceAfterBands:
		raise.Place, where = RaisePlaceBeforeBands, "a place below the decrease rounds"
	case len(in.Bands) > 0:
		raise.Place, where = RaisePlaceAfterBands, "a place after the bands"
	default:
		raise.Place, where = RaisePlaceAfterBands, "a place near the neck"
	}
	in.BackRaise = &raise
	try(in, where)
	return words
}

// evenForRaise are the even rounds below a band that hold a raise beside the change of count.
const evenForRaise = 3

// countBefore is the stitches on the needle before a round.
func (y *circular) countBefore(round int) int {
	n := y.join
	for _, s := range y.changes {
		if s.round < round {
			n = s.count
		}
	}
	return n
}
