package yoke

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// place is a place in the yoke where the count may change: above the join, to adjust
// it; at a decrease round of the schedule; below a band; between bands; or at the neck.
type place struct {
	round  int // where the change is worked
	wanted float64
	repeat int // what divides the count
	lo, hi int // what bounds it
	band   int // the band above it, or noBand
	// settled: its bounds say what it may have, however far that is from the wanted count.
	settled bool
	change  allowed
	said    float64 // the part that the schedule itself says its round takes
}

const noBand = -1

// allowed is how the count of a place may differ from the one below it.
type allowed struct {
	adjusts bool  // by mostAdjusted either way
	rises   bool  // also be more, up to twice as many
	fewest  int   // stitches it has to be less by, where it is not more
	takes   share // what the round may take
	even    steady
}

// steady is how many stitches a decrease round of a schedule may take, so that the
// rounds of a yoke take about as much as the schedule would have them: at least three
// quarters, at most a quarter as much again, and never more than a third, or than the schedule takes there,
// to the stitch. Nor, of a cone, more than lies
// flat when it is blocked, unless the schedule does. Own choice.
type steady struct{ fewest, most int }

func steadyBetween(before, wanted float64) steady {
	lost := thousandths(before - wanted)
	return steady{fewest: max(1, int(3*lost/4000)), most: int(measure.CeilDiv(5*lost, 4000)) + 1}
}

const (
	// mostAdjusted is how many stitches the round above the join may add or take away
	// so that the rounds after it are easy: nobody sees them. Common practice.
	mostAdjusted = 4
	// oneStitchItems is how many items more count for adjusting by one stitch, which is hardly
	// worth a round. Own choice: with more of them, fewer of the rounds above are easy.
	oneStitchItems = 1
	// firstAfterAdjusting is the lowest round that may change the count where round 1
	// adjusts it.
	firstAfterAdjusting = 3
)

// most is how many of so many stitches a change may take away.
func (a *allowed) most(n int) int {
	if a.adjusts {
		return min(mostAdjusted, n/2)
	}
	if a.even.fewest == 0 {
		return min(a.takes.of(n), n/2)
	}
	return min(max(a.takes.of(n)+1, third.of(n)), a.even.most, n/2)
}

// window is which counts may follow on one: from the lowest to the highest, and more than it up to
// the top.
type window struct{ from, lowest, highest, top int }

// after is which counts may follow on so many stitches.
func (a *allowed) after(from int) window {
	w := window{from: from, lowest: from - a.most(from), highest: from - max(a.fewest, a.even.fewest), top: from}
	switch {
	case a.adjusts:
		w.top = from + mostAdjusted
	case a.rises:
		w.top = 2 * from
	}
	return w
}

func (w window) has(to int) bool {
	return w.lowest <= to && to <= w.highest || w.from < to && to <= w.top
}

// items is what there is to remember of a change that is allowed, and which round it is;
// ok is false where its round does not exist.
func (a *allowed) items(from, to int, order shaping.GapSpread) (items int, ok bool) {
	if from == to {
		return 0, true
	}
	items, ok = changeItems(from, to, order)
	if a.adjusts && measure.Abs(to-from) == 1 {
		items += oneStitchItems
	}
	return items + 1, ok
}

// leastItems is how many items a change of at least so many stitches has at the least.
func (a *allowed) leastItems(from int) int {
	switch fewest := max(a.fewest, a.even.fewest); {
	case a.adjusts || a.rises || fewest == 0:
		return 0
	case fewest == 1:
		return 1 + 1
	}
	most := a.takes.of(from) + 2 // of more stitches no greater part, for sure
	if a.even.fewest > 0 {
		most = max(third.of(from), min(most, a.even.most))
	}
	if from >= 3*most {
		return 3 + 1
	}
	return 1 + 1
}

// gap is that of a change; a round that adjusts, or does not decrease, has none.
func (a *allowed) gap(from, to int) gap {
	if a.adjusts || to >= from {
		return gap{}
	}
	return gap{from, from - to}
}

// stepPlaces are the places of a yoke without bands: the schedule's rounds.
func (y *circular) stepPlaces(s scheme) []place {
	places := make([]place, 0, len(s.steps))
	before, lowest := float64(y.join), 1 // the round that may adjust
	for _, step := range s.steps {
		even := steadyBetween(before, step.wanted)
		if s.cone { // of any other schedule they lie farther apart
			even.most = min(even.most, max(int(measure.CeilDiv(thousandths(before-step.wanted), 1000)), y.lostFlat(step.round-lowest)))
		}
		places = append(places, place{round: step.round, wanted: step.wanted, repeat: 1, lo: 1, hi: stitch.MaxStitches, band: noBand,
			said: step.said, change: allowed{takes: share{measure.ToMillionths(1 - step.wanted/before), 1e6}, even: even}})
		before, lowest = step.wanted, step.round
	}
	last := &places[len(places)-1]
	last.settled = true
	last.lo, last.hi = y.neckBounds()
	return places
}

// lostFlat is how many stitches may go over so many rounds before the yoke ruffles.
func (y *circular) lostFlat(rounds int) int { return int(blockedOut / y.steepness(1, rounds)) }

// neckBounds is what the neck may have.
func (y *circular) neckBounds() (lo, hi int) {
	return max(MinNeck, y.neck-y.tolerance), min(y.neck+y.tolerance, stitch.MaxStitches)
}

// vetPlaces checks that no two places share a round.
func vetPlaces(c *fault.Checks, y *circular, places []place) {
	for i := 1; i < len(places); i++ {
		if places[i].round <= places[i-1].round {
			c.Infeasible(fmt.Sprintf("decrease rounds %d and %d both fall on round %d", i, i+1, places[i].round),
				y.scheduleField, y.depthField)
			return
		}
	}
}

// adjusted puts the adjusting round before the places, where there is room for it and,
// below all of them, for a raise.
func (y *circular) adjusted(in CircularInput, places []place) []place {
	lowest := firstAfterAdjusting
	if in.BackRaise != nil && in.BackRaise.Place == RaisePlaceBeforeBands {
		lowest = 2 + raiseRounds
	}
	if places[0].round < lowest {
		return places
	}
	first := place{round: 1, wanted: float64(y.join), repeat: 1, lo: max(MinNeck, y.join-mostAdjusted),
		hi: min(y.join+mostAdjusted, stitch.MaxStitches), band: noBand, change: allowed{adjusts: true}}
	return append([]place{first}, places...)
}
