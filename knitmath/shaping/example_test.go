package shaping_test

import (
	"fmt"

	"example.com/knitmath/knitmath/shaping"
)

// A sleeve from 48 to 60 stitches over 50 rows, and the row that takes a cuff of 40
// to its first 48.
func Example() {
	rows := 50
	sleeve, err := shaping.PlanTaper(shaping.TaperInput{StartStitches: 48, EndStitches: 60, HeightRows: &rows})
	if err != nil {
		fmt.Println(err)
		return
	}
	cuff, err := shaping.PlanEvenSpacing(shaping.EvenSpacingInput{StartStitches: 40, EndStitches: 48})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(cuff.Instruction.Row.Text())
	for _, line := range sleeve.Directions() {
		fmt.Println(line)
	}
	// Output:
	// [k2, M1L, k3] 8 times
	// Work 4 rows even.
	// Row 5 (RS, increase row): k1, M1L, k to last st, M1R, k1.
	// Repeat the increase row every 8th row 5 more times: 60 stitches.
	// Work 5 rows even.
}
