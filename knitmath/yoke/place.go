package yoke

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
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
}

const noBand = -1

// allowed is how the count of a place may differ from the one below it.
type allowed struct {
	adjusts bool  // by mostAdjusted either way
	rises   bool  // also be more, up to twice as many
	takes   share // what the round may take
	even    steady
}

// steady is how many stitches a decrease round of a schedule may take, so that the
// rounds of a yoke take about as much as the schedule would have them: at least three
// quarters, at most a quarter as much again, and never more than a third, or than the schedule takes there,
// to the stitch. Own choice.
type steady struct{ fewest, most int }

func steadyBetween(before, wanted float64) steady {
	lost := thousandths(before - wanted)
	return steady{fewest: max(1, int(3*lost/4000)), most: int(measure.CeilDiv(5*lost, 4000)) + 1}
}

const (
	// mostAdjusted is how many stitches the round above the join may add or take away
	// so that the rounds after it are easy: nobody sees them. Common practice.
	mostAdjusted = 4
	// firstAfterAdjusting is the lowest round that may change the count where round 1
	// adjusts it.
	firstAfterAdjusting = 3
)

// most is how many of so many stitches a change may take away.
func (a allowed) most(n int) int {
	if a.adjusts {
		return min(mostAdjusted, n/2)
	}
	if a.even.fewest == 0 {
		return min(a.takes.of(n), n/2)
	}
	return min(max(a.takes.of(n)+1, third.of(n)), a.even.most, n/2)
}

// allows reports whether a count may follow on another.
func (a allowed) allows(from, to int) bool {
	switch {
	case to < from:
		return from-to <= a.most(from) && from-to >= a.even.fewest
	case to == from:
		return a.even.fewest == 0
	case a.adjusts:
		return to-from <= mostAdjusted
	}
	return a.rises && to <= 2*from
}

// stepPlaces are the places of a yoke without bands: the schedule's rounds.
func (y *circular) stepPlaces(s scheme) []place {
	var places []place
	before := float64(y.join)
	for _, step := range s.steps {
		places = append(places, place{round: step.round, wanted: step.wanted, repeat: 1, lo: 1, hi: stitch.MaxStitches, band: noBand,
			change: allowed{takes: share{measure.ToMillionths(1 - step.wanted/before), 1e6}, even: steadyBetween(before, step.wanted)}})
		before = step.wanted
	}
	last := &places[len(places)-1]
	last.settled = true
	last.lo, last.hi = y.neckBounds()
	return places
}

// neckBounds is what the neck may have.
func (y *circular) neckBounds() (lo, hi int) {
	return max(MinNeck, y.neck-y.tolerance), min(y.neck+y.tolerance, stitch.MaxStitches)
}

// bandPlaces lists the places of a yoke with bands, where a round may take so much.
// Where two places lie farther apart than a round should take, further rounds are laid
// between them, an even one between any two.
func (y *circular) bandPlaces(s scheme, in CircularInput, takes, should share) []place {
	l := layer{scheme: s, should: should, below: float64(y.join), change: allowed{takes: takes}}
	next := 1 // the first round above what is laid
	for i, b := range y.bands {
		p := place{round: b.FirstRoundNumber - 1, repeat: in.Bands[i].RepeatStitches, wanted: b.WantedStitches, lo: 1,
			hi: stitch.MaxStitches, band: i, change: l.change}
		if b.LastRoundNumber == y.rounds {
			p.settled = true
			p.lo, p.hi = y.neckBounds()
		}
		l.stretch(next, b.FirstRoundNumber-1, p)
		next = b.LastRoundNumber + 1
	}
	if next <= y.rounds {
		neck := place{round: y.rounds, wanted: float64(y.neck), repeat: 1, band: noBand, settled: true, change: l.change}
		neck.lo, neck.hi = y.neckBounds()
		l.stretch(next, y.rounds, neck)
	}
	l.places[0].change.rises = l.places[0].band != noBand
	return l.places
}

// layer lays places from the join up.
type layer struct {
	scheme
	should share
	change allowed
	below  float64 // wanted at the last place
	places []place
}

// stretch adds the places in the even rounds from..to: the schedule's decrease
// rounds there, the last of which becomes the change to the place above. Without
// one, and where it would take more than it should, that change keeps its own round.
func (l *layer) stretch(from, to int, above place) {
	last := from - 1
	var in []place
	for _, step := range l.steps {
		if step.round >= from && step.round <= to {
			in = append(in, place{round: step.round, wanted: step.wanted, repeat: 1, lo: 1, hi: stitch.MaxStitches,
				band: noBand, change: l.change})
		}
	}
	if n := len(in); n > 0 {
		become := in[n-1].round
		in = in[:n-1]
		below := l.below
		if n > 1 {
			below = in[n-2].wanted
		}
		if l.rounds(below, above.wanted) == 1 {
			above.round = become
		}
	}
	for _, p := range append(in, above) {
		l.between(last, p)
		l.places = append(l.places, p)
		last, l.below = p.round, p.wanted
	}
}

// between adds as many places between a round and the next place as it takes so that
// none has to take more than it should, each as much of the stitches as the others.
func (l *layer) between(last int, p place) {
	part, rounds := p.wanted/l.below, p.round-last
	n := min(l.rounds(l.below, p.wanted), (rounds+1)/2)
	for i := 1; i < n; i++ {
		up := int(measure.CeilDiv(int64((n-i)*rounds), int64(n)))
		l.places = append(l.places, place{round: p.round - up, wanted: l.below * math.Pow(part, float64(i)/float64(n)), repeat: 1,
			lo: 1, hi: stitch.MaxStitches, band: noBand, change: l.change})
	}
}

// rounds is in how many rounds a count comes down to another so that none takes more
// than it should.
func (l *layer) rounds(from, to float64) int {
	n := 1
	for least := l.should.kept(); to < from*least*(1-1e-9); least *= l.should.kept() {
		n++
	}
	return n
}

// vetPlaces checks that no two places share a round.
func vetPlaces(c *fault.Checks, y *circular, places []place) {
	for i := 1; i < len(places); i++ {
		if places[i].round <= places[i-1].round {
			c.Infeasible(fmt.Sprintf("decrease rounds %d and %d both fall on round %d; the depth needs more rounds, "+
				"or the schedule fewer decrease rounds", i, i+1, places[i].round), "schedule", y.depthField)
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
