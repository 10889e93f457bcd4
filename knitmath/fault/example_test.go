package fault_test

import (
	"errors"
	"fmt"

	"example.com/knitmath/knitmath/fault"
)

// border asks for a border round a blanket; its width is given in stitches or in cm.
type border struct {
	Stitches int
	WidthCm  *float64
	WidthSts *int
	Names    []string
}

// vetBorder checks each field, and then what they are together.
func vetBorder(c *fault.Checks, in border) {
	c.RequiredCount("", "stitches", in.Stitches, 8, 10_000)
	c.OptionalNumber("", "width_cm", in.WidthCm, 0.1, 100)
	c.OptionalCount("", "width_stitches", in.WidthSts, 1, 1_000)
	c.OneOf(in.WidthCm != nil, in.WidthSts != nil, "width_cm", "width_stitches")
	for i, name := range in.Names {
		c.Text(fault.Index("corners", i), "name", name)
	}
	if in.WidthSts != nil && c.Sound("stitches", "width_stitches") && 2**in.WidthSts > in.Stitches {
		c.Infeasible("the border is wider than half of the blanket", "stitches", "width_stitches")
	}
}

// Every fault is found at once, whatever else is wrong.
func Example() {
	for _, in := range []border{
		{Stitches: 200, WidthSts: new(12)},
		{Stitches: 4, WidthCm: new(120.0), WidthSts: new(12)},
		{Stitches: 20, WidthSts: new(12)},
	} {
		var c fault.Checks
		vetBorder(&c, in)
		var refused *fault.InputError
		if !errors.As(c.Err(), &refused) {
			fmt.Println("sound")
			continue
		}
		for _, v := range refused.Violations {
			fmt.Println(v.Field, v.Reason+":", v.Detail)
		}
	}
	// Output:
	// sound
	// stitches OUT_OF_RANGE: is 4; must be from 8 to 10000
	// width_cm OUT_OF_RANGE: is 120; must be from 0.1 to 100
	// width_cm CONTRADICTORY: excludes width_stitches; give one of them
	// width_stitches CONTRADICTORY: excludes width_cm; give one of them
	// stitches INFEASIBLE: the border is wider than half of the blanket
	// width_stitches INFEASIBLE: the border is wider than half of the blanket
}
