package pattern

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// TestRuleUpToARow: every other row from the second up to a last one is purled, whichever way that is said, as if
// they were named one by one; what comes after the last is no more of them.
func TestRuleUpToARow(t *testing.T) {
	for _, cast := range []string{"Cast on 60 sts.", "Cast on 60 (64, 68) sts."} {
		for _, form := range []string{
			"Row 2 and all WS rows through Row %d: Purl.", "Row 2 and every foll WS row to Row %d: Purl.",
			"Row 2 (and all WS rows through Row %d): Purl.", "Row 2 and all alt rows through %d: Purl.",
			"Row 2 (WS) and all WS rows thru Row %d: Purl.",
		} {
			for last := 4; last <= 10; last += 2 {
				var named []string
				var rest strings.Builder
				for n := 2; n <= last; n += 2 {
					named = append(named, fmt.Sprint(n))
				}
				for n := 3; n < last; n += 2 {
					fmt.Fprintf(&rest, "Row %d: K1, ssk, k to last 3 sts, k2tog, k1.\n", n)
				}
				fmt.Fprintf(&rest, "Row %d: Knit.\nRow %d: Knit.\nRow %d: K2tog, k to end.\n", last+1, last+2, last+3)
				begin := cast + "\nRow 1 (RS): Knit.\n"
				want, err := CheckInstructions(t.Context(), CheckInstructionsInput{
					Text: begin + "Rows " + strings.Join(named, ", ") + ": Purl.\n" + rest.String()})
				text := begin + fmt.Sprintf(form, last) + "\n" + rest.String()
				out, failed := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || failed != nil || !want.Agrees || !out.Agrees || out.EndStitches[0] != 60-(last-2)-1 ||
					!slices.Equal(out.EndStitches, want.EndStitches) || !slices.Equal(out.WorkedRows, want.WorkedRows) || out.WorkedRows[0] != last+3 {
					t.Errorf("%q: %v, %v, %s%s, %v", text, err, failed, said(&want), said(&out), out.WorkedRows)
				}
			}
		}
	}
}
