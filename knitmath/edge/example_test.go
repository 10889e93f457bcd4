package edge_test

import (
	"fmt"

	"example.com/knitmath/knitmath/edge"
	"example.com/knitmath/knitmath/gauge"
)

// A band along an edge of 60 rows, and 5 buttonholes of 2 stitches in it.
func Example() {
	rows, width, before := 60, 2, 3
	band, err := edge.PlanPickUp(edge.PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}})
	if err != nil {
		fmt.Println(err)
		return
	}
	holes, err := edge.PlanButtonholes(edge.ButtonholesInput{BandStitches: band.Stitches.Count, BandRows: 7, HoleCount: 5,
		HoleStitches: &width, BeforeFirstPlaces: &before})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(band.Ratio.Text)
	fmt.Println(band.Stitches.Count)
	fmt.Println(holes.Rows[0].RowNumber, holes.Rows[0].Side, holes.Rows[0].Instruction.Row.Text())
	// Output:
	// 5 stitches for every 7 rows
	// 43
	// 4 RS k3, [BO 2, k7] twice, BO 2, k6, BO 2, k7, BO 2, k3
}
