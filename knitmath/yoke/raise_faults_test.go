package yoke

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
)

func TestBackRaiseRefusals(t *testing.T) {
	nan := math.NaN()
	tiny, high := 0.1, 100.0
	before, after := RaisePlaceBeforeBands, RaisePlaceAfterBands
	base := func(raise BackRaise, bands ...Band) CircularInput {
		return CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, DepthRounds: new(60), Bands: bands,
			BackRaise: &raise, TolerancePercent: new(0.0)}
	}
	shallow := base(BackRaise{Place: before})
	shallow.DepthRounds = new(4)
	cone := base(BackRaise{Place: after})
	cone.Schedule, cone.DecreaseRounds = ScheduleCone, new(60)
	loops := base(BackRaise{Place: before, TurnMethod: shortrow.TurnMethodYarnOver})
	loops.BodyStitches, loops.SleeveStitches, loops.UnderarmStitches, loops.NeckStitches = 5000, new(2500), new(0), new(4000)
	for name, c := range map[string]struct {
		in   CircularInput
		want []string
	}{
		"empty": {base(BackRaise{}), []string{"back_raise.place REQUIRED"}},
		"ranges": {base(BackRaise{Place: 3, RiseRows: new(201), BackStitches: new(2), Order: 3, TurnMethod: 4, Rounding: 4}),
			[]string{"back_raise.place UNKNOWN_VALUE", "back_raise.rise_rows OUT_OF_RANGE", "back_raise.back_stitches OUT_OF_RANGE",
				"back_raise.order UNKNOWN_VALUE", "back_raise.turn_method UNKNOWN_VALUE", "back_raise.rounding UNKNOWN_VALUE"}},
		"nan": {base(BackRaise{Place: before, RiseCm: &nan}), []string{"back_raise.rise_cm NOT_FINITE"}},
		"twice": {base(BackRaise{Place: before, RiseRows: new(6), RiseCm: &high}),
			[]string{"back_raise.rise_rows CONTRADICTORY", "back_raise.rise_cm CONTRADICTORY"}},
		"no pair":  {base(BackRaise{Place: before, RiseCm: &tiny}), []string{"back_raise.rise_cm INFEASIBLE"}},
		"too high": {base(BackRaise{Place: before, RiseCm: &high}), []string{"back_raise.rise_cm INFEASIBLE"}},
		"no front": {base(BackRaise{Place: before, BackStitches: new(268)}), []string{"back_raise.back_stitches INFEASIBLE"}},
		"narrow back": {base(BackRaise{Place: before, BackStitches: new(6)}),
			[]string{"back_raise.rise_rows INFEASIBLE", "back_raise.back_stitches INFEASIBLE"}},
		"no room before bands": {base(BackRaise{Place: before}, Band{10, 6, new(2)}),
			[]string{"bands[0].even_before_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"no room after bands": {base(BackRaise{Place: after}, Band{10, 4, new(48)}),
			[]string{"depth_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"no room below rounds": {shallow, []string{"depth_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"no room at all":       {cone, []string{"depth_rounds INFEASIBLE", "back_raise.place INFEASIBLE", "decrease_rounds INFEASIBLE"}},
		"loops":                {loops, []string{"spread INFEASIBLE", "back_raise.turn_method INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
	// What a refusal says would do, does.
	for _, in := range []CircularInput{
		base(BackRaise{Place: before, BackStitches: new(6), RiseRows: new(4)}), // (6-1)/2 = 2 turns
		base(BackRaise{Place: before, BackStitches: new(267)}),
		base(BackRaise{Place: before}, Band{10, 6, new(3)}),
	} {
		if out, err := PlanCircularYoke(in); err != nil {
			t.Error(err)
		} else {
			checkYoke(t, in, out)
		}
	}
}
