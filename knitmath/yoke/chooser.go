package yoke

import (
	"slices"
	"sync"

	"example.com/knitmath/knitmath/shaping"
)

// candidates are the counts that a place may have, the greatest first. For each, and for
// each of the ways to come to it (from noneBelow and from every count of the place below) that
// was asked, next is which count to go on to.
type candidates struct {
	counts []int
	ways   int
	next   []uint8
}

// noneBelow stands for the count below one where the round between them has no gap.
const noneBelow = -1

// chooser works down from the neck. It keeps what may follow the counts of a place, and those of the next
// one above it.
type chooser struct {
	list        []candidates // of the join and every place
	counts      []int        // memory for those of all
	next        []uint8      // likewise
	here, above []followers
	open        []opening
}

// opening is a count of the next place that goes on to the neck: its number, and the items above it at the least.
type opening struct{ at, count, least int }

// choosers leave their memory to the next yoke.
var choosers = sync.Pool{New: func() any { return new(chooser) }}

// begin lists the counts of the join and of all places; false where a place has none.
func (w *chooser) begin(join int, places []place, percent float64) bool {
	w.counts, w.next = append(w.counts[:0], join), w.next[:0]
	w.list = append(w.list[:0], candidates{counts: w.counts})
	most := countsFor(len(places))
	for i := range places {
		first := len(w.counts)
		w.counts = places[i].appendCandidates(w.counts, percent, most)
		c := candidates{counts: w.counts[first:], ways: 1 + len(w.list[i].counts)}
		if len(c.counts) == 0 {
			return false
		}
		first = len(w.next)
		w.next = slices.Grow(w.next, len(c.counts)*c.ways)[:first+len(c.counts)*c.ways]
		c.next = w.next[first:]
		w.list = append(w.list, c)
	}
	return true
}

// fewest is the fewest stitches below a place.
func (w *chooser) fewest(i int) int { return w.list[i].counts[len(w.list[i].counts)-1] }

// Items that a decrease round has, with its number, on average: in most yokes no more than usualItems, in few more
// than mostUsualItems. Measured.
const (
	usualItems     = 6
	mostUsualItems = 9
	// usualPlaces is how many places an ordinary yoke has. One with more, which may have no counts at all, is not looked through
	// several times.
	usualPlaces = 12
)

// budgets are how many items there may be at the most, one after the other: few, as most yokes have, and any number.
// With few most counts need not be looked at.
func (w *chooser) budgets(places []place) []int {
	if len(places) > usualPlaces {
		return []int{never.items - 1}
	}
	rounds := 0
	for i := range places {
		if places[i].change.leastItems(w.fewest(i)) > 0 {
			rounds++
		}
	}
	return []int{usualItems * rounds, mostUsualItems * rounds, never.items - 1}
}

// best is what to go on to from the join, with at most so many items.
func (w *chooser) best(places []place, order shaping.GapSpread, most int) follower {
	for i := range places {
		most -= places[i].change.leastItems(w.fewest(i))
	}
	w.above = remade(w.above, len(w.list[len(places)].counts))
	for i := range w.above {
		w.above[i].free = follower{} // the neck
	}
	for i := len(places) - 1; i >= 0; i-- {
		most += places[i].change.leastItems(w.fewest(i))
		w.below(i, &places[i], order, most)
	}
	return w.above[0].any()
}

// remade are so many empty followers, in memory that was used before.
func remade(list []followers, n int) []followers {
	list = slices.Grow(list[:0], n)[:n]
	for i := range list {
		list[i].reset()
	}
	return list
}

// below works out what may follow the counts below a place, of at most so many items, what follows those of the place
// being known.
func (w *chooser) below(i int, p *place, order shaping.GapSpread, most int) {
	counts, c := w.list[i].counts, &w.list[i+1]
	w.open = w.open[:0]
	for k := len(c.counts) - 1; k >= 0; k-- { // the fewest stitches first, so that gaps widen
		if best := w.above[k].any(); best.sum.items <= most {
			w.open = append(w.open, opening{k, c.counts[k], best.sum.items})
		}
	}
	w.here = remade(w.here, len(counts))
	if len(w.open) > 0 {
		wanted := thousandths(p.wanted)
		for at, from := range counts { // the greatest first, so that gaps widen
			w.follow(at, from, c, p, wanted, order, most)
		}
	}
	w.here, w.above = w.above, w.here
}

// follow gathers what may follow one of the counts below a place. What has more items than one with a narrower gap, or
// than there may be, is left out as soon as that is known.
func (w *chooser) follow(at, from int, c *candidates, p *place, wanted int64, order shaping.GapSpread, most int) {
	follow, f := p.change.after(from), &w.here[at]
	for _, o := range w.open {
		if !follow.has(o.count) {
			continue
		}
		here, way, limit := p.change.gap(from, o.count), noneBelow, most
		if here.decreases > 0 {
			way, limit = at, min(most, f.narrower().sum.items)
			if o.least+here.leastItems(order) > limit {
				continue
			}
		}
		items, exists := p.change.items(from, o.count, order)
		if !exists || o.least+items > limit {
			continue
		}
		next := w.above[o.at].any()
		if here.decreases > 0 {
			next = w.above[o.at].after(here)
		}
		if next.sum.items > most-items {
			continue
		}
		c.next[o.at*c.ways+way+1] = uint8(next.at)
		off := int64(o.count)*1000 - wanted
		f.add(here, follower{o.at, sum{next.sum.items + items, next.sum.square + off*off}})
	}
}

// chosen walks up through the choices, from the first.
func (w *chooser) chosen(places []place, at int) []int {
	counts := make([]int, 0, len(places))
	below := 0
	for i := range places {
		c := &w.list[i+1]
		counts = append(counts, c.counts[at])
		way := noneBelow
		if places[i].change.gap(w.list[i].counts[below], c.counts[at]).decreases > 0 {
			way = below
		}
		below, at = at, int(c.next[at*c.ways+way+1])
	}
	return counts
}
