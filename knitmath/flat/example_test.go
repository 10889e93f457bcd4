package flat_test

import (
	"fmt"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/gauge"
)

// A mat of 8 cm at 20 stitches and 28 rows: every round wants 2 pi / 1.4 = 4.488 stitches
// more, so that nine more in every second round lie flat. The radius is 11.2 rounds.
func ExamplePlanFlatShape() {
	across := 8.0
	mat, err := flat.PlanFlatShape(flat.Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: flat.FormDisc, AcrossCm: &across})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range mat.Directions() {
		fmt.Println(line)
	}
	// Output:
	// Cast on 9 stitches (in a ring that the tail closes) and join in the round.
	// Rounds 1-3: work even.
	// Round 4: [k1, M1L] 9 times (18 stitches).
	// Round 5: work even.
	// Round 6: [k1, M1L, k1] 9 times (27 stitches).
	// Round 7: work even.
	// Round 8: [k3, M1L] 9 times (36 stitches).
	// Round 9: work even.
	// Round 10: [k2, M1L, k2] 9 times (45 stitches).
	// Round 11: work even.
	// Bind off loosely. Close the middle with the tail.
}
