package schedule_test

import (
	"fmt"

	"example.com/knitmath/knitmath/schedule"
)

// Six things on 24 places, whose places by the line are 1.5, 5.5, ..., 21.5.
func Example() {
	line := schedule.Line{Times: 6, Places: 24, Start: 3, Step: 8, Unit: 2}
	fmt.Println(line.Nearest())
	first, runs, _ := line.Easiest(line.Departure(line.Nearest()))
	fmt.Println(first, runs, runs.Effort())
	// Output:
	// [2 6 10 14 18 22]
	// 2 [{[4] 5}] 2
}
