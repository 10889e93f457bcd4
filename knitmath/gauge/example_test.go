package gauge_test

import (
	"errors"
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// A body of 92 cm with 8 cm of ease in a rib of 4 and 2, at 22 stitches and 30 rows
// to 10 cm.
func ExampleComputeCastOn() {
	out, err := gauge.ComputeCastOn(gauge.CastOnInput{
		Gauge:      &gauge.Gauge{Stitches: 22, Rows: 30},
		WidthCm:    new(92.0),
		EaseCm:     new(8.0),
		StitchRule: &gauge.CountRule{Multiple: new(4), Remainder: new(2)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Summary())
	fmt.Printf("exactly %.0f stitches; beside it are %d and %d\n",
		out.Stitches.Exact, out.Stitches.Below.Count, out.Stitches.Above.Count)
	for _, n := range out.Notices {
		fmt.Println(n.Reason, n.Field)
	}
	// Output:
	// Work on 222 stitches: 100.9 cm wide, 0.9 cm more than asked.
	// exactly 220 stitches; beside it are 218 and 226
	// HALFWAY width_cm
}

// A pattern at 20 stitches to 10 cm, knit at 22: what to cast on instead of 200,
// and which printed size comes out nearest to 95 cm when it is knit as written.
func ExampleConvertGauge() {
	out, err := gauge.ConvertGauge(gauge.ConversionInput{
		PatternGauge:  &gauge.Gauge{Stitches: 20, Rows: 28},
		OwnGauge:      &gauge.Gauge{Stitches: 22, Rows: 30},
		Items:         []gauge.PatternCount{{Name: "body", Kind: gauge.CountKindStitches, Count: 200}},
		Sizes:         []gauge.PrintedSize{{Name: "S", WidthCm: 96}, {Name: "M", WidthCm: 104}},
		WantedWidthCm: new(95.0),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Items[0].Fitted.Count)
	fmt.Println(out.Summary())
	// Output:
	// 220
	// Knit as written it comes out 9.1 % narrower and 6.7 % shorter. Follow size M: 94.5 cm wide, 0.5 cm less than asked. 1 count refitted.
}

// Every fault of a question is found at once.
func ExampleComputeCastOn_faults() {
	_, err := gauge.ComputeCastOn(gauge.CastOnInput{Gauge: &gauge.Gauge{Stitches: 22}, EaseCm: new(8.0), HeightCm: new(-1.0)})
	var refused *fault.InputError
	if errors.As(err, &refused) {
		for _, v := range refused.Violations {
			fmt.Println(v.Field, v.Reason)
		}
	}
	// Output:
	// gauge.rows REQUIRED
	// height_cm OUT_OF_RANGE
	// ease_cm CONTRADICTORY
}
