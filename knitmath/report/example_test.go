package report_test

import (
	"fmt"

	"example.com/knitmath/knitmath/report"
)

// What an answer says beside its figures: a sentence whose nouns agree with their
// numbers, a remark that did not stop it, and where the rule comes from.
func Example() {
	for _, n := range []int{1, 3} {
		fmt.Printf("Decrease %s, on every %s row: %s.\n",
			report.CountOf(n, "stitches"), report.Ordinal(20+n), report.Times(n))
	}
	notice := report.Notice{Reason: "HALFWAY", Field: "width_cm", Description: "the width falls half-way between two counts"}
	fmt.Printf("%s (%s)\n", notice.Description, notice.Field)
	source := report.Source{Figure: "half a gap at each end", Citation: "common practice", Status: report.SourceStatusCommonPractice}
	fmt.Printf("%s: %s\n", source.Figure, source.Citation)
	// Output:
	// Decrease 1 stitch, on every 21st row: once.
	// Decrease 3 stitches, on every 23rd row: 3 times.
	// the width falls half-way between two counts (width_cm)
	// half a gap at each end: common practice
}
