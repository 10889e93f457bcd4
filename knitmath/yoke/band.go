package yoke

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/stitch"
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
	// lies without a remark. Own choice: a yoke is then a twentieth wider or
	// narrower than planned, about as much as ease differs between knitters.
	farPercent = 5
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
	if in.NeckToleranceStitches != nil && len(in.Bands) == 0 {
		c.Add("neck_tolerance_stitches", fault.ReasonContradictory, "belongs to bands; without them the neck is exact")
	}
}

// place is a place in the yoke where the count may change: below a band, at a
// decrease round of the schedule that lies in even rounds, or at the neck.
type place struct {
	round  int // where the change is worked
	wanted float64
	repeat int // what divides the count
	lo, hi int // what bounds it
	band   int // the band above it, or noBand
}

const noBand = -1

// layBands lays the bands from the join up, and lists the places where the count
// may change.
func layBands(c *fault.Checks, y *circular, s scheme, in CircularInput) []place {
	tolerance := fault.Or(in.NeckToleranceStitches, 0)
	neck := place{wanted: float64(y.neck), repeat: 1, band: noBand,
		lo: max(1, y.neck-tolerance), hi: min(y.neck+tolerance, stitch.MaxStitches)}
	var places []place
	next := 1 // the first round above what is laid
	for i, b := range in.Bands {
		first := next + fault.Or(b.EvenBeforeRounds, 1)
		last := first + b.HeightRounds - 1
		p := place{round: first - 1, repeat: b.RepeatStitches, lo: 1, hi: stitch.MaxStitches, band: i,
			wanted: s.wanted(2*(first-1)+b.HeightRounds, 2*y.rounds)} // half-way up the band
		if last == y.rounds {
			p.wanted, p.lo, p.hi = neck.wanted, neck.lo, neck.hi
		}
		places = s.changes(places, next, first-1, p)
		y.bands = append(y.bands, BandPlan{FirstRoundNumber: first, LastRoundNumber: last, WantedStitches: p.wanted})
		next = last + 1
	}
	if next > y.rounds+1 {
		c.Infeasible(fmt.Sprintf("with the even rounds below them the bands take %d rounds, and the depth has %d; "+
			"use fewer or lower bands, or a deeper yoke", next-1, y.rounds), "bands", y.depthField)
		return nil
	}
	if next <= y.rounds {
		neck.round = y.rounds
		places = s.changes(places, next, y.rounds, neck)
	}
	for i := 1; i < len(places); i++ {
		if places[i].round == places[i-1].round {
			c.Infeasible(fmt.Sprintf("two decrease rounds of the schedule fall on round %d; the depth needs more rounds, "+
				"or the schedule fewer decrease rounds", places[i].round), "schedule", y.depthField)
			return nil
		}
	}
	return places
}

// changes adds the places in the even rounds from..to: the schedule's decrease
// rounds there, the last of which becomes the change to the place above. Without
// one that change keeps its own round.
func (s scheme) changes(places []place, from, to int, above place) []place {
	for _, step := range s.steps {
		if step.round >= from && step.round <= to {
			places = append(places, place{round: step.round, wanted: step.wanted, repeat: 1, lo: 1, hi: stitch.MaxStitches,
				band: noBand})
		}
	}
	if n := len(places); n > 0 && places[n-1].round >= from {
		above.round = places[n-1].round
		places = places[:n-1]
	}
	return append(places, above)
}

// settleBands chooses the counts and turns them into changes.
func settleBands(c *fault.Checks, y *circular, s scheme, in CircularInput) {
	places := layBands(c, y, s, in)
	if c.Err() != nil {
		return
	}
	if most := MaxBandChoices / mostAt(y.join, places); len(places) > most {
		c.Infeasible(fmt.Sprintf("with the bands there are %d places where the count may change; on up to %d stitches at most %d "+
			"are planned, so use fewer bands or decrease rounds", len(places), mostAt(y.join, places), most), "bands", "schedule")
		return
	}
	sums := newBandCounts(y.join, places)
	counts, ok := sums.choose()
	if !ok {
		refuseBands(c, y, places, sums)
		return
	}
	before := y.join
	for i, p := range places {
		n := counts[i]
		if n != before {
			y.changes = append(y.changes, change{p.round, p.wanted, n})
		}
		if p.band != noBand {
			b := &y.bands[p.band]
			b.Stitches, b.RepeatCount, b.DepartureStitches = n, n/p.repeat, float64(n)-p.wanted
		}
		before = n
	}
	y.neck, y.wantedNeck = before, y.neck
}
