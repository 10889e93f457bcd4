package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// restWordings say that a stitch is worked over the rest of its row, keptWordings that 3 are left for what follows. Common practice.
var (
	restWordings = []string{"to end", "to the end", "the rest", "the rest of the row", "the rest of the sts", "the remaining sts", "rem sts",
		"to end of row", "the rest plain", "plain to end", "all the rest", "remaining stitches", "across", "to the end of the row"}
	keptWordings = []string{"to last 3 sts", "to the last 3 sts", "until 3 sts remain", "until 3 sts rem", "until 3 remain",
		"till 3 sts are left",
		"the rest until 3 remain", "to within 3 sts of end", "to within 3 sts of the end", "to 3 sts before end", "till 3 remain",
		"up to the last 3 sts", "until 3 stitches are left", "to the last 3", "until there are 3 sts left", "till only 3 sts remain"}
)

// TestHowFarAStitchGoes reads rows in which a stitch is worked to the end, or up to some that are left, in any words: the counts
// are those of "to end" and "to last 3 sts".
func TestHowFarAStitchGoes(t *testing.T) {
	verbs := []string{"k ", "Knit ", "p ", "purl "}
	for i, rest := range append(append([]string{}, restWordings...), keptWordings...) {
		for v, verb := range verbs {
			if (i+v)%knittest.Sweep(1, 3) != 0 || strings.Contains(rest, "plain") && v > 1 {
				continue
			}
			stitches := 15 + i%4
			row, end := "Row 1: K2, k2tog, "+verb+rest+".", stitches-1
			if i >= len(restWordings) {
				row, end = "1st row: "+verb+rest+", yo, k2tog, k1.", stitches
			}
			if !agrees(t, fmt.Sprintf("%s %d sts.", row, end), stitches, end) {
				t.Errorf("from %d stitches: %q is not read to %d", stitches, row, end)
			}
			if agrees(t, fmt.Sprintf("%s %d sts.", row, end+1), stitches, end+1) {
				t.Errorf("from %d stitches: %q is agreed with at %d", stitches, row, end+1)
			}
		}
	}
}
