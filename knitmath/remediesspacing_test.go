package knitmath_test

import (
	"math/rand/v2"
	"regexp"
	"testing"

	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// spacingOffers are what refusals of spacings offer.
func spacingOffers() []offer[shaping.EvenSpacingInput] {
	type q = shaping.EvenSpacingInput
	to := func(in q, _ string, n []int) (all []q) {
		for _, end := range n {
			in.EndStitches = end
			all = append(all, in)
		}
		return all
	}
	doubles := func(in q, _ string, n []int) (all []q) {
		for _, op := range []stitch.Op{stitch.K3tog, stitch.SSSK, stitch.CDD} {
			in.Operation = op
			if len(n) == 0 {
				all = append(all, in)
			}
			all = append(all, to(in, "", n)...)
		}
		return all
	}
	overRows := func(in q, _ string, n []int) (all []q) {
		for _, end := range n {
			in.EndStitches = end
			all = append(all, in)
			in.StartStitches = end
		}
		return all
	}
	return []offer[q]{
		{says: regexp.MustCompile(`use a double decrease \(k3tog, sssk, CDD\)(?: to (\d+)(?: or (\d+))? stitch(?:es)?)?`), asks: doubles},
		{says: regexp.MustCompile(`cannot share the strand between two stitches: use kfb`), asks: func(in q, _ string, _ []int) []q {
			in.Operation = stitch.KFB
			return []q{in}
		}},
		{says: regexp.MustCompile(`end with (\d+)(?: or (\d+))? stitch(?:es)?`), asks: to},
		{says: regexp.MustCompile(`work it over \d rows, to (\d+), then (\d+), then (\d+)(?:, then (\d+))?`), asks: overRows},
		{says: regexp.MustCompile(`fits at most .*, which gives (\d+) stitch(?:es)?; (?:.*, or )?work the rest in another row`),
			asks: func(in q, _ string, n []int) []q { return overRows(in, "", append(n, in.EndStitches)) }},
		{says: regexp.MustCompile(`fits at most .*, which gives (\d+) stitch(?:es)?`), asks: to},
		says("edge_stitches may be at most #", func(in q, _ string, n []int) []q {
			in.EdgeStitches = &n[0]
			return []q{in}
		}),
		says("use the grouped or interleaved spread", func(in q, _ string, _ []int) []q {
			grouped, mixed := in, in
			grouped.Spread, mixed.Spread = shaping.GapSpreadGrouped, shaping.GapSpreadInterleaved
			return []q{grouped, mixed}
		}),
	}
}

func TestRemediesOfPlanEvenSpacing(t *testing.T) {
	ops := []stitch.Op{0, 0, stitch.K3tog, stitch.CDD, stitch.P2tog, stitch.M1L, stitch.KFB, stitch.YO}
	remediesWork(t, 40_000, 4_000, func(r *rand.Rand) shaping.EvenSpacingInput {
		in := shaping.EvenSpacingInput{StartStitches: nearEnds(r, 1, 60), EndStitches: nearEnds(r, 1, 90),
			Operation:    ops[r.IntN(len(ops))],
			Construction: stitch.Construction(r.IntN(3)), Spread: shaping.GapSpread(r.IntN(5))}
		if in.Construction != stitch.InTheRound {
			in.EdgeStitches = sometimes(r, 40, nearEnds(r, 0, 30))
		}
		return in
	}, func(in shaping.EvenSpacingInput) error {
		_, err := shaping.PlanEvenSpacing(in)
		return err
	}, spacingOffers())
}
