package yarn_test

import (
	"fmt"
	"math/big"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

// The categories of a gauge of 24 stitches to 4 in: the ranges of two overlap there.
func ExampleCategories() {
	found, _ := yarn.Categories(big.NewRat(24*100, 1016))
	for _, c := range found {
		fmt.Println(c.Name)
	}
	fmt.Println(yarn.LengthWords(measure.DisplayUnitIn, 91.44))
	// Output:
	// Fine
	// Light
	// 100 yd
}
