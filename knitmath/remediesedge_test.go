package knitmath_test

import (
	"math/rand/v2"
	"regexp"
	"testing"

	"example.com/knitmath/knitmath/edge"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
)

// someRule is a rule of counts, or none.
func someRule(r *rand.Rand) *gauge.CountRule {
	if r.IntN(2) == 0 {
		return nil
	}
	m := 1 + r.IntN(40)
	return &gauge.CountRule{Multiple: &m, Remainder: sometimes(r, 50, r.IntN(m)), Edge: sometimes(r, 30, r.IntN(12)),
		Rounding: measure.Rounding(r.IntN(4))}
}

// upward are a rule that rounds to the nearest, and up.
func upward(rule gauge.CountRule) []*gauge.CountRule {
	up := rule
	rule.Rounding, up.Rounding = measure.RoundingNearest, measure.RoundingUp
	return []*gauge.CountRule{&rule, &up}
}

func TestRemediesOfPlanPickUp(t *testing.T) {
	type q = edge.PickUpInput
	remediesWork(t, 20_000, 3_000, func(r *rand.Rand) q {
		in := q{LengthRows: new(nearEnds(r, 1, 300)), Gauge: someGauge(r), LargestTerm: sometimes(r, 30, 2+r.IntN(18)),
			StitchRule: someRule(r)}
		if r.IntN(2) == 0 {
			in.BandGauge = someGauge(r)
		}
		if r.IntN(3) == 0 {
			in.Gauge.Rows, in.Gauge.Stitches = 4+20*r.Float64(), 20+60*r.Float64()
		}
		if r.IntN(4) == 0 {
			in.LengthRows, in.LengthCm = nil, tenths(r, 200)
		}
		return in
	}, func(in q) error {
		_, err := edge.PlanPickUp(in)
		return err
	}, []offer[q]{
		says("rounding must be nearest or up", func(in q, _ string, _ []int) (all []q) {
			for _, rule := range upward(*in.StitchRule) {
				in.StitchRule = rule
				all = append(all, in)
			}
			return all
		}),
		{says: regexp.MustCompile(`(?:it takes|, or) an edge of (\d+) row`), asks: func(in q, _ string, n []int) []q {
			in.LengthRows, in.LengthCm = &n[0], nil
			return []q{in}
		}},
		{says: regexp.MustCompile(`(?:it takes|, or) a band of (\d+) stitches to 10 cm`), asks: func(in q, _ string, n []int) []q {
			in.BandGauge = &gauge.Gauge{Stitches: float64(n[0]), Rows: float64(n[0])}
			return []q{in}
		}},
	})
}

func TestRemediesOfPlanButtonholes(t *testing.T) {
	type q = edge.ButtonholesInput
	length := func(in q, n int) []q {
		if in.Direction == edge.BandDirectionAlongRows {
			in.BandRows = n
		} else {
			in.BandStitches = n
		}
		return []q{in}
	}
	remediesWork(t, 30_000, 3_000, func(r *rand.Rand) q {
		in := q{Direction: edge.BandDirection(r.IntN(3)), BandStitches: nearEnds(r, 3, 90), BandRows: nearEnds(r, 3, 20),
			HoleCount:    nearEnds(r, 1, 12),
			HoleStitches: new(1 + r.IntN(5)), BeforeFirstPlaces: sometimes(r, 50, nearEnds(r, 0, 20)),
			AfterLastPlaces: sometimes(r, 30, nearEnds(r, 0, 20)), HoleRowNumber: sometimes(r, 20, 1+r.IntN(12)), Gauge: someGauge(r)}
		if in.Direction == edge.BandDirectionAlongRows {
			in.HoleRowNumber, in.BandStitches, in.BandRows, in.RowChoice = nil, in.BandRows, in.BandStitches, shaping.RowChoice(r.IntN(3))
		}
		if r.IntN(3) == 0 {
			in.HoleStitches, in.HoleCm = nil, tenths(r, 6)
		}
		return in
	}, func(in q) error {
		_, err := edge.PlanButtonholes(in)
		return err
	}, []offer[q]{
		{says: regexp.MustCompile(`need a band of at least (\d+) \w+, and it has \d+`), asks: func(in q, _ string, n []int) []q {
			return length(in, n[0])
		}},
		{says: regexp.MustCompile(`[;r] (\d+) holes\b`), asks: func(in q, _ string, n []int) []q {
			in.HoleCount = n[0]
			return []q{in}
		}},
		{says: regexp.MustCompile(`[;r] distances of at most (\d+) [a-z]+`), asks: func(in q, _ string, n []int) []q {
			for _, asked := range []**int{&in.BeforeFirstPlaces, &in.AfterLastPlaces} {
				if *asked != nil && **asked > n[0] {
					*asked = &n[0]
				}
			}
			return []q{in}
		}},
		{says: regexp.MustCompile(`[;r] holes of (\d+) stitch`), asks: func(in q, _ string, n []int) []q {
			in.HoleStitches, in.HoleCm = &n[0], nil
			return []q{in}
		}},
		says("binding off in any row", func(in q, _ string, _ []int) []q {
			in.RowChoice = shaping.RowChoiceAny
			return []q{in}
		}),
		says("give only that before the first", func(in q, _ string, _ []int) []q {
			in.AfterLastPlaces = nil
			return []q{in}
		}),
		says("give only that after the last", func(in q, _ string, _ []int) []q {
			in.BeforeFirstPlaces = nil
			return []q{in}
		}),
		{says: regexp.MustCompile(`it needs at least (\d+), or the holes at most row (\d+)`), asks: func(in q, _ string, n []int) []q {
			longer, lower := in, in
			longer.BandRows, lower.HoleRowNumber = n[0], &n[1]
			return []q{longer, lower}
		}},
		{says: regexp.MustCompile(`side of it in a band of \d+; it may have at most (\d+)`),
			asks: func(in q, _ string, n []int) []q {
				in.HoleStitches, in.HoleCm = &n[0], nil
				return []q{in}
			}},
		says("give one distance only", func(in q, _ string, _ []int) []q {
			first, last := in, in
			first.AfterLastPlaces, last.BeforeFirstPlaces = nil, nil
			return []q{first, last}
		}),
	}, " would fit")
}
