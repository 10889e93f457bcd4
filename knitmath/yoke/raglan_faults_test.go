package yoke

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

func TestRaglanRefusals(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	nan := math.NaN()
	p := func(n int) *int { return &n }
	depth := 22.0
	for name, c := range map[string]struct {
		in   RaglanInput
		want []string
	}{
		"empty": {RaglanInput{}, []string{"gauge REQUIRED", "body_stitches REQUIRED"}},
		"ranges": {RaglanInput{Gauge: standard, BodyStitches: 7, SleeveStitches: p(3), UnderarmStitches: p(-1), LineStitches: p(21),
			FrontNeckStitches: p(1),
			BackNeckStitches:  p(0), SleeveTopStitches: p(-1), DepthCm: &nan},
			[]string{"body_stitches OUT_OF_RANGE", "sleeve_stitches OUT_OF_RANGE", "underarm_stitches OUT_OF_RANGE",
				"line_stitches OUT_OF_RANGE",
				"front_neck_stitches OUT_OF_RANGE", "back_neck_stitches OUT_OF_RANGE", "sleeve_top_stitches OUT_OF_RANGE",
				"depth_cm NOT_FINITE"}},
		"depth twice": {RaglanInput{Gauge: standard, BodyStitches: 200, DepthCm: &depth, DepthRounds: p(60)},
			[]string{"depth_cm CONTRADICTORY", "depth_rounds CONTRADICTORY"}},
		"enums": {RaglanInput{Gauge: standard, BodyStitches: 200, LineFrom: 4, RoundChoice: 3, DisplayUnit: 3},
			[]string{"line_from UNKNOWN_VALUE", "round_choice UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		"underarms": {RaglanInput{Gauge: standard, BodyStitches: 40, SleeveStitches: p(10), UnderarmStitches: p(10)},
			[]string{"body_stitches INFEASIBLE", "sleeve_stitches INFEASIBLE", "underarm_stitches INFEASIBLE"}},
		"wide lines": {RaglanInput{Gauge: standard, BodyStitches: 40, LineStitches: p(20)},
			[]string{"body_stitches INFEASIBLE", "sleeve_stitches INFEASIBLE", "underarm_stitches INFEASIBLE", "line_stitches INFEASIBLE"}},
		"odd": {RaglanInput{Gauge: standard, BodyStitches: 200, SleeveStitches: p(66), UnderarmStitches: p(16),
			FrontNeckStitches: p(35), BackNeckStitches: p(37), SleeveTopStitches: p(1)},
			[]string{"front_neck_stitches INFEASIBLE", "back_neck_stitches INFEASIBLE", "sleeve_top_stitches INFEASIBLE"}},
		"wide necks": {RaglanInput{Gauge: standard, BodyStitches: 200, FrontNeckStitches: p(84), BackNeckStitches: p(86),
			SleeveTopStitches: p(50)},
			[]string{"front_neck_stitches INFEASIBLE", "back_neck_stitches INFEASIBLE", "sleeve_top_stitches INFEASIBLE"}},
		"no line to run out into": {RaglanInput{Gauge: standard, BodyStitches: 200, LineStitches: p(0), SleeveTopStitches: p(0)},
			[]string{"sleeve_top_stitches INFEASIBLE"}},
		"nothing to do": {RaglanInput{Gauge: standard, BodyStitches: 200, FrontNeckStitches: p(82), BackNeckStitches: p(82),
			SleeveTopStitches: p(48)},
			[]string{"front_neck_stitches INFEASIBLE", "back_neck_stitches INFEASIBLE", "sleeve_top_stitches INFEASIBLE"}},
		"sleeves too fast": {RaglanInput{Gauge: standard, BodyStitches: 200, DepthRounds: p(23)},
			[]string{"sleeve_top_stitches INFEASIBLE", "depth_rounds INFEASIBLE"}},
		"shallow": {RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 1}, BodyStitches: 20}, []string{"gauge INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanRaglan(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// A refusal says what would do, and what it says does.
func TestRaglanRemedies(t *testing.T) {
	p := func(n int) *int { return &n }
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, DepthRounds: p(23),
		RoundChoice: RoundChoiceEverySecond}
	_, err := PlanRaglan(in)
	if err == nil || !strings.Contains(err.Error(), "24 decrease rounds take 48 rounds") ||
		strings.Contains(err.Error(), "any round would fit") {
		t.Errorf("%v", err)
	}
	in.DepthRounds = p(24)
	_, err = PlanRaglan(in)
	if err == nil || !strings.Contains(err.Error(), "any round would fit") || !strings.Contains(err.Error(), "with these it goes to 24") {
		t.Errorf("%v", err) // sleeve: 48 - 2*12
	}
	in.RoundChoice = RoundChoiceAny
	if _, err = PlanRaglan(in); err != nil {
		t.Error(err)
	}
	in.RoundChoice, in.DepthRounds = RoundChoiceEverySecond, p(48)
	if _, err = PlanRaglan(in); err != nil {
		t.Error(err)
	}
	in.DepthRounds, in.SleeveTopStitches, in.FrontNeckStitches, in.BackNeckStitches = p(24), p(24), p(58), p(58) // 82 - 2*12
	if _, err = PlanRaglan(in); err != nil {
		t.Error(err)
	}
}
