package cost_test

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/cost"
)

// blanket asks for squares, each with a border.
type blanket struct {
	Squares int
	Border  float64
}

// Cost is ten steps, and for every square one for each stitch of its border.
func (b blanket) Cost() int {
	return cost.Sum(10, cost.Product(cost.Clamp(b.Squares, 1, 1_000), cost.Ceil(b.Border, 40)))
}

// A price is one of a question in range, whatever was asked.
func Example() {
	fmt.Println(blanket{12, 8}.Cost())
	fmt.Println(blanket{math.MaxInt, math.Inf(1)}.Cost())
	fmt.Println(blanket{-5, math.NaN()}.Cost())
	// Output:
	// 106
	// 40010
	// 10
}
