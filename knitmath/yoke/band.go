package yoke

import (
	"fmt"
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
)

// A Band is a band of pattern in a yoke, from the join up.
type Band struct {
	HeightRounds     int
	RepeatStitches   int
	EvenBeforeRounds *int
}

// A BandPlan is where a band lies, and on how many stitches.
type BandPlan struct {
	FirstRoundNumber  int
	LastRoundNumber   int
	Stitches          int
	RepeatCount       int
	WantedStitches    float64
	DepartureStitches float64
}

// Ranges of bands.
const (
	// MaxBands is the most bands: a yoke of two metres would have them four
	// centimetres high.
	MaxBands = 50
	// MaxBandChoices is the most places where the count may change times the most
	// stitches there may be: choosing the counts looks at every count at every place.
	// 10,000 stitches may have 120 places, and 4,800 all the places there can be.
	MaxBandChoices = 1_200_000
	// MaxNeckTolerance is the most stitches the neck may differ by.
	MaxNeckTolerance = 1_000
	// farPercent is how far from the schedule, in percent of its count, a band
	// lies without a remark, or as far as was asked for. See DefaultDeparturePercent.
	farPercent = DefaultDeparturePercent
)

// vetBands checks the bands for themselves.
func vetBands(c *fault.Checks, in CircularInput) {
	c.Items("", "bands", len(in.Bands), MaxBands)
	if c.Sound("bands") {
		for i, b := range in.Bands {
			field := fault.Index("bands", i)
			c.RequiredCount(field, "height_rounds", b.HeightRounds, 1, MaxRounds)
			c.RequiredCount(field, "repeat_stitches", b.RepeatStitches, 1, gauge.MaxMultiple)
			c.OptionalCount(field, "even_before_rounds", b.EvenBeforeRounds, 1, MaxRounds)
		}
	}
	c.OptionalCount("", "neck_tolerance_stitches", in.NeckToleranceStitches, 0, MaxNeckTolerance)
	vetLoss(c, in)
}

// layBands lays the bands from the join up.
func layBands(c *fault.Checks, y *circular, s scheme, in CircularInput) {
	next := 1 // the first round above what is laid
	for _, b := range in.Bands {
		first := next + fault.Or(b.EvenBeforeRounds, 1)
		last := first + b.HeightRounds - 1
		plan := BandPlan{FirstRoundNumber: first, LastRoundNumber: last,
			WantedStitches: s.wanted(2*(first-1)+b.HeightRounds, 2*y.rounds)} // half-way up the band
		if last == y.rounds {
			plan.WantedStitches = float64(y.neck)
		}
		y.bands = append(y.bands, plan)
		next = last + 1
	}
	if next > y.rounds+1 {
		c.Infeasible(fmt.Sprintf("with the even rounds below them the bands take %d rounds, and the depth has %d",
			next-1, y.rounds)+y.deepEnough(in, next-1), "bands", y.depthField)
	}
}

// deepEnough offers the depth that bands take if the planner takes it too.
func (y *circular) deepEnough(in CircularInput, rounds int) string {
	if y.tried || in.tooDearToTry() {
		return ""
	}
	in.DepthRounds, in.DepthCm = &rounds, nil
	if _, err := in.settled(true); err != nil {
		return ""
	}
	return "; a yoke of " + report.CountOf(rounds, "rounds") + " would hold them"
}

// settleBands chooses the counts and turns them into changes: the easiest ones within
// the departure that is allowed, or those that depart least.
func settleBands(c *fault.Checks, y *circular, s scheme, in CircularInput) {
	layBands(c, y, s, in)
	if c.Err() != nil {
		return
	}
	shares := lossShares(in)
	places := y.bandPlaces(s, in, shares[0], layout{should: shares[0]})
	y.placeCount = len(places)
	if most := MaxBandChoices / mostAt(y.join, places); len(places) > most {
		c.Infeasible(fmt.Sprintf("with the bands there are %d places where the count may change; on up to %d stitches at most %d "+
			"are planned", len(places), mostAt(y.join, places), most), "bands", y.scheduleField)
		return
	}
	if vetPlaces(c, y, places); c.Err() != nil {
		return
	}
	if y.easyBands(s, in, shares) {
		if !y.tried && !y.keepsWithin(shares[0]) {
			y.remedies = in.remedies(y)
		}
		return
	}
	y.leastDeparting(c, s, in, shares)
}

// easyBands takes the easiest counts within the departure that is allowed, if there are
// any: with rounds that take no more than the first share, or else no more than the last.
func (y *circular) easyBands(s scheme, in CircularInput, shares []share) bool {
	if y.easyLayout(s, in, shares[0], shares[0]) {
		return true
	}
	last := shares[len(shares)-1]
	return last != shares[0] && y.easyLayout(s, in, shares[0], last)
}

// easyLayout takes those of the first layout in which every round has an easy form and no gap
// grows, or else of all layouts the easiest. The most exact counts keep the schedule's own rounds.
func (y *circular) easyLayout(s scheme, in CircularInput, should, takes share) bool {
	best := never
	for _, l := range layouts(should) {
		places := y.bandPlaces(s, in, takes, l)
		if y.percent > 0 {
			places = y.adjusted(in, places)
		} else if l.evenly {
			continue
		}
		counts, total, ok := easiest(y.join, places, y.percent, in.Spread)
		if !ok {
			continue
		}
		well := total.items < hardItems && !gapGrows(y.join, places, counts)
		if well || total.less(best) {
			y.take(places, counts)
			best = total
		}
		if well {
			break
		}
	}
	return best != never
}

// leastDeparting takes the counts of bands that depart least, and between them the
// easiest there are. A round may take the greater share only where a band would be far
// from the schedule otherwise.
func (y *circular) leastDeparting(c *fault.Checks, s scheme, in CircularInput, shares []share) {
	var places []place
	var sums bandCounts
	for _, takes := range shares {
		places = y.bandPlaces(s, in, takes, layout{should: shares[0]})
		sums = newBandCounts(y.join, places, takes)
		counts, ok := sums.choose()
		if !ok {
			continue
		}
		y.take(places, counts)
		y.ease(places, counts, in)
		if !y.far() {
			break
		}
	}
	if len(y.changes) == 0 {
		refuseBands(c, y, s, in, places, sums)
		return
	}
	if !y.tried && (y.far() || !y.keepsWithin(shares[0])) {
		y.remedies = in.remedies(y)
	}
}

// ease takes the easiest counts between bands that keep theirs, if there are any.
func (y *circular) ease(places []place, counts []int, in CircularInput) {
	kept := slices.Clone(places)
	for i := range kept {
		if p := &kept[i]; p.band != noBand {
			p.lo, p.hi, p.settled = counts[i], counts[i], true
		}
	}
	if easy, _, ok := easiest(y.join, kept, y.percent, in.Spread); ok && y.percent > 0 {
		y.take(kept, easy)
	}
}

// take makes the counts of places the changes of the yoke.
func (y *circular) take(places []place, counts []int) {
	y.changes = nil
	before := y.join
	for i, p := range places {
		n := counts[i]
		if n != before {
			y.changes = append(y.changes, change{p.round, p.wanted, n, p.change.adjusts, p.said})
		}
		if p.band != noBand {
			b := &y.bands[p.band]
			b.Stitches, b.RepeatCount, b.DepartureStitches = n, n/p.repeat, float64(n)-p.wanted
		}
		before = n
	}
	y.settledNeck = before
}
