package swatch_test

import (
	"fmt"

	"example.com/knitmath/knitmath/swatch"
)

// Five counts of stitches and three of rows on a washed swatch, and what they say of
// a width of 50 cm.
func ExampleComputeGauge() {
	var in swatch.Input
	for _, n := range []float64{22, 23, 22.5, 21.5, 22} {
		in.StitchesAfter = append(in.StitchesAfter, swatch.Reading{Count: n})
	}
	for _, n := range []float64{30, 31, 30.5} {
		in.RowsAfter = append(in.RowsAfter, swatch.Reading{Count: n})
	}
	in.WidthCm = new(50.0)
	out, err := swatch.ComputeGauge(in)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Summary())
	fmt.Printf("knit by %.1f stitches and %.1f rows to %v cm\n", out.Gauge.Stitches, out.Gauge.Rows, *out.Gauge.OverCm)
	for _, c := range out.YarnCategories {
		fmt.Printf("yarn category %d, %s\n", c.Category, c.Name)
	}
	// Output:
	// 22.2 ± 0.71 stitches and 30.5 ± 1.24 rows to 10 cm. 111 stitches: 50 cm wide, at 95 % from 48.5 cm to 51.6 cm.
	// knit by 22.2 stitches and 30.5 rows to 10 cm
	// yarn category 3, Light
}
