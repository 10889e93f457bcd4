package yoke

import "example.com/knitmath/knitmath/fault"

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

// refuseRaise refuses a raise for which there is no room.
func refuseRaise(c *fault.Checks, y *circular, place RaisePlace) {
	before := place == RaisePlaceBeforeBands
	switch {
	case len(y.bands) > 0 && before:
		c.Infeasible("the raise takes two even rounds below the first band beside the change of count; "+
			"three even rounds there would do, or a place after the bands", "bands[0].even_before_rounds", "back_raise.place")
	case len(y.bands) > 0:
		c.Infeasible("the raise takes two even rounds in succession above the last band; "+
			"a deeper yoke would do, or a place before the bands", y.depthField, "back_raise.place")
	case before:
		c.Infeasible("the raise takes two even rounds below the first decrease round; "+
			"a deeper yoke would do", y.depthField, "back_raise.place")
	default:
		c.Infeasible("the raise takes two even rounds in succession; a deeper yoke would do, or fewer decrease rounds",
			y.depthField, "back_raise.place")
	}
}

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
