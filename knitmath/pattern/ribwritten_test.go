package pattern

import (
	"fmt"
	"testing"
)

// TestRibAsWritten: a rib that is written in rows fits 4 stitches and 2 more, or 2 and 1 more. Where another piece is
// cast on for it, any other number is asked about; common practice. Of a rib that goes on after shaping nothing is said.
func TestRibAsWritten(t *testing.T) {
	for _, rib := range []struct {
		rows       string
		each, more int
	}{
		{"Cast on 82 sts.\n" +
			"1st row (RS): K2, *p2, k2; rep from * to end.\n" +
			"2nd row: P2, *k2, p2; rep from * to end.\n", 4, 2},
		{"Cast on 81 sts.\n" +
			"1st row (RS): K1, *p1, k1; rep from * to end.\n" +
			"2nd row: P1, *k1, p1; rep from * to end.\n", 2, 1},
	} {
		for _, call := range []string{
			"Work 18 rows in rib as given for Back.", "Work 18 rows in rib as on Back.", "Work 18 rows in rib as set.",
		} {
			for n := 45; n <= 54; n++ {
				for _, sizes := range []string{"%d sts", "%d (%d, %d) sts"} {
					cast, numbers := sizes, []any{n, n + rib.each, n + 2*rib.each}
					if sizes == "%d sts" {
						numbers = numbers[:1]
					}
					text := "BACK\n" + rib.rows + "Rep these 2 rows 8 times more.\nCast off.\nSLEEVES\nCast on " + fmt.Sprintf(cast, numbers...) +
						".\n" + call + "\nCast off."
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil {
						t.Fatal(err)
					}
					if fits := n%rib.each == rib.more; out.Agrees != fits || !fits && out.questions != 1 || out.mistakes > 0 {
						t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
					}
				}
			}
		}
		text := "BACK\n" + rib.rows + "Rep these 2 rows 8 times more.\n" +
			"Next row: K2tog, k to end.\nWork 4 rows in rib as set.\nCast off."
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.mistakes > 0 ||
			out.questions > 0 {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}
