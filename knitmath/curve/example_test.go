package curve_test

import (
	"fmt"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/gauge"
)

// An armhole: 8 stitches a side over 24 rows, along a quarter of an ellipse.
func Example() {
	st, rw := gauge.NewDensity(22, 10), gauge.NewDensity(30, 10)
	path := curve.From(curve.Point{}).Ellipse(curve.At(8, 24, st, rw), curve.LeavingAcross)
	course := path.Courses(st, rw)[0]
	plan, ok := curve.Follow(course, curve.Settings{Edges: curve.EdgesBoth, Tolerance: curve.DefaultTolerance})
	if !ok {
		return
	}
	for _, line := range plan.Condensed(curve.Wording{FirstRow: 1, LastRow: course.Rows, Start: 90}) {
		fmt.Println(line)
	}
	rows, _ := curve.Worked(90, plan.Right, plan.Left, curve.Working{FirstRow: 1, LastRow: 4})
	for _, r := range rows {
		fmt.Printf("Row %d (%s): %s (%d)\n", r.RowNumber, r.Side, r.Instruction.Row.Text(), r.Instruction.EndStitches)
	}
	fmt.Printf("%.1f cm along the edge, %.1f cm along the curve\n", curve.LengthCm(plan.Right, 1, course.Rows, st, rw), path.Length())
	// Output:
	// BO 2 sts at beg of next 2 rows: 86 stitches.
	// Dec 1 st each end of every RS row 6 times: 74 stitches.
	// Work 11 rows even.
	// Row 1 (RS): BO 2, k to end (88)
	// Row 2 (WS): BO 2, p to end (86)
	// Row 3 (RS): k1, ssk, k to last 3 sts, k2tog, k1 (84)
	// Row 4 (WS): p to end (84)
	// 9.7 cm along the edge, 9.5 cm along the curve
}
