package measure_test

import (
	"fmt"

	"example.com/knitmath/knitmath/measure"
)

// A width in inches becomes stitches at 22 to 10 cm: in whole micrometres, so
// that no float decides about a stitch.
func Example() {
	asked := measure.Micrometres(20.5 * measure.CmPerInch)
	span := measure.Micrometres(10)
	stitches := measure.RoundedDiv(asked*22, span, measure.RoundingNearest)
	knit := measure.HalfUpDiv(stitches*span, 22)

	unit := measure.DisplayUnitIn
	fmt.Println(stitches, "stitches:", unit.Size(measure.Centimetres(knit)))
	fmt.Println(unit.Difference(measure.Centimetres(knit - asked)))
	// Output:
	// 115 stitches: 20.58 in
	// 0.08 in more than asked
}

// 550 g in balls of 50 g: the sum in floats is a little more, and still eleven
// balls hold it.
func ExampleCeilQuotient() {
	grams := 500.0
	grams *= 1.1 // 550.0000000000001
	fmt.Println(measure.CeilQuotient(grams, 50))
	// Output: 11
}
