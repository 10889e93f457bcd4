package yoke_test

import (
	"errors"
	"fmt"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/yoke"
)

// A yoke by the percentage system for a body of 228 stitches, onto a neck of 42 cm. So
// that the decrease rounds are easy, the count is adjusted first.
func ExamplePlanCircularYoke() {
	plan, err := yoke.PlanCircularYoke(yoke.CircularInput{
		Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 228, NeckCm: new(42.0), DepthCm: new(24.0),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(strings.ReplaceAll(plan.Summary(), ", ", ",\n"))
	for _, r := range plan.Rounds {
		fmt.Printf("Round %d: %s (%d stitches)\n", r.RoundNumber, r.Instruction.Row.Text(), r.EndStitches)
	}
	// Output:
	// Join 306 stitches (139.1 cm) and decrease to 92 (41.8 cm) over 72 rounds (24 cm),
	// in 3 decrease rounds,
	// of which the last takes 39 % of its stitches,
	// the count being adjusted first.
	// Round 1: [k151, k2tog] twice (304 stitches)
	// Round 36: [k2, k2tog] 76 times (228 stitches)
	// Round 54: [k1, k2tog] 76 times (152 stitches)
	// Round 72: [k1, k2tog, k2tog] 30 times, k2 (92 stitches)
}

// Everything that is wrong with a question comes back at once, by its field.
func ExamplePlanCircularYoke_refused() {
	_, err := yoke.PlanCircularYoke(yoke.CircularInput{
		Gauge: &gauge.Gauge{Stitches: 22}, BodyStitches: 4, DepthCm: new(24.0), DepthRounds: new(72),
	})
	var refused *fault.InputError
	if errors.As(err, &refused) {
		for _, v := range refused.Violations {
			fmt.Println(v.Field, v.Reason)
		}
	}
	// Output:
	// gauge.rows REQUIRED
	// body_stitches OUT_OF_RANGE
	// depth_cm CONTRADICTORY
	// depth_rounds CONTRADICTORY
}

// A raglan: its kinds of decrease round are written once each.
func ExamplePlanRaglan() {
	plan, err := yoke.PlanRaglan(yoke.RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 176})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.Back.StartStitches, "to", plan.Back.EndStitches, "in", plan.Back.DecreaseRounds, "decrease rounds")
	for _, in := range plan.Instructions {
		fmt.Printf("Round %d and %d more: %s\n", in.FirstRoundNumber, in.Times-1, in.Instruction.Row.Text())
	}
	// Output:
	// 72 to 32 in 20 decrease rounds
	// Round 3 and 19 more: [ssk, k68, k2tog, k2, ssk, k38, k2tog, k2] twice
	// Round 62 and 0 more: [k33, ssk, k2tog, k1] twice
}
