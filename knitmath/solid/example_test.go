package solid_test

import (
	"fmt"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/solid"
)

// The toe of a sock: two sides, every 2nd round to half the stitches, then every round.
func ExampleClosing() {
	toe := solid.Closing{StartStitches: 32, Wedges: 2, Paired: true, EdgeStitches: 1, EndStitches: 12, Pace: solid.ToHalf()}
	plan, refused := toe.Plan()
	if refused != "" {
		fmt.Println("the toe", refused)
		return
	}
	for _, line := range append(plan.Directions(1), solid.Graft(plan.EndStitches/2)) {
		fmt.Println(line)
	}
	// Output:
	// Round 1: [k1, ssk, k10, k2tog, k1] twice (28 stitches).
	// Round 2: work even.
	// Round 3: [k1, ssk, k8, k2tog, k1] twice (24 stitches).
	// Round 4: work even.
	// Round 5: [k1, ssk, k6, k2tog, k1] twice (20 stitches).
	// Round 6: work even.
	// Round 7: [k1, ssk, k4, k2tog, k1] twice (16 stitches).
	// Round 8: [k1, ssk, k2, k2tog, k1] twice (12 stitches).
	// Cut the yarn, leaving enough to graft, and graft the two sides of 6 stitches each together, right sides out.
}

// A hat for a one-year-old.
func ExamplePlanCrown() {
	plan, err := solid.PlanCrown(solid.CrownInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, HeadSize: solid.HeadSizeYear1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.HatStitches, "stitches,", plan.TotalRounds, "rounds")
	for _, line := range plan.Directions() {
		fmt.Println(line)
	}
	// Output:
	// 80 stitches, 51 rounds
	// Cast on 80 stitches and join in the round, without twisting.
	// Rounds 1-35: work even.
	// Note: these are 12.5 cm, the brim included.
	// Round 36: [k8, k2tog] 8 times (72 stitches).
	// Round 37: work even.
	// Round 38: [k7, k2tog] 8 times (64 stitches).
	// Round 39: work even.
	// Round 40: [k6, k2tog] 8 times (56 stitches).
	// Round 41: work even.
	// Round 42: [k5, k2tog] 8 times (48 stitches).
	// Round 43: work even.
	// Round 44: [k4, k2tog] 8 times (40 stitches).
	// Round 45: work even.
	// Round 46: [k3, k2tog] 8 times (32 stitches).
	// Round 47: work even.
	// Round 48: [k2, k2tog] 8 times (24 stitches).
	// Round 49: work even.
	// Round 50: [k1, k2tog] 8 times (16 stitches).
	// Round 51: [k2tog] 8 times (8 stitches).
	// Cut the yarn, draw it through the remaining 8 stitches twice, pull up firmly and fasten off inside.
}
