package stitch_test

import (
	"errors"
	"fmt"

	"example.com/knitmath/knitmath/stitch"
)

// A row of decreases is counted, written as patterns write it, and knit by the
// machine, which says what hands would find out.
func Example() {
	row := stitch.RowOf(
		stitch.Do(stitch.Knit, 5),
		stitch.Repeat(4, stitch.Do(stitch.K2tog, 1), stitch.Do(stitch.Knit, 8)),
		stitch.ToEnd(stitch.Knit))
	_, leaves, err := row.Count(50)
	fmt.Printf("%s: %d stitches, %v\n", row.Text(), leaves, err)

	m := stitch.NewMachine(stitch.Flat)
	if err := m.CastOn(50); err != nil {
		fmt.Println(err)
	}
	fmt.Println(m.Work(row), m.StitchCount(), m.Side())
	// The same row on what is left now finds too few.
	fmt.Println(m.Work(stitch.RowOf(stitch.Do(stitch.Purl, 50))))
	// Output:
	// k5, [k2tog, k8] 4 times, k to end: 46 stitches, <nil>
	// <nil> 46 WS
	// row 2, step 1 (time 47): p needs 1 stitch, 0 left: STITCHES_MISSING
}

// A sequence of operations becomes the shortest honest text.
func ExampleCompress() {
	var runs []stitch.Run
	for range 4 {
		runs = stitch.AppendRun(runs, stitch.Knit, 4)
		runs = stitch.AppendRun(runs, stitch.K2tog, 1)
		runs = stitch.AppendRun(runs, stitch.Knit, 4)
	}
	fmt.Println(len(runs), "runs:", stitch.Compress(runs).Text())
	// Output: 9 runs: [k4, k2tog, k4] 4 times
}

// A short row with a wrapped stitch, which must be worked with its wrap: the
// machine refuses to pass it by.
func ExampleMachine_Work() {
	m := stitch.NewMachine(stitch.Flat)
	if err := m.CastOn(6); err != nil {
		fmt.Println(err)
	}
	for _, row := range []stitch.Row{
		stitch.RowOf(stitch.Do(stitch.Knit, 4), stitch.Do(stitch.WrapTurn, 1)),
		stitch.RowOf(stitch.ToEnd(stitch.Purl)),
		stitch.RowOf(stitch.ToEnd(stitch.Knit)),
	} {
		var fault *stitch.RowError
		if err := m.Work(row); errors.As(err, &fault) {
			fmt.Println(fault.Reason, "in row", fault.Row, "with", fault.Left, "left")
		}
	}
	err := m.Work(stitch.RowOf(stitch.Do(stitch.Knit, 4), stitch.Do(stitch.KnitWrapped, 1), stitch.Do(stitch.Knit, 1)))
	fmt.Println(err, m.Heights())
	// Output:
	// WRAPPED_STITCH in row 3 with 2 left
	// <nil> [3 3 3 3 1 1]
}
