package yoke

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// bandCounts chooses the counts of a yoke's places, from the join up.
//
// Legal are counts that every place's repeat divides, within its bounds, each at
// most the one below it and no fewer than a round may leave of it. The first of
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
// counts, up to n, a window that moves up with n. With p places and N
// stitches the work grows with p * N. Of the sums those of two places are kept, of
// the choices all, two bytes each.
//
// Source: own derivation, see bandsCited.
type bandCounts struct {
	join   int
	takes  share // what a round may take
	most   int   // stitches at any place
	places []place
	// next is, by place and stitches below it, the count to take there, 0 where none
	// goes on to the neck. The first place has only the join below it.
	next  [][]uint16
	first int
}

// none stands for no sum: no legal counts. Real sums are far below: 250 places a
// square of 10^7 thousandths each are 2.5e16.
const none = math.MaxInt64

func newBandCounts(join int, places []place, takes share) bandCounts {
	c := bandCounts{join: join, takes: takes, most: mostAt(join, places), places: places, next: make([][]uint16, len(places))}
	sums := make([]int64, c.most+1)  // of the place, with those above it
	above := make([]int64, c.most+1) // the least of the places above, by the stitches below them
	rising := make([]int, c.most+1)
	for i := len(places) - 1; i >= 0; i-- {
		p := places[i]
		wanted := thousandths(p.wanted)
		for n := range sums {
			sums[n] = none
		}
		low := (p.lo + p.repeat - 1) / p.repeat * p.repeat
		for n := low; n <= min(p.hi, c.most); n += p.repeat {
			if above[n] != none {
				off := int64(n)*1000 - wanted
				sums[n] = off*off + above[n]
			}
		}
		if i > 0 {
			c.next[i] = c.leastBelow(sums, above, rising)
		}
	}
	c.first = c.leastFirst(sums)
	return c
}

// mostAt is the most stitches there may be at any of the places.
func mostAt(join int, places []place) int {
	if places[0].band != noBand {
		return min(2*join, stitch.MaxStitches)
	}
	return join
}

// mayRise reports whether the count of a place may be more than the one below it.
func (c bandCounts) mayRise(place int) bool { return place == 0 && c.places[0].band != noBand }

// window is the counts a place may have above n stitches.
func (c bandCounts) window(place, n int) (lo, hi int) {
	if c.mayRise(place) {
		return c.fewest(n), min(2*n, c.most)
	}
	return c.fewest(n), n
}

// fewest is what a round leaves of n stitches at the least.
func (c bandCounts) fewest(n int) int { return n - c.takes.of(n) }

// leastBelow takes the sums of a place by its own count and gives, by the stitches n
// below it, the count that has the least of those that may follow, and writes that into least;
// of equal ones the greatest count, 0 if there is none. rising is room to work in.
func (c bandCounts) leastBelow(sums, least []int64, rising []int) []uint16 {
	counts := make([]uint16, len(sums))
	first, end := 0, 0 // of the counts in the window whose sums rise: the first is the least
	for n, sum := range sums {
		if sum != none {
			for end > first && sums[rising[end-1]] >= sum {
				end--
			}
			rising[end] = n
			end++
		}
		if end > first && rising[first] < c.fewest(n) {
			first++
		}
		least[n] = none
		if end > first {
			least[n], counts[n] = sums[rising[first]], uint16(rising[first])
		}
	}
	return counts
}

// leastFirst is the count of the first place, above the join, 0 if there is none.
func (c bandCounts) leastFirst(sums []int64) int {
	lo, hi := c.window(0, c.join)
	best := hi
	for m := hi - 1; m >= lo; m-- {
		if sums[m] < sums[best] {
			best = m
		}
	}
	if sums[best] == none {
		return 0
	}
	return best
}

// goesOn reports whether counts lead to the neck from n stitches at a place.
func (c bandCounts) goesOn(place, n int) bool {
	return place == len(c.places)-1 || c.next[place+1][n] > 0
}

// choose walks up through the choices.
func (c bandCounts) choose() (counts []int, ok bool) {
	n := c.join
	for i := range c.places {
		if i == 0 {
			n = c.first
		} else {
			n = int(c.next[i][n])
		}
		if n == 0 {
			return nil, false
		}
		counts = append(counts, n)
	}
	return counts, true
}

// reachable is which counts can be had whatever comes above: at the place of every
// band, without the band's own repeat; and at the last place, with its repeat.
func (c bandCounts) reachable() (free map[int][]bool, last []bool) {
	free = map[int][]bool{}
	below := make([]bool, c.most+1)
	below[c.join] = true
	reach := make([]bool, c.most+1)
	for i, p := range c.places {
		clear(reach)
		for n, ok := range below {
			if ok {
				lo, hi := c.window(i, n) // windows move up with n: what is new lies at the top
				for m := hi; m >= lo && !reach[m]; m-- {
					reach[m] = true
				}
			}
		}
		if p.band != noBand {
			free[i] = slices.Clone(reach)
		}
		clear(below)
		for n := p.repeat; n < len(reach); n += p.repeat {
			below[n] = reach[n]
		}
	}
	return free, below
}

// bandsCited is the source of the counts of bands.
var bandsCited = report.Source{Figure: "counts of the bands", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: of all counts that divide in every band and come down to the neck, " +
		"those with the least sum of squared departures from the schedule"}
