package outline_test

import (
	"fmt"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
)

// A piece of 40 stitches, straight for 30 rows and then narrower by 10 over 20
// more, at 20 stitches and 25 rows to 10 cm: its right edge in cm from the middle,
// and the frame that a drawing of it needs. Corners met on the way up that bend
// nothing are not drawn.
func Example() {
	stitches := gauge.NewDensity(20, 10)
	rows := gauge.NewDensity(25, 10)
	var edge []outline.Corner
	for _, c := range []outline.Corner{{Across: 40}, {Across: 40, Up: 15}, {Across: 40, Up: 30}, {Across: 35, Up: 40}, {Across: 30, Up: 50}} {
		edge = outline.AppendCorner(edge, c)
	}
	fromMiddle := func(stitches int) int { return stitches } // half of all, in half stitches
	o := (&outline.Outline{Lines: []outline.Line{{
		Name: "right edge", Points: outline.SizedBy(edge, stitches, rows, fromMiddle),
	}}}).Framed()

	for _, p := range o.Lines[0].Points {
		fmt.Printf("%s %.1f, %.1f\n", o.Lines[0].Name, p.X, p.Y)
	}
	fmt.Printf("frame %.1f to %.1f across, %.1f to %.1f up\n", o.X.Least, o.X.Greatest, o.Y.Least, o.Y.Greatest)
	// Output:
	// right edge 10.0, 0.0
	// right edge 10.0, 12.0
	// right edge 7.5, 20.0
	// frame 7.5 to 10.0 across, 0.0 to 20.0 up
}
