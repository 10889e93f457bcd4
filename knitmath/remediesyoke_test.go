package knitmath_test

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/yoke"
)

func someYoke(r *rand.Rand) yoke.CircularInput {
	in := yoke.CircularInput{Gauge: someGauge(r), BodyStitches: nearEnds(r, 40, 400), SleeveStitches: sometimes(r, 50, nearEnds(r, 10, 120)),
		UnderarmStitches: sometimes(r, 40, nearEnds(r, 1, 40)), NeckStitches: sometimes(r, 50, nearEnds(r, 20, 200)),
		DepthRounds: sometimes(r, 60, nearEnds(r, 1, 90)), Schedule: yoke.Schedule(r.IntN(3)), Spread: shaping.GapSpread(r.IntN(5)),
		NeckToleranceStitches: sometimes(r, 30, r.IntN(6))}
	if in.Schedule == yoke.ScheduleCone {
		in.DecreaseRounds = sometimes(r, 60, nearEnds(r, 1, 20))
	}
	if r.IntN(3) == 0 {
		for range 1 + r.IntN(3) {
			in.Bands = append(in.Bands, yoke.Band{HeightRounds: nearEnds(r, 1, 30), RepeatStitches: nearEnds(r, 1, 24),
				EvenBeforeRounds: sometimes(r, 20, r.IntN(4))})
		}
		in.Spread = []shaping.GapSpread{0, shaping.GapSpreadMirrored}[r.IntN(2)]
	}
	if len(in.Bands) > 0 && r.IntN(2) == 0 { // a yoke that is worn
		in.Gauge = &gauge.Gauge{Stitches: float64(18 + r.IntN(10)), Rows: float64(24 + r.IntN(14))}
		in.BodyStitches, in.SleeveStitches, in.UnderarmStitches = 150+r.IntN(180), nil, nil
		in.DepthRounds, in.NeckStitches, in.Schedule, in.DecreaseRounds, in.Spread = nil, nil, 0, nil, 0
		for i := range in.Bands {
			in.Bands[i] = yoke.Band{HeightRounds: 3 + r.IntN(14), RepeatStitches: 4 + r.IntN(30)}
		}
	}
	if r.IntN(3) == 0 {
		in.BackRaise = &yoke.BackRaise{Place: yoke.RaisePlace(1 + r.IntN(2)), RiseRows: sometimes(r, 60, nearEnds(r, 1, 20)),
			BackStitches: sometimes(r, 40, nearEnds(r, 4, 120)), TurnMethod: shortrow.TurnMethod(r.IntN(4))}
	}
	return in
}

// yokeOffers are what refusals of yokes offer.
func yokeOffers() []offer[yoke.CircularInput] {
	type q = yoke.CircularInput
	raised := func(in q, change func(*yoke.BackRaise)) []q {
		raise := *in.BackRaise
		change(&raise)
		in.BackRaise = &raise
		return []q{in}
	}
	return []offer[q]{
		says("half the repeat in band #", func(in q, _ string, n []int) []q {
			in.Bands = slices.Clone(in.Bands)
			in.Bands[n[0]-1].RepeatStitches /= 2
			return []q{in}
		}),
		{says: regexp.MustCompile(`two more even rounds below (?:each|the) band`), asks: func(in q, _ string, _ []int) []q {
			in.Bands = slices.Clone(in.Bands)
			for i, b := range in.Bands {
				even := 1
				if b.EvenBeforeRounds != nil {
					even = *b.EvenBeforeRounds
				}
				in.Bands[i].EvenBeforeRounds = new(even + 2)
			}
			return []q{in}
		}},
		says("which is a largest_loss_percent of #", func(in q, _ string, n []int) []q {
			in.LargestLossPercent = new(float64(n[0]))
			return []q{in}
		}),
		says("the nearest repeat that would do is #", func(in q, field string, n []int) []q {
			in.Bands = slices.Clone(in.Bands)
			in.Bands[placeOf(field)].RepeatStitches = n[0]
			return []q{in}
		}),
		says("a tolerance of # would do", func(in q, _ string, n []int) []q {
			in.NeckToleranceStitches = &n[0]
			return []q{in}
		}),
		says("a yoke of # rounds would hold them", func(in q, _ string, n []int) []q {
			in.DepthRounds = &n[0]
			return []q{in}
		}),
		says("hold a rise of at most # row", func(in q, _ string, n []int) []q {
			return raised(in, func(r *yoke.BackRaise) { r.RiseRows = &n[0] })
		}),
		says("the needle has # stitches on round #; the back may have at most one fewer", func(in q, _ string, n []int) []q {
			return raised(in, func(r *yoke.BackRaise) { r.BackStitches = new(n[0] - 1) })
		}),
		says("it takes # rows, or rounding up", func(in q, _ string, n []int) []q {
			return raised(in, func(r *yoke.BackRaise) { r.RiseRows = &n[0] })
		}),
		says("three even rounds there would do", func(in q, _ string, _ []int) []q {
			in.Bands = slices.Clone(in.Bands)
			in.Bands[0].EvenBeforeRounds = new(3)
			return []q{in}
		}),
		{says: regexp.MustCompile(`a place (?:after the bands|near the neck)`), asks: func(in q, _ string, _ []int) []q {
			return raised(in, func(r *yoke.BackRaise) { r.Place = yoke.RaisePlaceAfterBands })
		}},
		{says: regexp.MustCompile(`a place (?:before the bands|below the decrease rounds)`), asks: func(in q, _ string, _ []int) []q {
			return raised(in, func(r *yoke.BackRaise) { r.Place = yoke.RaisePlaceBeforeBands })
		}},
		{says: regexp.MustCompile(`use the grouped(?: spread)?`), asks: func(in q, _ string, _ []int) []q {
			in.Spread = shaping.GapSpreadGrouped
			return []q{in}
		}},
		{says: regexp.MustCompile(`interleaved spread`), asks: func(in q, _ string, _ []int) []q {
			in.Spread = shaping.GapSpreadInterleaved
			return []q{in}
		}},
		{says: regexp.MustCompile(`; (\d+)(?: or (\d+))? would do`), asks: func(in q, field string, n []int) (all []q) {
			for _, to := range n {
				switch field {
				case "underarm_stitches":
					in.UnderarmStitches = &to
				case "neck_stitches":
					in.NeckStitches = &to
				case "depth_rounds":
					in.DepthRounds = &to
				case "decrease_rounds":
					in.DecreaseRounds = &to
				}
				all = append(all, in)
			}
			return all
		}},
	}
}

func TestRemediesOfPlanCircularYoke(t *testing.T) {
	remediesWork(t, 8_000, 400, someYoke, func(in yoke.CircularInput) error {
		_, err := yoke.PlanCircularYoke(in)
		return err
	}, yokeOffers(), "nor would they with one other repeat", "the nearest neck that these bands come down to has #",
		"rounds that may take half of the stitches, ",
		" would do")
}
