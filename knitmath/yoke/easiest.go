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
//	sum of changeItems + 1 + charges
//
// over all places where the count changes: what there is to remember of the round, which
// round it is, oneStitchItems where that is all it adjusts, and what counts for a gap that is
// wider than that of the place below, see gap. Of equal sums it is the one with the least sum of (count - wanted)^2,
// wanted read to the thousandth; of equal ones of these the one with more stitches in
// the lowest place where they differ.
//
// Method: dynamic programming from the neck down, over the counts of a place and of the one
// below it, at most countsFor each. Where there are counts of no more items than usual, those of more are
// left out as soon as they have more. Source: own derivation, see easiestCited.
func easiest(join int, places []place, percent float64, order shaping.GapSpread) (counts []int, total sum, ok bool) {
	work := choosers.Get().(*chooser)
	defer choosers.Put(work)
	if !work.begin(join, places, percent) {
		return nil, never, false
	}
	for _, most := range work.budgets(places) {
		if best := work.best(places, order, most); best.sum != never {
			return work.chosen(places, best.at), best.sum, true
		}
	}
	return nil, never, false
}

// countsFor is how many counts are looked at for each of so many places.
func countsFor(places int) int {
	most := MaxCounts
	for places*most*most > MaxTries {
		most--
	}
	return most
}

// sum is what there is to remember of rounds, and how far their counts depart.
type sum struct {
	items  int
	square int64 // in thousandths of a stitch, squared
}

// never is the sum of counts that do not go on to the neck.
var never = sum{items: math.MaxInt}

func (s sum) less(o sum) bool { return s.items < o.items || s.items == o.items && s.square < o.square }

func thousandths(x float64) int64 { return measure.NearestInt(x * 1000) }

// appendCandidates adds the counts that a place may have, the greatest first: all between
// its bounds where these settle it, but where the most exact counts are wanted.
func (p *place) appendCandidates(counts []int, percent float64, most int) []int {
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
	hi = hi / p.repeat * p.repeat
	lo = (max(lo, 1) + p.repeat - 1) / p.repeat * p.repeat
	off := func(n int) int64 { return max(int64(n)*1000-wanted, wanted-int64(n)*1000) }
	for (hi-lo)/p.repeat >= most { // the farther end goes
		if off(hi) > off(lo) {
			hi -= p.repeat
		} else {
			lo += p.repeat
		}
	}
	for n := hi; n >= lo; n -= p.repeat {
		counts = append(counts, n)
	}
	return counts
}

// easiestCited is the source of counts chosen for their rounds.
var easiestCited = report.Source{Figure: "counts between join and neck", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: of all counts as near to the schedule as is allowed, those whose rounds are the least to remember " +
		"and whose decreases lie no wider apart from one decrease round to the next, then those with the least sum of squared departures"}
