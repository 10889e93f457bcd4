package yoke

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

func TestYokeRefusals(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	three, ninety, one, many, five := 3, 90, 1, stitch.MaxStitches, 5
	neck, depth, inf := 40.0, 22.0, math.Inf(1)
	long := make([]Step, MaxSteps+1)
	for name, c := range map[string]struct {
		in   CircularInput
		want []string
	}{
		"empty": {CircularInput{}, []string{"gauge REQUIRED", "body_stitches REQUIRED"}},
		"ranges": {CircularInput{Gauge: &gauge.Gauge{Stitches: -1, Rows: 1e9}, BodyStitches: -5, SleeveStitches: &three, NeckCm: &inf},
			[]string{"gauge.stitches OUT_OF_RANGE", "gauge.rows OUT_OF_RANGE", "body_stitches OUT_OF_RANGE", "sleeve_stitches OUT_OF_RANGE",
				"neck_cm NOT_FINITE"}},
		"twice": {CircularInput{Gauge: standard, BodyStitches: 200, NeckStitches: &ninety, NeckCm: &neck, DepthCm: &depth,
			DepthRounds: &ninety},
			[]string{"neck_stitches CONTRADICTORY", "neck_cm CONTRADICTORY", "depth_cm CONTRADICTORY", "depth_rounds CONTRADICTORY"}},
		"underarm": {CircularInput{Gauge: standard, BodyStitches: 100, UnderarmStitches: &ninety},
			[]string{"body_stitches INFEASIBLE", "sleeve_stitches INFEASIBLE", "underarm_stitches INFEASIBLE"}},
		"wide neck": {CircularInput{Gauge: standard, BodyStitches: 50, NeckStitches: &ninety}, []string{"neck_stitches INFEASIBLE"}},
		"join": {CircularInput{Gauge: standard, BodyStitches: many, SleeveStitches: &many},
			[]string{"body_stitches INFEASIBLE", "sleeve_stitches INFEASIBLE"}},
		"cone rounds": {CircularInput{Gauge: standard, BodyStitches: 200, DecreaseRoundCount: &five},
			[]string{"decrease_round_count CONTRADICTORY"}},
		"own missing":  {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn}, []string{"steps REQUIRED"}},
		"own unwanted": {CircularInput{Gauge: standard, BodyStitches: 200, Steps: []Step{{1, 0.5}}}, []string{"steps CONTRADICTORY"}},
		"own long":     {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: long}, []string{"steps TOO_MANY"}},
		"own steps": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: []Step{{0.5, 1}, {0.5, 0.1}, {2, 0}}},
			[]string{"steps[0].removed_fraction OUT_OF_RANGE", "steps[1].depth_fraction CONTRADICTORY",
				"steps[2].depth_fraction OUT_OF_RANGE", "steps[2].removed_fraction REQUIRED"}},
		"few rounds": {CircularInput{Gauge: standard, BodyStitches: 200, DepthRounds: &one},
			[]string{"schedule INFEASIBLE", "depth_rounds INFEASIBLE"}},
		"one step": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleCone, DecreaseRoundCount: &one},
			[]string{"schedule INFEASIBLE", "body_stitches INFEASIBLE"}},
		"enums": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: 4, Spread: 9, DisplayUnit: 3},
			[]string{"schedule UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}
