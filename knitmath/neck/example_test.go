package neck_test

import (
	"fmt"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/neck"
)

// The neck of a pullover that is 39 cm across the shoulders, with a rib of 4 stitches around
// it.
func Example() {
	out, err := neck.PlanNeckline(neck.Input{
		Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(39.0), NeckCm: new(16.0), FrontDepthCm: new(7.5),
		BandRule: &gauge.CountRule{Multiple: new(4)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.ShoulderStitches, out.NeckStitches, out.ShoulderStitches, "stitches, pick up", out.PickedUpStitches)
	for _, row := range out.Front.Rows {
		if row.Part == neck.PartSecondSide {
			fmt.Println(row.RowNumber, row.Side, row.Instruction.Row.Text())
		}
	}
	// Output:
	// 25 36 25 stitches, pick up 100
	// 1 RS BO 14, k to end
	// 3 RS BO 2, k to end
	// 5 RS BO 2, k to end
	// 7 RS BO 2, k to end
	// 9 RS k1, ssk, k to end
	// 11 RS k1, ssk, k to end
	// 13 RS k1, ssk, k to end
	// 15 RS k1, ssk, k to end
	// 17 RS k1, ssk, k to end
	// 18 WS BO 7, p to end
	// 20 WS BO 6, p to end
	// 22 WS BO 6, p to end
	// 24 WS BO 6
}
