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
	fmt.Println(plan.Summary())
	for _, line := range plan.Directions() {
		fmt.Println(line)
	}
	// Output:
	// A hand of 40 stitches with a gusset of 14 stitches in 18 rounds (6 cm); 14 stitches held, 2 cast on over the gap, 40 stitches above it; a thumb of 16 stitches (7.3 cm around), 16 rounds (5.3 cm) long.
	// Rounds begin at the edge of the little finger, fingers pointing up; round 1 is the first of the thumb's.
	// Right hand: rounds go over the back of the hand, then over the palm.
	// Right hand, round 1: k21, M1L, k2, M1R, k17 (42 stitches).
	// Right hand, rounds 2-3: work even.
	// Right hand, round 4: k21, M1L, k4, M1R, k17 (44 stitches).
	// Right hand, rounds 5-6: work even.
	// Right hand, round 7: k21, M1L, k6, M1R, k17 (46 stitches).
	// Right hand, rounds 8-9: work even.
	// Right hand, round 10: k21, M1L, k8, M1R, k17 (48 stitches).
	// Right hand, rounds 11-12: work even.
	// Right hand, round 13: k21, M1L, k10, M1R, k17 (50 stitches).
	// Right hand, rounds 14-15: work even.
	// Right hand, round 16: k21, M1L, k12, M1R, k17 (52 stitches).
	// Right hand, rounds 17-18: work even.
	// Right hand, round 19, the stitches of the thumb on waste yarn: k21, place 14 sts on hold, CO 2, k17 (40 stitches).
	// Left hand: rounds go over the palm, then over the back of the hand.
	// Left hand, round 1: k17, M1L, k2, M1R, k21 (42 stitches).
	// Left hand, rounds 2-3: work even.
	// Left hand, round 4: k17, M1L, k4, M1R, k21 (44 stitches).
	// Left hand, rounds 5-6: work even.
	// Left hand, round 7: k17, M1L, k6, M1R, k21 (46 stitches).
	// Left hand, rounds 8-9: work even.
	// Left hand, round 10: k17, M1L, k8, M1R, k21 (48 stitches).
	// Left hand, rounds 11-12: work even.
	// Left hand, round 13: k17, M1L, k10, M1R, k21 (50 stitches).
	// Left hand, rounds 14-15: work even.
	// Left hand, round 16: k17, M1L, k12, M1R, k21 (52 stitches).
	// Left hand, rounds 17-18: work even.
	// Left hand, round 19, the stitches of the thumb on waste yarn: k17, place 14 sts on hold, CO 2, k21 (40 stitches).
	// Thumb, both hands: put the 14 stitches on hold back on the needles and join the yarn after the last of them, at the left end of the gap, fingers up; the first round picks up along the gap, knits them, and joins.
	// Thumb round 1, along the gap and one in each corner: pick up and knit 4, k14 (18 stitches).
	// Thumb round 2, to close the corners: ssk, k2tog, k14 (16 stitches).
	// Thumb rounds 3-14: work even.
	// Thumb round 15: [k1, k2tog] twice, k2, k2tog, [k1, k2tog] twice (11 stitches).
	// Thumb round 16: [k2tog] twice, k1, k2tog, [k2tog] twice (6 stitches).
	// Cut the yarn, draw it through the remaining 6 stitches twice, pull up firmly and fasten off inside.
	// Close what gapes at the corners with the yarn's end.
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
	// Rounds 1-32: work even.
	// Begin the rounds at the edge of the hand, so that the first half of each is one side and the second the other.
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
	// Cut the yarn, leaving enough to graft; hold the two sides of 6 stitches each together, right sides out, and graft them.
}
