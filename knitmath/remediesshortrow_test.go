package knitmath_test

import (
	"math/rand/v2"
	"regexp"
	"testing"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
)

func someWedge(r *rand.Rand) shortrow.WedgeInput {
	in := shortrow.WedgeInput{WidthStitches: nearEnds(r, 2, 80), Gauge: someGauge(r), TallEnd: shortrow.TallEnd(1 + r.IntN(4)),
		TurnMethod: shortrow.TurnMethod(r.IntN(4)), Rounding: measure.Rounding(r.IntN(4)), Spread: shortrow.TurnSpread(r.IntN(4))}
	switch r.IntN(5) {
	case 0:
		in.RiseCm = tenths(r, 20)
	case 1:
		in.RiseAngleDegrees = new(float64(1 + r.IntN(80)))
	case 2:
		in.TallEnd, in.Spread = 0, 0
		for range 2 + r.IntN(3) {
			in.ProfileRows = append(in.ProfileRows, float64(r.IntN(40)))
		}
	default:
		in.RiseRows = new(nearEnds(r, 1, 100))
	}
	return in
}

func TestRemediesOfPlanWedge(t *testing.T) {
	type q = shortrow.WedgeInput
	rise := func(in q, rows int) q {
		in.RiseCm, in.RiseAngleDegrees, in.RiseRows = nil, nil, &rows
		return in
	}
	remediesWork(t, 20_000, 2_000, someWedge, func(in q) error {
		_, err := shortrow.PlanWedge(in)
		return err
	}, []offer[q]{
		says("hold at most #, a rise of # row", func(in q, _ string, n []int) []q { return []q{rise(in, n[1])} }),
		says("this rise takes at least #, one of them beyond each turn", func(in q, _ string, n []int) []q {
			in.WidthStitches = n[0]
			return []q{in}
		}),
		says("it takes # rows, or rounding up", func(in q, _ string, n []int) []q {
			up := in
			up.Rounding = measure.RoundingUp
			return []q{rise(in, n[0]), up}
		}),
		says("use another spread", func(in q, _ string, _ []int) (all []q) {
			for _, other := range []shortrow.TurnSpread{shortrow.TurnSpreadInterleaved, shortrow.TurnSpreadLeastEffort} {
				in.Spread = other
				all = append(all, in)
			}
			return all
		}),
		says("turn another way", func(in q, _ string, _ []int) (all []q) {
			for _, other := range []shortrow.TurnMethod{shortrow.TurnMethodWrapAndTurn, shortrow.TurnMethodYarnOver} {
				in.TurnMethod = other
				all = append(all, in)
			}
			return all
		}),
	}, "at least one stitch apart")
}

func TestRemediesOfPlanCircleOfWedges(t *testing.T) {
	type q = shortrow.CircleInput
	remediesWork(t, 8_000, 800, func(r *rand.Rand) q {
		in := q{Gauge: someGauge(r), InnerRadiusCm: sometimes(r, 60, float64(r.IntN(300))/10), WedgeCount: sometimes(r, 60, nearEnds(r, 1, 40)),
			TurnDegrees: sometimes(r, 30, float64(10+r.IntN(350))), TurnMethod: shortrow.TurnMethod(r.IntN(4))}
		if r.IntN(2) == 0 {
			in.OuterRadiusCm = tenths(r, 60)
		} else {
			in.WidthStitches = new(nearEnds(r, 3, 80))
		}
		return in
	}, func(in q) error {
		_, err := shortrow.PlanCircleOfWedges(in)
		return err
	}, []offer[q]{
		{says: regexp.MustCompile(`; use (\d+) wedge`), asks: func(in q, _ string, n []int) []q {
			in.WedgeCount = &n[0]
			return []q{in}
		}},
	}, "at least one stitch apart", "no number of wedges from # to # fits, so change the circle")
}
