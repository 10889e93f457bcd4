package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestRowsOfOtherSizes: a row for one of the sizes keeps its number in all: the next row is no mistake, whether it says that it is for
// all sizes or not, and what the row does is done in its size alone. A number that no size has is found as before.
func TestRowsOfOtherSizes(t *testing.T) {
	for _, only := range []string{"%s (size 2 only): K2tog, k to end.", "%s (second size only): K2tog, k to end.",
		"Size 2 only:\n%s: K2tog, k to end.\nBoth sizes:"} {
		for _, all := range []string{"%s: Knit. 20 (23) sts.", "%s (both sizes): Knit. 20 (23) sts.", "%s: Knit. 20 (24) sts."} {
			for at := 2; at < 6; at++ {
				for skip := range 2 {
					var rows []string
					for n := 1; n < at; n++ {
						rows = append(rows, fmt.Sprintf("Row %d: Knit.", n))
					}
					rows = append(rows, fmt.Sprintf(only, fmt.Sprintf("Row %d", at)), fmt.Sprintf(all, fmt.Sprintf("Row %d", at+1+skip)))
					text := "CO 20 (24) sts.\n" + strings.Join(rows, "\n")
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if right := skip == 0 && strings.Contains(all, "23"); err != nil || out.Agrees != right || out.EndStitches[0] != 20 {
						t.Errorf("%q: %v, %s", text, err, said(&out))
					}
				}
			}
		}
	}
}
