package hand_test

import (
	"fmt"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
)

// The thumb of a mitten of 40 stitches.
func ExamplePlanThumb() {
	plan, err := hand.PlanThumb(hand.ThumbInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HandStitches: new(40)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.GussetStitches, "of the gusset,", plan.HoldStitches, "held,", plan.ThumbStitches, "of the thumb")
	for _, r := range plan.HandRounds {
		fmt.Println(r.RoundNumber, "right:", r.Right.Row.Text(), "left:", r.Left.Row.Text())
	}
	for _, r := range plan.ThumbRounds {
		fmt.Println(r.RoundNumber, "thumb:", r.Instruction.Row.Text())
	}
	// Output:
	// 14 of the gusset, 14 held, 16 of the thumb
	// 1 right: k21, M1L, k2, M1R, k17 left: k17, M1L, k2, M1R, k21
	// 4 right: k21, M1L, k4, M1R, k17 left: k17, M1L, k4, M1R, k21
	// 7 right: k21, M1L, k6, M1R, k17 left: k17, M1L, k6, M1R, k21
	// 10 right: k21, M1L, k8, M1R, k17 left: k17, M1L, k8, M1R, k21
	// 13 right: k21, M1L, k10, M1R, k17 left: k17, M1L, k10, M1R, k21
	// 16 right: k21, M1L, k12, M1R, k17 left: k17, M1L, k12, M1R, k21
	// 19 right: k21, place 14 sts on hold, CO 2, k17 left: k17, place 14 sts on hold, CO 2, k21
	// 1 thumb: pick up and knit 4, k14
	// 2 thumb: ssk, k2tog, k14
	// 15 thumb: [k1, k2tog] 5 times, k1
	// 16 thumb: [k2tog] 5 times, k1
}

// A top with two sides, so that the mitten is 15 cm long from where it is asked.
func ExamplePlanMittenTop() {
	plan, err := hand.PlanMittenTop(hand.MittenTopInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HandCm: new(19.0), LengthCm: new(15.0)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.Summary())
	for _, line := range plan.Directions() {
		fmt.Println(line)
	}
	// Output:
	// On 44 stitches (20 cm around): 32 rounds even, then a top of 13 rounds (4.3 cm) to 12 stitches, grafted.
	// Rounds begin at the edge of the hand: the first half of each is one side, the second half the other.
	// Rounds 1-32: work even.
	// Round 33: [k1, ssk, k16, k2tog, k1] twice (40 stitches).
	// Round 34: work even.
	// Round 35: [k1, ssk, k14, k2tog, k1] twice (36 stitches).
	// Round 36: work even.
	// Round 37: [k1, ssk, k12, k2tog, k1] twice (32 stitches).
	// Round 38: work even.
	// Round 39: [k1, ssk, k10, k2tog, k1] twice (28 stitches).
	// Round 40: work even.
	// Round 41: [k1, ssk, k8, k2tog, k1] twice (24 stitches).
	// Round 42: work even.
	// Round 43: [k1, ssk, k6, k2tog, k1] twice (20 stitches).
	// Round 44: [k1, ssk, k4, k2tog, k1] twice (16 stitches).
	// Round 45: [k1, ssk, k2, k2tog, k1] twice (12 stitches).
	// Cut the yarn, leaving enough to graft, and graft the two sides of 6 stitches each together, right sides out.
}
