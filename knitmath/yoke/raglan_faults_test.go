package yoke

import (
	"math"
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
		"empty": {RaglanInput{}, []string{"gauge REQUIRED", "body_count REQUIRED"}},
		"ranges": {RaglanInput{Gauge: standard, BodyCount: 7, SleeveCount: p(3), UnderarmCount: p(-1), LineCount: p(21), FrontNeckCount: p(1),
			BackNeckCount: p(0), SleeveTopCount: p(-1), DepthCm: &nan},
			[]string{"body_count OUT_OF_RANGE", "sleeve_count OUT_OF_RANGE", "underarm_count OUT_OF_RANGE", "line_count OUT_OF_RANGE",
				"front_neck_count OUT_OF_RANGE", "back_neck_count OUT_OF_RANGE", "sleeve_top_count OUT_OF_RANGE", "depth_cm NOT_FINITE"}},
		"depth twice": {RaglanInput{Gauge: standard, BodyCount: 200, DepthCm: &depth, RoundCount: p(60)}, []string{"depth_cm CONTRADICTORY", "round_count CONTRADICTORY"}},
		"enums": {RaglanInput{Gauge: standard, BodyCount: 200, LineFrom: 4, Spacing: 3, DisplayUnit: 3},
			[]string{"line_from UNKNOWN_VALUE", "spacing UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		"underarms": {RaglanInput{Gauge: standard, BodyCount: 40, SleeveCount: p(10), UnderarmCount: p(10)},
			[]string{"body_count INFEASIBLE", "sleeve_count INFEASIBLE", "underarm_count INFEASIBLE"}},
		"wide lines": {RaglanInput{Gauge: standard, BodyCount: 40, LineCount: p(20)},
			[]string{"body_count INFEASIBLE", "sleeve_count INFEASIBLE", "underarm_count INFEASIBLE", "line_count INFEASIBLE"}},
		"odd": {RaglanInput{Gauge: standard, BodyCount: 200, FrontNeckCount: p(35), BackNeckCount: p(37), SleeveTopCount: p(1)},
			[]string{"front_neck_count INFEASIBLE", "back_neck_count INFEASIBLE", "sleeve_top_count INFEASIBLE"}},
		"wide necks": {RaglanInput{Gauge: standard, BodyCount: 200, FrontNeckCount: p(84), BackNeckCount: p(86), SleeveTopCount: p(50)},
			[]string{"front_neck_count INFEASIBLE", "back_neck_count INFEASIBLE", "sleeve_top_count INFEASIBLE"}},
		"no line to run out into": {RaglanInput{Gauge: standard, BodyCount: 200, LineCount: p(0), SleeveTopCount: p(0)}, []string{"sleeve_top_count INFEASIBLE"}},
		"nothing to do": {RaglanInput{Gauge: standard, BodyCount: 200, FrontNeckCount: p(82), BackNeckCount: p(82), SleeveTopCount: p(48)},
			[]string{"front_neck_count INFEASIBLE", "back_neck_count INFEASIBLE", "sleeve_top_count INFEASIBLE"}},
		"sleeves too fast": {RaglanInput{Gauge: standard, BodyCount: 200, RoundCount: p(23)}, []string{"sleeve_top_count INFEASIBLE", "round_count INFEASIBLE"}},
		"shallow":          {RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 1}, BodyCount: 20}, []string{"gauge INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanRaglan(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}
