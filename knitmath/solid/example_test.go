package solid_test

import (
	"fmt"

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
	// Cut the yarn, leaving enough to graft; hold the two sides of 6 stitches each together, right sides out, and graft them.
}
