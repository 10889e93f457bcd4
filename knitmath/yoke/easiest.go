package yoke

import (
	"math"

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
//	sum of changeItems + 1
//
// over all places where the count changes: what there is to remember of the round, and
// which round it is. Of equal sums it is the one with the least sum of (count - wanted)^2,
// wanted read to the thousandth; of equal ones of these the one with more stitches in
// the lowest place where they differ.
//
// Method: dynamic programming from the neck down, over at most countsFor each
// place. Source: own derivation, see easiestCited.
func easiest(join int, places []place, percent float64, order shaping.GapSpread) (counts []int, ok bool) {
	e := make([]candidates, len(places)+1)
	e[0].counts = []int{join}
	most := countsFor(len(places))
	for i, p := range places {
		if e[i+1].counts = p.candidates(percent, most); len(e[i+1].counts) == 0 {
			return nil, false
		}
	}
	for i := len(places) - 1; i >= 0; i-- {
		e[i].above(places[i], e[i+1], order)
	}
	if e[0].best[0] == never {
		return nil, false
	}
	at := 0
	for i := range places {
		at = e[i].next[at]
		counts = append(counts, e[i+1].counts[at])
	}
	return counts, true
}

// countsFor is how many counts are looked at for each of so many places.
func countsFor(places int) int {
	most := MaxCounts
	for places*most*most > MaxTries {
		most--
	}
	return most
}

// candidates are the counts that a place may have, the greatest first, and for each the
// best sum of what comes above it, and which count that is.
type candidates struct {
	counts []int
	best   []sum
	next   []int
}

// sum is what there is to remember of rounds, and how far their counts depart.
type sum struct {
	items  int
	square int64 // in thousandths of a stitch, squared
}

// never is the sum of counts that do not go on to the neck.
var never = sum{items: math.MaxInt}

func (s sum) less(o sum) bool { return s.items < o.items || s.items == o.items && s.square < o.square }

// above works out the best sums above the counts of a place, those of the next place
// being known.
func (c *candidates) above(p place, upper candidates, order shaping.GapSpread) {
	c.best, c.next = make([]sum, len(c.counts)), make([]int, len(c.counts))
	sums := make([]sum, len(upper.counts))
	wanted := thousandths(p.wanted)
	for k, to := range upper.counts {
		if upper.best != nil {
			sums[k] = upper.best[k]
		}
		off := int64(to)*1000 - wanted
		sums[k].square += off * off
	}
	for i, from := range c.counts {
		best := never
		for k, to := range upper.counts {
			s := sums[k]
			if !s.less(best) || !p.change.allows(from, to) {
				continue
			}
			if to != from {
				items, exists := changeItems(from, to, order)
				if !exists {
					continue
				}
				s.items += items + 1
			}
			if s.less(best) {
				best, c.next[i] = s, k
			}
		}
		c.best[i] = best
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
	Citation: "own derivation: of all counts as near to the schedule as is allowed, those whose rounds are the least to remember, " +
		"then those with the least sum of squared departures"}
