package pattern_test

import (
	"context"
	"fmt"

	"example.com/knitmath/knitmath/pattern"
)

// A pattern in two sizes, of which one claims a stitch too many.
func ExampleCheckInstructions() {
	out, err := pattern.CheckInstructions(context.Background(), pattern.CheckInstructionsInput{
		Text: "CO 40 (44) sts\nRow 1 (RS): k1, ssk, k to last 3 sts, k2tog, k1 (38, 43 sts)",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Summary())
	for _, f := range out.Findings {
		fmt.Println(f.LineNumber, f.Reason, f.SizeNumbers, f.Description)
	}
	fmt.Println(out.EndStitches)
	// Output:
	// Checked in 2 sizes: 1 mistake.
	// 2 COUNT_DISAGREES [2] there are 42 stitches, not 43
	// [38 42]
}

// The same rows with stars for brackets.
func ExampleFormatInstructions() {
	out, err := pattern.FormatInstructions(pattern.FormatInstructionsInput{
		Text: "Row 1: [k2, p2] 10 times, k2", RepeatStyle: pattern.RepeatStyleStars,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Text)
	// Output: Row 1: *k2, p2; rep from * 9 more times, k2
}

// The left front of a cardigan from the right one.
func ExampleMirrorInstructions() {
	out, err := pattern.MirrorInstructions(pattern.MirrorInstructionsInput{Text: "Row 1: k1, ssk, k to end"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Text)
	// Output: Row 1: k to last 3 sts, k2tog, k1
}
