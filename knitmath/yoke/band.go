package yoke

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// A YokeBand is a band of pattern in a yoke, from the join up.
type YokeBand struct {
	HeightRounds      int
	RepeatStitches    int
	PlainBeforeRounds *int
}

// A YokeBandPlan is where a band lies, and on how many stitches.
type YokeBandPlan struct {
	FirstRoundNumber  int
	LastRoundNumber   int
	Stitches          int
	RepeatCount       int
	WantedStitches    float64
	DepartureStitches float64
}

// Ranges of bands.
const (
	// MaxYokeBands is the most bands: a yoke of two metres would have them four
	// centimetres high.
	MaxYokeBands = 50
	// MaxNeckTolerance is the most stitches the neck may differ by.
	MaxNeckTolerance = 1_000
	// farPercent is how far from the schedule, in percent of its count, a band
	// lies without a remark. Own choice: a yoke is then a twentieth wider or
	// narrower than planned, about as much as ease differs between knitters.
	farPercent = 5
)

// vetYokeBands checks the bands for themselves.
func vetYokeBands(c *fault.Checks, in CircularYokeInput) {
	if c.Items("", "bands", len(in.Bands), MaxYokeBands) {
		for i, b := range in.Bands {
			field := fault.Index("bands", i)
			c.RequiredCount(field, "height_rounds", b.HeightRounds, 1, MaxYokeRounds)
			c.RequiredCount(field, "repeat_stitches", b.RepeatStitches, 1, gauge.MaxMultiple)
			c.OptionalCount(field, "plain_before_rounds", b.PlainBeforeRounds, 1, MaxYokeRounds)
		}
	}
	c.OptionalCount("", "neck_tolerance_stitches", in.NeckToleranceStitches, 0, MaxNeckTolerance)
	if in.NeckToleranceStitches != nil && len(in.Bands) == 0 {
		c.Add("neck_tolerance_stitches", fault.ReasonContradictory, "belongs to bands; without them the neck is exact")
	}
}

// yokePlace is a place in the yoke where the count may change: below a band, at a
// decrease round of the schedule that lies in plain rounds, or at the neck.
type yokePlace struct {
	round  int // where the change is worked
	wanted float64
	repeat int // what divides the count
	lo, hi int // what bounds it
	band   int // the band above it, or noBand
}

const noBand = -1

// vetLayBands lays the bands from the join up, and lists the places where the count
// may change.
func vetLayBands(c *fault.Checks, y *yoke, in CircularYokeInput) []yokePlace {
	s := y.scheme(in)
	tolerance := fault.Or(in.NeckToleranceStitches, 0)
	neck := yokePlace{wanted: float64(y.neck), repeat: 1, lo: max(1, y.neck-tolerance), hi: min(y.neck+tolerance, stitch.MaxStitches), band: noBand}
	var places []yokePlace
	next := 1 // the first round above what is laid
	for i, b := range in.Bands {
		first := next + fault.Or(b.PlainBeforeRounds, 1)
		last := first + b.HeightRounds - 1
		p := yokePlace{round: first - 1, repeat: b.RepeatStitches, lo: 1, hi: stitch.MaxStitches, band: i,
			wanted: s.wanted(2*(first-1)+b.HeightRounds, 2*y.rounds)} // half-way up the band
		if last == y.rounds {
			p.wanted, p.lo, p.hi = neck.wanted, neck.lo, neck.hi
		}
		places = s.changes(places, next, first-1, p)
		y.bands = append(y.bands, YokeBandPlan{FirstRoundNumber: first, LastRoundNumber: last, WantedStitches: p.wanted})
		next = last + 1
	}
	if next > y.rounds+1 {
		c.Infeasible(fmt.Sprintf("with the plain rounds below them the bands take %d rounds, and the depth has %d; "+
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

// changes adds the places in the plain rounds from..to: the schedule's decrease
// rounds there, the last of which becomes the change to the place above. Without
// one that change keeps its own round.
func (s scheme) changes(places []yokePlace, from, to int, above yokePlace) []yokePlace {
	for _, step := range s.steps {
		if step.round >= from && step.round <= to {
			places = append(places, yokePlace{round: step.round, wanted: step.wanted, repeat: 1, lo: 1, hi: stitch.MaxStitches, band: noBand})
		}
	}
	if n := len(places); n > 0 && places[n-1].round >= from {
		above.round = places[n-1].round
		places = places[:n-1]
	}
	return append(places, above)
}

// vetSettleBands chooses the counts and turns them into rounds.
func vetSettleBands(c *fault.Checks, y *yoke, in CircularYokeInput) {
	places := vetLayBands(c, y, in)
	if c.Err() != nil {
		return
	}
	counts, ok := newYokeCounts(y.join, places).choose()
	if !ok {
		vetNoCounts(c, y, places)
		return
	}
	before := y.join
	for i, p := range places {
		n := counts[i]
		if n != before {
			y.steps = append(y.steps, yokeStep{p.round, p.wanted, n})
		}
		if p.band != noBand {
			b := &y.bands[p.band]
			b.Stitches, b.RepeatCount, b.DepartureStitches = n, n/p.repeat, float64(n)-p.wanted
		}
		before = n
	}
	y.neck, y.wantedNeck = before, y.neck
}

// bandNotices remarks on bands far from the schedule, and on the neck.
func (y yoke) bandNotices() []report.Notice {
	var notices []report.Notice
	for i, b := range y.bands {
		if off := math.Abs(b.DepartureStitches); off*100 > farPercent*b.WantedStitches {
			than := "more"
			if b.DepartureStitches < 0 {
				than = "fewer"
			}
			notices = append(notices, report.Notice{Reason: "FAR_FROM_SCHEDULE", Field: fault.Join(fault.Index("bands", i), "repeat_stitches"),
				Description: fmt.Sprintf("gives %d stitches, %s %% %s than the %s that the schedule wants there", b.Stitches,
					measure.Decimal(100*off/b.WantedStitches, 1), than, measure.Decimal(b.WantedStitches, 1))})
		}
	}
	if y.neck != y.wantedNeck {
		notices = append(notices, report.Notice{Reason: "NECK_IN_TOLERANCE", Field: "neck_tolerance_stitches",
			Description: fmt.Sprintf("was used: the neck has %d stitches where %d were wanted", y.neck, y.wantedNeck)})
	}
	return notices
}
