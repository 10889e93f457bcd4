package yoke

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// bandCounts chooses the counts of a yoke's places, from the join up.
//
// Legal are counts that every place's repeat divides, within its bounds, each at
// most the one below it and at least half of it (k2tog all round). The first of
// all may also rise, to twice the join at most (a make one in every strand), when
// it is that of a band. Of all legal sequences the one chosen has the least
//
//	sum of (count - wanted)^2
//
// over all places, wanted read to the thousandth of a stitch so that sums are
// exact; of equal sums the one with more stitches in the lowest place where they
// differ.
//
// Method: dynamic programming from the neck down. The least sum from a place on,
// with n stitches there, is its own square and the least over the next place's
// counts from n/2 to n, a window that moves up with n. With p places and N
// stitches the work grows with p * N.
//
// Source: own derivation, see bandsCited.
type bandCounts struct {
	join   int
	most   int // stitches at any place
	places []place
	least  [][]int64 // by place and count: the least sum from there up
}

// none stands for no sum: no legal counts. Real sums are far below: 250 places a
// square of 10^7 thousandths each are 2.5e16.
const none = math.MaxInt64

func newBandCounts(join int, places []place) bandCounts {
	c := bandCounts{join: join, most: join, places: places, least: make([][]int64, len(places))}
	if c.mayRise(0) {
		c.most = min(2*join, stitch.MaxStitches)
	}
	for i := len(places) - 1; i >= 0; i-- {
		p, above := places[i], c.above(i)
		wanted := measure.NearestInt(p.wanted * 1000)
		sums := make([]int64, c.most+1)
		for n := range sums {
			sums[n] = none
			if n >= p.lo && n <= p.hi && n%p.repeat == 0 && above[n] != none {
				off := int64(n)*1000 - wanted
				sums[n] = off*off + above[n]
			}
		}
		c.least[i] = sums
	}
	return c
}

// mayRise reports whether the count of a place may be more than the one below it.
func (c bandCounts) mayRise(place int) bool { return place == 0 && c.places[0].band != noBand }

// window is the counts a place may have above n stitches.
func (c bandCounts) window(place, n int) (lo, hi int) {
	if c.mayRise(place) {
		return (n + 1) / 2, min(2*n, c.most)
	}
	return (n + 1) / 2, n
}

// above is the least sum of the places above one, by its count.
func (c bandCounts) above(place int) []int64 {
	sums := make([]int64, c.most+1)
	if place == len(c.places)-1 {
		return sums
	}
	next := c.least[place+1]
	var rising []int // counts in the window whose sums rise: the first is the least
	for n := range sums {
		for len(rising) > 0 && next[rising[len(rising)-1]] >= next[n] {
			rising = rising[:len(rising)-1]
		}
		rising = append(rising, n)
		if rising[0] < (n+1)/2 {
			rising = rising[1:]
		}
		sums[n] = next[rising[0]]
	}
	return sums
}

// choose walks up through the least sums.
func (c bandCounts) choose() (counts []int, ok bool) {
	n := c.join
	for i := range c.places {
		lo, hi := c.window(i, n)
		best := hi
		for m := hi - 1; m >= lo; m-- {
			if c.least[i][m] < c.least[i][best] {
				best = m
			}
		}
		if c.least[i][best] == none {
			return nil, false
		}
		counts = append(counts, best)
		n = best
	}
	return counts, true
}

// reachable is, place by place, which counts can be had there whatever comes
// above: first without the place's own repeat and bounds, then with its repeat.
func (c bandCounts) reachable() (free, legal [][]bool) {
	below := make([]bool, c.most+1)
	below[c.join] = true
	for i, p := range c.places {
		reach := make([]bool, c.most+1)
		for n, ok := range below {
			if ok {
				lo, hi := c.window(i, n) // windows move up with n: what is new lies at the top
				for m := hi; m >= lo && !reach[m]; m-- {
					reach[m] = true
				}
			}
		}
		divided := make([]bool, c.most+1)
		for n, ok := range reach {
			divided[n] = ok && n%p.repeat == 0
		}
		free, legal = append(free, reach), append(legal, divided)
		below = divided
	}
	return free, legal
}

// bandsCited is the source of the counts of bands.
var bandsCited = report.Source{Figure: "counts of the bands", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: of all counts that divide in every band and come down to the neck, " +
		"those with the least sum of squared departures from the schedule"}
