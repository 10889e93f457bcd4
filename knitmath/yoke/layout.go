package yoke

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// A layout is a way to lay the changes of a yoke with bands.
type layout struct {
	should share // what a round should take: where it would take more, there are more rounds
	// evenly: rounds of equal share take the place of the schedule's between two bands, no
	// fewer than those. falling: and from the neck down no round should take more than those above
	// it, but for so little that nobody sees it. fewer: and half of the schedule's rounds are enough.
	evenly, falling, fewer bool
}

// layouts are the ways that are tried where rounds should take no more than a share, the
// one most like the schedule first.
func layouts(should share) []layout {
	all := []layout{{should: should}, {should: should, evenly: true}}
	for _, s := range []share{should, fine, finer} {
		if s.kept() >= should.kept() {
			all = append(all, layout{should: s, evenly: true, falling: true})
		}
	}
	return append(all, layout{should: should, evenly: true, falling: true, fewer: true})
}

// A stretch is rounds in which nothing but decreases is worked: below a band, or up to the neck.
type stretch struct {
	from, to int
	below    float64 // wanted below them
	above    place   // the place that they lead up to, on their last round
	steps    []schemeStep
}

// stretches are those of a yoke with bands, from the join up.
func (y *circular) stretches(s scheme, in CircularInput) []stretch {
	var list []stretch
	next, below := 1, float64(y.join) // the first round above what is laid
	add := func(last int, p place) {
		here := stretch{from: next, to: last, below: below, above: p}
		for _, step := range s.steps {
			if step.round >= next && step.round <= last {
				here.steps = append(here.steps, step)
			}
		}
		list = append(list, here)
		below = p.wanted
	}
	for i, b := range y.bands {
		p := softPlace(b.FirstRoundNumber-1, b.WantedStitches)
		p.repeat, p.band = in.Bands[i].RepeatStitches, i
		if b.LastRoundNumber == y.rounds {
			p.settled = true
			p.lo, p.hi = y.neckBounds()
		}
		add(b.FirstRoundNumber-1, p)
		next = b.LastRoundNumber + 1
	}
	if next <= y.rounds {
		neck := softPlace(y.rounds, float64(y.neck))
		neck.settled = true
		neck.lo, neck.hi = y.neckBounds()
		add(y.rounds, neck)
	}
	return list
}

// softPlace is a place with nothing but a wish.
func softPlace(round int, wanted float64) place {
	return place{round: round, wanted: wanted, repeat: 1, lo: 1, hi: stitch.MaxStitches, band: noBand}
}

// bandPlaces lists the places of a yoke with bands by a layout, where a round may take so
// much.
func (y *circular) bandPlaces(s scheme, in CircularInput, takes share, l layout) []place {
	list := y.stretches(s, in)
	rounds := l.roundsIn(list)
	var places []place
	for i, here := range list {
		if !l.evenly {
			places = append(places, here.scheduled(l.should)...)
		} else {
			places = append(places, here.even(rounds[i])...)
		}
	}
	below := float64(y.join)
	for i := range places {
		p := &places[i]
		if p.change.takes = takes; p.band == noBand { // half of what it should take, at least
			p.change.fewest = max(1, int((below-p.wanted)/2))
		}
		below = p.wanted
	}
	places[0].change.rises = places[0].band != noBand
	return places
}

// slack is how much more than those above it a round may take where shares fall.
const slack = 1.1

// roundsIn is how many rounds a layout has in each stretch.
func (l layout) roundsIn(list []stretch) []int {
	counts := make([]int, len(list))
	kept := l.should.kept()
	for i := len(list) - 1; i >= 0; i-- {
		here := list[i]
		least := len(here.steps)
		if l.fewer {
			least = (least + 1) / 2
		}
		counts[i] = min(max(here.roundsFor(kept), least), here.most())
		if share := 1 - math.Pow(here.above.wanted/here.below, 1/float64(counts[i])); l.falling && share > 0 {
			kept = min(1-slack*share, 1-(1-l.should.kept())/2)
		}
	}
	return counts
}

// most is how many decrease rounds a stretch holds, an even one between any two.
func (s stretch) most() int { return (s.to - s.from + 2) / 2 }

// roundsFor is in how many rounds its count comes down if each keeps so much.
func (s stretch) roundsFor(kept float64) int { return roundsBetween(s.below, s.above.wanted, kept) }

// roundsBetween is in how many rounds a count comes down to another if each keeps so much.
func roundsBetween(from, to, kept float64) int {
	n := 1
	for least := kept; to < from*least*(1-1e-9); least *= kept {
		n++
	}
	return n
}

// even are so many places of equal share. A single one lies where the schedule has its
// last, or on the last round.
func (s stretch) even(n int) []place {
	if last := len(s.steps) - 1; n == 1 && last >= 0 {
		s.above.round = s.steps[last].round
	}
	return append(between(s.from-1, s.below, s.above, n), s.above)
}

// scheduled are the schedule's rounds, the last of which becomes the change to the place
// above. Without one, and where it would take more than it should, that change keeps its
// own round; so many more lie before it that none has to.
func (s stretch) scheduled(should share) []place {
	var own []place
	for _, step := range s.steps {
		own = append(own, softPlace(step.round, step.wanted))
	}
	if n := len(own); n > 0 {
		become, below := own[n-1].round, s.below
		own = own[:n-1]
		if n > 1 {
			below = own[n-2].wanted
		}
		if roundsBetween(below, s.above.wanted, should.kept()) == 1 {
			s.above.round = become
		}
	}
	var places []place
	last, below := s.from-1, s.below
	for _, p := range append(own, s.above) {
		n := min(roundsBetween(below, p.wanted, should.kept()), (p.round-last+1)/2)
		places = append(append(places, between(last, below, p, n)...), p)
		last, below = p.round, p.wanted
	}
	return places
}

// between are the places before the last of n between a round and it, each as much of the
// stitches as the others.
func between(last int, below float64, p place, n int) []place {
	var places []place
	part, rounds := p.wanted/below, p.round-last
	for i := 1; i < n; i++ {
		up := int(measure.CeilDiv(int64((n-i)*rounds), int64(n)))
		places = append(places, softPlace(p.round-up, below*math.Pow(part, float64(i)/float64(n))))
	}
	return places
}
