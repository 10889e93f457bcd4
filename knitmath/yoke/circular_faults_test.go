package yoke

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
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
		"cone rounds": {CircularInput{Gauge: standard, BodyStitches: 200, DecreaseRounds: &five},
			[]string{"decrease_rounds CONTRADICTORY"}},
		"own missing":  {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn}, []string{"steps REQUIRED"}},
		"own unwanted": {CircularInput{Gauge: standard, BodyStitches: 200, Steps: []Step{{1, 0.5}}}, []string{"steps CONTRADICTORY"}},
		"own long":     {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: long}, []string{"steps TOO_MANY"}},
		"own steps": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: []Step{{0.5, 1}, {0.5, 0.1}, {2, 0}}},
			[]string{"steps[0].removed_fraction OUT_OF_RANGE", "steps[1].depth_fraction CONTRADICTORY",
				"steps[2].depth_fraction OUT_OF_RANGE", "steps[2].removed_fraction REQUIRED"}},
		"few rounds": {CircularInput{Gauge: standard, BodyStitches: 200, DepthRounds: &one},
			[]string{"schedule INFEASIBLE", "depth_rounds INFEASIBLE"}},
		"one step": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleCone, DecreaseRounds: &one},
			[]string{"decrease_rounds INFEASIBLE", "body_stitches INFEASIBLE"}},
		"enums": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: 4, Spread: 9, DisplayUnit: 3},
			[]string{"schedule UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// What a refusal says of its decrease rounds, and of the neck.
func TestYokeRefusalsInWords(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	own := func(steps ...Step) CircularInput {
		return CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: steps, DepthRounds: new(40),
			TolerancePercent: new(0.0)}
	}
	shallow := CircularInput{Gauge: standard, BodyStitches: 200, DepthRounds: new(1)}
	wide := CircularInput{Gauge: standard, BodyStitches: 200, NeckStitches: new(268)}
	none := own(Step{0.5, 0.5}, Step{0.7, 1e-6}, Step{1, 0.1})
	for want, in := range map[string]CircularInput{
		"decrease rounds 1 and 2 both fall on round 1":                                                    shallow,
		"decrease round 2 has no stitch to remove from 134":                                               none,
		"decrease round 1 goes from 268 to 133 stitches, and k2tog can leave no fewer than 134":           own(Step{0.5, 0.503}, Step{1, 0.1}),
		"the neck has 268 stitches and the join 268; a yoke narrows, so the neck must have from 4 to 267": wide,
	} {
		_, err := PlanCircularYoke(in)
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, want %q", err, want)
		}
	}
	if out, err := PlanCircularYoke(own(Step{0.5, 0.5}, Step{1, 0.1})); err != nil || out.Rounds[0].EndStitches != 134 {
		t.Errorf("k2tog all round: %+v, %v", out.Rounds, err)
	}
	wide.NeckStitches, wide.TolerancePercent = new(267), new(0.0)
	if _, err := PlanCircularYoke(wide); err == nil || strings.Contains(err.Error(), "the neck has") {
		t.Errorf("a neck of one fewer: %v", err)
	}
	// Three rounds take one stitch each where the join is adjusted by two or more.
	wide.TolerancePercent = nil
	if out, err := PlanCircularYoke(wide); err != nil || !out.Rounds[0].Adjusts || out.NeckStitches != 267 {
		t.Errorf("a neck of one fewer, eased: %+v, %v", out.Rounds, err)
	}
}

// Underarms are refused where nothing would remain of body or sleeves; what they are said to take they do.
func TestUnderarmsLeaveSomeOfEach(t *testing.T) {
	refused := 0
	for body := 8; body <= 40; body += 3 {
		for sleeve := 4; sleeve <= 24; sleeve += 2 {
			for under := 1; under <= 24; under++ {
				var c fault.Checks
				settleJoin(&c, body, &sleeve, &under)
				if err := c.Err(); (err != nil) != (2*under >= body || under >= sleeve) {
					t.Fatalf("%d of %d and %d: %v", under, body, sleeve, err)
				}
				if c.Err() == nil {
					continue
				}
				refused++
				want := fmt.Sprintf("the underarms take %d stitches of the body's %d and %d of each sleeve's %d; some of each must remain",
					2*under, body, under, sleeve)
				if text := c.Violations[0].Detail; text != want {
					t.Fatalf("%d of %d and %d: %q", under, body, sleeve, text)
				}
			}
		}
	}
	if refused < 100 {
		t.Errorf("refused %d: the sweep has shrunk", refused)
	}
}
