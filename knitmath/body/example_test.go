package body_test

import (
	"fmt"

	"example.com/knitmath/knitmath/body"
)

// The heads of the chart.
func ExampleListBodySizes() {
	out, err := body.ListBodySizes(body.ListInput{Group: body.GroupHead})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range out.Rows[:3] {
		fmt.Println(r.Size, r.LowCm, "cm", *r.LowIn, "in")
	}
	// Output:
	// preemie 30.5 cm 12 in
	// baby 35.5 cm 14 in
	// toddler 40.5 cm 16 in
}
