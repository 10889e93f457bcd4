package yardage_test

import (
	"fmt"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

// A scarf of 44 stitches and 480 rows, and two mittens, each a tube of 22 by 26 cm
// laid flat, at 22 stitches and 30 rows to 10 cm.
func ExampleEstimateYarn() {
	out, err := yardage.EstimateYarn(yardage.EstimateInput{
		Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
		State: yardage.FabricStateFullyRelaxed,
		Pieces: []yardage.Piece{
			{Name: "scarf", Counted: &yardage.CountedPiece{Stitches: 44, Rows: 480}},
			{Name: "mittens", Times: new(2), Trapezoid: &yardage.TrapezoidPiece{StartWidthCm: new(22.0), HeightCm: 26}},
		},
		PutUp: &yarn.PutUp{BallM: 200, BallG: 100},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Summary())
	for _, p := range out.Pieces {
		fmt.Printf("%s: %.0f stitches, %.0f m\n", p.Name, p.Stitches, p.LengthM)
	}
	// Output:
	// You need 590 m of yarn (565 m to 620 m), 295 g, reserve included. Buy 4 balls of one dye lot, for the high figure.
	// scarf: 21120 stitches, 395 m
	// mittens: 7550 stitches, 141 m
}
