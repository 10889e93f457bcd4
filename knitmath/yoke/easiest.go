package yoke

import (
	"math"
	"slices"
	"sync"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
)

const (
	// DefaultDeparturePercent is how far a count may lie from the schedule's, in percent of
	// it, so that rounds are easy. Own choice: a yoke is then a twentieth wider or narrower
	// than planned, about as much as ease differs between knitters.
	DefaultDeparturePercent = 5
	// MaxDeparturePercent is the most that may be asked for.
	MaxDeparturePercent = 20
	// MaxCounts is how many counts are looked at for a place, those nearest to the wanted
	// one: all within 5 % of 640 stitches.
	MaxCounts = 64
	// MaxTries is how many steps from one count to the next are tried for a yoke: with
	// more than 29 places fewer counts are looked at for each.
	MaxTries = 120_000
	// DefaultNeckTolerance is how many stitches the neck may differ by where its count is
	// not given: a centimetre or less. Own choice.
	DefaultNeckTolerance = 2
)

// easiest chooses the counts of a yoke's places that are the least to remember. Legal
// are counts that every place's repeat divides, within its bounds and so many percent
// of the wanted count, and as far from the one below as the place allows. Of all legal
// sequences the one chosen has the least
//
//	sum of changeItems + 1 + charges
//
// over all places where the count changes: what there is to remember of the round, which
// round it is, oneStitchItems where that is all it adjusts, and what counts for a gap that is
// wider than that of the place below, see gap. Of equal sums it is the one with the least sum of (count - wanted)^2,
// wanted read to the thousandth; of equal ones of these the one with more stitches in
// the lowest place where they differ.
//
// Method: dynamic programming from the neck down, over the counts of a place and of the one
// below it, at most countsFor each. Source: own derivation, see easiestCited.
func easiest(join int, places []place, percent float64, order shaping.GapSpread) (counts []int, total sum, ok bool) {
	e := make([]candidates, len(places)+1)
	e[0].counts = []int{join}
	most := countsFor(len(places))
	for i, p := range places {
		if e[i+1].counts = p.candidates(percent, most); len(e[i+1].counts) == 0 {
			return nil, never, false
		}
	}
	work := choosers.Get().(*chooser)
	defer choosers.Put(work)
	work.sums = work.sums[:0]
	for i := len(places) - 1; i >= 0; i-- {
		var lower []int
		if i > 0 {
			lower = e[i-1].counts
		}
		work.above(&e[i], lower, e[i+1].counts, places[i], order)
	}
	if total = work.sums[0]; total == never {
		return nil, never, false
	}
	below, at := noneBelow, 0
	counts = make([]int, 0, len(places))
	for i := range places {
		next := int(e[i].next[at*e[i].ways+below+1])
		if below = noneBelow; places[i].change.gap(e[i].counts[at], e[i+1].counts[next]).decreases > 0 {
			below = at
		}
		at = next
		counts = append(counts, e[i+1].counts[at])
	}
	return counts, total, true
}

// countsFor is how many counts are looked at for each of so many places.
func countsFor(places int) int {
	most := MaxCounts
	for places*most*most > MaxTries {
		most--
	}
	return most
}

// candidates are the counts that a place may have, the greatest first. For each, and for
// each of the ways to come to it (from noneBelow and from every count of the place below),
// next is which count to go on to.
type candidates struct {
	counts []int
	ways   int
	next   []uint8
}

// noneBelow stands for the count below one where the round between them has no gap.
const noneBelow = -1

// sum is what there is to remember of rounds, and how far their counts depart.
type sum struct {
	items  int
	square int64 // in thousandths of a stitch, squared
}

// never is the sum of counts that do not go on to the neck.
var never = sum{items: math.MaxInt}

func (s sum) less(o sum) bool { return s.items < o.items || s.items == o.items && s.square < o.square }

// chooser works down from the neck. sums are the best sums above the counts of a place, by
// the ways to come to them.
type chooser struct {
	sums, done []sum // of the place, and of the next above it
	ways       int   // to the counts of the next
	followers
}

// choosers leave their memory to the next yoke: a third of what one took.
var choosers = sync.Pool{New: func() any { return new(chooser) }}

// above works out what comes above the counts of a place, those of the next one being known.
func (w *chooser) above(c *candidates, lower, upper []int, p place, order shaping.GapSpread) {
	c.ways = 1 + len(lower)
	n := len(c.counts) * c.ways
	w.sums, w.done = slices.Grow(w.done[:0], n)[:n], w.sums
	c.next = make([]uint8, n)
	wanted, way := thousandths(p.wanted), 0
	take := func(f follower) {
		w.sums[way], c.next[way] = f.sum, uint8(f.at)
		way++
	}
	for i, from := range c.counts {
		w.follow(i, from, upper, p, wanted, order)
		take(w.any())
		for _, below := range lower { // the greatest first, so that gaps widen
			if below > from {
				take(w.after(gap{below, below - from}))
			} else {
				take(noFollower) // that round has no gap
			}
		}
	}
	w.ways = c.ways
}

// follow gathers what may follow one of a place's counts. What has more items than one with a narrower gap is
// left out before its own are counted.
func (w *chooser) follow(i, from int, upper []int, p place, wanted int64, order shaping.GapSpread) {
	follow := p.change.after(from)
	w.reset()
	for k := len(upper) - 1; k >= 0; k-- { // the fewest stitches first, so that gaps widen
		to := upper[k]
		if !follow.has(to) {
			continue
		}
		here, s := p.change.gap(from, to), sum{}
		if len(w.done) > 0 {
			below := noneBelow
			if here.decreases > 0 {
				below = i
			}
			s = w.done[k*w.ways+below+1]
		}
		if s == never || here.decreases > 0 && s.items+here.leastItems() > w.narrower().sum.items {
			continue
		}
		if items, exists := p.change.items(from, to, order); exists {
			off := int64(to)*1000 - wanted
			w.add(here, follower{k, sum{s.items + items, s.square + off*off}})
		}
	}
}

func thousandths(x float64) int64 { return measure.NearestInt(x * 1000) }

// candidates lists the counts that a place may have, the greatest first: all between
// its bounds where these settle it, but where the most exact counts are wanted.
func (p place) candidates(percent float64, most int) []int {
	wanted := thousandths(p.wanted)
	slack := wanted * thousandths(percent) / 100_000
	nearest := measure.HalfUpDiv(wanted, 1000)
	lo, hi := p.lo, p.hi
	if !p.settled || slack == 0 {
		lo = max(lo, int(min(measure.CeilDiv(wanted-slack, 1000), nearest)))
		hi = min(hi, int(max(measure.FloorDiv(wanted+slack, 1000), nearest)))
	}
	// Of those nearest none lies farther than all of them on one side would.
	lo = max(lo, int(nearest)-(most+1)*p.repeat)
	hi = min(hi, int(nearest)+(most+1)*p.repeat)
	counts := make([]int, 0, max(0, (hi-lo)/p.repeat+1))
	for n := hi / p.repeat * p.repeat; n >= max(lo, 1); n -= p.repeat {
		counts = append(counts, n)
	}
	off := func(n int) int64 { return max(int64(n)*1000-wanted, wanted-int64(n)*1000) }
	for len(counts) > most { // the farther end goes
		if off(counts[0]) > off(counts[len(counts)-1]) {
			counts = counts[1:]
		} else {
			counts = counts[:len(counts)-1]
		}
	}
	return counts
}

// easiestCited is the source of counts chosen for their rounds.
var easiestCited = report.Source{Figure: "counts between join and neck", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: of all counts as near to the schedule as is allowed, those whose rounds are the least to remember " +
		"and whose decreases lie no wider apart from one decrease round to the next, then those with the least sum of squared departures"}
