package knitmath_test

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

const roundUp = "rounding must be nearest or up"

func TestRemediesOfComputeCastOn(t *testing.T) {
	type q = gauge.CastOnInput
	remediesWork(t, 30_000, 3_000, func(r *rand.Rand) q {
		return q{Gauge: someGauge(r), WidthCm: tenths(r, 60), EaseCm: sometimes(r, 30, float64(-100+r.IntN(150))/10), StitchRule: someRule(r),
			HeightCm: tenths(r, 30), RowRule: someRule(r)}
	}, func(in q) error {
		_, err := gauge.ComputeCastOn(in)
		return err
	}, []offer[q]{
		says(roundUp, func(in q, field string, _ []int) (all []q) {
			wide := field == "width_cm" || field == "stitch_rule" || field == "ease_cm"
			rule := in.RowRule
			if wide {
				rule = in.StitchRule
			}
			for _, up := range upward(*rule) {
				if wide {
					in.StitchRule = up
				} else {
					in.RowRule = up
				}
				all = append(all, in)
			}
			return all
		}),
	}, "it must be at least 0.1 cm")
}

func TestRemediesOfConvertGauge(t *testing.T) {
	type q = gauge.ConversionInput
	remediesWork(t, 20_000, 2_000, func(r *rand.Rand) q {
		in := q{PatternGauge: someGauge(r), OwnGauge: someGauge(r)}
		for range 1 + r.IntN(3) {
			in.Items = append(in.Items, gauge.PatternCount{Kind: gauge.CountKind(1 + r.IntN(2)), Count: nearEnds(r, 1, 60), Rule: someRule(r)})
		}
		return in
	}, func(in q) error {
		_, err := gauge.ConvertGauge(in)
		return err
	}, []offer[q]{
		says(roundUp, func(in q, field string, _ []int) (all []q) {
			if field == "own_gauge" {
				return nil // beside the item, which says the same
			}
			i := placeOf(field)
			for _, up := range upward(*in.Items[i].Rule) {
				other := in
				other.Items = append([]gauge.PatternCount(nil), in.Items...)
				other.Items[i].Rule = up
				all = append(all, other)
			}
			return all
		}),
	})
}
