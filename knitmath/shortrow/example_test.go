package shortrow_test

import (
	"fmt"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/shortrow"
)

// A shoulder of 18 stitches that is 6 rows taller at the neck, which is on the
// left.
func Example() {
	rise := 6
	plan, err := shortrow.PlanWedge(shortrow.WedgeInput{
		WidthStitches: 18, RiseRows: &rise, TallEnd: shortrow.TallEndLeft, TurnMethod: shortrow.TurnMethodGerman,
		Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.RiseRows, "rows,", plan.TurnCount, "turns")
	for _, row := range plan.Rows {
		fmt.Println(row.RowNumber, row.Side, row.Instruction.Row.Text())
	}
	// Output:
	// 6 rows, 3 turns
	// 1 WS p14, turn
	// 2 RS make DS, k13
	// 3 WS p9, turn
	// 4 RS make DS, k8
	// 5 WS p4, turn
	// 6 RS make DS, k3
	// 7 WS p3, [p DS, p4] 3 times
}
