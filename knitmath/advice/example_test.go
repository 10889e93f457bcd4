package advice_test

import (
	"fmt"

	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// hem is a question: stitches that a repeat of six must divide.
type hem struct{ Stitches *int }

func (in *hem) vet() error {
	var c fault.Checks
	if *in.Stitches%6 != 0 {
		c.Infeasible("six stitches to a repeat do not divide them", "stitches")
	}
	return c.Err()
}

// The nearest counts that do are told, each of them asked.
func Example() {
	in := &hem{new(100)}
	err := advice.Add(in.vet(), func() int { return 1 }, in.vet, measure.DisplayUnitCm,
		advice.Knob{Field: "stitches", Count: &in.Stitches, Least: 6, Most: 600})
	fmt.Println(err)
	// Output: stitches: six stitches to a repeat do not divide them; 96 or 102 would do
}
